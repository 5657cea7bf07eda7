/** A detail under an entry that has no such detail. */
import { listed } from './words.ts';
import { kind } from './finding.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxMisplacedDetail = kind({
  code: 'syntax/misplaced-detail',
  find: (subject) => remarksAbout(subject, 'misplaced-detail'),
  tell: ({ word, entry, belongs }) => ({
    severity: 'error',
    message: `${word} belongs to ${listed(belongs)}${entry === '' ? ', and no entry stands above it' : `, not to ${entry}`}, so the line is not read. Move it below the entry that it is about.`,
  }),
});
