/** Characters that change the order in which a line is shown. */
import { codePoints } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxBidirectionalControl = kind({
  code: 'syntax/bidirectional-control',
  find: (subject) => letterSlips(subject, 'bidirectional-control'),
  tell: ({ slip }) => ({
    severity: 'error',
    headline: `Invisible control character (${codePoints(slip.typed)}).`,
    effect: 'The line may show other numbers than are computed with.',
    action: 'Take it out, and read the line again.',
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
