/** Stretches of text as the protocol says them: lines and UTF-16 columns counted from 0, and addresses. */
import type { Location, Position, Range, TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import type { Document } from '../../grammar/document.ts';
import { offsetOf, positionOf } from '../../grammar/lines.ts';
import type { Stretch } from '../features/cursor.ts';
import { addressOf } from './addresses.ts';
import type { OpenSessions } from './open-sessions.ts';

export function toPosition(document: Document, offset: number): Position {
  const { line, column } = positionOf(document, offset);
  return { line, character: column };
}

export function toRange(document: Document, { start, end }: { start: number; end: number }): Range {
  return { start: toPosition(document, start), end: toPosition(document, end) };
}

export const toOffset = (document: Document, { line, character }: Position) =>
  offsetOf(document, { line, column: character });

export function toOffsets(document: Document, { start, end }: Range): { start: number; end: number } {
  return { start: toOffset(document, start), end: toOffset(document, end) };
}

/** Null where the file can no longer be read. */
export function toLocation(sessions: OpenSessions, at: Stretch): Location | null {
  const document = sessions.documentAt(at.path);
  return document ? { uri: addressFor(sessions, at.path), range: toRange(document, at) } : null;
}

export function toWorkspaceEdit(
  sessions: OpenSessions,
  edits: readonly { readonly at: Stretch; readonly text: string }[],
): WorkspaceEdit {
  const changes: Record<string, TextEdit[]> = {};
  for (const { at, text } of edits) {
    const location = toLocation(sessions, at);
    if (location) (changes[location.uri] ??= []).push({ range: location.range, newText: text });
  }
  return { changes };
}

/** As the client itself calls it, where it has the file open. */
function addressFor(sessions: OpenSessions, path: string): string {
  return sessions.all().find((session) => session.path === path)?.address ?? addressOf(path);
}
