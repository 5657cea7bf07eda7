/** Runs the rates of the diagnosis over many draws: `node tests/diagnosis/full-rates.mjs 1000 [slip …]`. */
import { build } from 'esbuild';
import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const folder = await mkdtemp(join('node_modules', '.rates-'));
try {
  const outfile = join(folder, 'rates.mjs');
  await build({
    entryPoints: ['tests/diagnosis/full-rates.ts'],
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    loader: { '.bin': 'binary' },
    logLevel: 'warning',
    outfile,
  });
  const { printRates } = await import(pathToFileURL(outfile));
  const [draws = '1000', ...only] = process.argv.slice(2);
  printRates(Number(draws), only, (line) => console.log(line));
} finally {
  await rm(folder, { recursive: true, force: true });
}
