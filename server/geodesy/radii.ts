/**
 * Radii of curvature of the ellipsoid at a latitude.
 *
 * Source: IOGP publication 373-07-2 (EPSG Guidance Note 7-2), table of symbols: ρ, ν and R_A = √(ρν).
 */
import { metres, type Latitude, type Metres } from '../quantities/brands.ts';
import { toRadians } from './angles.ts';
import { eccentricitySquared, type Ellipsoid } from './ellipsoid.ts';

/** M, the radius in the meridian: a(1 − e²)/(1 − e² sin²φ)^(3/2). */
export const meridianRadius = (ellipsoid: Ellipsoid, latitude: Latitude): Metres => {
  const e2 = eccentricitySquared(ellipsoid);
  const W2 = 1 - e2 * Math.sin(toRadians(latitude)) ** 2;
  return metres((ellipsoid.semiMajor * (1 - e2)) / (W2 * Math.sqrt(W2)));
};

/** N, the radius in the prime vertical: a/√(1 − e² sin²φ). */
export const primeVerticalRadius = (ellipsoid: Ellipsoid, latitude: Latitude): Metres => {
  const W2 = 1 - eccentricitySquared(ellipsoid) * Math.sin(toRadians(latitude)) ** 2;
  return metres(ellipsoid.semiMajor / Math.sqrt(W2));
};

/** R = √(MN), the mean of the radii over all azimuths. */
export const meanRadius = (ellipsoid: Ellipsoid, latitude: Latitude): Metres =>
  metres(Math.sqrt(meridianRadius(ellipsoid, latitude) * primeVerticalRadius(ellipsoid, latitude)));
