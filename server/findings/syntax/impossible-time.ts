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
    message:
      readings === null
        ? `No clock or calendar shows ${short(typed)}, so it counts as missing, and what happened then cannot be put in order. Midnight is 00:00 of the next day.`
        : `Times go from 00:00 to 23:59 here, with a Z directly behind one of UTC. ${short(typed)} is none, so it counts as missing, and what happened then cannot be put in order.${readings.length > 0 ? ` It can only mean ${oneOf(readings)}.` : ''}`,
  }),
  mend: ({ place, readings }) => readingFixes(place, readings ?? []),
});
