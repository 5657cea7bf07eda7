/** The simulator's transverse Mercator against published grid coordinates. */
import { describe, expect, it } from 'vitest';
import { transverseMercator, utm, utmZone } from './transverse-mercator.ts';
import { GRS80 } from './world.ts';

const degrees = (whole: number, minutes: number, seconds: number): number =>
  whole + minutes / 60 + seconds / 3600;

describe('transverse Mercator', () => {
  it('agrees with the printed example of IOGP publication 373-07-2, and with an independent recomputation of it', () => {
    const grid = transverseMercator('EPSG:27700', {
      // Airy 1830: EPSG ellipsoid 7001.
      ellipsoid: { semiMajor: 6377563.396, flattening: 1 / 299.3249646 },
      originLatitude: 49,
      centralMeridian: -2,
      scale: 0.9996012717,
      falseEasting: 400_000,
      falseNorthing: -100_000,
    });
    const { east, north } = grid.forward({ latitude: 50.5, longitude: 0.5 });
    expect(Math.abs(east - 577274.99)).toBeLessThan(0.02);
    expect(Math.abs(north - 69740.5)).toBeLessThan(0.02);
    expect(Math.abs(east - 577274.9838)).toBeLessThan(0.001);
    expect(Math.abs(north - 69740.4923)).toBeLessThan(0.001);
  });

  it('agrees with the Flinders Peak – Buninyong line (ICSM GDA94 Technical Manual)', () => {
    const grid = transverseMercator('EPSG:28355', {
      ellipsoid: GRS80,
      originLatitude: 0,
      centralMeridian: 147,
      scale: 0.9996,
      falseEasting: 500_000,
      falseNorthing: 10_000_000,
    });
    const flinders = { latitude: -degrees(37, 57, 3.7203), longitude: degrees(144, 25, 29.5244) };
    const { east, north } = grid.forward(flinders);
    expect(Math.abs(east - 273741.297)).toBeLessThan(0.001);
    expect(Math.abs(north - 5796489.777)).toBeLessThan(0.001);
    const buninyong = grid.inverse({ east: 228854.052, north: 5828259.038 });
    expect(Math.abs(buninyong.latitude - -degrees(37, 39, 10.1561))).toBeLessThan(1e-8);
    expect(Math.abs(buninyong.longitude - degrees(143, 55, 35.3839))).toBeLessThan(1e-8);
  });

  it.each([
    [60, 1, 388455.958, 6653097.435],
    [60, 5, 611544.042, 6653097.435],
    [60, -2, 221288.77, 6661953.041],
  ])(
    'agrees with IOGP GIGS test data v2.1, 5101, at %d° north %d° east',
    (latitude, longitude, east, north) => {
      const found = utm(31, false).forward({ latitude, longitude });
      expect(Math.abs(found.east - east)).toBeLessThan(0.03);
      expect(Math.abs(found.north - north)).toBeLessThan(0.03);
    },
  );

  it('comes back from where it went, as far as a keyed slip can lead', () => {
    for (const place of [
      { latitude: 41, longitude: -8.6 },
      { latitude: -33, longitude: 151 },
      { latitude: 5, longitude: 12.1 },
    ]) {
      const grid = utm(utmZone(place) + 1, place.latitude < 0);
      const back = grid.inverse(grid.forward(place));
      expect(Math.abs(back.latitude - place.latitude)).toBeLessThan(1e-10);
      expect(Math.abs(back.longitude - place.longitude)).toBeLessThan(1e-10);
    }
  });
});
