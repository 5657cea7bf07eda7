/** A quantity of another kind than belongs in its place: an angle for a length, a length for a time. */
import { short } from '../words.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxWrongDimension = kind({
  code: 'syntax/wrong-dimension',
  find: (subject) => remarksAbout(subject, 'unit-wrong'),
  tell: ({ typed, wanted }) => ({
    severity: 'error',
    headline: `Wrong kind of value: ${short(typed)}.`,
    effect: 'Not used.',
    action: `Write ${wanted}.`,
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});
