/**
 * What a base that was told a wrong place does to the vectors that are measured from it: satellites are taken to stand in
 * other directions than they do, and the vectors come out bent.
 *
 * Of a satellite in direction u at distance ρ, from a place that is wrong by b, a vector d shows up as u·d less
 * (b·d − (u·b)(u·d)) / ρ. Least squares turn that into a vector and a clock. Over a sky that is evenly full above 12° of
 * satellites 26 560 km from the centre of the earth, weighted with the squared sine of their elevation, all that is left
 * by symmetry is one rise for each metre of b along d and one stretch for each metre of b upwards. The tests solve such a
 * sky. Real skies are not even, which stays as noise.
 */
import { geocentricOf } from '../geodesy/geocentric.ts';
import { topocentricBetween } from '../geodesy/topocentric.ts';
import { ellipsoidalHeight, latitude as asLatitude, longitude as asLongitude } from '../quantities/brands.ts';
import { isHole } from '../quantities/value.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import type { Located } from '../derive/positions/locate.ts';
import { remembered } from '../derive/remembered.ts';
import type { SetupValues } from '../derive/setups/setup.ts';
import { numberOf } from './situation.ts';
import type { Shift } from './slip.ts';

/** Per metre of error and metre of vector. */
const RISE = 0.039e-6;
const STRETCH = 0.028e-6;
/** What is left of it under skies that are not even, standard deviations per metre of error and metre of vector (over simulated skies). */
const LEFT = { horizontal: 0.007e-6, up: 0.013e-6 };
/** The whole of it, where the direction of the error is not known. */
const WHOLE = { horizontal: 0.02e-6, up: 0.04e-6 };

/** Standard deviations that bending adds to a check, of each horizontal axis and upwards; metres. */
export interface Bent {
  readonly horizontal: number;
  readonly up: number;
}

/** How a vector from the base is bent by an error of the base, both in the base's horizon. */
export const bending = (error: Shift, vector: Shift): Shift => ({
  east: -STRETCH * error.up * vector.east,
  north: -STRETCH * error.up * vector.north,
  up: RISE * (error.east * vector.east + error.north * vector.north),
});

/** The noise that an error of this size leaves in a check when its bending has been followed up. */
export const leftOfBending =
  (size: number) =>
  (check: CheckValues): Bent =>
    times(LEFT, size, check);

/** The noise that an error of this size, in whatever direction, is to a check. */
export const unknownBending =
  (size: number) =>
  (check: CheckValues): Bent =>
    times(WHOLE, size, check);

function times({ horizontal, up }: Bent, size: number, check: CheckValues): Bent {
  const reach = size * (numberOf(check.distance.ellipsoid) ?? 0);
  return { horizontal: horizontal * reach, up: up * reach };
}

/** From the base's mark to a check's, in the horizon of the base. */
export function vectorTo({ mark }: CheckValues, setup: SetupValues): Shift {
  const [from, to] = [setup.mark?.located, mark?.located];
  return !from || isHole(from) || !to || isHole(to) ? NOWHERE : between(from, to);
}

const NOWHERE: Shift = { east: 0, north: 0, up: 0 };

const between = remembered((from: Located, to: Located): Shift => {
  const { ellipsoid } = from.system.datum;
  const at = ({ latitude, longitude }: Located) => ({
    latitude: asLatitude(latitude.value),
    longitude: asLongitude(longitude.value),
  });
  const point = (located: Located) =>
    geocentricOf(ellipsoid, { ...at(located), height: ellipsoidalHeight(0) });
  return topocentricBetween(at(from), point(from), point(to));
});
