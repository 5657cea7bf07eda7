/** A keyed height that stands on another surface than the one the receiver takes it for. */
import { keyedKind } from '../keyed/differences.ts';

export const heightWrongSurface = keyedKind('height/wrong-surface');
