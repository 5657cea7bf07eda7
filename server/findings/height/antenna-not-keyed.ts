/** The notes do not say which antenna height the receiver was told. */
import { notKeyed } from '../keyed/holes.ts';

export const heightAntennaNotKeyed = notKeyed(
  'height/antenna-not-keyed',
  'antennaHeight',
  'antenna height',
  'antenna-height ?',
);
