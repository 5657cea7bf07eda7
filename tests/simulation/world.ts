/** The simulator's own earth: ellipsoids, geocentric and geodetic places, and the local frame of a place; it borrows nothing from the program under test. */
export interface Ellipsoid {
  /** Metres. */
  readonly semiMajor: number;
  readonly flattening: number;
}

/** Earth-centred, earth-fixed; metres. */
export interface Geocentric {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Degrees north, degrees east. */
export interface Graticule {
  readonly latitude: number;
  readonly longitude: number;
}

/** Degrees and metres above the ellipsoid. */
export interface Geodetic extends Graticule {
  readonly height: number;
}

/** A vector in the frame of a place whose up is the ellipsoid's normal; metres. */
export interface EastNorthUp {
  readonly east: number;
  readonly north: number;
  readonly up: number;
}

/** The three unit vectors of a place's frame, geocentric. */
export interface LocalFrame {
  readonly east: Geocentric;
  readonly north: Geocentric;
  readonly up: Geocentric;
}

/** Defining constants: EPSG ellipsoids 7030, 7019 and 7022. */
export const WGS84: Ellipsoid = { semiMajor: 6378137, flattening: 1 / 298.257223563 };
export const GRS80: Ellipsoid = { semiMajor: 6378137, flattening: 1 / 298.257222101 };
export const INTERNATIONAL_1924: Ellipsoid = { semiMajor: 6378388, flattening: 1 / 297 };

export const DEGREE = Math.PI / 180;

/** Closed form (IOGP publication 373-07-2, method 9602). */
export function toGeocentric(place: Geodetic, ellipsoid: Ellipsoid): Geocentric {
  const φ = place.latitude * DEGREE;
  const λ = place.longitude * DEGREE;
  const e2 = ellipsoid.flattening * (2 - ellipsoid.flattening);
  const ν = ellipsoid.semiMajor / Math.sqrt(1 - e2 * Math.sin(φ) ** 2);
  const radius = (ν + place.height) * Math.cos(φ);
  return {
    x: radius * Math.cos(λ),
    y: radius * Math.sin(λ),
    z: (ν * (1 - e2) + place.height) * Math.sin(φ),
  };
}

/** B. R. Bowring, "Transformation from spatial to geographical coordinates", Survey Review 23 (1976), iterated; height in the form that keeps its digits at every latitude (Bowring 1985). */
export function toGeodetic(point: Geocentric, ellipsoid: Ellipsoid): Geodetic {
  const { semiMajor: a, flattening: f } = ellipsoid;
  const e2 = f * (2 - f);
  const p = Math.hypot(point.x, point.y);
  let β = Math.atan2(point.z, (1 - f) * p);
  let φ = 0;
  for (let pass = 0; pass < 3; pass++) {
    φ = Math.atan2(
      point.z + ((e2 * (1 - f)) / (1 - e2)) * a * Math.sin(β) ** 3,
      p - e2 * a * Math.cos(β) ** 3,
    );
    β = Math.atan2((1 - f) * Math.sin(φ), Math.cos(φ));
  }
  const height = p * Math.cos(φ) + point.z * Math.sin(φ) - a * Math.sqrt(1 - e2 * Math.sin(φ) ** 2);
  return { latitude: φ / DEGREE, longitude: Math.atan2(point.y, point.x) / DEGREE, height };
}

export function localFrame(place: Graticule): LocalFrame {
  const φ = place.latitude * DEGREE;
  const λ = place.longitude * DEGREE;
  const [sinφ, cosφ, sinλ, cosλ] = [Math.sin(φ), Math.cos(φ), Math.sin(λ), Math.cos(λ)];
  return {
    east: { x: -sinλ, y: cosλ, z: 0 },
    north: { x: -sinφ * cosλ, y: -sinφ * sinλ, z: cosφ },
    up: { x: cosφ * cosλ, y: cosφ * sinλ, z: sinφ },
  };
}

export function toLocal(vector: Geocentric, frame: LocalFrame): EastNorthUp {
  return { east: dot(vector, frame.east), north: dot(vector, frame.north), up: dot(vector, frame.up) };
}

export function fromLocal(vector: EastNorthUp, frame: LocalFrame): Geocentric {
  const along = (axis: 'x' | 'y' | 'z'): number =>
    vector.east * frame.east[axis] + vector.north * frame.north[axis] + vector.up * frame.up[axis];
  return { x: along('x'), y: along('y'), z: along('z') };
}

/** The place that lies a local vector away from another. */
export function displaced(place: Geodetic, by: EastNorthUp, ellipsoid: Ellipsoid): Geodetic {
  return toGeodetic(add(toGeocentric(place, ellipsoid), fromLocal(by, localFrame(place))), ellipsoid);
}

export function add(first: Geocentric, second: Geocentric): Geocentric {
  return { x: first.x + second.x, y: first.y + second.y, z: first.z + second.z };
}

export function subtract(first: Geocentric, second: Geocentric): Geocentric {
  return { x: first.x - second.x, y: first.y - second.y, z: first.z - second.z };
}

export function scaled(vector: Geocentric, factor: number): Geocentric {
  return { x: vector.x * factor, y: vector.y * factor, z: vector.z * factor };
}

export function dot(first: Geocentric, second: Geocentric): number {
  return first.x * second.x + first.y * second.y + first.z * second.z;
}

export function distance(first: Geocentric, second: Geocentric): number {
  return Math.hypot(first.x - second.x, first.y - second.y, first.z - second.z);
}
