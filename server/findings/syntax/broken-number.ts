/** Digits and signs that make no number at all, or one too large to compute with. */
import { kind } from '../finding.ts';
import { letterSlips } from './remarks.ts';
import { short } from '../words.ts';

export const syntaxBrokenNumber = kind({
  code: 'syntax/broken-number',
  find: (subject) => [...letterSlips(subject, 'broken-number'), ...letterSlips(subject, 'too-large')],
  tell: ({ slip }) => ({
    severity: 'error',
    message: `${short(slip.typed)} is ${
      slip.slip === 'too-large' ? 'larger than anything that can be measured' : 'no number'
    }, so the value counts as missing. Write it again from the source.`,
  }),
});
