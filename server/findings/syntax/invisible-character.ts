/** Characters without width, which come along when text is copied from a page or a message. */
import { codePoints } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxInvisibleCharacter = kind({
  code: 'syntax/invisible-character',
  find: (subject) => letterSlips(subject, 'invisible-character'),
  tell: ({ slip }) => ({
    severity: 'hint',
    headline: `Invisible character (${codePoints(slip.typed)}).`,
    effect: 'It is ignored.',
    action: 'Take it out: other programs may not ignore it.',
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
