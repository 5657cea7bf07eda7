/** What each class of a day means to whoever reads it for the first time. */
import type { TrustClass } from './spans.ts';

export const CLASS_MEANINGS: Readonly<Record<TrustClass, string>> = {
  bracketed:
    'A check passes before it and a check passes after it, and nothing happened to the base between.',
  held: 'Something happened to the base between two passing checks, and the checks show that it did not move.',
  'not-closed': 'A check passes before it, and none after it: the base may have moved since.',
  'not-opened': 'A check passes after it, and none before it: something wrong may have been keyed at first.',
  'position-only': 'Checks prove the position, and none proves the height.',
  'height-only': 'Checks prove the height, and none proves the position.',
  unchecked: 'No check passes on either side: nothing proves it.',
  'in-doubt': 'A check beside it fails: use none of these points until the cause is known.',
};
