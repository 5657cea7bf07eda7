/**
 * Plants each of the bugs in tests/fuzz/planted into a copy of the sources and fuzzes the copy until it is found, or for
 * five minutes of trying. `npm run fuzz:planted [-- NAME …]`; exit status 1 where any bug is not found.
 */
import { spawn, spawnSync } from 'node:child_process';
import { cp, mkdtemp, readdir, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const PATCHES = resolve('tests/fuzz/planted');
const COPIED = ['grammar', 'server', 'samples', 'tests', 'package.json', 'tsconfig.json'];
const MINUTES = '5';
const SEED = '1';

const asked = process.argv.slice(2);
const names = (await readdir(PATCHES))
  .filter((name) => name.endsWith('.patch'))
  .map((name) => name.slice(0, -6));
const wanted = asked.length === 0 ? names : asked;
let missed = 0;
for (const name of wanted) {
  const start = performance.now();
  const found = await planted(name);
  if (!found) missed += 1;
  const seconds = ((performance.now() - start) / 1000).toFixed(0);
  console.log(
    `${name.padEnd(24)} ${found ? 'found' : 'NOT FOUND'} in ${seconds} s${found ? `: ${found}` : ''}`,
  );
}
console.log(`${wanted.length - missed} of ${wanted.length} found`);
process.exitCode = missed === 0 ? 0 : 1;

/** What the fuzzer says of it, or null where it finds nothing. */
async function planted(name) {
  const folder = await mkdtemp(join(tmpdir(), 'tribrach-planted-'));
  try {
    for (const path of COPIED) await cp(path, join(folder, path), { recursive: true });
    await rm(join(folder, 'tests/fuzz/planted'), { recursive: true });
    // A folder of its own, so that what the fuzzer puts beside the packages is not put beside ours.
    await cp('node_modules/.package-lock.json', join(folder, 'node_modules/.package-lock.json'));
    for (const entry of await readdir('node_modules'))
      if (!entry.startsWith('.'))
        await symlink(resolve('node_modules', entry), join(folder, 'node_modules', entry));
    const { status, stderr } = spawnSync('git', ['apply', '-C0', join(PATCHES, `${name}.patch`)], {
      cwd: folder,
    });
    if (status !== 0) throw new Error(`${name} no longer applies: ${stderr}`);
    return await fuzzed(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function fuzzed(folder) {
  const words = ['tests/fuzz/run.mjs', '--minutes', MINUTES, '--seed', SEED, '--stop-at-first'];
  const child = spawn(process.execPath, words, { cwd: folder, stdio: ['ignore', 'pipe', 'inherit'] });
  let said = '';
  child.stdout.on('data', (part) => (said += part));
  await new Promise((done) => child.on('close', done));
  const [, target, because] = /BROKEN: (.*), seed .*\n(.*)/.exec(said) ?? [];
  return target === undefined ? null : `${target}, ${because.slice(0, 100)}`;
}
