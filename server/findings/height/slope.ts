/** A keyed antenna height in which slope or rise of the tape are left in, or taken off where there were none. */
import { keyedKind } from '../keyed/differences.ts';

export const heightSlope = keyedKind('height/slope');
