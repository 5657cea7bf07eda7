/** Fetches a published package into the cache once, unpacks it, and lets its recipe finish it. */
import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);
export const cache = resolve('.cache/editors');

/** The folder NAME of the cache, holding PACKAGE@VERSION; `finish(folder)` runs once, after unpacking. */
export async function installed(name, spec, finish = async () => {}) {
  const folder = join(cache, name);
  if (existsSync(join(folder, 'ready'))) return folder;
  console.log(`fetching ${spec}`);
  const unpacking = `${folder}.unpacking`;
  await rm(unpacking, { recursive: true, force: true });
  await rm(folder, { recursive: true, force: true });
  await mkdir(unpacking, { recursive: true });
  const packed = await run('npm', ['pack', spec, '--silent', '--pack-destination', unpacking], {
    timeout: 300_000,
  });
  const archive = join(unpacking, packed.stdout.trim().split('\n').at(-1));
  await run('tar', ['-xzf', archive, '-C', unpacking, '--strip-components=1'], { timeout: 120_000 });
  await rm(archive);
  await finish(unpacking);
  await writeFile(join(unpacking, 'ready'), spec + '\n');
  await rename(unpacking, folder);
  return folder;
}
