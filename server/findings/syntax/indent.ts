/** A detail in the first column, or an entry behind blanks; mail and messages strip and add them. */
import { kind } from '../finding.ts';
import { marginBefore } from '../edits.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxIndent = kind({
  code: 'syntax/indent',
  find: (subject) => remarksAbout(subject, 'indent'),
  tell: ({ word, opens }) => ({
    severity: 'hint',
    message: opens
      ? `${word} opens an entry and stands behind blanks. It is read as an entry all the same; put it in the first column, so that a reader sees where it begins.`
      : `${word} is a detail and stands in the first column. It is read as a detail of the entry above all the same; set it in, so that a reader sees what it belongs to.`,
  }),
  mend: ({ place, opens }) => [
    {
      title: opens ? 'Put it in the first column' : 'Set it in',
      edits: [{ place: marginBefore(place), text: opens ? '' : '  ' }],
    },
  ],
});
