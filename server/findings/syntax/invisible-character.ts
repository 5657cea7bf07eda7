/** Characters without width, which come along when text is copied from a page or a message. */
import { codePoints } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxInvisibleCharacter = kind({
  code: 'syntax/invisible-character',
  find: (subject) => letterSlips(subject, 'invisible-character'),
  tell: ({ slip }) => ({
    severity: 'hint',
    message: `There is an invisible character here (${codePoints(slip.typed)}). It is ignored; take it out, so that other programs read the same line.`,
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
