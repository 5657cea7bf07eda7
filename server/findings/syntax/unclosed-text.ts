/** A text that opens with a quote and is never closed. */
import { short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxUnclosedText = kind({
  code: 'syntax/unclosed-text',
  find: (subject) => letterSlips(subject, 'unclosed-text'),
  tell: ({ slip }) => ({
    severity: 'warning',
    message: `The text that starts with ${short(slip.typed)} is not closed, so all that stands behind it on the line is taken for text and read as nothing else. Close it with a double quote.`,
  }),
  mend: ({ place, slip }) => readingFixes(place, slip.readings),
});
