/** A text that opens with a quote and is never closed. */
import { short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxUnclosedText = kind({
  code: 'syntax/unclosed-text',
  find: (subject) => letterSlips(subject, 'unclosed-text'),
  tell: ({ slip }) => ({
    severity: 'warning',
    headline: `Text not closed: ${short(slip.typed)}.`,
    effect: 'The rest of the line is read as text.',
    action: 'Close it with a double quote.',
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
