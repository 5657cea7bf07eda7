/** Digits and signs that make no number at all, or one too large to compute with. */
import { kind } from '../finding.ts';
import { letterSlips } from './remarks.ts';
import { short } from '../words.ts';

export const syntaxBrokenNumber = kind({
  code: 'syntax/broken-number',
  find: (subject) => [...letterSlips(subject, 'broken-number'), ...letterSlips(subject, 'too-large')],
  tell: ({ slip }) => ({
    severity: 'error',
    headline: `${slip.slip === 'too-large' ? 'Number too large' : 'Not a number'}: ${short(slip.typed)}.`,
    effect: 'Not used.',
    action: 'Write it again from the source.',
  }),
});
