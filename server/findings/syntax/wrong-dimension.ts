/** A quantity of another kind than belongs in its place: an angle for a length, a length for a time. */
import { short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxWrongDimension = kind({
  code: 'syntax/wrong-dimension',
  find: (subject) => remarksAbout(subject, 'unit-wrong'),
  tell: ({ typed, wanted }) => ({
    severity: 'error',
    message: `${short(typed)} does not fit here: ${wanted} is expected. The value counts as missing until it is put right.`,
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});
