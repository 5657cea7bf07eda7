/** How far what was keyed may lie from what it should be for the transformation alone. */
import { remembered } from '../remembered.ts';
import {
  transformationLimit,
  transformationSpread,
  type TransformationLimit,
  type TransformationSpread,
} from '../positions/transformation-error.ts';
import type { KeyedValues } from './keyed.ts';
import type { SetupValues } from './setup.ts';

/** Zero where what was keyed and the mark are in one datum. */
export const keyedTransformation = remembered(
  ({ east, north }: KeyedValues, { tell }: SetupValues): TransformationSpread =>
    transformationSpread({ east, north, up: tell.ellipsoidalHeight }),
);

/** Whoever keyed a position may have had it by a better or another transformation than the notes name. */
export const keyedLimit = (keyed: KeyedValues, setup: SetupValues, confidence: number): TransformationLimit =>
  transformationLimit(keyedTransformation(keyed, setup), confidence);
