/** An archive in shares, each examined by a process of its own, and the join of their parts, beside one run over all; in one run. */
import { spawn, spawnSync } from 'node:child_process';
import {
  createReadStream,
  mkdirSync,
  mkdtempSync,
  openSync,
  closeSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { createHash } from 'node:crypto';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';

const count = Number(process.argv[2] ?? 100_000);
const shares = Number(process.argv[3] ?? 4);
const program = resolve('dist/tribrach.cjs');
const folder = mkdtempSync(join(tmpdir(), 'tribrach-shards-'));
const files = { cwd: folder, env: { ...process.env, XDG_CACHE_HOME: join(folder, 'cache') } };
try {
  writeArchive();
  const parts = Array.from({ length: shares }, (_, index) => `${index + 1}.part`);
  const together = await seconds(() =>
    Promise.all(
      parts.map((part, index) =>
        run(part, 'check', 'jobs', '--no-cache', '--shard', `${index + 1}/${shares}`),
      ),
    ),
  );
  const whole = await seconds(() => run('one.json', 'check', 'jobs', '--no-cache', '--format', 'json'));
  const joining = await seconds(() => run('joined.json', 'join', ...parts, '--format', 'json'));
  const size = parts.reduce((sum, part) => sum + statSync(join(folder, part)).size, 0);
  console.log(
    `${count} sessions in ${shares} shares, ${(size / count / 1000).toFixed(1)} kB a session in the parts`,
  );
  console.log(`the shares at once on this machine: ${(together / whole).toFixed(2)} of the time of one run`);
  console.log(`join: ${(joining / whole).toFixed(2)} of the time of one run`);
  console.log(
    `the same bytes: ${(await digestOf('one.json')) === (await digestOf('joined.json')) ? 'yes' : 'NO'}`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}

/** Small sessions in folders of a hundred: marks, and every tenth a day with a slip of its own. */
function writeArchive() {
  for (let index = 0; index < count; index++) {
    const path = join(folder, 'jobs', String(Math.floor(index / 100)), `${index}.trib`);
    if (index % 100 === 0) mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, marksOf(index) + (index % 10 === 3 ? dayOf(index) : ''));
  }
  spawnSync('git', ['init', '-q', 'jobs'], files);
}

function marksOf(index) {
  return `job "day ${index}"
  date        2026-05-19
  grid        EPSG:3763
  vertical    "harbour levelling datum"
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      ${(5 + (index % 1000) / 1000).toFixed(3)} m orthometric
  separation  54.917 m
`;
}

function dayOf(index) {
  return `setup BASE on PM-14 at 07:50 until 15:40
  measured    1.${500 + (index % 400)} m to arp, at 07:52
  keyed       antenna-height 1.${500 + ((index + 340) % 400)} m to arp
`;
}

function run(out, ...words) {
  const descriptor = openSync(join(folder, out), 'w');
  return new Promise((resolved, failed) =>
    spawn(process.execPath, [program, ...words], { ...files, stdio: ['ignore', descriptor, 'inherit'] }).on(
      'close',
      (status) => {
        closeSync(descriptor);
        if (status === 0 || status === 1) resolved();
        else failed(new Error(`${words.join(' ')} ended with ${status}`));
      },
    ),
  );
}

async function digestOf(path) {
  const hash = createHash('sha256');
  for await (const piece of createReadStream(join(folder, path))) hash.update(piece);
  return hash.digest('hex');
}

async function seconds(work) {
  const start = performance.now();
  await work();
  return (performance.now() - start) / 1000;
}
