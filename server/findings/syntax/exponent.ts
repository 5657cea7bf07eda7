/** A number with an exponent, as spreadsheets print it. */
import { short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxExponent = kind({
  code: 'syntax/exponent',
  find: (subject) => letterSlips(subject, 'exponent'),
  tell: ({ slip }) => ({
    severity: 'error',
    message: `${short(slip.typed)} is a number with an exponent, as a spreadsheet prints it; digits may have been lost, so it counts as missing. Write it in full, from the source.`,
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
