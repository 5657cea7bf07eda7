/** Another session file that cannot be read. */
import { sentence, short } from '../words.ts';
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
    headline: `Session file not readable: ${path === '' ? 'a file without a name' : short(path)}.`,
    effect: `${sentence(because)}. Its marks and gear are missing here.`,
    action: '',
    causes: BROUGHT.map(missingEntry),
  }),
});
