/** A line whose first word is none of the language. */
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxUnknownWord = kind({
  code: 'syntax/unknown-word',
  find: (subject) => remarksAbout(subject, 'unknown-word'),
  tell: ({ typed, near, opens }) => ({
    severity: 'error',
    message: `${short(typed)} is no word that ${opens ? 'an entry' : 'a detail of this entry'} can begin with, so ${opens ? 'the entry is not read, nor what stands below it' : 'the line is not read'}. ${
      near.length > 0 ? `Did you mean ${oneOf(near)}?` : 'A remark of your own starts with #.'
    }`,
  }),
  // Digits that touch a word, `setup08`, are a fact that must not go with it.
  mend: ({ place, typed, near }) => (/\d/.test(typed) ? [] : readingFixes(place, near)),
});
