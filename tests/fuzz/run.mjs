/**
 * Fuzzes for as long as it is told to: `npm run fuzz -- --minutes 60 --seed 7 [--only NAME] [--show CASE]`.
 *
 * Every round has the next seed. A case that takes longer than a minute is a hang, and is named like a broken law; what
 * was found is found again with its own seed, and `--show` tells the input of a case before it is tried. Exit status 1
 * where anything was found.
 */
import { build } from 'esbuild';
import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';

/** Milliseconds; a whole round of most targets takes less, on a busy machine too. */
const HANG = 60_000;

const { values } = parseArgs({
  options: {
    minutes: { type: 'string', default: '10' },
    seed: { type: 'string', default: '1' },
    only: { type: 'string', multiple: true, default: [] },
    show: { type: 'string' },
    'stop-at-first': { type: 'boolean', default: false },
  },
});
const orders = {
  minutes: Number(values.minutes),
  seed: Number(values.seed),
  only: values.only,
  show: values.show === undefined ? null : Number(values.show),
  stopAtFirst: values['stop-at-first'],
};
if (!(orders.minutes >= 0) || !Number.isInteger(orders.seed))
  throw new Error('say --minutes and --seed as numbers');

const folder = await mkdtemp(join('node_modules', '.fuzz-'));
let found = 0;
try {
  const outfile = join(folder, 'worker.mjs');
  await build({
    entryPoints: ['tests/fuzz/worker.ts'],
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    loader: { '.bin': 'binary', '.md': 'text' },
    logLevel: 'warning',
    outfile,
  });
  console.log(`fuzzing for ${orders.minutes} minutes from seed ${orders.seed}`);
  await watched(join(process.cwd(), outfile));
} finally {
  await rm(folder, { recursive: true, force: true });
}
console.log(found === 0 ? 'nothing was found' : `${found} found`);
process.exitCode = found === 0 ? 0 : 1;

async function watched(path) {
  const worker = new Worker(path, { workerData: orders, resourceLimits: { maxOldGenerationSizeMb: 2048 } });
  let trying = null;
  let since = performance.now();
  const hung = setInterval(() => {
    if (trying === null || performance.now() - since < HANG) return;
    report({
      ...trying,
      input: `case ${trying.number}`,
      because: `nothing came of it in ${HANG / 1000} seconds`,
    });
    void worker.terminate();
  }, 1000);
  worker.on('message', (news) => {
    since = performance.now();
    if (news.news === 'trying') trying = news;
    else if (news.news === 'input') console.log(news.input);
    else if (news.news === 'broken') report(news.broken);
    else console.log(`${news.rounds} rounds, ${news.cases} cases`);
  });
  worker.on('error', (error) =>
    report({ ...trying, input: `case ${trying?.number}`, because: String(error?.stack ?? error) }),
  );
  await new Promise((resolve) => worker.on('exit', resolve));
  clearInterval(hung);
}

function report({ target, seed, input, because }) {
  found += 1;
  console.log(`\n${new Date().toISOString()} BROKEN: ${target}, seed ${seed}`);
  console.log(because.split('\n').slice(0, 14).join('\n'));
  console.log(`input: ${input.length > 6000 ? `${input.slice(0, 6000)}…` : input}`);
  console.log(`again: npm run fuzz -- --minutes 0 --seed ${seed} --only '${target}'`);
}
