/** What stands on a line and could not be read as part of it. */
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from './remarks.ts';
import { oneOf, short } from '../words.ts';

export const syntaxLeftover = kind({
  code: 'syntax/leftover',
  find: (subject) => remarksAbout(subject, 'leftover'),
  tell: ({ typed, near, text }) => ({
    severity: 'error',
    headline: `Not understood: ${short(typed)}.`,
    effect: 'This part is not read.',
    action:
      near.length > 0
        ? `Did you mean ${oneOf(near)}?`
        : `Write ${text ? 'text in double quotes, and ' : ''}remarks behind #.`,
  }),
  mend: ({ place, typed, near, text }) => {
    if (text) return readingFixes(text, [`"${text.entry.text.slice(text.start, text.end)}"`]);
    const first = /^[\p{L}\p{N}-]+/u.exec(typed)?.[0] ?? '';
    // Digits that touch a word are a fact that must not go with it.
    if (first === '' || /\d/.test(first)) return [];
    return readingFixes({ ...place, end: place.start + first.length }, near);
  },
});
