/** A keyed antenna height in which the extension is left out, counted twice, or added in the wrong place. */
import { keyedKind } from '../keyed/differences.ts';

export const heightExtension = keyedKind('height/extension');
