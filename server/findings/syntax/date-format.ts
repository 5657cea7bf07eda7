/** A date in another order than year, month, day. */
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxDateFormat = kind({
  code: 'syntax/date-format',
  find: (subject) => remarksAbout(subject, 'date-format'),
  tell: ({ typed, readings }) => ({
    severity: 'error',
    message:
      readings.length > 1
        ? `${short(typed)} can be ${oneOf(readings)}, so the date counts as missing. Write the year first: 2026-05-19.`
        : `${short(typed)} is no date as it is written here, so it counts as missing. Write the year first: ${readings[0] ?? '2026-05-19'}.`,
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});
