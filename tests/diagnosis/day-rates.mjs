/** Counts days by all of their checks and prints the section "Days" of RATES.md: `node tests/diagnosis/day-rates.mjs 1000`. */
import { build } from 'esbuild';
import { execFileSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const days = Number(process.argv[2] ?? 1000);
const git = (...words) => execFileSync('git', words, { encoding: 'utf8' }).trim();
const folder = await mkdtemp(join('node_modules', '.day-rates-'));
try {
  const bundled = async (name) => {
    const outfile = join(folder, `${name}.mjs`);
    await build({
      entryPoints: [`tests/diagnosis/${name}.ts`],
      bundle: true,
      platform: 'node',
      format: 'esm',
      packages: 'external',
      loader: { '.bin': 'binary' },
      logLevel: 'warning',
      outfile,
    });
    return import(pathToFileURL(outfile));
  };
  const { cleanDayRate, movedDayRate, weakDayRate } = await bundled('day-rates');
  const { ratesBehind } = await bundled('binomial');
  const share = (part, whole) => {
    const { least, most } = ratesBehind(part, whole);
    const percent = (rate) => (100 * rate).toFixed(1);
    return `${percent(part / whole)} % (${percent(least)}–${percent(most)})`;
  };
  const row = (name, { days: all, alarmed, marginal, bracketed }) =>
    console.log(
      `| ${[name, all, share(alarmed, all), share(marginal, all), share(bracketed, all)].join(' | ')} |`,
    );
  const changed = git('status', '--porcelain', '--untracked-files=no') !== '';
  console.log(
    `${days} days a row, ${new Date().toISOString().slice(0, 10)}, commit ${git('rev-parse', '--short', 'HEAD')}${changed ? ' with changes' : ''}.\n`,
  );
  console.log(
    '| days | days | alarmed | marginal check, no alarm | bracketed at 13:20 |\n|---|--:|--:|--:|--:|',
  );
  for (const checks of [1, 2, 3, 4, 5, 6])
    row(`clean, ${checks} check${checks > 1 ? 's' : ''}`, cleanDayRate(checks, days, 'counted'));
  row('base moved 60 to 200 mm, not noted', movedDayRate(days, 'counted'));
  row('clean, float checks around noon', weakDayRate(days, 'counted'));
} finally {
  await rm(folder, { recursive: true, force: true });
}
