/** Fixes of findings as quick fixes, one by one and all of a kind; what is safe to mend on saving; and refactorings. */
import {
  CodeActionKind,
  CodeActionTriggerKind,
  type CodeAction,
  type CodeActionContext,
  type Connection,
  type Diagnostic,
} from 'vscode-languageserver';
import { changesFor, type Change } from '../features/changes.ts';
import { mendAllOf, safeMends } from '../features/mend-all.ts';
import { refactoringsAt } from '../features/refactorings/refactorings.ts';
import type { TextChange } from '../features/trial.ts';
import type { Finding } from '../findings/finding.ts';
import { offsetsOf } from '../session/where.ts';
import type { OpenSession, OpenSessions } from './open-sessions.ts';
import { toOffsets, toRange, toWorkspaceEdit } from './to-protocol.ts';

const FIX_ALL = `${CodeActionKind.SourceFixAll}.tribrach`;
const REFACTORINGS = { rewrite: CodeActionKind.RefactorRewrite, move: `${CodeActionKind.Refactor}.move` };

export const CODE_ACTION_KINDS = [CodeActionKind.QuickFix, FIX_ALL, ...Object.values(REFACTORINGS)];

export function answerCodeActions(connection: Connection, sessions: OpenSessions): void {
  connection.onCodeAction(({ textDocument, range, context }) => {
    const session = sessions.at(textDocument.uri);
    if (!session) return [];
    const { start, end } = toOffsets(session.document, range);
    return [
      ...(asksFor(context, CodeActionKind.QuickFix) ? fixes(session, start, end, context.diagnostics) : []),
      ...(wantsRefactorings(context) ? refactorings(session, start, context) : []),
      // What mends without being asked about each is for saving, and for whoever asks for it by name.
      ...(context.only && asksFor(context, FIX_ALL) ? fixAll(session) : []),
    ];
  });

  function fixes(
    session: OpenSession,
    start: number,
    end: number,
    known: readonly Diagnostic[],
  ): CodeAction[] {
    const inspection = sessions.inspectionOf(session);
    const changes = changesFor(inspection, start, end);
    const single = changes.map((change) => ({
      ...action(CodeActionKind.QuickFix, change),
      diagnostics: theirs([change.finding], session, known),
      isPreferred: change.only,
    }));
    const codes = new Set(changes.filter(({ only }) => only).map(({ finding }: Change) => finding.code));
    const all = [...codes]
      .flatMap((code) => mendAllOf(code, inspection) ?? [])
      .map((mend) => ({
        ...action(CodeActionKind.QuickFix, mend),
        diagnostics: theirs(mend.findings, session, known),
      }));
    return [...single, ...all];
  }

  const refactorings = (session: OpenSession, start: number, context: CodeActionContext) =>
    refactoringsAt(sessions.inspectionOf(session), session.files, start)
      .filter(({ kind }) => asksFor(context, REFACTORINGS[kind]))
      .map((refactoring) => action(REFACTORINGS[refactoring.kind], refactoring));

  function fixAll(session: OpenSession): CodeAction[] {
    const edits = safeMends(sessions.inspectionOf(session), session.files);
    return edits.length === 0 ? [] : [action(FIX_ALL, { title: 'Mend how things are written', edits })];
  }

  const action = (
    kind: string,
    { title, edits }: { readonly title: string; readonly edits: readonly TextChange[] },
  ): CodeAction => ({ title, kind, edit: toWorkspaceEdit(sessions, edits) });

  /** The client's own diagnostics that these findings are. */
  function theirs(
    findings: readonly Finding[],
    session: OpenSession,
    known: readonly Diagnostic[],
  ): Diagnostic[] {
    return findings.flatMap((finding) => {
      const at = offsetsOf(sessions.inspectionOf(session).session, finding.place);
      if (!at) return [];
      const { line, character } = toRange(session.document, at).start;
      return known.filter(
        ({ code, range }) =>
          code === finding.code && range.start.line === line && range.start.character === character,
      );
    });
  }
}

/** A client that asks for `refactor` means `refactor.move`, too; one that names no kind means all. */
const asksFor = ({ only }: CodeActionContext, kind: string) =>
  !only || only.some((wanted) => isWithin(kind, wanted) || isWithin(wanted, kind));

/** A client asks by itself wherever the cursor goes; what must be tried on the whole session waits for somebody to ask. */
const wantsRefactorings = (context: CodeActionContext) =>
  asksFor(context, CodeActionKind.Refactor) &&
  (context.only !== undefined || context.triggerKind !== CodeActionTriggerKind.Automatic);

const isWithin = (kind: string, whole: string) =>
  whole === '' || kind === whole || kind.startsWith(`${whole}.`);
