/**
 * A published line as a session: every form of input gives the published coordinates, scale, heights and distances;
 * and the sum that a surveyor does on paper for the antenna height.
 *
 * Sources: ICSM, GDA94 Technical Manual and GDA2020 Technical Manual, the line Flinders Peak – Buninyong (MGA zone 55,
 * GRS80). The manual's convergence has the opposite sign (grid bearing = azimuth + convergence there).
 */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { listValues } from '../../server/derive/listing.ts';
import { inspect } from '../../server/inspect.ts';
import { isHole } from '../../server/quantities/value.ts';
import { NO_FILES } from '../../server/session/files.ts';

const FLINDERS_PEAK = {
  grid: '273741.297 m E, 5796489.777 m N',
  geographic: `37°57'03.72030"S, 144°25'29.52440"E`,
  geocentric: 'X -4096088.424 m, Y 2929823.084 m, Z -3901375.454 m',
};
const BUNINYONG = {
  grid: '228854.052 m E, 5828259.038 m N',
  geographic: `37°39'10.15610"S, 143°55'35.38390"E`,
};

/** Coordinates are printed to a millimetre, angles to 0.00001″ (0.3 mm); input and output are rounded both. */
const MILLIMETRE = 0.001;
const ANGLE = 0.00004 / 3600;

describe.each(Object.entries(FLINDERS_PEAK))('Flinders Peak in its %s form', (form, position) => {
  describe.each(Object.entries(BUNINYONG))('and Buninyong in its %s form', (_, other) => {
    const heights =
      form === 'geocentric'
        ? '  height      347.200 m orthometric'
        : '  height      347.200 m orthometric\n  separation  3.748 m';
    const values = derive(`job "line"
  date        2026-05-19
  grid        EPSG:28355
mark FLINDERS
  position    ${position}
${heights}
mark BUNINYONG
  position    ${other}
antenna A1
setup BASE on FLINDERS with A1 at 08:00
  measured    1.500 m to arp
check LINE on BUNINYONG at 09:00
  observed    ${other}
`);

    it.each([
      ['mark/FLINDERS/latitude', -(37 + 57 / 60 + 3.7203 / 3600), ANGLE],
      ['mark/FLINDERS/longitude', 144 + 25 / 60 + 29.5244 / 3600, ANGLE],
      ['mark/FLINDERS/east', 273741.297, MILLIMETRE],
      ['mark/FLINDERS/north', 5796489.777, MILLIMETRE],
      ['mark/FLINDERS/x', -4096088.424, MILLIMETRE],
      ['mark/FLINDERS/y', 2929823.084, MILLIMETRE],
      ['mark/FLINDERS/z', -3901375.454, MILLIMETRE],
      ['mark/FLINDERS/ellipsoidal-height', 350.948, MILLIMETRE],
      ['mark/FLINDERS/orthometric-height', 347.2, MILLIMETRE],
      ['mark/FLINDERS/separation', 3.748, MILLIMETRE],
      ['mark/FLINDERS/convergence', 1 + 35 / 60 + 3.65 / 3600, 0.006 / 3600],
      ['mark/FLINDERS/scale/point', 1.00023056, 6e-9],
      ['mark/BUNINYONG/latitude', -(37 + 39 / 60 + 10.1561 / 3600), ANGLE],
      ['mark/BUNINYONG/longitude', 143 + 55 / 60 + 35.3839 / 3600, ANGLE],
      ['mark/BUNINYONG/east', 228854.052, MILLIMETRE],
      ['mark/BUNINYONG/north', 5828259.038, MILLIMETRE],
      ['mark/BUNINYONG/convergence', 1 + 52 / 60 + 43.22 / 3600, 0.006 / 3600],
      ['mark/BUNINYONG/scale/point', 1.00050567, 6e-9],
      ['check/LINE/distance/ellipsoid', 54972.271, 2 * MILLIMETRE],
      ['check/LINE/distance/grid', 54992.279, 2 * MILLIMETRE],
    ])('%s is as published', (id, published, tolerance) => {
      expect(Math.abs(values(id) - published)).toBeLessThan(tolerance);
    });
  });
});

/** 1.374 m taped, 1 mm less for the slight slope, 0.5 m of extension: 1.873 m (common practice). */
describe('the sum for the antenna height', () => {
  it.each([
    ['the slope as a length', '1.374 m - 1 mm "slope" to foot', '  extension   500 mm'],
    [
      'the slope as what makes it, 52 mm off centre',
      '1.374 m to foot, 52 mm off centre',
      '  extension   500 mm',
    ],
    ['all of it in one sum', '1.374 m "tape" - 1 mm "slope" + 500 mm "extension" to arp', ''],
  ])('comes out with %s', (_, measured, extension) => {
    const value = derive(`setup BASE on M with A at 08:00
  measured    ${measured}
${extension}
mark M
antenna A
`);
    expect(value('setup/BASE/height/arp').toFixed(3)).toBe('1.873');
  });
});

function derive(text: string): (id: string) => number {
  const { derivation } = inspect(openDocument('line.trib', text), NO_FILES);
  const listed = new Map(listValues(derivation).map(({ id, value }) => [id, value]));
  return (id) => {
    const value = listed.get(id);
    if (!value || isHole(value)) throw new Error(`${id}: ${value?.hole ?? 'is not listed'}`);
    return value.value;
  };
}
