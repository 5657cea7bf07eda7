/** A keyed number in which two neighbouring digits changed places. */
import { keyedKind } from '../keyed/differences.ts';

export const numberDigitsSwapped = keyedKind('number/digits-swapped');
