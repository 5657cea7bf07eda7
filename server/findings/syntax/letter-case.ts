/** A word of the language in other letters than it is written with. */
import { short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxLetterCase = kind({
  code: 'syntax/letter-case',
  find: (subject) => remarksAbout(subject, 'letter-case'),
  tell: ({ typed, word }) => ({
    severity: 'hint',
    message: `${short(typed)} is read as ${word}. Words are written in small letters, so that a search finds them all.`,
  }),
  mend: ({ place, word }) => readingFixes(place, [word]),
});
