/** A keyed antenna height in which the extension is left out, counted twice, or added in the wrong place. */
import { keyedKind } from './keyed.ts';

export const heightExtension = keyedKind('height/extension');
