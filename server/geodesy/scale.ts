/**
 * How a grid lies on the ground at a point: convergence, point scale factor, elevation factor and their product.
 *
 * Convergence is azimuth minus grid bearing, positive where grid north lies east of true north. Both it and the scale
 * are taken from the projection itself by differences of fourth order over about a kilometre, for which see J. P. Snyder
 * (1987), Map Projections: A Working Manual, USGS Professional Paper 1395, chapter 4 (distortion, Tissot's indicatrix).
 */
import {
  degrees,
  latitude,
  longitude,
  type Degrees,
  type EllipsoidalHeight,
  type Geographic,
} from '../quantities/brands.ts';
import { isRefusal, refuse, type Refusal } from '../quantities/refusal.ts';
import { RADIANS_PER_DEGREE, halfTurn, toDegrees, toRadians } from './angles.ts';
import type { Ellipsoid } from './ellipsoid.ts';
import { forward, projectionOf, type PlainProjection } from './projection.ts';
import { meanRadius, meridianRadius, primeVerticalRadius } from './radii.ts';
import type { ProjectedSystem } from './system.ts';

export interface GridScale {
  /** Azimuth minus grid bearing. */
  readonly convergence: Degrees;
  /**
   * Grid distance over ellipsoidal distance at the point. In a grid that is not conformal it depends on the direction:
   * then this is √(largest · smallest), the factor whose square holds for areas.
   */
  readonly point: number;
  /** Whether the scale is the same in every direction, to 1e-8. */
  readonly conformal: boolean;
  readonly smallest: number;
  readonly largest: number;
}

export function gridScaleAt(system: ProjectedSystem, position: Geographic): GridScale | Refusal {
  const grid = forward(system, position);
  if (isRefusal(grid)) return grid;
  if (Math.abs(position.latitude) > 89.9)
    return refuse('Convergence means nothing at a pole, where every direction is north or south.');
  const projection = projectionOf(system);
  if (isRefusal(projection)) return projection;
  const byNorth = derivative(projection, position, STEP, 0);
  const byEast = derivative(projection, position, 0, STEP / Math.cos(toRadians(position.latitude)));
  if (byNorth === undefined || byEast === undefined)
    return refuse(`The projection of ${system.code ?? system.name} ends too near to this position.`);
  const { ellipsoid } = system.datum;
  const M = meridianRadius(ellipsoid, position.latitude);
  const ν = primeVerticalRadius(ellipsoid, position.latitude);
  const parallel = ν * Math.cos(toRadians(position.latitude));
  return tissot(
    { east: byNorth.east / M, north: byNorth.north / M },
    { east: byEast.east / parallel, north: byEast.north / parallel },
  );
}

/** R/(R + h): ellipsoidal distance over ground distance at the height h, R = √(MN). */
export function elevationFactor(ellipsoid: Ellipsoid, at: Geographic, height: EllipsoidalHeight): number {
  const R = meanRadius(ellipsoid, at.latitude);
  return R / (R + height);
}

/** Grid distance over ground distance: the point scale factor times the elevation factor. */
export const combinedFactor = (point: number, elevation: number): number => point * elevation;

/** In degrees of arc: near a kilometre, where rounding (1e-9 m) and the terms left out both stay below 1e-11. */
const STEP = 0.01;

interface PlainVector {
  readonly east: number;
  readonly north: number;
}

/** By a difference of fourth order, (8(f₁ − f₋₁) − (f₂ − f₋₂))/12, for each radian. */
function derivative(
  projection: PlainProjection,
  at: Geographic,
  Δφ: number,
  Δλ: number,
): PlainVector | undefined {
  const moved = (steps: number) =>
    projection.forward({
      latitude: latitude(at.latitude + steps * Δφ),
      longitude: longitude(halfTurn(at.longitude + steps * Δλ)),
    });
  const [f1, f_1, f2, f_2] = [moved(1), moved(-1), moved(2), moved(-2)];
  if (!f1 || !f_1 || !f2 || !f_2) return undefined;
  const step = 12 * (Δφ + Δλ) * RADIANS_PER_DEGREE;
  return {
    east: (8 * (f1.east - f_1.east) - (f2.east - f_2.east)) / step,
    north: (8 * (f1.north - f_1.north) - (f2.north - f_2.north)) / step,
  };
}

/**
 * The axes of the indicatrix. Snyder (1987), eqs. 4-12 and 4-13, squares and subtracts; the sum and the difference of
 * the axes are the same as lengths of two vectors, which keeps all digits where the grid is conformal.
 */
function tissot(meridian: PlainVector, parallel: PlainVector): GridScale {
  const sum = Math.hypot(parallel.east + meridian.north, parallel.north - meridian.east);
  const difference = Math.hypot(parallel.east - meridian.north, parallel.north + meridian.east);
  const largest = (sum + difference) / 2;
  const smallest = (sum - difference) / 2;
  return {
    convergence: degrees(-toDegrees(Math.atan2(meridian.east, meridian.north))),
    point: Math.sqrt(largest * smallest),
    conformal: difference < 1e-8,
    smallest,
    largest,
  };
}
