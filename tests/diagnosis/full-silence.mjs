/**
 * Spoils every number of every good sample, one at a time, and prints who is told what, as a table by kind of number:
 * `node tests/diagnosis/full-silence.mjs [every-nth] [list.txt]`. The list has a line for each case that no finding names.
 */
import { build } from 'esbuild';
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const [step = '1', list] = process.argv.slice(2);
const git = (...words) => execFileSync('git', words, { encoding: 'utf8' }).trim();
const folder = await mkdtemp(join('node_modules', '.silence-'));
try {
  const outfile = join(folder, 'silence.mjs');
  await build({
    entryPoints: ['tests/diagnosis/silence.ts'],
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    loader: { '.bin': 'binary' },
    logLevel: 'warning',
    outfile,
  });
  const { goodDays, silenceOf, silenceTable, inWords } = await import(pathToFileURL(outfile));
  const all = silenceOf(goodDays(), Number(step));
  if (list) {
    const missing = all.filter(({ answer }) => answer === 'silent' || answer === 'elsewhere');
    missing.sort((one, other) => other.answer.localeCompare(one.answer));
    writeFileSync(list, missing.map((one) => `${inWords(one)}\n`).join(''));
  }
  const when = new Date().toISOString().slice(0, 10);
  const changed = git('status', '--porcelain', '--untracked-files=no') !== '';
  console.log(`${when}, commit ${git('rev-parse', '--short', 'HEAD')}${changed ? ' with changes' : ''}.\n`);
  console.log(silenceTable(all));
} finally {
  await rm(folder, { recursive: true, force: true });
}
