/**
 * A million points, table in and table out: `tribrach points` beside cct converting the same coordinates, and beside the
 * library alone reading and writing the same table, in one run. Prints ratios, and what memory the first one took.
 *
 * node tests/bench/points.mjs [rows] [rounds], after npm run build
 */
import { parse } from 'csv-parse';
import { spawn, spawnSync } from 'node:child_process';
import { createReadStream, createWriteStream, existsSync } from 'node:fs';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { once } from 'node:events';
import { pathToFileURL } from 'node:url';

const ROWS = Number(process.argv[2] ?? 1_000_000);
const ROUNDS = Number(process.argv[3] ?? 3);
const FOLDER = '.cache/bench/points';
const PROGRAM = 'dist/tribrach.cjs';
/** What the program's heap may take, whatever the count of rows. */
const HEAP_MB = 128;

if (!existsSync(PROGRAM)) throw new Error(`there is no ${PROGRAM}; npm run build first`);
await rm(FOLDER, { recursive: true, force: true });
await mkdir(FOLDER, { recursive: true });
await writeInputs();

const hasCct = spawnSync('cct', ['--help']).error === undefined;
const times = { tribrach: [], cct: [], library: [] };
let peak = 0;
// Turn by turn, so that a machine that is busy for a while is busy for all of them.
for (let round = 0; round < ROUNDS; round++) {
  times.tribrach.push(await timed(repaired));
  if (hasCct) times.cct.push(await timed(converted));
  times.library.push(await timed(copied));
}
report();

/** A session whose base was told a height 55 m wrong, and a site of twenty by five kilometres. */
async function writeInputs() {
  await writeFile(
    `${FOLDER}/day.trib`,
    `job "bench"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:32629
  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical
mark A
  position    531547.000 m E, 4555805.000 m N
  height      61.201 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
mark B
  position    532547.000 m E, 4555805.000 m N
  height      60.000 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
antenna A1
  fixed-height 1.800 m
rover R1
  site-calibration none
setup BASE on A with A1 at 07:50 until 15:40
  keyed       position 531547.000 m E, 4555805.000 m N, height 6.284 m ellipsoidal
  keyed       antenna-height 1.800 m to arp
check OPEN on B at 08:25 by R1
  observed    532547.000 m E, 4555805.000 m N, height 5.083 m ellipsoidal
points "points.csv"
  from        BASE
  by          R1
  state       as-broadcast
  columns     name, east m, north m, height m ellipsoidal, code, time local
`,
  );
  const table = createWriteStream(`${FOLDER}/points.csv`);
  const plain = createWriteStream(`${FOLDER}/points.txt`);
  for (let row = 0; row < ROWS; row++) {
    const east = (521547 + (row % 20_000) + (row % 997) / 1000).toFixed(3);
    const north = (4553305 + Math.floor(row / 200) + (row % 991) / 1000).toFixed(3);
    const height = (5 + (row % 400) / 10).toFixed(3);
    const time = `${String(8 + (row % 7)).padStart(2, '0')}:${String(row % 60).padStart(2, '0')}:${String(row % 59).padStart(2, '0')}`;
    if (!table.write(`P${row},${east},${north},${height},KERB,${time}\n`)) await once(table, 'drain');
    if (!plain.write(`${east} ${north} ${height} 0\n`)) await once(plain, 'drain');
  }
  for (const file of [table, plain]) {
    file.end();
    await once(file, 'finish');
  }
}

async function timed(job) {
  const start = performance.now();
  await job();
  return performance.now() - start;
}

/** In a heap that would not hold the rows. */
async function repaired() {
  await rm(`${FOLDER}/out`, { recursive: true, force: true });
  const tell = `process.on('exit',()=>process.stderr.write('peak '+process.resourceUsage().maxRSS+'\\n'))`;
  const flags = [
    `--max-old-space-size=${HEAP_MB}`,
    '--import',
    `data:text/javascript,${encodeURIComponent(tell)}`,
  ];
  const child = spawn(process.execPath, [
    ...flags,
    PROGRAM,
    'points',
    `${FOLDER}/day.trib`,
    '--out',
    `${FOLDER}/out`,
  ]);
  let said = '';
  child.stderr.on('data', (part) => (said += part));
  child.stdout.on('data', (part) => (said += part));
  const [status] = await once(child, 'close');
  if (status !== 0 || !said.includes(`${ROWS} of ${ROWS} points repaired`)) throw new Error(said);
  peak = Math.max(peak, Number(/peak (\d+)/.exec(said)?.[1] ?? 0) / 1024);
}

/** The same way: grid to geocentric, the shift, and back. */
async function converted() {
  const utm = ['+proj=utm', '+zone=29', '+ellps=WGS84'];
  const steps = [
    '+proj=pipeline',
    ...['+step', '+inv', ...utm],
    ...['+step', '+proj=cart', '+ellps=WGS84'],
    ...['+step', '+proj=helmert', '+x=40.8', '+y=-6.2', '+z=36.1'],
    ...['+step', '+inv', '+proj=cart', '+ellps=WGS84'],
    ...['+step', ...utm],
  ];
  const child = spawn('cct', ['-d', '4', ...steps, `${FOLDER}/points.txt`], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const out = createWriteStream(`${FOLDER}/cct.txt`);
  child.stdout.pipe(out);
  await once(out, 'finish');
}

/** Cells are read by the library and put together again as they are. */
async function copied() {
  const out = createWriteStream(`${FOLDER}/copied.csv`);
  const rows = createReadStream(`${FOLDER}/points.csv`).pipe(parse());
  for await (const cells of rows) if (!out.write(`${cells.join(',')}\n`)) await once(out, 'drain');
  out.end();
  await once(out, 'finish');
}

function report() {
  const middle = (values) => [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)];
  const own = middle(times.tribrach);
  const seconds = (milliseconds) => `${(milliseconds / 1000).toFixed(2)} s`;
  const lines = [
    `${ROWS.toLocaleString('en')} points, the middle of ${ROUNDS} rounds`,
    `tribrach points, table in and out   ${seconds(own)}, ${Math.round(peak)} MB at most (heap held to ${HEAP_MB} MB)`,
    hasCct
      ? `cct, coordinates alone              ${seconds(middle(times.cct))}; tribrach / cct = ${(own / middle(times.cct)).toFixed(2)}`
      : 'cct is NOT INSTALLED here, so nothing is compared with it',
    `the library, table in and out       ${seconds(middle(times.library))}; tribrach / library = ${(own / middle(times.library)).toFixed(2)}`,
  ];
  console.log(lines.join('\n'));
  console.log(pathToFileURL(`${FOLDER}/out/account.md`).href);
}
