/** Pages about a session that an editor opens beside it: `tribrach:/FILE NAME/PAGE?ADDRESS OF THE SESSION`. */
import type { Connection, InitializeParams } from 'vscode-languageserver';
import type { Inspection } from '../inspect.ts';
import { checkPage, keyCardPage, valuesPage } from '../record/card/pages.ts';
import { explainedPage } from '../record/card/explained.ts';
import type { OpenSession, OpenSessions } from './open-sessions.ts';

export const PAGE_SCHEME = 'tribrach';

const PAGES: Readonly<Record<string, (inspection: Inspection) => string>> = {
  'what to key': keyCardPage,
  check: checkPage,
  'derived values': valuesPage,
};

/** Answers for pages; the function that it gives back tells the client that a session's pages have changed. */
export function answerPages(
  connection: Connection,
  sessions: OpenSessions,
  { initializationOptions }: InitializeParams,
): (session: OpenSession) => void {
  const shown = new Set(shownBefore(initializationOptions));
  connection.workspace.textDocumentContent.on(({ uri }) => {
    const code = explained(uri);
    if (code !== null) return { text: explainedPage(code) ?? `There is no finding ${code}.\n` };
    const { page, session } = asked(uri, sessions);
    shown.add(uri);
    const write = PAGES[page];
    if (!write) return { text: `There is no page “${page}”.\n` };
    return { text: session ? write(sessions.inspectionOf(session)) : CLOSED };
  });
  return (session) => {
    for (const uri of shown)
      if (asked(uri, sessions).session === session)
        void connection.workspace.textDocumentContent.refresh(uri);
  };
}

/** A server that follows one that ended is told with `{ pages: [ADDRESS, …] }` what stands open, to keep it up to date. */
function shownBefore(told: unknown): readonly string[] {
  const pages = (told as Readonly<Record<string, unknown>> | null | undefined)?.['pages'];
  return Array.isArray(pages) ? pages.filter((page) => typeof page === 'string') : [];
}

const CLOSED = 'The session that this page speaks of is not open. Open it, and the page fills again.\n';

/** `tribrach:/…?explains=CODE` is about a finding and no session. */
function explained(uri: string): string | null {
  const query = decodeURIComponent(uri.split(/\?(.*)/s)[1] ?? '');
  return query.startsWith('explains=') ? query.slice('explains='.length) : null;
}

function asked(uri: string, sessions: OpenSessions): { page: string; session: OpenSession | null } {
  const [before = '', query = ''] = uri.split(/\?(.*)/s);
  const page = decodeURIComponent(before.split('/').at(-1) ?? '');
  return { page, session: sessions.at(decodeURIComponent(query)) ?? sessions.at(query) };
}
