/** Derived values at line ends as inlay hints, without the kinds that are switched off. */
import type { Connection, InlayHint } from 'vscode-languageserver';
import { inlaysIn, type InlayKind } from '../features/inlays.ts';
import type { OpenSessions } from './open-sessions.ts';
import { toOffsets, toPosition } from './to-protocol.ts';

export function answerInlayHints(
  connection: Connection,
  sessions: OpenSessions,
  wanted: (kind: InlayKind) => boolean,
): void {
  connection.languages.inlayHint.on(({ textDocument, range }) => {
    const session = sessions.at(textDocument.uri);
    if (!session) return [];
    const { start, end } = toOffsets(session.document, range);
    return inlaysIn(sessions.inspectionOf(session), start, end)
      .filter(({ kind }) => wanted(kind))
      .map(({ at, label }): InlayHint => ({
        position: toPosition(session.document, at),
        label,
        paddingLeft: true,
      }));
  });
}
