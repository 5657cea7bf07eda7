/** A dash or hyphen that looks like the usual one and is another character. */
import { codePoints, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxLookAlike = kind({
  code: 'syntax/look-alike',
  find: (subject) => letterSlips(subject, 'look-alike'),
  tell: ({ slip }) => ({
    severity: 'hint',
    message: `${short(slip.typed)} looks like ${slip.readings[0] ?? 'another sign'} and is another character (${codePoints(slip.typed)}). It is read as the usual one; searching for the line will miss it.`,
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
