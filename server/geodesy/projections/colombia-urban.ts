/**
 * The projection of Colombian city grids: a tangent plane raised to a height above the ellipsoid.
 *
 * Source: IOGP publication 373-07-2, method 1052 (Colombia Urban).
 */
import { gridEast, gridNorth, latitude, longitude } from '../../quantities/brands.ts';
import { halfTurn, toDegrees, toRadians } from '../angles.ts';
import { meridianRadius, primeVerticalRadius } from '../radii.ts';
import type { OwnProjection } from './own.ts';

export const colombiaUrban: OwnProjection = (parameters, ellipsoid, λ0) => {
  const { lat_0: φ0 = 0, x_0: FE = 0, y_0: FN = 0, h_0: h0 = 0 } = parameters.numbers;
  const ρ0 = meridianRadius(ellipsoid, latitude(φ0));
  const ν0 = primeVerticalRadius(ellipsoid, latitude(φ0));
  const A = 1 + h0 / ν0;
  const B = Math.tan(toRadians(φ0)) / (2 * ρ0 * ν0);
  return {
    forward(position) {
      const ν = primeVerticalRadius(ellipsoid, position.latitude);
      const across =
        ν * Math.cos(toRadians(position.latitude)) * toRadians(halfTurn(position.longitude - λ0));
      const ρm = meridianRadius(ellipsoid, latitude((φ0 + position.latitude) / 2));
      const G = 1 + h0 / ρm;
      return {
        east: gridEast(FE + A * across),
        north: gridNorth(FN + G * ρ0 * (toRadians(position.latitude - φ0) + B * across ** 2)),
      };
    },
    near(grid) {
      const φ = φ0 + toDegrees((grid.north - FN) / (ρ0 + h0));
      const parallel = A * primeVerticalRadius(ellipsoid, latitude(φ)) * Math.cos(toRadians(φ));
      return {
        latitude: latitude(φ),
        longitude: longitude(halfTurn(λ0 + toDegrees((grid.east - FE) / parallel))),
      };
    },
  };
};
