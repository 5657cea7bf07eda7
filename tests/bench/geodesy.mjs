/** Measures points per second from grid to geographic to geocentric and back, beside proj4's own and cct end to end. */
import { build } from 'esbuild';
import { spawn } from 'node:child_process';
import { mkdir } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import proj4 from 'proj4';

const POINTS = Number(process.argv[2] ?? 100_000);

const compiled = '.cache/bench/geodesy.mjs';
await mkdir('.cache/bench', { recursive: true });
await build({
  stdin: {
    contents: `export { projectedSystemOf } from './server/geodesy/registry/registry.ts';
export { forward, inverse } from './server/geodesy/projection.ts';
export { geocentricOf, geodeticOf } from './server/geodesy/geocentric.ts';`,
    resolveDir: process.cwd(),
    loader: 'ts',
  },
  outfile: compiled,
  bundle: true,
  format: 'esm',
  platform: 'node',
});
const { projectedSystemOf, forward, inverse, geocentricOf, geodeticOf } = await import(
  pathToFileURL(compiled).href
);

const system = projectedSystemOf('EPSG:3763');
const { ellipsoid } = system.datum;
const points = Array.from({ length: POINTS }, (_, index) => ({
  east: -60_000 + ((index * 7919) % 120_000) + 0.123,
  north: -250_000 + ((index * 104_729) % 500_000) + 0.456,
  height: (index * 31) % 1500,
}));

const rows = [
  ['ours, guarded, refined and checked', await measured(ours)],
  ['proj4 alone', await measured(proj4Alone)],
  ['cct, end to end', await measured(cct)],
];
for (const [name, { rate, worst }] of rows)
  console.log(
    `${name.padEnd(36)} ${rate === null ? 'not installed' : `${Math.round(rate).toLocaleString('en').padStart(9)} points a second, there and back to ${(worst * 1000).toExponential(0)} mm`}`,
  );

/** There and back once for warming, then timed; the worst miss of the way back is said beside the speed. */
async function measured(work) {
  await work(points.slice(0, 2000));
  const start = performance.now();
  const worst = await work(points);
  return { rate: worst === null ? null : (POINTS / (performance.now() - start)) * 1000, worst };
}

function ours(list) {
  let worst = 0;
  for (const { east, north, height } of list) {
    const geographic = inverse(system, { east, north });
    const geocentric = geocentricOf(ellipsoid, { ...geographic, height });
    const back = geodeticOf(ellipsoid, geocentric);
    const grid = forward(system, back);
    worst = Math.max(worst, Math.hypot(grid.east - east, grid.north - north, back.height - height));
  }
  return worst;
}

function proj4Alone(list) {
  const definition = `+proj=tmerc +lat_0=39.6682583333333 +lon_0=-8.13310833333333 +k=1 +x_0=0 +y_0=0 +ellps=GRS80 +units=m +no_defs`;
  const toGeocentric = proj4(definition, '+proj=geocent +ellps=GRS80 +units=m +no_defs');
  let worst = 0;
  for (const { east, north, height } of list) {
    const back = toGeocentric.inverse(toGeocentric.forward([east, north, height]));
    worst = Math.max(worst, Math.hypot(back[0] - east, back[1] - north, back[2] - height));
  }
  return worst;
}

/** One process that reads text and writes text, as it is used. */
async function cct(list) {
  const there =
    '+step +inv +proj=tmerc +lat_0=39.6682583333333 +lon_0=-8.13310833333333 +k=1 +ellps=GRS80 +step +proj=cart +ellps=GRS80';
  const back =
    '+step +inv +proj=cart +ellps=GRS80 +step +proj=tmerc +lat_0=39.6682583333333 +lon_0=-8.13310833333333 +k=1 +ellps=GRS80';
  const args = ['-d', '9', ...`+proj=pipeline ${there} ${back}`.split(' ')];
  const child = spawn('cct', args);
  const failed = new Promise((resolve) => child.on('error', () => resolve(null)));
  let answer = '';
  child.stdout.on('data', (part) => (answer += part));
  child.stdin.on('error', () => undefined);
  const done = new Promise((resolve) => child.on('close', resolve));
  child.stdin.end(list.map(({ east, north, height }) => `${east} ${north} ${height}`).join('\n') + '\n');
  if ((await Promise.race([failed, done])) === null) return null;
  const lines = answer.trim().split('\n');
  let worst = 0;
  list.forEach(({ east, north, height }, index) => {
    const [E, N, h] = (lines[index] ?? '').trim().split(/\s+/).map(Number);
    worst = Math.max(worst, Math.hypot(E - east, N - north, h - height));
  });
  return worst;
}
