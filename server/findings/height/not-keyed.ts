/** The notes do not say which height the receiver was told. */
import { notKeyed } from '../keyed/holes.ts';

export const heightNotKeyed = notKeyed('height/not-keyed', 'height', 'height', 'height ?');
