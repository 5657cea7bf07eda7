/** Checks an archive of sessions on all cores, and again when nothing has changed, beside reading and parsing alone, in one run. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { sessionOf } from './sessions.mjs';

const count = Number(process.argv[2] ?? 10_000);
const program = resolve('dist/tribrach.cjs');
const folder = mkdtempSync(join(tmpdir(), 'tribrach-archive-bench-'));
try {
  const paths = writeArchive();
  const compiled = join(folder, 'document.mjs');
  await build({
    entryPoints: ['grammar/document.ts'],
    outfile: compiled,
    bundle: true,
    format: 'esm',
    platform: 'node',
  });
  const { openDocument } = await import(pathToFileURL(compiled).href);
  const parsed = seconds(() => {
    for (const path of paths) openDocument(path, readFileSync(path, 'utf8'));
  });
  const first = seconds(check);
  const again = seconds(check);
  row('read and parse alone, one core', parsed, parsed);
  row('check, all cores', first, parsed);
  row('check again, nothing changed', again, parsed);
  console.log(
    `checked at ${(parsed / first).toFixed(2)} of the speed of reading and parsing (aim 0.5); ` +
      `again in ${(again / first).toFixed(2)} of the first time (aim 0.1)`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}

/** Sessions of 60 to 99 lines, each its own, in folders of a hundred. */
function writeArchive() {
  return Array.from({ length: count }, (_, index) => {
    const inside = join(folder, 'jobs', `year-${Math.floor(index / 100)}`);
    mkdirSync(inside, { recursive: true });
    const path = join(inside, `job-${index}.trib`);
    writeFileSync(path, sessionOf(60 + (index % 40)).replace('job "', `job "${index} `));
    return path;
  });
}

function check() {
  const { status, stderr } = spawnSync('node', [program, 'check', 'jobs'], {
    cwd: folder,
    env: { ...process.env, XDG_CACHE_HOME: join(folder, 'cache') },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  if (status === 2) throw new Error(String(stderr));
}

function seconds(work) {
  const start = performance.now();
  work();
  return (performance.now() - start) / 1000;
}

function row(what, taken, floor) {
  const each = (taken / count) * 1000;
  console.log(
    `${what.padEnd(32)} ${taken.toFixed(1).padStart(7)} s ${each.toFixed(2).padStart(7)} ms each ${(taken / floor).toFixed(2).padStart(6)} ×`,
  );
}
