/** A time that no clock shows, or a day that no calendar has. */
import { short } from './words.ts';
import { kind } from './finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxImpossibleTime = kind({
  code: 'syntax/impossible-time',
  find: (subject) => remarksAbout(subject, 'time-impossible'),
  tell: ({ typed }) => ({
    severity: 'error',
    message: `No clock or calendar shows ${short(typed)}, so it counts as missing, and what happened then cannot be put in order. Midnight is 00:00 of the next day.`,
  }),
});
