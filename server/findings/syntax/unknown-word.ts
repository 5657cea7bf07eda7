/** A line whose first word is none of the language. */
import { oneOf, short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxUnknownWord = kind({
  code: 'syntax/unknown-word',
  find: (subject) => remarksAbout(subject, 'unknown-word'),
  tell: ({ typed, near, opens }) => ({
    severity: 'error',
    headline: `Unknown ${opens ? 'entry' : 'detail'} ${short(typed)}.`,
    effect: opens ? 'The entry and the lines below it are not read.' : 'The line is not read.',
    action: near.length > 0 ? `Did you mean ${oneOf(near)}?` : 'Start a remark of your own with #.',
  }),
  // Digits that touch a word, `setup08`, are a fact that must not go with it.
  mend: ({ place, typed, near }) => (/\d/.test(typed) ? [] : readingFixes(place, near)),
});
