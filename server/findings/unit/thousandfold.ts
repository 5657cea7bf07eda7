/** A keyed antenna height that is a thousand times too large or too small. */
import { keyedKind } from '../keyed/differences.ts';

export const unitThousandfold = keyedKind('unit/thousandfold');
