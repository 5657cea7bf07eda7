/** A dash or hyphen that looks like the usual one and is another character. */
import { codePoints, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxLookAlike = kind({
  code: 'syntax/look-alike',
  find: (subject) => letterSlips(subject, 'look-alike'),
  tell: ({ slip }) => ({
    severity: 'hint',
    headline: `${short(slip.typed)} (${codePoints(slip.typed)}) is read as ${slip.readings[0] ?? 'another sign'}.`,
    effect: 'A search for the line will miss it.',
    action: 'Write the usual character.',
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
