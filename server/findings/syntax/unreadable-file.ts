/** Another session file that cannot be read. */
import { short } from '../words.ts';
import { kind } from '../finding.ts';
import { remarksAbout } from './remarks.ts';
import { missingEntry } from '../unread.ts';

/** What a session may have from another file. */
const BROUGHT = ['mark', 'antenna', 'rover', 'surface', 'ground'];

export const syntaxUnreadableFile = kind({
  code: 'syntax/unreadable-file',
  find: (subject) => remarksAbout(subject, 'unreadable-file'),
  tell: ({ path, because }) => ({
    severity: 'error',
    message: `${path === '' ? 'A file without a name' : short(path)} cannot be read: ${because}. Its marks and gear are missing here.`,
    causes: BROUGHT.map(missingEntry),
  }),
});
