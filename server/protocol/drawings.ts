/** The drawings of an open session, for the panel that a client shows beside its text. */
import type { Connection } from 'vscode-languageserver';
import { sessionDrawings, type SessionDrawings } from '../record/drawings/session-drawings.ts';
import type { OpenSessions } from './open-sessions.ts';

/**
 * Asked with `{ uri, width, line }`: the width in pixels, and from 1 the line that a long session is drawn around.
 * The answer is null where that session is not open.
 */
const DRAWINGS = 'tribrach/drawings';

const USUAL_WIDTH = 680;

export function answerDrawings(connection: Connection, sessions: OpenSessions): void {
  connection.onRequest(DRAWINGS, async (asked: unknown): Promise<SessionDrawings | null> => {
    const { uri, width, line } = (asked ?? {}) as Readonly<Record<string, unknown>>;
    const session = typeof uri === 'string' ? sessions.at(uri) : null;
    if (!session) return null;
    const inspection = await sessions.settled(session);
    return sessionDrawings(
      inspection,
      Number.isFinite(width) ? Number(width) : USUAL_WIDTH,
      Number.isFinite(line) ? Number(line) : null,
    );
  });
}
