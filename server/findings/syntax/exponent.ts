/** A number with an exponent, as spreadsheets print it. */
import { short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxExponent = kind({
  code: 'syntax/exponent',
  find: (subject) => letterSlips(subject, 'exponent'),
  tell: ({ slip }) => ({
    severity: 'error',
    headline: `Number with an exponent: ${short(slip.typed)}.`,
    effect: 'A spreadsheet may have lost digits, so it is not used.',
    action: 'Write it in full, from the source.',
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
