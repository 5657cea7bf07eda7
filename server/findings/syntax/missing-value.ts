/** A word without what must stand behind it. */
import { kind } from '../finding.ts';
import { remarksAbout } from './remarks.ts';
import { sentence } from '../words.ts';

export const syntaxMissingValue = kind({
  code: 'syntax/missing-value',
  find: (subject) => remarksAbout(subject, 'missing-value'),
  tell: ({ word, expects }) => ({
    severity: 'error',
    message: `${word === '' ? 'Something' : sentence(word)} is not complete: ${expects.replaceAll('`', '')} is missing. Nothing can be computed from it; where the value is not known yet, write ?.`,
  }),
});
