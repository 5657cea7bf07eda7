/** A number that starts or ends with its decimal point. */
import { short } from '../words.ts';
import { kind, readingFixes, standsAlone } from '../finding.ts';
import { letterSlips } from './remarks.ts';

export const syntaxBarePoint = kind({
  code: 'syntax/bare-point',
  find: (subject) => letterSlips(subject, 'bare-point'),
  tell: ({ slip }) => ({
    severity: 'error',
    headline: `Digit missing beside the point: ${short(slip.typed)}.`,
    effect: 'Not used.',
    action: 'Write digits on both sides.',
  }),
  mend: ({ place, slip }) => (standsAlone(place) ? readingFixes(place, slip.readings) : []),
});
