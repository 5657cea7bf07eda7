/** How long a small angle of position is on the ground. */
import { toRadians } from '../../geodesy/angles.ts';
import { GRS80 } from '../../geodesy/ellipsoid.ts';
import { meanRadius } from '../../geodesy/radii.ts';
import { latitude } from '../../quantities/brands.ts';

/**
 * Along the meridian for a latitude, along the parallel for a longitude.
 * @param angle degrees
 * @param at latitude of the place, degrees
 * @returns metres
 */
export function onGround(angle: number, at: number, along: 'meridian' | 'parallel'): number {
  const φ = latitude(at);
  return meanRadius(GRS80, φ) * toRadians(angle) * (along === 'parallel' ? Math.cos(toRadians(φ)) : 1);
}
