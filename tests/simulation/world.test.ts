/** The simulator's earth against published coordinates. */
import { describe, expect, it } from 'vitest';
import type { Ellipsoid, Geocentric, Geodetic } from './world.ts';
import { GRS80, WGS84, distance, toGeocentric, toGeodetic } from './world.ts';

interface Case {
  readonly source: string;
  readonly ellipsoid: Ellipsoid;
  readonly geodetic: Geodetic;
  readonly geocentric: Geocentric;
  /** Metres. */
  readonly within: number;
}

const CASES: readonly Case[] = [
  {
    source: 'ICSM GDA94 Technical Manual, Flinders Peak (347.200 + 3.748 m)',
    ellipsoid: GRS80,
    geodetic: {
      latitude: -(37 + 57 / 60 + 3.7203 / 3600),
      longitude: 144 + 25 / 60 + 29.5244 / 3600,
      height: 350.948,
    },
    geocentric: { x: -4096088.424, y: 2929823.084, z: -3901375.454 },
    within: 0.002,
  },
  {
    source: 'IOGP publication 373-07-2, geographic to geocentric',
    ellipsoid: WGS84,
    geodetic: {
      latitude: 53 + 48 / 60 + 33.82 / 3600,
      longitude: 2 + 7 / 60 + 46.38 / 3600,
      height: 73,
    },
    geocentric: { x: 3771793.968, y: 140253.342, z: 5124304.349 },
    within: 0.002,
  },
  {
    source: 'IOGP GIGS test data v2.1, 5201, north-east',
    ellipsoid: WGS84,
    geodetic: { latitude: 30, longitude: 60, height: 189.569 },
    geocentric: { x: 2764210.405, y: 4787752.865, z: 3170468.52 },
    within: 0.01,
  },
  {
    source: 'IOGP GIGS test data v2.1, 5201, south-west',
    ellipsoid: WGS84,
    geodetic: { latitude: -30, longitude: -60, height: -526.476 },
    geocentric: { x: 2763900.349, y: -4787215.831, z: -3170110.497 },
    within: 0.01,
  },
];

describe('geodetic and geocentric', () => {
  it.each(CASES)('agree with $source', ({ ellipsoid, geodetic, geocentric, within }) => {
    expect(distance(toGeocentric(geodetic, ellipsoid), geocentric)).toBeLessThan(within);
    const back = toGeocentric(toGeodetic(geocentric, ellipsoid), ellipsoid);
    expect(distance(back, geocentric)).toBeLessThan(1e-7);
    expect(Math.abs(toGeodetic(geocentric, ellipsoid).height - geodetic.height)).toBeLessThan(within);
  });

  it('are inverse from the sea floor to the satellites, pole to pole', () => {
    for (const latitude of [-90, -89.9999, -45, -1e-7, 0, 30, 89.9999, 90]) {
      for (const height of [-10_000, 0, 9000, 20_200_000]) {
        const point = toGeocentric({ latitude, longitude: 123.456, height }, WGS84);
        expect(distance(toGeocentric(toGeodetic(point, WGS84), WGS84), point)).toBeLessThan(1e-6);
      }
    }
  });
});
