/** A word or number that is none of those that its place can take. */
import { sentence, short } from '../words.ts';
import { nearest } from '../../quantities/near.ts';
import { kind, readingFixes } from '../finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxValueRange = kind({
  code: 'syntax/value-range',
  find: (subject) => remarksAbout(subject, 'value-range'),
  tell: ({ word, typed, allowed }) => ({
    severity: 'error',
    headline: `${sentence(word)} cannot be ${short(typed)}.`,
    effect: 'Not used.',
    action: `Write ${allowed}.`,
  }),
  mend: ({ place, typed, among = [] }) => readingFixes(place, nearest(typed, among)),
});
