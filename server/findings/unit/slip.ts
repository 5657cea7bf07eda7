/** A unit that is written so that it is none: wrong letters, wrong case, a word for a sign. */
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from '../syntax/remarks.ts';

export const unitSlip = kind({
  code: 'unit/slip',
  find: (subject) => remarksAbout(subject, 'unit-slip'),
  tell: ({ typed, readings }) => ({
    severity: 'error',
    message: `${short(typed)} is not how a unit is written here, so the number before it counts as missing. ${
      readings.length === 1 ? `Only ${readings[0]} can be meant` : `It can mean ${oneOf(readings)}`
    }.`,
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});
