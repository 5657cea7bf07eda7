/** The key card of an open session as markup, for the panel that a client shows beside the text. */
import type { Connection } from 'vscode-languageserver';
import { setupAt } from '../features/setup-at.ts';
import { cardsHtml } from '../record/card/card-html.ts';
import type { OpenSessions } from './open-sessions.ts';
import { toOffset } from './to-protocol.ts';

/** Asked with `{ uri, line }`, the line of the cursor from 1; the answer is null where that session is not open. */
const KEY_CARD = 'tribrach/keyCard';

export interface ShownCard {
  readonly html: string;
  /** The setup that the line is about. */
  readonly here: string | null;
}

export function answerKeyCard(connection: Connection, sessions: OpenSessions): void {
  connection.onRequest(KEY_CARD, async (asked: unknown): Promise<ShownCard | null> => {
    const { uri, line } = (asked ?? {}) as Readonly<Record<string, unknown>>;
    const session = typeof uri === 'string' ? sessions.at(uri) : null;
    if (!session) return null;
    const inspection = await sessions.settled(session);
    const at = Number.isFinite(line)
      ? toOffset(session.document, { line: Number(line) - 1, character: 0 })
      : null;
    return { html: cardsHtml(inspection), here: at === null ? null : setupAt(inspection, at) };
  });
}
