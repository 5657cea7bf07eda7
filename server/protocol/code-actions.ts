/** The fixes of findings as quick fixes. */
import { CodeActionKind, type CodeAction, type Connection, type Diagnostic } from 'vscode-languageserver';
import { changesFor, type Change } from '../features/changes.ts';
import { offsetsOf } from '../session/where.ts';
import type { OpenSession, OpenSessions } from './open-sessions.ts';
import { toOffsets, toRange, toWorkspaceEdit } from './to-protocol.ts';

export function answerCodeActions(connection: Connection, sessions: OpenSessions): void {
  connection.onCodeAction(({ textDocument, range, context }) => {
    const session = sessions.at(textDocument.uri);
    if (!session || !asksForFixes(context.only)) return [];
    const { start, end } = toOffsets(session.document, range);
    return changesFor(sessions.inspectionOf(session), start, end).map((change): CodeAction => ({
      title: change.title,
      kind: CodeActionKind.QuickFix,
      diagnostics: mended(change, session, sessions, context.diagnostics),
      isPreferred: change.only,
      edit: toWorkspaceEdit(sessions, change.edits),
    }));
  });
}

const asksForFixes = (only: readonly string[] | undefined) =>
  !only || only.some((kind) => kind === '' || kind === CodeActionKind.QuickFix);

/** The client's own diagnostics that the change puts right. */
function mended(
  { finding }: Change,
  session: OpenSession,
  sessions: OpenSessions,
  known: readonly Diagnostic[],
): Diagnostic[] {
  const at = offsetsOf(sessions.inspectionOf(session).session, finding.place);
  if (!at) return [];
  const { line, character } = toRange(session.document, at).start;
  return known.filter(
    ({ code, range }) =>
      code === finding.code && range.start.line === line && range.start.character === character,
  );
}
