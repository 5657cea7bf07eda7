/** A place on the ellipsoid of the orbits with the axes of its horizon. */
import { geodeticOf } from '../geodesy/geocentric.ts';
import { toRadians } from '../geodesy/angles.ts';
import { WGS84 } from '../geodesy/ellipsoid.ts';
import { metres } from '../quantities/brands.ts';
import type { Place } from './sight.ts';

export function placeAt(x: number, y: number, z: number): Place {
  const { latitude, longitude, height } = geodeticOf(WGS84, { x: metres(x), y: metres(y), z: metres(z) });
  const φ = toRadians(latitude);
  const λ = toRadians(longitude);
  const sinφ = Math.sin(φ);
  const cosφ = Math.cos(φ);
  const sinλ = Math.sin(λ);
  const cosλ = Math.cos(λ);
  const axes = [-sinλ, cosλ, 0, -sinφ * cosλ, -sinφ * sinλ, cosφ, cosφ * cosλ, cosφ * sinλ, sinφ];
  return { x, y, z, latitude: φ, longitude: λ, height, axes };
}
