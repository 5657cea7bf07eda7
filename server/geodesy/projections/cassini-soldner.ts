/**
 * The Cassini–Soldner projection and its hyperbolic variant of Vanua Levu.
 *
 * Source: IOGP publication 373-07-2, methods 9806 (Cassini-Soldner) and 9833 (Hyperbolic Cassini-Soldner). The series
 * are the definition: a longer one would give other coordinates than the register's.
 */
import { gridEast, gridNorth, latitude, longitude } from '../../quantities/brands.ts';
import { halfTurn, toDegrees, toRadians } from '../angles.ts';
import { eccentricitySquared } from '../ellipsoid.ts';
import { meridianArc } from '../meridian-arc.ts';
import { meridianRadius, primeVerticalRadius } from '../radii.ts';
import type { OwnProjection } from './own.ts';

export const cassiniSoldner: OwnProjection = (parameters, ellipsoid, λ0) => {
  const { lat_0: φ0 = 0, x_0: FE = 0, y_0: FN = 0 } = parameters.numbers;
  const hyperbolic = parameters.flags.has('hyperbolic');
  const M0 = meridianArc(ellipsoid, latitude(φ0));
  const e2 = eccentricitySquared(ellipsoid);
  return {
    forward(position) {
      const φ = toRadians(position.latitude);
      const A = toRadians(halfTurn(position.longitude - λ0)) * Math.cos(φ);
      const T = Math.tan(φ) ** 2;
      const C = (e2 * Math.cos(φ) ** 2) / (1 - e2);
      const ν = primeVerticalRadius(ellipsoid, position.latitude);
      const X =
        meridianArc(ellipsoid, position.latitude) -
        M0 +
        ν * Math.tan(φ) * (A ** 2 / 2 + ((5 - T + 6 * C) * A ** 4) / 24);
      const ρ = meridianRadius(ellipsoid, position.latitude);
      return {
        east: gridEast(FE + ν * (A - (T * A ** 3) / 6 - ((8 - T + 8 * C) * T * A ** 5) / 120)),
        north: gridNorth(FN + X - (hyperbolic ? X ** 3 / (6 * ρ * ν) : 0)),
      };
    },
    near(grid) {
      const φ = φ0 + toDegrees((grid.north - FN) / meridianRadius(ellipsoid, latitude(φ0)));
      const ν = primeVerticalRadius(ellipsoid, latitude(φ));
      return {
        latitude: latitude(φ),
        longitude: longitude(halfTurn(λ0 + toDegrees((grid.east - FE) / (ν * Math.cos(toRadians(φ)))))),
      };
    },
  };
};
