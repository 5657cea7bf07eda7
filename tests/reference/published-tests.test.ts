/** Figures that others publish to test geodetic programs with: IOGP's GIGS, PROJ's and GeographicLib's own tests; figures only. */
/* eslint-disable no-loss-of-precision -- the figures are kept as published, to more digits than a double holds */
import { describe, expect, it } from 'vitest';
import { WGS84 } from '../../server/geodesy/ellipsoid.ts';
import { geodesicBetween, geodesicFrom } from '../../server/geodesy/geodesic.ts';
import { fromOwnAxes, inOwnAxes } from '../../server/geodesy/own-axes.ts';
import { forward, inverse } from '../../server/geodesy/projection.ts';
import { systemFrom } from '../../server/geodesy/registry/definition.ts';
import { projectedSystemOf } from '../../server/geodesy/registry/registry.ts';
import type { ProjectedSystem } from '../../server/geodesy/system.ts';
import { degrees, gridEast, gridNorth, latitude, longitude, metres } from '../../server/quantities/brands.ts';
import { isRefusal, type Refusal } from '../../server/quantities/refusal.ts';

/** Longitude, latitude, east, north in metres. */
type Point = readonly [number, number, number, number];

/**
 * IOGP Geospatial Integrity of Geoscience Software, test data v2.0 (2011), series 5100, with the tolerance that it gives;
 * of each series the points within or beside the area that the system is for.
 */
const GIGS: readonly (readonly [string, string, number, readonly Point[]])[] = [
  [
    '5102, Lambert conic of one parallel',
    // EPSG:2192, withdrawn since.
    '+proj=lcc +lat_1=46.8 +lat_0=46.8 +lon_0=2.337229166666667 +k_0=0.99987742 +x_0=600000 +y_0=2200000 +ellps=intl +units=m',
    0.03,
    [
      [5, 53, 779816.748, 2893981.68],
      [4, 51, 717027.292, 2668695.784],
      [4, 50, 719385.249, 2557252.841],
      [4, 49, 721740.43, 2445941.161],
      [4, 46.8, 726915.752, 2201342.519],
      [7, 53, 914752.168, 2900274.371],
    ],
  ],
  [
    '5103, Lambert conic of two parallels',
    'EPSG:31370',
    0.03,
    [
      [5.3876389, 52.1561606, 219843.841, 316827.604],
      [4, 51, 124202.936, 187756.876],
      [4, 50, 123652.406, 76521.628],
      [4, 49, 123101.889, -34711.068],
      [6, 53, 259697.429, 411515.356],
    ],
  ],
  [
    '5104, oblique stereographic',
    'EPSG:28992',
    0.05,
    [
      [5, 54, 129579.26, 668240.58],
      [5, 53, 128979.26, 556953.19],
      [5.38763888889, 52.1561605556, 155000, 463000],
      [4, 51, 57605.946, 335312.662],
      [4, 53, 61856.78, 557779.12],
      [7, 53, 263225.72, 558092.77],
    ],
  ],
  [
    '5105, oblique Mercator, variant B',
    'EPSG:23700',
    0.05,
    [
      [16, 48.5, 424714.235, 355124.6],
      [17.2, 48, 512056.188, 296756.716],
      [17.5826505556, 47.6361347222, 539847.765, 255701.086],
      [19.0485716667, 47.1443936111, 650000, 200000],
      [20.1357405556, 46.3703011111, 733651.455, 114532.099],
      [21.4, 45.7, 833148.855, 42191.482],
      [22.3, 49.3, 886565.935, 444656.613],
    ],
  ],
  [
    '5106, oblique Mercator, variant A',
    'EPSG:3376',
    0.05,
    [
      [117, 6, 811253.303, 665041.265],
      [117, 4, 812599.582, 443902.706],
      [115, 4, 590521.147, 442890.861],
      [117, 1, 814401.375, 111916.452],
      [119, 6, 1032643.312, 666797.354],
      [116.846552222, 6.87845833333, 793704.631, 762081.047],
    ],
  ],
  [
    '5107, American polyconic',
    'EPSG:5880',
    0.05,
    [
      [-54, 0, 5000000, 10000000],
      [-45, -6, 5996378.70982, 9328349.94408],
      [-41, -13, 6409689.58688, 8526306.26193],
      [-57, -30, 4710574.22344, 6676097.81117],
      [-47, -27.5, 5691318.14689, 6937461.05067],
      [-37, -24, 6725584.49173, 7240461.99578],
    ],
  ],
  [
    '5108, Cassini-Soldner',
    'EPSG:3377',
    0.05,
    [
      [103.561065778, 2.0424676812, 0, 0],
      [103.64025984, 1.82776484381, 8813.252, -23740.095],
      [104, 5, 48630.563, 327067.097],
      [106, 3, 271120.234, 106216.081],
    ],
  ],
  [
    '5109, Albers',
    'EPSG:3577',
    0.05,
    [
      [132, -27, 0, -2926820.89],
      [140, -20, 832799.36, -2170181.93],
      [140, -40, 693250.21, -4395794.49],
    ],
  ],
  [
    '5110, Lambert azimuthal of equal area',
    'EPSG:3035',
    0.05,
    [
      [5, 70, 4127824.65822, 5214090.649],
      [5, 60, 4041548.13, 4109791.66],
      [5, 50, 3962799.451, 2999718.853],
      [5, 40, 3892127.02, 1892578.962],
      [10, 52, 4321000, 3210000],
      [0, 50, 3606514.43, 3036305.967],
    ],
  ],
  [
    '5111, Mercator, variant A',
    'EPSG:3001',
    0.05,
    [
      [100.0876483, 0.9071392, 2800000, 1000000],
      [110, 0, 3900000, 900000],
      [100.0876483, -5.4347892, 2800000, 300000],
      [106.8077194, -2, 3545744.14, 679490.65],
      [120, -2, 5009726.58, 679490.65],
    ],
  ],
  ['5112, Mercator, variant B', 'EPSG:3388', 0.05, [[51, 42, 0, 3819897.85]]],
];

describe.each(GIGS)('GIGS %s, %s, to %f m', (_, named, tolerance, points) => {
  const system = systemNamed(named);
  it.each(points)('%f, %f is %f, %f, and back', (λ, φ, east, north) => {
    bothWays(system, λ, φ, east, north, tolerance);
  });
});

/** The same, of a grid that counts west and south: 5113, Transverse Mercator (South Orientated). */
describe('GIGS 5113, EPSG:2049, to 0.03 m, in its own axes', () => {
  const system = answered(projectedSystemOf('EPSG:2049'));
  it.each([
    [21.5, -25, -50475.46, 2766147.25],
    [20.5, -30, 48243.45, 3320218.65],
    [19.5, -35, 136937.65, 3875621.18],
  ])('%f, %f is %f west, %f south, and back', (λ, φ, first, second) => {
    const own = inOwnAxes(
      system,
      answered(forward(system, { latitude: latitude(φ), longitude: longitude(λ) })),
    );
    expect(Math.hypot(own.first - first, own.second - second)).toBeLessThan(0.03);
    const back = answered(inverse(system, fromOwnAxes(system, { first, second })));
    expect(Math.hypot(back.latitude - φ, back.longitude - λ)).toBeLessThan(0.03 / 100_000);
  });
});

/** PROJ's own regression tests (test/gie/builtins.gie), with the 0.1 mm that they ask for. */
describe('PROJ’s own tests, to 0.1 mm', () => {
  it.each([
    ['+proj=tmerc +ellps=GRS80', 2, 1, 222650.796797586, 110642.229411933],
    ['+proj=tmerc +ellps=GRS80', -2, -1, -222650.796797586, -110642.229411933],
    ['+proj=utm +ellps=GRS80 +zone=30', 2, 1, 1057002.405491298, 110955.141175949],
    ['+proj=merc +ellps=GRS80', 2, 1, 222638.981586547, 110579.96521825],
  ])('%s at %f, %f', (definition, λ, φ, east, north) => {
    bothWays(systemNamed(`${definition} +units=m`), λ, φ, east, north, 1e-4);
  });
});

/** GeographicLib's own tests (geodtest), on WGS 84: latitude, longitude, azimuth at both ends, distance. */
describe('GeographicLib’s own tests, to 0.01 µm and 1e-11°', () => {
  it.each([
    [
      35.60777, -139.44815, 111.098748429560326, -11.17491, -69.95921, 129.289270889708762,
      8935244.5604818305,
    ],
    [55.52454, 106.05087, 22.020059880982801, 77.03196, 197.18234, 109.112041110671519, 4105086.1713924406],
    [-21.97856, 142.59065, -32.44456876433189, 41.84138, 98.56635, -41.84359951440466, 8394328.894657671],
    [-66.99028, 112.2363, 173.73491240878403, -12.70631, 285.90344, 2.512956620913668, 11150344.2312080241],
    [
      -17.42761, 173.34268, -159.033557661192928, -15.84784, 5.93557, -20.787484651536988,
      16076603.1631180673,
    ],
    [32.84994, 48.28919, 150.492927788121982, -56.28556, 202.29132, 48.113449399816759, 16727068.9438164461],
    [6.96833, 52.74123, 92.581585386317712, -7.39675, 206.17291, 90.721692165923907, 17102477.2496958388],
    [
      -50.56724, -16.30485, -105.439679907590164, -33.56571, -94.97412, -47.348547835650331,
      6455670.5118668696,
    ],
    [-87.85331, 85.66836, -65.120313040242748, 66.48646, 16.09921, -4.888658719272296, 17286615.3147144645],
    [-41.22777, 122.32875, 14.285113402275739, -7.57291, 130.37946, 10.805303085187369, 3812686.035106021],
  ])('%f, %f towards %f', (φ1, λ1, α1, φ2, λ2, α2, s) => {
    const from = { latitude: latitude(φ1), longitude: longitude(λ1) };
    const to = { latitude: latitude(φ2), longitude: longitude(λ2) };
    const found = geodesicBetween(WGS84, from, to);
    expect(Math.abs(found.distance - s)).toBeLessThan(1e-8);
    expect(turn(found.azimuth - α1)).toBeLessThan(1e-11);
    // The azimuth at the far end looks onward there, and back here.
    expect(turn(found.backAzimuth - α2 - 180)).toBeLessThan(1e-11);
    const reached = geodesicFrom(WGS84, from, degrees(α1), metres(s));
    expect(Math.abs(reached.latitude - φ2)).toBeLessThan(1e-11);
    expect(turn(reached.longitude - λ2)).toBeLessThan(1e-11);
  });

  const turn = (angle: number) => Math.abs(((((angle + 180) % 360) + 360) % 360) - 180);
});

function systemNamed(named: string): ProjectedSystem {
  const system = answered(named.startsWith('+') ? systemFrom(named) : projectedSystemOf(named));
  if (system.kind !== 'projected') throw new Error(`${named} is no grid`);
  return system;
}

function bothWays(
  system: ProjectedSystem,
  λ: number,
  φ: number,
  east: number,
  north: number,
  tolerance: number,
): void {
  const there = answered(forward(system, { latitude: latitude(φ), longitude: longitude(λ) }));
  expect(Math.hypot(there.east - east, there.north - north)).toBeLessThan(tolerance);
  const back = answered(inverse(system, { east: gridEast(east), north: gridNorth(north) }));
  const perDegree = 111_000;
  expect(
    Math.hypot(back.latitude - φ, (back.longitude - λ) * Math.cos((φ * Math.PI) / 180)) * perDegree,
  ).toBeLessThan(tolerance * 1.5);
}

function answered<Answer>(answer: Answer | Refusal): Answer {
  if (isRefusal(answer)) throw new Error(answer.refused);
  return answer as Answer;
}
