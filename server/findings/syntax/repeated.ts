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
    headline: `Second ${word} in this ${word === 'job' ? 'file' : 'entry'}.`,
    ...consequence(word, same),
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

function consequence(word: string, same: boolean): { effect: string; action: string } {
  if (word === 'job')
    return { effect: 'Only the first one is used.', action: 'Put the other job in a file of its own.' };
  return same
    ? { effect: 'Both say the same.', action: 'Take one out, so that they cannot differ later.' }
    : { effect: 'They differ, so neither is used.', action: 'Keep the right one.' };
}
