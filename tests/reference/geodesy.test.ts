/** Published figures of geodesy, both ways, each with its source and its tolerance. */
import { describe, expect, it } from 'vitest';
import {
  ellipsoidalHeight,
  gridEast,
  gridNorth,
  latitude,
  longitude,
  metres,
  type Geocentric,
  type Geodetic,
  type Geographic,
} from '../../server/quantities/brands.ts';
import { isRefusal, type Refusal } from '../../server/quantities/refusal.ts';
import {
  fromCoordinateFrame,
  helmert,
  inverseHelmert,
  parametersAt,
} from '../../server/geodesy/datums/helmert.ts';
import { transformationOf, stepped } from '../../server/geodesy/datums/transformation.ts';
import { undulationEgm96 } from '../../server/geodesy/egm96.ts';
import { GRS80, WGS84 } from '../../server/geodesy/ellipsoid.ts';
import { geocentricOf, geodeticOf } from '../../server/geodesy/geocentric.ts';
import { geodesicBetween } from '../../server/geodesy/geodesic.ts';
import { forward, inverse } from '../../server/geodesy/projection.ts';
import { systemFrom } from '../../server/geodesy/registry/definition.ts';
import { projectedSystemOf } from '../../server/geodesy/registry/registry.ts';
import { gridScaleAt } from '../../server/geodesy/scale.ts';
import type { ProjectedSystem } from '../../server/geodesy/system.ts';

const FOOT = 0.3048;
const SURVEY_FOOT = 1200 / 3937;

describe('projections', () => {
  const airy = definition(
    '+proj=tmerc +lat_0=49 +lon_0=-2 +k=0.9996012717 +x_0=400000 +y_0=-100000 +ellps=airy +units=m',
  );
  const texas = definition(
    `+proj=lcc +lat_0=${27 + 50 / 60} +lon_0=-99 +lat_1=${28 + 23 / 60} +lat_2=${30 + 17 / 60} +x_0=${2_000_000 * SURVEY_FOOT} +y_0=0 +ellps=clrk66 +units=us-ft`,
  );

  it('Transverse Mercator, Airy 1830: IOGP 373-07-2, and as recomputed by PROJ 9.1.1', () => {
    bothWays(airy, at(50.5, 0.5), 577274.99, 69740.5, 0.02);
    bothWays(airy, at(50.5, 0.5), 577274.9838, 69740.4923, 0.001);
  });

  it('Lambert conic of two parallels, Clarke 1866, in US survey feet: IOGP 373-07-2, and recomputed', () => {
    bothWays(texas, at(28.5, -96), 2963503.91 * SURVEY_FOOT, 254759.8 * SURVEY_FOOT, 0.02);
    bothWays(texas, at(28.5, -96), 2963503.9128 * SURVEY_FOOT, 254759.8006 * SURVEY_FOOT, 0.001);
  });

  it.each([
    ['EPSG:32631', 60, 1, 388455.958, 6653097.435],
    ['EPSG:32631', 60, 5, 611544.042, 6653097.435],
    ['EPSG:32631', 60, -2, 221288.77, 6661953.041],
    ['EPSG:28354', -60, 146, 778711.23, 3338046.96],
    ['EPSG:28354', -20, 146, 1023538.687, 7780691.762],
  ])('%s at %d, %d: IOGP GIGS test data v2.1, series 5101, ±0.03 m', (code, φ, λ, east, north) => {
    bothWays(system(code), at(φ, λ), east, north, 0.03);
  });

  it('NAD83(HARN) / Utah North in international feet: IOGP GIGS test data v2.1, series 5103, ±0.03 m', () => {
    const utah = system('EPSG:2921');
    expect(utah.unit.metres).toBe(FOOT);
    bothWays(utah, at(41, -110), 2054436.569 * FOOT, 3527302.727 * FOOT, 0.03);
  });

  it.each([
    [-34.44406599, 172.73919397, 1576041.15, 6188574.24],
    [-46.65129501, 169.17206201, 1307103.22, 4826464.86],
  ])('NZGD2000 / NZTM at %d, %d: the national agency’s test points, ±1 mm', (φ, λ, east, north) => {
    // Eight decimals of a degree are themselves good to half a millimetre.
    bothWays(system('EPSG:2193'), at(φ, λ), east, north, 0.001);
  });
});

// Printed to 1 mm and 0.00001″; PROJ 9.1.1 itself lies up to 0.75 mm from the printed figures, in one axis.
describe('the line Flinders Peak – Buninyong: ICSM, GDA94 and GDA2020 Technical Manuals', () => {
  const flinders = at(-dms(37, 57, 3.7203), dms(144, 25, 29.5244));
  const buninyong = at(-dms(37, 39, 10.1561), dms(143, 55, 35.3839));

  it.each(['EPSG:28355', 'EPSG:7855'])('grid coordinates in %s, ±1 mm', (code) => {
    bothWays(system(code), flinders, 273741.297, 5796489.777, 0.001);
    bothWays(system(code), buninyong, 228854.052, 5828259.038, 0.001);
  });

  it('convergence to 0.01″ (the manual prints the opposite sign) and point scale factor to 1e-8', () => {
    const scaleAt = (position: Geographic) => answered(gridScaleAt(system('EPSG:28355'), position));
    expect(Math.abs(scaleAt(flinders).convergence - dms(1, 35, 3.65)) * 3600).toBeLessThan(0.006);
    expect(Math.abs(scaleAt(buninyong).convergence - dms(1, 52, 43.22)) * 3600).toBeLessThan(0.006);
    expect(Math.abs(scaleAt(flinders).point - 1.00023056)).toBeLessThan(6e-9);
    expect(Math.abs(scaleAt(buninyong).point - 1.00050567)).toBeLessThan(6e-9);
    expect(scaleAt(flinders).conformal).toBe(true);
  });

  it('ellipsoidal distance, azimuths and grid distance', () => {
    const line = geodesicBetween(GRS80, flinders, buninyong);
    expect(Math.abs(line.distance - 54972.271)).toBeLessThan(0.0006);
    expect(Math.abs(line.azimuth - dms(306, 52, 5.37)) * 3600).toBeLessThan(0.006);
    expect(Math.abs(line.backAzimuth - dms(127, 10, 25.07)) * 3600).toBeLessThan(0.006);
    const one = answered(forward(system('EPSG:28355'), flinders));
    const other = answered(forward(system('EPSG:28355'), buninyong));
    const grid = Math.hypot(one.east - other.east, one.north - other.north);
    expect(Math.abs(grid - 54992.279)).toBeLessThan(0.0006);
  });

  it('geocentric coordinates of Flinders Peak at h 350.948 m, ±1 mm', () => {
    geocentricBothWays(
      GRS80,
      { ...flinders, height: ellipsoidalHeight(350.948) },
      [-4096088.424, 2929823.084, -3901375.454],
      0.001,
    );
  });
});

describe('geodetic and geocentric', () => {
  it('WGS 84: IOGP 373-07-2, ±1 mm', () => {
    const position = { ...at(dms(53, 48, 33.82), dms(2, 7, 46.38)), height: ellipsoidalHeight(73) };
    geocentricBothWays(WGS84, position, [3771793.968, 140253.342, 5124304.349], 0.001);
  });

  it.each([
    [30, 60, 189.569, 2764210.405, 4787752.865, 3170468.52],
    [-30, -60, -526.476, 2763900.349, -4787215.831, -3170110.497],
  ])('WGS 84 at %d, %d: IOGP GIGS test data v2.1, series 5201, ±0.01 m', (φ, λ, h, x, y, z) => {
    geocentricBothWays(WGS84, { ...at(φ, λ), height: ellipsoidalHeight(h) }, [x, y, z], 0.01);
  });
});

describe('transformations', () => {
  const example = {
    translation: { x: 0, y: 0, z: 4.5 },
    rotation: { x: 0, y: 0, z: 0.554 },
    scale: 0.219,
  };

  it('seven parameters, both conventions: IOGP 373-07-2, ±0.01 m', () => {
    const source = point(3657660.66, 255768.55, 5201382.11);
    const target = point(3657660.78, 255778.43, 5201387.75);
    apart(helmert(example, source), target, 0.01);
    apart(inverseHelmert(example, target), source, 0.01);
    const asFrame = { ...example, rotation: { x: 0, y: 0, z: -0.554 } };
    apart(helmert(fromCoordinateFrame(asFrame), source), target, 0.01);
  });

  it('GDA94 to GDA2020, EPSG:8048: ICSM GDA2020 Technical Manual §3.1.1, ±0.1 mm', () => {
    const source = point(-4052051.7643, 4212836.2017, -2545106.0245);
    const target = point(-4052052.7379, 4212835.9897, -2545104.5898);
    carriedBothWays('EPSG:8048', source, target, undefined, 0.0001);
    const printed = fromCoordinateFrame({
      translation: { x: 0.06155, y: -0.01087, z: -0.04019 },
      rotation: { x: -0.0394924, y: -0.0327221, z: -0.0328979 },
      scale: -0.009994,
    });
    apart(helmert(printed, source), target, 0.0001);
  });

  it('ITRF2008 to GDA94, EPSG:6276, at epoch 2013.90: IOGP 373-07-2, ±1 mm', () => {
    const source = point(-3789470.71, 4841770.404, -1690893.952);
    const target = point(-3789470.004, 4841770.686, -1690895.108);
    carriedBothWays('EPSG:6276', source, target, 2013.9, 0.001);
    const printed = {
      ...fromCoordinateFrame({
        translation: { x: -0.08468, y: -0.01942, z: 0.03201 },
        rotation: { x: -0.0004254, y: 0.0022578, z: 0.0024015 },
        scale: 0.00971,
      }),
      epoch: 1994,
      rates: fromCoordinateFrame({
        translation: { x: 0.00142, y: 0.00134, z: 0.0009 },
        rotation: { x: 0.0015461, y: 0.001182, z: 0.0011551 },
        scale: 0.000109,
      }),
    };
    apart(helmert(parametersAt(printed, 2013.9), source), target, 0.001);
  });
});

describe('EGM96 on the 15′ grid', () => {
  it.each([
    [38.628155, 269.779155, -31.628],
    [-14.621217, 305.021114, -2.969],
    [46.874319, 102.448729, -43.575],
  ])('at %d, %d: NGA’s test points, ±0.05 m by cubic convolution', (φ, λ, N) => {
    expect(Math.abs(undulationEgm96(at(φ, λ)) - N)).toBeLessThan(0.05);
  });
});

function system(code: string): ProjectedSystem {
  return answered(projectedSystemOf(code));
}

function definition(text: string): ProjectedSystem {
  const found = answered(systemFrom(text));
  if (found.kind !== 'projected') throw new Error(`${text} is no grid`);
  return found;
}

function bothWays(into: ProjectedSystem, position: Geographic, east: number, north: number, within: number) {
  const grid = answered(forward(into, position));
  expect(Math.abs(grid.east - east)).toBeLessThan(within);
  expect(Math.abs(grid.north - north)).toBeLessThan(within);
  const back = answered(inverse(into, { east: gridEast(east), north: gridNorth(north) }));
  expect(geodesicBetween(into.datum.ellipsoid, back, position).distance).toBeLessThan(within * Math.SQRT2);
}

function geocentricBothWays(
  ellipsoid: typeof WGS84,
  position: Geodetic,
  [x, y, z]: readonly [number, number, number],
  within: number,
) {
  apart(geocentricOf(ellipsoid, position), point(x, y, z), within);
  const back = geodeticOf(ellipsoid, point(x, y, z));
  expect(geodesicBetween(ellipsoid, back, position).distance).toBeLessThan(within);
  expect(Math.abs(back.height - position.height)).toBeLessThan(within);
}

function carriedBothWays(
  code: string,
  source: Geocentric,
  target: Geocentric,
  epoch: number | undefined,
  within: number,
) {
  const transformation = answered(transformationOf(code));
  apart(answered(stepped({ transformation, reversed: false }, source, epoch)), target, within);
  apart(answered(stepped({ transformation, reversed: true }, target, epoch)), source, within);
}

function apart(one: Geocentric, other: Geocentric, within: number) {
  expect(Math.abs(one.x - other.x)).toBeLessThan(within);
  expect(Math.abs(one.y - other.y)).toBeLessThan(within);
  expect(Math.abs(one.z - other.z)).toBeLessThan(within);
}

function answered<Answer>(answer: Answer | Refusal): Answer {
  if (isRefusal(answer)) throw new Error(answer.refused);
  return answer as Answer;
}

function point(x: number, y: number, z: number): Geocentric {
  return { x: metres(x), y: metres(y), z: metres(z) };
}

function at(φ: number, λ: number): Geographic {
  return { latitude: latitude(φ), longitude: longitude(λ) };
}

function dms(whole: number, minutes: number, seconds: number) {
  return whole + minutes / 60 + seconds / 3600;
}
