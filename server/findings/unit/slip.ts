/** A unit that is written so that it is none: wrong letters, wrong case, a word for a sign. */
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from '../syntax/remarks.ts';

export const unitSlip = kind({
  code: 'unit/slip',
  find: (subject) => remarksAbout(subject, 'unit-slip'),
  tell: ({ typed, readings }) => ({
    severity: 'error',
    headline: `Unknown unit ${short(typed)}.`,
    effect: 'The number before it is not used.',
    action: `Write ${oneOf(readings)}.`,
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});
