/** A setup or a check on a mark that the session does not know. */
import { kind } from '../finding.ts';
import { elsewhere, nearNameFixes, unknownNames, type UnknownName } from '../syntax/remarks.ts';
import { unreadEntry } from '../unread.ts';
import { oneOf, short } from '../words.ts';

export const markUnknown = kind<UnknownName>({
  code: 'mark/unknown',
  find: (subject) => unknownNames(subject, (sort) => sort === 'mark'),
  tell: (unknown) => ({
    severity: 'error',
    headline: `Unknown mark ${short(unknown.remark.name)}.`,
    effect: 'There are no coordinates to key or to compare with.',
    action:
      unknown.remark.near.length > 0
        ? `Did you mean ${oneOf(unknown.remark.near)}?`
        : 'Add the mark with its published coordinates, or use the file that has it.',
    rests: elsewhere(unknown),
    follows: unreadEntry('mark', unknown.remark.name),
  }),
  mend: nearNameFixes,
});
