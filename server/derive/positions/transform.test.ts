import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { inspect } from '../../inspect.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { NO_FILES } from '../../session/files.ts';
import { listValues } from '../listing.ts';

describe('a mark in another datum than the job', () => {
  /** ICSM GDA2020 Technical Manual, §3.1.1, to 0.1 mm. */
  it('is transformed, with the uncertainty that comes with it', () => {
    const text = `job "x"
  grid EPSG:7853
mark A
  position X -4052051.7643 m, Y 4212836.2017 m, Z -2545106.0245 m in GDA94
  uncertainty 1 mm horizontal, 1 mm vertical
`;
    expect(number(text, 'mark/A/x')).toBeCloseTo(-4052052.7379, 3.7);
    expect(number(text, 'mark/A/y')).toBeCloseTo(4212835.9897, 3.7);
    expect(number(text, 'mark/A/z')).toBeCloseTo(-2545104.5898, 3.7);
    // The EPSG dataset gives the transformation 0.01 m, beside which a millimetre of the mark's own is hardly seen.
    const { sigma } = value(text, 'mark/A/x') as Value;
    expect(sigma).toBeGreaterThan(0.01);
    expect(sigma).toBeLessThan(0.0102);
  });

  it('shares the error of the transformation with its neighbour, so that between them it cancels', () => {
    const text = `job "x"
  grid EPSG:7853
mark A
  position 23.67° S, 133.88° E in GDA94
  height 600 m ellipsoidal
  uncertainty 3 mm horizontal, 4 mm vertical
mark B
  position 23.68° S, 133.89° E in GDA94
  height 600 m ellipsoidal
  uncertainty 4 mm horizontal, 5 mm vertical
antenna A1
setup S on A with A1 at 08:00
  measured 1.5 m to arp
check C on B at 09:00
  observed 23.68° S, 133.89° E, height 600 m ellipsoidal
`;
    expect((value(text, 'mark/A/east') as Value).sigma).toBeGreaterThan(0.01);
    const { contributions } = value(text, 'check/C/residual/east') as Value & { origin: 'computed' };
    const marks = [...contributions].filter(([leaf]) => /of [AB]$/.test(leaf.name)).map(([, part]) => part);
    const transformation = [...contributions].filter(([leaf]) => leaf.name.includes('GDA94 to GDA2020'));
    expect(Math.hypot(...marks)).toBeCloseTo(0.005, 5);
    expect(Math.hypot(...transformation.map(([, part]) => part))).toBeLessThan(1e-5);
  });

  it('keeps its own coordinates, and is compared with nothing, where no way is known', () => {
    const text = `job "x"
  grid EPSG:3763
mark A
  position 51° N, 1° W in OSGB36
`;
    expect(number(text, 'mark/A/latitude')).toBe(51);
    expect(because(text, 'mark/A/east')).toMatch(/name the transformation between OSGB36 and ETRS89/);
  });
});

describe('a check that was observed in another datum than the job', () => {
  /** GDA94 to GDA2020 in MGA zone 53: 0.836 m east, 1.530 m north (ICSM GDA2020 Technical Manual §3.1.1). */
  it('is compared in the datum of the job', () => {
    const text = `job "x"
  date 2026-05-19
  grid EPSG:7853
mark A
  position X -4052052.7379 m, Y 4212835.9897 m, Z -2545104.5898 m
  uncertainty 1 mm horizontal, 1 mm vertical
setup S on A at 08:00
  measured 1.5 m to arp
check C on A at 09:00
  observed X -4052051.7643 m, Y 4212836.2017 m, Z -2545106.0245 m in GDA94
check D on A at 09:00
  observed X -4052051.7643 m, Y 4212836.2017 m, Z -2545106.0245 m
`;
    for (const axis of ['east', 'north', 'up'])
      expect(Math.abs(number(text, `check/C/residual/${axis}`))).toBeLessThan(0.0002);
    expect(number(text, 'check/D/residual/grid-east')).toBeCloseTo(-0.836, 3);
    expect(number(text, 'check/D/residual/grid-north')).toBeCloseTo(-1.53, 3);
    expect(number(text, 'check/D/residual/up')).toBeCloseTo(0.098, 3);
  });
});

describe('an epoch', () => {
  const job = (datum: string) => `job "x"\n  grid EPSG:3763\n  datum ${datum}\n`;
  const moving = (epoch: string) =>
    `mark B\n  position 41.15° N, 8.62° W in ITRF2014\n  height 61.2 m ellipsoidal\n${epoch}setup S on B\n  measured 1.5 m to arp\n`;
  const fixed = `mark A\n  position 41.15° N, 8.62° W in ETRS89\n  height 61.2 m ellipsoidal\nsetup S on A\n  measured 1.5 m to arp\n`;

  /** ETRS89 and ITRF lie about 0.9 m apart in 2026 (from the published parameters); at this western edge a little less. */
  it('that the job asks for is that of the coordinates to key', () => {
    const text = job('ITRF2014 epoch 2026.38') + fixed;
    const north = (number(text, 'setup/S/tell/latitude') - 41.15) * 111_064;
    const east = (number(text, 'setup/S/tell/longitude') + 8.62) * 83_950;
    expect(Math.hypot(north, east)).toBeGreaterThan(0.75);
    expect(Math.hypot(north, east)).toBeLessThan(1);
  });

  /** Eurasia moves by two to three centimetres a year towards north-east (common knowledge). */
  it('of a mark is left to the one asked for with the plate that is named', () => {
    const text = job('ITRF2014 epoch 2020.0, plate Eurasia') + moving('  epoch 2010.0\n');
    const north = (number(text, 'setup/S/tell/latitude') - 41.15) * 111_064;
    const east = (number(text, 'setup/S/tell/longitude') + 8.62) * 83_950;
    expect(Math.hypot(north, east)).toBeGreaterThan(0.2);
    expect(Math.hypot(north, east)).toBeLessThan(0.3);
    expect(Math.min(north, east)).toBeGreaterThan(0);
  });

  /** North America turns by about two centimetres a year (common knowledge). */
  it.each(['plate North America', 'plate "North America"', 'plate North  America'])(
    'takes %s, with and without quotes',
    (plate) => {
      const text = job(`ITRF2014 epoch 2020.0, ${plate}`) + moving('  epoch 2010.0\n');
      expect(
        inspect(openDocument('day.trib', text), NO_FILES).findings.map(({ code }) => code),
      ).not.toContain('syntax/leftover');
      const north = (number(text, 'setup/S/tell/latitude') - 41.15) * 111_064;
      const east = (number(text, 'setup/S/tell/longitude') + 8.62) * 83_950;
      expect(Math.hypot(north, east)).toBeGreaterThan(0.1);
      expect(Math.hypot(north, east)).toBeLessThan(0.3);
    },
  );

  it('is never left unasked', () => {
    const text = job('ITRF2014') + moving('  epoch 2010.0\n');
    expect(number(text, 'setup/S/tell/latitude')).toBe(41.15);
  });

  it.each([
    [job('ITRF2014') + fixed, /for which epoch its coordinates are wanted is not said/],
    [job('ITRF2014 epoch 2020.0, plate Eurasia') + moving(''), /its epoch is not said/],
    [job('ITRF2014 epoch 2020.0') + moving('  epoch 2010.0\n'), /which plate carries it is not said/],
    [job('ITRF2014 epoch 2020.0, plate Atlantis') + moving('  epoch 2010.0\n'), /which plate carries it/],
  ])('that is missing is asked for (%#)', (text, sentence) => {
    expect(because(text, 'setup/S/tell/latitude')).toMatch(sentence);
  });
});

function value(text: string, id: string): Maybe<Value> {
  const { derivation } = inspect(openDocument('x', text), NO_FILES);
  const found = listValues(derivation).find((one) => one.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found.value;
}
function number(text: string, id: string): number {
  const found = value(text, id);
  if (isHole(found)) throw new Error(found.hole);
  return found.value;
}
function because(text: string, id: string): string {
  const found = value(text, id);
  return isHole(found) ? found.hole : String(found.value);
}
