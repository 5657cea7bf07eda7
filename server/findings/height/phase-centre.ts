/** A keyed antenna height that leads to another point of the antenna than the receiver takes it to. */
import { keyedKind } from '../keyed/differences.ts';

export const heightPhaseCentre = keyedKind('height/phase-centre');
