/** A detail that stands twice in an entry and can be said once only. */
import type { Place } from '../../../grammar/tree.ts';
import { kind } from '../finding.ts';
import { wholeLine } from '../edits.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxRepeated = kind({
  code: 'syntax/repeated',
  find: (subject) => remarksAbout(subject, 'repeated'),
  tell: ({ word, same, first }) => ({
    severity: 'error',
    message: `${word} stands here a second time. ${consequence(word, same)}`,
    rests: [{ message: `The first ${word}.`, place: first }],
  }),
  // Which of two different lines is the right one, only the writer knows.
  mend: ({ place, same }) =>
    same
      ? [{ title: 'Take out the second one', edits: [{ place: lineWithoutComment(place), text: '' }] }]
      : [],
});

/** A comment is nowhere said twice, and stays. */
function lineWithoutComment(place: Place): Place {
  const line = place.entry.details.find(({ start, end }) => start <= place.start && place.start <= end);
  return line?.comment ? { ...place, start: line.start, end: line.comment.start } : wholeLine(place);
}

function consequence(word: string, same: boolean): string {
  if (word === 'job') return 'A file has one job: the first one counts, and this one is not used.';
  return same
    ? 'Both say the same; take one out, so that a later change cannot make them differ.'
    : 'The two differ, so neither is used and the value counts as missing. Keep the one that is right.';
}
