/** A grid that is not computed says so once, with its own reason, however positions in it are written. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { inspect } from '../server/inspect.ts';
import { NO_FILES } from '../server/session/files.ts';

/** The method or the nature of each, by the EPSG dataset. */
const REFUSED = [
  ['3857', /web map/],
  ['8441', /Laborde Oblique Mercator/],
  ['29701', /Laborde Oblique Mercator/],
  ['2218', /Lambert Conic Conformal \(West Orientated\)/],
  ['2963', /Bonne \(South Orientated\)/],
  ['2985', /Polar Stereographic \(variant C\)/],
  ['22700', /Lambert Conic Near-Conformal/],
  ['5224', /Krovak Modified/],
  ['22300', /Tunisia Mining Grid/],
  ['32600', /all UTM zones at once/],
] as const;

const job = (grid: string) => `job "Harbour"\n  date 2026-05-19\n  clock UTC\n  grid EPSG:${grid}\n`;
const mark = (position: string) => `mark A\n  position ${position}\n  height 50 m ellipsoidal\n`;
const GRID = '100.000 m E, 200.000 m N';

const ANGLES = '41.5° N, 8.6° W';
const SPACE = 'X 4700000.000 m, Y -700000.000 m, Z 4200000.000 m';

/** Errors and warnings, with what they say. */
function told(text: string) {
  const { findings } = inspect(openDocument('day.trib', text), NO_FILES);
  return findings.filter(({ severity }) => severity === 'error' || severity === 'warning');
}

describe.each(REFUSED)('EPSG:%s', (code, reason) => {
  const setup = 'antenna A1\n  fixed-height 1.8 m\nsetup S on A with A1 at 08:00\n';
  it.each([
    ['a job with no mark', job(code)],
    ['grid coordinates', job(code) + mark(GRID) + setup],
    ['angles', job(code) + mark(ANGLES) + setup],
    ['geocentric coordinates', job(code) + mark(SPACE) + setup],
    ['a mark that names it', job('3763') + mark(`${GRID} in EPSG:${code}`)],
    [
      'a keyed position in it',
      job('3763') +
        mark('0.000 m E, 0.000 m N') +
        setup +
        `  keyed position ${GRID} in EPSG:${code}, height 50 m ellipsoidal\n`,
    ],
    [
      'an observed one',
      job('3763') +
        mark('0.000 m E, 0.000 m N') +
        `check C on A at 09:00\n  observed ${GRID} in EPSG:${code}, height 50 m ellipsoidal\n`,
    ],
    [
      'a point',
      job('3763') + `point P at 09:00\n  observed ${GRID} in EPSG:${code}, height 50 m ellipsoidal\n`,
    ],
  ])('says its reason for %s', (_, text) => {
    const found = told(text);
    const [refused, ...more] = found.filter(({ code: is }) => is === 'position/grid-unknown');
    expect(refused?.message).toMatch(reason);
    expect(refused?.message).toContain(`EPSG:${code}`);
    expect(more).toEqual([]);
    const others = found.map(({ code: is }) => is).filter((is) => is !== 'position/grid-unknown');
    expect(others.filter((is) => is.startsWith('position/') && is !== 'position/not-keyed')).toEqual([]);
  });
});
