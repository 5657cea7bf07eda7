/** Thousands set apart by commas, blanks, points or apostrophes. */
import { short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxGroupedDigits = kind({
  code: 'syntax/grouped-digits',
  find: (subject) => letterSlips(subject, 'grouped-digits'),
  tell: ({ slip }) => ({
    severity: 'error',
    message: `${short(slip.typed)} has its digits in groups, and what parts them is a decimal sign elsewhere, so it counts as missing. Write the digits without gaps.`,
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
