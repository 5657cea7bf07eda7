/** A position that a projection does not reach is told at its line, whoever wrote it: keyed, observed, or of a point. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { distanceOutside } from '../server/geodesy/area.ts';
import { forward, inverse } from '../server/geodesy/projection.ts';
import { projectedSystemOf } from '../server/geodesy/registry/registry.ts';
import { inspect } from '../server/inspect.ts';
import { gridEast, gridNorth, latitude, longitude } from '../server/quantities/brands.ts';
import { isRefusal } from '../server/quantities/refusal.ts';
import { NO_FILES } from '../server/session/files.ts';

/** Systems with a place of work in each, near a town of their area (any atlas). */
const SYSTEMS = [
  ['EPSG:2193', -41.3, 174.8],
  ['EPSG:31983', -23.5, -46.6],
  ['EPSG:7856', -33.9, 151.2],
  ['EPSG:25830', 43.3, -3.0],
  ['EPSG:25832', 53.5, 9.9],
  ['EPSG:2157', 53.3, -6.3],
  ['EPSG:3763', 41.15, -8.62],
  ['EPSG:6404', 32.2, -110.9],
] as const;

interface Grid {
  readonly east: number;
  readonly north: number;
}

/** One blunder each, far beyond any uncertainty. */
const BLUNDERS: Readonly<Record<string, (grid: Grid) => Grid>> = {
  'east and north exchanged': ({ east, north }) => ({ east: north, north: east }),
  'a digit too many in the north': ({ east, north }) => ({ east, north: digits(north, (d) => `${d}7`) }),
  'a digit missing in the north': ({ east, north }) => ({
    east,
    north: digits(north, (d) => d.slice(0, -1)),
  }),
  'a zone number in front of the east': ({ east, north }) => ({ east: 32e6 + east, north }),
  'millimetres for metres': ({ east, north }) => ({ east: east * 1000, north: north * 1000 }),
};

function digits(value: number, change: (whole: string) => string): number {
  const whole = String(Math.trunc(Math.abs(value)));
  return Math.sign(value) * (Number(change(whole)) + (Math.abs(value) % 1));
}

const written = ({ east, north }: Grid) => `${east.toFixed(3)} m E, ${north.toFixed(3)} m N`;

function day(
  code: string,
  at: Grid,
  { keyed = at, observed, point }: { keyed?: Grid; observed?: Grid; point?: Grid },
) {
  const there = { east: at.east + 900, north: at.north + 400 };
  const line = (grid: Grid) => `  observed    ${written(grid)}, height 50.000 m ellipsoidal
  quality     fixed, 60 epochs, pdop 1.5, 16 satellites
`;
  return `job "Harbour"
  date        2026-05-19
  clock       UTC
  grid        ${code}
  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical
mark M1
  position    ${written(at)}
  height      50.000 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
  source      "register" 2026-04-02
mark M2
  position    ${written(there)}
  height      50.000 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
  source      "register" 2026-04-02
antenna A1
  fixed-height 1.800 m
setup BASE on M1 with A1 at 07:50 until 12:00
  keyed       position ${written(keyed)}, height 50.000 m ellipsoidal
  keyed       antenna-height 1.800 m to arp
  keyed       antenna-type A1
check OPEN on M2 at 08:00
${line(there)}check NOON on M2 at 10:00
${line(observed ?? there)}check CLOSE on M2 at 11:50
${line(there)}${point ? `point P1 at 09:00\n${line(point)}` : ''}`;
}

/** Codes of the errors and warnings on the lines that have this text. */
function toldOn(text: string, wrong: string) {
  const { findings } = inspect(openDocument('day.trib', text), NO_FILES);
  return findings.flatMap(({ code, severity, place: { entry, start, end } }) =>
    severity !== 'error' && severity !== 'warning'
      ? []
      : entry.text.slice(start, end).includes(wrong) || wrong.includes(entry.text.slice(start, end))
        ? [code]
        : [],
  );
}

describe.each(SYSTEMS)('%s', (code, φ, λ) => {
  const system = projectedSystemOf(code);
  if (isRefusal(system)) throw new Error(system.refused);
  const at = forward(system, { latitude: latitude(φ), longitude: longitude(λ) });
  if (isRefusal(at)) throw new Error(at.refused);

  it('is silent where everything is right', () => {
    const { findings } = inspect(openDocument('day.trib', day(code, at, { point: at })), NO_FILES);
    const loud = findings.filter(({ severity }) => severity === 'error' || severity === 'warning');
    expect(loud.map((one) => one.code)).toEqual([]);
  });

  it.each(Object.entries(BLUNDERS))('tells %s, keyed and observed', (_, spoil) => {
    const wrong = spoil(at);
    expect(toldOn(day(code, at, { keyed: wrong }), written(wrong))).not.toEqual([]);
    expect(toldOn(day(code, at, { observed: wrong }), written(wrong))).not.toEqual([]);
  });

  it.each(Object.entries(BLUNDERS))('tells %s of a point, where it leaves the area', (_, spoil) => {
    const wrong = spoil(at);
    const place = inverse(system, { east: gridEast(wrong.east), north: gridNorth(wrong.north) });
    if (!isRefusal(place) && system.area && distanceOutside(system.area, place) < 25_000) return;
    expect(toldOn(day(code, at, { point: wrong }), written(wrong))).not.toEqual([]);
  });
});

it('says which other reading lies near the marks', () => {
  const system = projectedSystemOf('EPSG:25832');
  const at = isRefusal(system)
    ? system
    : forward(system, { latitude: latitude(53.5), longitude: longitude(9.9) });
  if (isRefusal(at)) throw new Error(at.refused);
  const said = (spoil: (grid: Grid) => Grid) =>
    inspect(openDocument('day.trib', day('EPSG:25832', at, { observed: spoil(at) })), NO_FILES)
      .findings.filter(({ code }) => code === 'position/swapped' || code === 'position/out-of-area')
      .map(({ code, message }) => `${code} ${message}`)
      .join('\n');
  expect(said(({ east, north }) => ({ east: north, north: east }))).toMatch(
    /position\/swapped What NOON observed: east and north are exchanged/,
  );
  expect(said(({ east, north }) => ({ east: east * 1000, north: north * 1000 }))).toMatch(
    /Read as millimetres/,
  );
  expect(said(({ east, north }) => ({ east: 32e6 + east, north }))).toMatch(/Without the zone number/);
});
