/** What a way to make a slip predicts for every check, and which amounts it leaves open. */

import { geocentricVectorOf, topocentricOf } from '../geodesy/topocentric.ts';
import {
  latitude as asLatitude,
  longitude as asLongitude,
  metres,
  type Geocentric,
} from '../quantities/brands.ts';
import { isHole } from '../quantities/value.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import { bending, leftOfBending, vectorTo } from './bending.ts';
import { inRows, type Evidence } from './observed-checks.ts';
import { shownShifted } from './shown.ts';
import type { Situation } from './situation.ts';
import type { Effect, Freedom, Place, Shift } from './slip.ts';
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
  { derivation, right, setup }: Situation,
  evidence: Evidence,
): Prediction | null {
  const { rows } = evidence;
  if (!shift || !right.place) return null;
  const geoid = isHole(derivation.geoid) ? null : derivation.geoid;
  const size = Math.hypot(shift.x, shift.y, shift.z);
  if (!Number.isFinite(size)) return null;
  const origin = placeOf(right.place);
  const error = topocentricOf(origin, shift);
  if (directions.length === 0 && isOutOfTheQuestion(error, size, evidence)) return null;
  const shownAt = (check: CheckValues) => {
    const bent = geocentricVectorOf(origin, inMetres(bending(error, vectorTo(check, setup))));
    const whole = { x: metres(shift.x + bent.x), y: metres(shift.y + bent.y), z: metres(shift.z + bent.z) };
    return shownShifted(check, whole, geoid);
  };
  const shown = new Map([...new Set(rows.map(({ check }) => check))].map((check) => [check, shownAt(check)]));
  // Nobody knows what a controller takes off where its geoid does not reach.
  const beyond = inRows(rows, (check) => shown.get(check)?.beyondGeoid ?? null).map((part) => part * GEOID);
  return {
    predicted: inRows(rows, (check) => shown.get(check) ?? null),
    directions: [...directions, beyond].filter((direction) => direction.some((part) => part !== 0)),
    size,
  };
}

/**
 * Checks would show so much more of the error than they do that it is farther from them than no error at all, by forty
 * standard deviations and more: its odds are nothing, in doubles, too. Of the hundreds of marks of a long session whose
 * coordinates might have been told nearly all are.
 */
function isOutOfTheQuestion({ east, north, up }: Shift, size: number, { rows, most }: Evidence): boolean {
  const aside = Math.hypot(east, north);
  // Straight up and down the geoid is the same; aside it may be another one, by more than anybody knows.
  const direction = aside < 1 ? 'up' : 'horizontal';
  const seen = most[direction];
  // Farther on, what is up at the base leans at a check, and an error aside shows around the earth.
  if (!seen || size > FARTHEST || (direction === 'horizontal' && Math.abs(up) > STEEPEST * aside))
    return false;
  const bent = Math.max(...rows.map(({ check }) => leftOfBending(size)(check)[direction]));
  const least = direction === 'up' ? 0.9 * Math.abs(up) : (0.5 * aside) / Math.SQRT2;
  return least > 2 * seen.shown + 40 * (seen.sigma + bent);
}
/** Metres. */
const FARTHEST = 1e6;
/** At two hundred kilometres up leans by a thirtieth. */
const STEEPEST = 8;

/** Heights of the geoid above the ellipsoid over the whole earth, root mean square (from memory: EGM96, some 30 m), metres. */
const GEOID = 30;

const upwards = (up: number, situation: Situation) => inHorizon({ east: 0, north: 0, up }, situation);

function inHorizon({ east, north, up }: Shift, { right }: Situation): Geocentric | null {
  if (!right.place) return null;
  return geocentricVectorOf(placeOf(right.place), inMetres({ east, north, up }));
}

const placeOf = ({ latitude, longitude }: Place) => ({
  latitude: asLatitude(latitude),
  longitude: asLongitude(longitude),
});
const inMetres = ({ east, north, up }: Shift) => ({
  east: metres(east),
  north: metres(north),
  up: metres(up),
});
