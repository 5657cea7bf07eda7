/** Grid, geographic and geocentric coordinates as values, each from the others, with the uncertainty carried along. */
import { geocentricOf, geodeticOf } from '../../geodesy/geocentric.ts';
import { forward, inverse } from '../../geodesy/projection.ts';
import { meridianRadius, primeVerticalRadius } from '../../geodesy/radii.ts';
import { toRadians } from '../../geodesy/angles.ts';
import type { CoordinateSystem, ProjectedSystem } from '../../geodesy/system.ts';
import {
  ellipsoidalHeight,
  gridEast,
  gridNorth,
  latitude as asLatitude,
  longitude as asLongitude,
  metres,
} from '../../quantities/brands.ts';
import { computeAll } from '../../quantities/computed.ts';
import { isRefusal, type Refusal } from '../../quantities/refusal.ts';
import { showNumber } from '../../quantities/show.ts';
import {
  assumed,
  hole,
  isHole,
  withSpread,
  type Given,
  type Hole,
  type Maybe,
  type Value,
} from '../../quantities/value.ts';
import type { Position } from '../../session/coordinates.ts';
import { gridNamed, systemNamed, type Frame } from './frame.ts';

/** A place on an ellipsoid, in its system's own datum. */
export interface Located {
  readonly latitude: Value;
  readonly longitude: Value;
  /** Height above the ellipsoid; only geocentric coordinates bring one along. */
  readonly height: Value | null;
  readonly system: CoordinateSystem;
}

/** Standard uncertainty of each horizontal axis, in metres, for coordinates that have none typed beside them. */
export interface AxisSpread {
  readonly sigma: number;
  readonly because: string;
  /** Up, where geocentric coordinates bring a height along; null where nobody has said. */
  readonly up?: number | null;
}

/** The systems that coordinates without one of their own are in. */
export type OwnSystems = Pick<Frame, 'grid' | 'geographic' | 'grounds'>;

/** Where coordinates lie, on the ellipsoid of their own system. */
export function locate(
  position: Position,
  frame: OwnSystems,
  about: string,
  spread: AxisSpread | null,
): Maybe<Located> {
  if (position.form === 'grid') return fromGrid(position, frame, about, spread);
  const named = position.system ? systemNamed(position.system, frame) : frame.geographic;
  if (isHole(named)) return named;
  if (position.form === 'geocentric') return fromGeocentric(position, named, about, spread);
  if (isHole(position.latitude)) return position.latitude;
  if (isHole(position.longitude)) return position.longitude;
  const { latitude, longitude } = position;
  if (!spread) return { latitude, longitude, height: null, system: named };
  const φ = asLatitude(latitude.value);
  const M = meridianRadius(named.datum.ellipsoid, φ) * toRadians(1);
  const ν = primeVerticalRadius(named.datum.ellipsoid, φ) * Math.cos(toRadians(φ)) * toRadians(1);
  return {
    latitude: spreadOver(latitude, { ...spread, sigma: spread.sigma / M }),
    longitude: spreadOver(longitude, { ...spread, sigma: spread.sigma / ν }),
    height: null,
    system: named,
  };
}

function fromGrid(
  position: Position & { form: 'grid' },
  frame: OwnSystems,
  about: string,
  spread: AxisSpread | null,
): Maybe<Located> {
  const system = position.system ? gridNamed(position.system, frame) : frame.grid;
  if (isHole(system)) return system;
  if (isHole(position.east)) return position.east;
  if (isHole(position.north)) return position.north;
  const inputs = { E: spreadOver(position.east, spread), N: spreadOver(position.north, spread) };
  const convert = (E: number, N: number) => inverse(system, { east: gridEast(E), north: gridNorth(N) });
  const refusal = convert(inputs.E.value, inputs.N.value);
  if (isRefusal(refusal)) return hole(refusal.refused, position.place);
  const formula = (symbol: string) => ({
    symbol,
    expression: `inverse projection of ${system.code ?? system.name} (E, N)`,
    evaluable: false,
    source: projectionSource(system),
  });
  const [latitude, longitude] = computeAll(
    [
      { name: `latitude of ${about}`, unit: '°', formula: formula('φ') },
      { name: `longitude of ${about}`, unit: '°', formula: formula('λ') },
    ],
    inputs,
    ({ E, N }) => {
      const found = convert(E, N);
      return isRefusal(found) ? [NaN, NaN] : [found.latitude, found.longitude];
    },
  );
  return latitude && longitude
    ? { latitude, longitude, height: null, system }
    : hole('the projection gave nothing', position.place);
}

function fromGeocentric(
  position: Position & { form: 'geocentric' },
  system: CoordinateSystem,
  about: string,
  spread: AxisSpread | null,
): Maybe<Located> {
  const { x, y, z } = position;
  if (isHole(x)) return x;
  if (isHole(y)) return y;
  if (isHole(z)) return z;
  const { ellipsoid } = system.datum;
  const horizon = spread?.up === undefined ? null : horizonErrors(about, spread);
  const inputs = horizon
    ? { X: spreadOver(x, EXACT), Y: spreadOver(y, EXACT), Z: spreadOver(z, EXACT), ...horizon }
    : { X: spreadOver(x, spread), Y: spreadOver(y, spread), Z: spreadOver(z, spread) };
  const formula = (symbol: string) => ({
    symbol,
    expression: `geodetic coordinates on ${ellipsoid.name} (X, Y, Z)`,
    evaluable: false,
    source: 'IOGP 373-07-2, geographic/geocentric conversions (EPSG method 9602)',
  });
  const [latitude, longitude, height] = computeAll(
    [
      { name: `latitude of ${about}`, unit: '°', formula: formula('φ') },
      { name: `longitude of ${about}`, unit: '°', formula: formula('λ') },
      { name: `ellipsoidal height of ${about}`, unit: 'm', formula: formula('h') },
    ],
    inputs,
    (v: Readonly<Record<string, number>>) => {
      const point = { x: metres(v['X'] ?? NaN), y: metres(v['Y'] ?? NaN), z: metres(v['Z'] ?? NaN) };
      const found = geodeticOf(ellipsoid, point);
      const M = meridianRadius(ellipsoid, found.latitude) * toRadians(1);
      const ν = primeVerticalRadius(ellipsoid, found.latitude) * toRadians(1);
      return [
        found.latitude + (v['ε_n'] ?? 0) / M,
        found.longitude + (v['ε_e'] ?? 0) / (ν * Math.cos(toRadians(found.latitude))),
        found.height + (v['ε_u'] ?? 0),
      ];
    },
  );
  if (!latitude || !longitude || !height || !Number.isFinite(height.value) || Math.abs(height.value) > 1e5)
    return hole(`${about} is not near the earth's surface`, position.place);
  return { latitude, longitude, height, system };
}

const EXACT: AxisSpread = { sigma: 0, because: 'as published; how good it is stands with ε' };

/** A stated horizontal and vertical uncertainty lies along the horizon of the place, not along X, Y and Z. */
function horizonErrors(about: string, { sigma, up, because }: AxisSpread): Readonly<Record<string, Value>> {
  const error = (axis: string, size: number | null) =>
    assumed(`error of ${about}, ${axis}`, 0, 'm', size, because);
  return { ε_e: error('east', sigma), ε_n: error('north', sigma), ε_u: error('up', up ?? null) };
}

/** East and north in a grid of the same datum. */
export function toGrid(
  located: Pick<Located, 'latitude' | 'longitude'>,
  system: ProjectedSystem,
  about: string,
): { east: Value; north: Value } | Hole {
  const convert = (φ: number, λ: number) =>
    forward(system, { latitude: asLatitude(φ), longitude: asLongitude(λ) });
  const refusal: { east: number; north: number } | Refusal = convert(
    located.latitude.value,
    located.longitude.value,
  );
  if (isRefusal(refusal)) return hole(refusal.refused);
  const formula = (symbol: string) => ({
    symbol,
    expression: `projection of ${system.code ?? system.name} (φ, λ)`,
    evaluable: false,
    source: projectionSource(system),
  });
  const [east, north] = computeAll(
    [
      { name: `east of ${about}`, unit: 'm', formula: formula('E') },
      { name: `north of ${about}`, unit: 'm', formula: formula('N') },
    ],
    { φ: located.latitude, λ: located.longitude },
    ({ φ, λ }) => {
      const found = convert(φ, λ);
      return isRefusal(found) ? [NaN, NaN] : [found.east, found.north];
    },
  );
  return east && north ? { east, north } : hole('the projection gave nothing');
}

/** X, Y and Z of a place and a height above its ellipsoid. */
export function toGeocentric(
  located: Pick<Located, 'latitude' | 'longitude' | 'system'>,
  height: Value,
  about: string,
): { x: Value; y: Value; z: Value } {
  const { ellipsoid } = located.system.datum;
  const names = ['X', 'Y', 'Z'] as const;
  const [x, y, z] = computeAll(
    names.map((symbol) => ({
      name: `${symbol} of ${about}`,
      unit: 'm' as const,
      formula: {
        symbol,
        expression: `geocentric coordinates on ${ellipsoid.name} (φ, λ, h)`,
        evaluable: false,
        source: 'IOGP 373-07-2, geographic/geocentric conversions (EPSG method 9602)',
      },
    })),
    { φ: located.latitude, λ: located.longitude, h: height },
    ({ φ, λ, h }) => {
      const found = geocentricOf(ellipsoid, {
        latitude: asLatitude(φ),
        longitude: asLongitude(λ),
        height: ellipsoidalHeight(h),
      });
      return [found.x, found.y, found.z];
    },
  );
  if (!x || !y || !z) throw new Error('three results were asked for');
  return { x, y, z };
}

/** A given number takes over what was said elsewhere of its uncertainty; a computed one has its own. */
export function spreadOver(value: Value, spread: AxisSpread | null): Value {
  return spread && value.origin === 'given'
    ? withSpread(value as Given, spread.sigma, spread.because)
    : value;
}

/** Where a grid's definition and the formulas of its method stand; a ground grid adds its own line. */
export function projectionSource({ code, name, ground }: ProjectedSystem): string {
  if (ground) {
    const { about, combinedFactor, shift } = ground;
    const pair = (east: number, north: number) => `${showNumber(east, 3)} m E, ${showNumber(north, 3)} m N`;
    return `ground grid ${name} as described in the notes: (grid − a) / ${combinedFactor} + a + t, a = ${pair(about.east, about.north)}, t = ${pair(shift.east, shift.north)}`;
  }
  const register = code === undefined ? 'the definition in the notes' : `EPSG registry, ${name}`;
  return `${register}; formulas of the method as in IOGP 373-07-2`;
}
