/** Formatting of a whole session, of the entries that selections touch, and of each line when it is left. */
import type { Connection, Range, TextEdit } from 'vscode-languageserver';
import type { Document } from '../../grammar/document.ts';
import { formattingAbove, formattingOf } from '../features/formatting.ts';
import type { OpenSessions } from './open-sessions.ts';
import { toOffset, toOffsets, toRange } from './to-protocol.ts';

export function answerFormatting(connection: Connection, sessions: OpenSessions): void {
  connection.onDocumentFormatting(({ textDocument }) => edits(textDocument.uri));
  connection.onDocumentRangeFormatting(({ textDocument, range }) => edits(textDocument.uri, [range]));
  connection.onDocumentRangesFormatting(({ textDocument, ranges }) => edits(textDocument.uri, ranges));
  connection.onDocumentOnTypeFormatting(({ textDocument, position }) => {
    const document = sessions.at(textDocument.uri)?.document;
    return document ? toEdits(formattingAbove(document, toOffset(document, position)), document) : [];
  });

  /** Selections may touch the same entry; each change is made once. */
  function edits(address: string, ranges?: readonly Range[]): TextEdit[] {
    const document = sessions.at(address)?.document;
    if (!document) return [];
    const stretches = ranges?.map((range) => toOffsets(document, range)) ?? [
      { start: 0, end: document.length },
    ];
    const found = stretches.flatMap(({ start, end }) => formattingOf(document, start, end));
    return toEdits([...new Map(found.map((edit) => [edit.start, edit])).values()], document);
  }
}

const toEdits = (edits: ReturnType<typeof formattingOf>, document: Document): TextEdit[] =>
  edits.map((edit) => ({ range: toRange(document, edit), newText: edit.text }));
