/** How some points of a set are called in a sentence. */
import type { PointSet } from '../../derive/points/points.ts';
import { short } from '../words.ts';

/** `3 of 40 points of "pickup.csv"` with its verb. */
export function setInWords(
  set: PointSet,
  count: number,
  total: number,
): { readonly subject: string; readonly be: string } {
  if (set.kind === 'point') return { subject: set.name, be: 'is' };
  const of = set.kind === 'file' ? ` of ${short(set.name)}` : '';
  return { subject: `${count} of ${total} points${of}`, be: count === 1 ? 'is' : 'are' };
}
