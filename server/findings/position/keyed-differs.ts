/** A keyed number that is not the right one, from another mark, datum, zone or day, or for no reason known here. */
import { keyedKind } from '../keyed/differences.ts';

export const positionKeyedDiffers = keyedKind('position/keyed-differs', true);
