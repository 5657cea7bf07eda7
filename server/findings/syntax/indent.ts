/** A detail in the first column, or an entry behind blanks; mail and messages strip and add them. */
import { kind } from '../finding.ts';
import { marginBefore } from '../edits.ts';
import { remarksAbout } from './remarks.ts';

export const syntaxIndent = kind({
  code: 'syntax/indent',
  find: (subject) => remarksAbout(subject, 'indent'),
  tell: ({ word, opens }) => ({
    severity: 'hint',
    headline: opens ? `Entry ${word} is indented.` : `Detail ${word} is not indented.`,
    effect: opens ? 'It is read as an entry.' : 'It is read as a detail of the entry above.',
    action: opens ? 'Put it in the first column.' : 'Indent it by two blanks.',
  }),
  mend: ({ place, opens }) => [
    {
      title: opens ? 'Put it in the first column' : 'Indent it',
      edits: [{ place: marginBefore(place), text: opens ? '' : '  ' }],
    },
  ],
});
