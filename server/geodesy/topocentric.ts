/**
 * A geocentric difference in the local horizon of a point (east, north, up along the ellipsoid's normal) and back.
 *
 * Source: IOGP publication 373-07-2, §4.1.2, geocentric to topocentric.
 */
import { metres, type Geocentric, type Geographic, type Topocentric } from '../quantities/brands.ts';
import { toRadians } from './angles.ts';

/** The vector from one geocentric point to another, east, north and up at `origin`. */
export function topocentricBetween(origin: Geographic, from: Geocentric, to: Geocentric): Topocentric {
  return topocentricOf(origin, {
    x: metres(to.x - from.x),
    y: metres(to.y - from.y),
    z: metres(to.z - from.z),
  });
}

/** A geocentric vector (a difference, not a place) as east, north and up at `origin`. */
export function topocentricOf(origin: Geographic, vector: Geocentric): Topocentric {
  const { sinφ, cosφ, sinλ, cosλ } = directions(origin);
  const { x, y, z } = vector;
  return {
    east: metres(-sinλ * x + cosλ * y),
    north: metres(-sinφ * cosλ * x - sinφ * sinλ * y + cosφ * z),
    up: metres(cosφ * cosλ * x + cosφ * sinλ * y + sinφ * z),
  };
}

/** East, north and up at `origin` as a geocentric vector. */
export function geocentricVectorOf(
  origin: Geographic,
  { east: U, north: V, up: W }: Topocentric,
): Geocentric {
  const { sinφ, cosφ, sinλ, cosλ } = directions(origin);
  return {
    x: metres(-sinλ * U - sinφ * cosλ * V + cosφ * cosλ * W),
    y: metres(cosλ * U - sinφ * sinλ * V + cosφ * sinλ * W),
    z: metres(cosφ * V + sinφ * W),
  };
}

/** A geocentric point moved by east, north and up at `origin`. */
export function movedBy(origin: Geographic, point: Geocentric, by: Topocentric): Geocentric {
  const vector = geocentricVectorOf(origin, by);
  return { x: metres(point.x + vector.x), y: metres(point.y + vector.y), z: metres(point.z + vector.z) };
}

const directions = (origin: Geographic) => {
  const φ = toRadians(origin.latitude);
  const λ = toRadians(origin.longitude);
  return { sinφ: Math.sin(φ), cosφ: Math.cos(φ), sinλ: Math.sin(λ), cosλ: Math.cos(λ) };
};
