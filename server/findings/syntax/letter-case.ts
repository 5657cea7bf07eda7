/** A word of the language in other letters than it is written with. */
import { short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxLetterCase = kind({
  code: 'syntax/letter-case',
  find: (subject) => remarksAbout(subject, 'letter-case'),
  tell: ({ typed, word }) => ({
    severity: 'hint',
    headline: `${short(typed)} is read as ${word}.`,
    action: 'Write small letters, so that a search finds it.',
  }),
  mend: ({ place, word }) => readingFixes(place, [word]),
});
