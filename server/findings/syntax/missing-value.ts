/** A word without what must stand behind it. */
import { kind } from '../finding.ts';
import { remarksAbout } from './remarks.ts';
import { sentence } from '../words.ts';

export const syntaxMissingValue = kind({
  code: 'syntax/missing-value',
  find: (subject) => remarksAbout(subject, 'missing-value'),
  tell: ({ word, expects }) => ({
    severity: 'error',
    headline: `${word === '' ? 'Value' : sentence(word)} is missing.`,
    effect: 'Nothing can be computed from it.',
    action: `Write ${expects.replaceAll('`', '')}, or ? if it is not known yet.`,
  }),
});
