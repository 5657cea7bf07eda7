/** Thousands set apart by commas, blanks, points or apostrophes. */
import { short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxGroupedDigits = kind({
  code: 'syntax/grouped-digits',
  find: (subject) => letterSlips(subject, 'grouped-digits'),
  tell: ({ slip }) => ({
    severity: 'error',
    headline: `Digits in groups: ${short(slip.typed)}.`,
    effect: 'The sign between them can be a decimal sign, so it is not used.',
    action: 'Write the digits without gaps.',
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
