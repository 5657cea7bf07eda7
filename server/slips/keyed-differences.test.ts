/** Keyed numbers against the right ones, worked out by hand: √(1.284² − 0.048²) + 0.250 = 1.5331 m, 6.284 + 54.917 = 61.201 m. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { deriveSession } from '../derive/derivation.ts';
import { NO_FILES, type Files } from '../session/files.ts';
import { sessionOf } from '../session/session.ts';
import { geoidAsGtx } from '../../tests/simulation/geoid.ts';
import { keyedDifferences, type KeyedDifference } from './keyed-differences.ts';

/** The geoid 54.917 m above the ellipsoid everywhere, to the millimetre of single precision. */
const FLAT = geoidAsGtx({
  origin: { latitude: 41, longitude: -9 },
  separation: 54.917,
  northward: 0,
  eastward: 0,
  twist: 0,
});
const POSITION = `41°09'08.18286"N, 8°37'26.27078"W`;

function differences(keyed: readonly string[], readings = ''): readonly KeyedDifference[] {
  const text = `job "Pier"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
surface CHART "port chart datum"
  offset      2.00 m below orthometric
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
mark PM-09
  position    -40311.882 m E, 165377.404 m N
  height      5.196 m orthometric
  separation  54.915 m
antenna A1
  phase-centre 92 mm above arp
setup BASE on PM-14 with A1 at 07:50
  measured    1.284 m to foot, 48 mm off centre, at 07:52
${readings}  extension   250 mm
${keyed.map((line) => `  keyed       ${line}\n`).join('')}`;
  const session = sessionOf(openDocument('day.trib', text), NO_FILES);
  expect(session.remarks).toEqual([]);
  return keyedDifferences(session, deriveSession(session, NO_FILES));
}

const slips = (keyed: readonly string[], readings = '') =>
  differences(keyed, readings).map(({ field, named }) => [field, named?.slip.name ?? null]);

describe('the height of the antenna itself, with an antenna height of nothing', () => {
  const keyed = (height: string, antenna: string) =>
    differences([
      `position ${POSITION}, height ${height} m ellipsoidal`,
      `antenna-height ${antenna} m to arp`,
    ]);

  it.each(['62.734', '62.735'])('of %s m is right', (height) => {
    expect(keyed(height, '0.000')).toEqual([]);
  });
  it('is told as one number where it is wrong', () => {
    // 61.201 + 1.5331 = 62.7341 m.
    const [one, ...more] = keyed('62.484', '0');
    expect(more).toEqual([]);
    expect(one).toMatchObject({ field: 'height', atAntenna: true, keyed: 62.484, named: null });
    expect(one?.right).toBeCloseTo(62.7341, 3);
    expect(one && 'up' in one.by ? one.by.up : NaN).toBeCloseTo(-0.2501, 3);
  });
  it('is not meant where the mark has its height', () => {
    expect(keyed('61.201', '0.000')).toMatchObject([
      { field: 'antennaHeight', named: { slip: { name: 'antenna-height-left-out' } } },
    ]);
  });
  it('is not meant where some antenna height was keyed', () => {
    expect(keyed('61.451', '1.333').map(({ field }) => field)).toEqual(['height', 'antennaHeight']);
  });
});

describe('a rounded number', () => {
  const place = `position ${POSITION}, `;
  it.each([
    ['antenna-height 2 m to arp', 'antennaHeight'],
    ['antenna-height 1.6 m to arp', 'antennaHeight'],
    ['antenna-height 6 ft to arp', 'antennaHeight'],
    [`${place}height 62 m ellipsoidal`, 'height'],
    [`${place}height 61.3 m ellipsoidal`, 'height'],
    [`position 41°09'08.2"N, 8°37'26.3"W, height 61.201 m ellipsoidal`, 'position'],
    ['position -41203 m E, 164905 m N, height 61.201 m ellipsoidal', 'position'],
  ])('was sent as it was keyed: %s', (line, field) => {
    expect(differences([line])).toMatchObject([{ field, rounded: true, named: null }]);
  });
  it.each([
    'antenna-height 1.53 m to arp',
    `${place}height 61.2 m ellipsoidal`,
    `position 41°09'08.1829"N, 8°37'26.2708"W, height 61.201 m ellipsoidal`,
  ])('is right where that makes no centimetre: %s', (line) => {
    expect(differences([line])).toEqual([]);
  });
});

describe('an antenna height', () => {
  it.each(['1.533 m', '1.532 m', '1.534 m', '5.030 ft', '1533 mm', '1.53 m'])('of %s is right', (height) => {
    expect(slips([`antenna-height ${height} to arp`])).toEqual([]);
  });
  it.each([
    ['1.283 m', 'extension-left-out'],
    ['1.783 m', 'extension-twice'],
    ['1.625 m', 'phase-centre-for-arp'],
    ['1.441 m', 'arp-for-phase-centre'],
    // 1.5331 / 0.3048 and 1.5331 · 0.3048.
    ['5.030 m', 'feet'],
    ['0.467 m', 'feet'],
    ['1533 m', 'millimetres-for-metres'],
    ['1.353 m', 'digits-swapped'],
    ['1.5331 mm', 'millimetres-for-metres'],
    ['1.545 m', null],
  ])('of %s is what comes of %s', (height, slip) => {
    expect(slips([`antenna-height ${height} to arp`])).toEqual([['antennaHeight', slip]]);
  });
  it('to the phase centre is right 92 mm higher', () => {
    expect(slips(['antenna-height 1.625 m to phase-centre'])).toEqual([]);
    expect(slips(['antenna-height 1.533 m to phase-centre'])).toEqual([
      ['antennaHeight', 'arp-for-phase-centre'],
    ]);
  });
  it('is right as taped when the tripod was set anew', () => {
    const later = '  measured    1.301 m to foot, 48 mm off centre, at 11:42\n';
    expect(slips(['antenna-height 1.533 m to arp', 'antenna-height 1.550 m to arp at 11:45'], later)).toEqual(
      [],
    );
  });
});

describe('a height', () => {
  it.each(['61.201 m', '61.20 m', '61.2 m', '61.202 m'])('of %s is right', (height) => {
    expect(slips([`position ${POSITION}, height ${height} ellipsoidal`])).toEqual([]);
  });
  it.each([
    ['6.284 m', 'orthometric-for-ellipsoidal'],
    ['8.284 m', 'chart-for-ellipsoidal'],
    ['-48.633 m', 'separation-sign'],
    ['116.118 m', 'separation-twice'],
    ['200.791 m', 'feet'],
    ['61.021 m', 'digits-swapped'],
    ['60.111 m', 'wrong-mark'],
    ['63.5 m', null],
  ])('of %s is what comes of %s', (height, slip) => {
    expect(slips([`position ${POSITION}, height ${height} ellipsoidal`])).toEqual([['height', slip]]);
  });
});

describe('a height by two geoid models that differ by millimetres', () => {
  /** The controller’s grid of 54.917 m beside the office’s of 54.902 m, 15 mm lower; grids of one model differ by up to 20 mm (common practice). */
  const keyed = (height: string, published: string, told = POSITION, position = told) => {
    const text = `job "Pier"
  date        2026-05-19
  datum       EPSG:4258
  geoid       "region.gtx"
mark PM-14
  position    ${position}
  height      ${published}
setup BASE on PM-14 at 07:50
  measured    1.533 m to arp at 07:52
  keyed       position ${told}, height ${height} ellipsoidal
  keyed       antenna-height 1.533 m to arp
`;
    const files: Files = { document: () => ({ refused: 'none' }), bytes: () => FLAT };
    const session = sessionOf(openDocument('day.trib', text), files);
    return keyedDifferences(session, deriveSession(session, files)).map(({ field }) => field);
  };
  it('is right by either', () => {
    expect(keyed('61.201 m', '6.284 m orthometric')).toEqual([]);
    expect(keyed('61.186 m', '6.284 m orthometric')).toEqual([]);
    expect(keyed('61.161 m', '6.284 m orthometric')).toEqual(['height']);
  });
  it('but a published height above the ellipsoid rests on none, and 15 mm are a difference', () => {
    expect(keyed('61.201 m', '61.201 m ellipsoidal')).toEqual([]);
    expect(keyed('61.186 m', '61.201 m ellipsoidal')).toEqual(['height']);
    // On the equator and the prime meridian X is the semi-major axis, 6378137 m, and the height.
    const corner = ['0°00\'00.00000"N, 0°00\'00.00000"E', 'X 6378198.201 m, Y 0.000 m, Z 0.000 m'] as const;
    expect(keyed('61.201 m', '6.284 m orthometric', ...corner)).toEqual([]);
    expect(keyed('61.186 m', '6.284 m orthometric', ...corner)).toEqual(['height']);
  });
});

describe('a position', () => {
  it('in the grid is right to its last digit', () => {
    expect(slips(['position -41203.118 m E, 164904.902 m N, height 61.201 m ellipsoidal'])).toEqual([]);
  });
  it.each([
    ['164904.902 m E, -41203.118 m N', 'east-north-swapped'],
    ['-41203.181 m E, 164904.902 m N', 'digits-swapped'],
    // Times (1200/3937) / 0.3048.
    ['-41203.200 m E, 164905.232 m N', 'survey-feet'],
    [`41°09'08.18286"S, 8°37'26.27078"W`, 'hemisphere'],
    [`41°09'08.18286"N, 8°37'26.27078"E`, 'hemisphere'],
    [`41°09'08.18826"N, 8°37'26.27078"W`, 'digits-swapped'],
  ])('of %s is what comes of %s', (position, slip) => {
    expect(slips([`position ${position}, height 61.201 m ellipsoidal`])).toEqual([['position', slip]]);
  });
  it('in a grid that nobody named is compared with nothing, and what else was keyed is', () => {
    const nameless = (keyed: string) => {
      const text = `job "Pier"
  date        2026-05-19
  datum       EPSG:4258
mark PM-14
  position    ${POSITION}
  height      61.201 m ellipsoidal
setup BASE on PM-14 at 07:50
  measured    1.533 m to arp at 07:52
  keyed       position -41203.118 m E, 164904.902 m N
  keyed       antenna-height ${keyed} to arp
`;
      const session = sessionOf(openDocument('day.trib', text), NO_FILES);
      return keyedDifferences(session, deriveSession(session, NO_FILES)).map(({ field }) => field);
    };
    expect(nameless('1.533 m')).toEqual([]);
    expect(nameless('5.030 m')).toEqual(['antennaHeight']);
  });
  it('of another mark, with its height, is one slip', () => {
    const found = differences([`position -40311.882 m E, 165377.404 m N, height 60.111 m ellipsoidal`]);
    expect(found.map(({ field }) => field)).toEqual(['position', 'height']);
    for (const { named } of found) expect(named?.fields).toEqual(['position', 'height']);
    expect(found[0]?.named?.says).toContain('PM-09');
  });
});

describe('a number that was keyed anew', () => {
  it('was wrong until then, and is told once', () => {
    const found = differences([
      'antenna-height 1.283 m to arp',
      'antenna-type A1 at 08:10',
      'antenna-height 1.533 m to arp at 09:05',
    ]);
    expect(found.map(({ states }) => states)).toEqual([[1, 2]]);
    const [wrong] = found;
    expect((wrong?.until ?? 0) - (wrong?.from ?? 0)).toBe(75 * 60);
  });
});
