/** What a way to make a slip predicts for every check, and which amounts it leaves open. */

import { geocentricVectorOf } from '../geodesy/topocentric.ts';
import {
  latitude as asLatitude,
  longitude as asLongitude,
  metres,
  type Geocentric,
} from '../quantities/brands.ts';
import { isHole } from '../quantities/value.ts';
import type { CheckValues } from '../derive/check.ts';
import { bentBy, inRows, type Evidence } from './observed-checks.ts';
import { shownShifted } from './shown.ts';
import type { Situation } from './situation.ts';
import type { Effect, Freedom, Shift } from './slip.ts';
import { broadcastShift } from './told.ts';

export interface Prediction {
  readonly predicted: readonly number[];
  readonly directions: readonly (readonly number[])[];
  /** How large the error of the base is, which bends its vectors; metres. */
  readonly size: number;
}

/** Null where nothing follows for these checks. */
export function predictionOf(effect: Effect, situation: Situation, evidence: Evidence): Prediction | null {
  const { rows } = evidence;
  const directions = (free: readonly Freedom[], applies: (check: CheckValues) => boolean = () => true) =>
    free.map((freedom) => inRows(rows, (check) => (applies(check) ? freedom(check) : null)));
  switch (effect.on) {
    case 'rover':
      return { predicted: inRows(rows, effect.shift), directions: directions(effect.free ?? []), size: 0 };
    case 'antenna':
      return ofBase(upwards(effect.up, situation), [], situation, evidence);
    case 'told': {
      const { spread } = effect.told;
      const free: Freedom[] = spread
        ? [
            () => ({ east: spread.horizontal, north: 0, up: 0 }),
            () => ({ east: 0, north: spread.horizontal, up: 0 }),
            () => ({ east: 0, north: 0, up: spread.up }),
          ]
        : [];
      return ofBase(broadcastShift(effect.told, situation), directions(free), situation, evidence);
    }
    case 'base': {
      const { east, north, up } = effect.shift;
      const vector = inHorizon({ east, north, up }, situation);
      const all = ofBase(vector, directions(effect.free, effect.applies), situation, evidence);
      const none = rows.every(({ check }) => !effect.applies(check));
      return none ? null : all;
    }
  }
}

function ofBase(
  shift: Geocentric | null,
  directions: readonly (readonly number[])[],
  { derivation }: Situation,
  { rows }: Evidence,
): Prediction | null {
  if (!shift) return null;
  const geoid = isHole(derivation.geoid) ? null : derivation.geoid;
  const size = Math.hypot(shift.x, shift.y, shift.z);
  if (!Number.isFinite(size)) return null;
  return {
    predicted: inRows(rows, (check) => shownShifted(check, shift, geoid)),
    directions: directions.filter((direction) => direction.some((part) => part !== 0)),
    size,
  };
}

/** What a large error of the base adds to the noise of a check; its direction is not followed up. */
export const bendingOf =
  (size: number) =>
  (check: CheckValues): number =>
    bentBy(size, check);

const upwards = (up: number, situation: Situation) => inHorizon({ east: 0, north: 0, up }, situation);

function inHorizon({ east, north, up }: Shift, { right }: Situation): Geocentric | null {
  if (!right.place) return null;
  const origin = {
    latitude: asLatitude(right.place.latitude),
    longitude: asLongitude(right.place.longitude),
  };
  return geocentricVectorOf(origin, { east: metres(east), north: metres(north), up: metres(up) });
}
