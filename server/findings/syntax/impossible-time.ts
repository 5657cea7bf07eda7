/** A time that no clock shows, a day that no calendar has, or a time in another style than that of 24 hours. */
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from './remarks.ts';
import type { Subject } from '../finding.ts';

export const syntaxImpossibleTime = kind({
  code: 'syntax/impossible-time',
  find: (subject: Subject) => [
    ...remarksAbout(subject, 'time-impossible').map((remark) => ({ ...remark, readings: null })),
    ...remarksAbout(subject, 'time-style'),
  ],
  tell: ({ typed, readings }) => ({
    severity: 'error',
    headline: `${readings === null ? 'No such time or day' : 'Time not readable'}: ${short(typed)}.`,
    effect: 'Not used.',
    action:
      readings === null
        ? 'Write 00:00 to 23:59; midnight is 00:00 of the next day.'
        : `Write ${readings.length > 0 ? oneOf(readings) : '00:00 to 23:59, with Z directly behind for UTC'}.`,
  }),
  mend: ({ place, readings }) => readingFixes(place, readings ?? []),
});
