import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ellipsoidalHeight, latitude, longitude, metres } from '../quantities/brands.ts';
import { ellipsoidOf, semiMinor, WGS84 } from './ellipsoid.ts';
import { geocentricOf, geodeticOf } from './geocentric.ts';

const point = (x: number, y: number, z: number) => ({ x: metres(x), y: metres(y), z: metres(z) });

describe('geocentric to geodetic where formulas are apt to fail', () => {
  it('at the poles, whose longitude is called 0°', () => {
    expect(geodeticOf(WGS84, point(0, 0, semiMinor(WGS84) + 100))).toMatchObject({
      latitude: 90,
      longitude: 0,
    });
    const south = geodeticOf(WGS84, point(0, 0, -semiMinor(WGS84)));
    expect(south.latitude).toBe(-90);
    expect(south.height).toBeCloseTo(0, 8);
  });

  it('on the equator and at the earth’s centre', () => {
    const equator = geodeticOf(WGS84, point(0, 6378137 + 5, 0));
    expect(equator).toMatchObject({ latitude: 0, longitude: 90 });
    expect(equator.height).toBeCloseTo(5, 8);
    const centre = geodeticOf(WGS84, point(0, 0, 0));
    expect(centre.latitude).toBe(90);
    expect(centre.height).toBeCloseTo(-semiMinor(WGS84), 6);
  });

  it('on a sphere', () => {
    const sphere = ellipsoidOf('sphere', 6371000, 0);
    const there = geodeticOf(sphere, point(0, 6371010 * Math.SQRT1_2, 6371010 * Math.SQRT1_2));
    expect(there.latitude).toBeCloseTo(45, 12);
    expect(there.height).toBeCloseTo(10, 8);
  });

  it('anywhere from 6000 km down to 100 000 km up, back to the same point', () => {
    const coordinate = fc.double({ min: -1, max: 1, noNaN: true });
    const size = fc.double({ min: 1e5, max: 1e8, noNaN: true });
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, size, (x, y, z, r) => {
        const start = point(x * r, y * r, z * r);
        const back = geocentricOf(WGS84, geodeticOf(WGS84, start));
        const miss = Math.hypot(back.x - start.x, back.y - start.y, back.z - start.z);
        expect(miss).toBeLessThan(1e-8 + 1e-14 * r);
      }),
      { numRuns: 1000 },
    );
  });

  it('and from the ellipsoid and back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: -179.9, max: 180, noNaN: true }),
        fc.double({ min: -500, max: 9000, noNaN: true }),
        (φ, λ, h) => {
          const start = { latitude: latitude(φ), longitude: longitude(λ), height: ellipsoidalHeight(h) };
          const back = geodeticOf(WGS84, geocentricOf(WGS84, start));
          expect(Math.abs(back.latitude - φ)).toBeLessThan(1e-12);
          expect(Math.abs(back.height - h)).toBeLessThan(1e-8);
        },
      ),
    );
  });
});
