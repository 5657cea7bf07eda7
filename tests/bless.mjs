/** Rewrites the marker comments of the pages and samples to what is found now; the change is to be read like code. */
import { build } from 'esbuild';
import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const folder = await mkdtemp(join('node_modules', '.bless-'));
try {
  const outfile = join(folder, 'bless.mjs');
  await build({
    entryPoints: ['tests/bless.ts'],
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    loader: { '.bin': 'binary' },
    logLevel: 'warning',
    outfile,
  });
  const { bless } = await import(pathToFileURL(outfile));
  for (const file of bless(process.argv.slice(2))) console.log(`rewrote the markers of ${file}`);
} finally {
  await rm(folder, { recursive: true, force: true });
}
