/** A setup or a check on a mark that the session does not know. */
import { kind, readingFixes } from './finding.ts';
import { asName } from './edits.ts';
import { remarksAbout } from './remarks.ts';
import { listed, short } from './words.ts';

export const markUnknown = kind({
  code: 'mark/unknown',
  find: (subject) => remarksAbout(subject, 'unknown-name').filter((remark) => remark.kind === 'mark'),
  tell: ({ name, near }) => ({
    severity: 'error',
    message: `No mark is called ${short(name)}, so there are no coordinates to key or to compare with. ${
      near.length > 0
        ? `Did you mean ${listed(near)}?`
        : 'Add the mark with its published coordinates, or use the file that has it.'
    }`,
  }),
  mend: ({ place, near }) => readingFixes(place, near.map(asName)),
});
