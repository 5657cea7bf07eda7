/** Writes the recordings that samples and pages name; they are made by the tests' own encoder and geodesy. */
import { build } from 'esbuild';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const TARGET = 'samples/recordings';
const folder = await mkdtemp(join('node_modules', '.record-'));
try {
  const outfile = join(folder, 'recordings.mjs');
  await build({
    entryPoints: ['tests/recordings.ts'],
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    logLevel: 'warning',
    outfile,
  });
  const { recordings } = await import(pathToFileURL(outfile));
  await mkdir(TARGET, { recursive: true });
  for (const [name, bytes] of Object.entries(recordings())) await writeFile(join(TARGET, name), bytes);
} finally {
  await rm(folder, { recursive: true, force: true });
}
