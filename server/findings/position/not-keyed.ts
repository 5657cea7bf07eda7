/** The notes do not say which position the receiver was told. */
import { notKeyed } from '../keyed/holes.ts';

export const positionNotKeyed = notKeyed(
  'position/not-keyed',
  'position',
  'position',
  'position ?, height ?',
);
