/** A coordinate that does not say which way it counts. */
import { short } from '../words.ts';
import { kind, readingFixes, standsAlone } from '../finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxMissingLetter = kind({
  code: 'syntax/missing-letter',
  find: (subject) => remarksAbout(subject, 'hemisphere'),
  tell: ({ typed }) => ({
    severity: 'error',
    headline: `Coordinate without its letter: ${short(typed)}.`,
    effect: 'Position not used.',
    action: 'Write N, S, E or W behind it.',
  }),
  mend: ({ place, readings }) => (standsAlone(place) ? readingFixes(place, readings) : []),
});
