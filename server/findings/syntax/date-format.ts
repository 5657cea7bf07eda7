/** A date in another order than year, month, day. */
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxDateFormat = kind({
  code: 'syntax/date-format',
  find: (subject) => remarksAbout(subject, 'date-format'),
  tell: ({ typed, readings }) => ({
    severity: 'error',
    headline:
      readings.length > 1
        ? `Date ${short(typed)} could be ${oneOf(readings)}.`
        : `Date not readable: ${short(typed)}.`,
    effect: 'Not used.',
    action: `Write the year first: ${readings.length > 1 ? '2026-05-19' : (readings[0] ?? '2026-05-19')}.`,
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});
