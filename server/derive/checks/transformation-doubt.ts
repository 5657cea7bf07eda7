/** Whether a check that is off may be so for a transformation alone, which then proves nothing about the base. */
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import {
  transformationLimit,
  transformationSpread,
  type TransformationLimit,
} from '../positions/transformation-error.ts';
import { keyedTransformation } from '../setups/keyed-transformation.ts';
import type { KeyedValues } from '../setups/keyed.ts';
import type { SetupValues } from '../setups/setup.ts';
import type { RightCheck } from './right-check.ts';
import type { Residual } from './observation.ts';

export interface Sizes {
  readonly horizontal: number | null;
  readonly up: number | null;
}

export interface DoubtfulCheck {
  readonly residual: Residual;
  readonly errors: RightCheck;
  readonly setup: SetupValues | null;
  readonly keyed: KeyedValues | null;
  /** A fraction. */
  readonly confidence: number;
}

/**
 * What is left of the residual when all is taken off that the transformations may have done to it; null where none did.
 *
 * A check seen in the datum of what was keyed goes with what was keyed: the transformation moves both alike, so that the
 * one that the base was keyed with shows in what was keyed, and is known.
 */
export function withoutTransformation(check: DoubtfulCheck): Sizes | null {
  const whole = transformationSpread(check.residual);
  if (whole.axis === 0 && whole.up === 0) return null;
  const marks = transformationSpread(check.errors);
  const seen = { axis: rest(whole.axis, marks.axis), up: rest(whole.up, marks.up) };
  const shown = seen.axis === 0 && seen.up === 0 ? null : keyedError(check);
  const { axis, up } = shown ? marks : whole;
  const limit = transformationLimit({ axis, up }, check.confidence);
  const [east, north, height] = (['east', 'north', 'up'] as const).map((direction) => {
    const size = numberOf(check.residual[direction]);
    return size === null ? null : size - (shown?.[direction] ?? 0);
  });
  return {
    horizontal: left(
      typeof east !== 'number' || typeof north !== 'number' ? null : Math.hypot(east, north),
      limit.horizontal,
    ),
    up: left(height ?? null, limit.up),
  };
}

/** Keyed minus right, as far as the transformation may have made it; null where what was keyed did not come by one. */
function keyedError({ keyed, setup, confidence }: DoubtfulCheck) {
  if (!keyed || !setup) return null;
  const spread = keyedTransformation(keyed, setup);
  const [east, north] = [numberOf(keyed.east), numberOf(keyed.north)];
  if (spread.axis === 0 || east === null || north === null) return null;
  const limit: TransformationLimit = transformationLimit(spread, confidence);
  const up = numberOf(keyed.up) ?? 0;
  const beside = Math.hypot(east, north) <= limit.horizontal;
  return {
    east: beside ? east : 0,
    north: beside ? north : 0,
    up: Math.abs(up) <= limit.up ? up : 0,
  };
}

const rest = (whole: number, part: number) => Math.sqrt(Math.max(0, whole * whole - part * part));
const left = (size: number | null, limit: number) =>
  size === null ? null : Math.max(0, Math.abs(size) - limit);
const numberOf = (value: Maybe<Value>): number | null => (isHole(value) ? null : value.value);
