/** Characters that change the order in which a line is shown. */
import { codePoints } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxBidirectionalControl = kind({
  code: 'syntax/bidirectional-control',
  find: (subject) => letterSlips(subject, 'bidirectional-control'),
  tell: ({ slip }) => ({
    severity: 'error',
    message: `An invisible control character (${codePoints(slip.typed)}) stands here: it changes the order in which the line is shown, so that a reviewer may see other numbers than are computed with. Take it out, and read the line again.`,
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
