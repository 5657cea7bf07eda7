/**
 * Counts the rates of the diagnosis and prints them as a table: `node tests/diagnosis/full-rates.mjs 1000 [slip …]`.
 *
 * Each part is kept in `.cache/rates` as soon as it is counted, so that a run that was stopped goes on where it was; another
 * commit begins anew. With changes that are not committed nothing is kept.
 */
import { build } from 'esbuild';
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const [draws = '1000', ...only] = process.argv.slice(2);
const git = (...words) => execFileSync('git', words, { encoding: 'utf8' }).trim();
const commit = git('rev-parse', '--short', 'HEAD');
const changed = git('status', '--porcelain', '--untracked-files=no') !== '';
const kept = join('.cache', 'rates', `${commit}-${draws}`);

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
  const { PARTS, counted, tableOf } = await import(pathToFileURL(outfile));
  const results = {};
  for (const part of PARTS.filter((name) => only.length === 0 || only.includes(name))) {
    const file = join(kept, `${part.replaceAll(' ', '-')}.json`);
    if (!changed && existsSync(file)) results[part] = JSON.parse(readFileSync(file, 'utf8'));
    else {
      results[part] = counted(part, Number(draws));
      if (!changed) {
        mkdirSync(kept, { recursive: true });
        writeFileSync(file, JSON.stringify(results[part]));
      }
    }
    for (const line of results[part].missed?.slice(0, 3) ?? []) console.error(`  ${line}`);
    console.error(`${part}: counted`);
  }
  const when = new Date().toISOString().slice(0, 10);
  console.log(`${draws} days a part, ${when}, commit ${commit}${changed ? ' with changes' : ''}.\n`);
  console.log(tableOf(results, Number(draws)));
} finally {
  await rm(folder, { recursive: true, force: true });
}
