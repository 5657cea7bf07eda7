/** Formatting of a whole session or of the entries that a selection touches. */
import type { Connection, Range, TextEdit } from 'vscode-languageserver';
import { formattingOf } from '../features/formatting.ts';
import type { OpenSessions } from './open-sessions.ts';
import { toOffsets, toRange } from './to-protocol.ts';

export function answerFormatting(connection: Connection, sessions: OpenSessions): void {
  connection.onDocumentFormatting(({ textDocument }) => edits(textDocument.uri));
  connection.onDocumentRangeFormatting(({ textDocument, range }) => edits(textDocument.uri, range));

  function edits(address: string, range?: Range): TextEdit[] {
    const document = sessions.at(address)?.document;
    if (!document) return [];
    const stretch = range ? toOffsets(document, range) : { start: 0, end: document.length };
    return formattingOf(document, stretch.start, stretch.end).map((edit) => ({
      range: toRange(document, edit),
      newText: edit.text,
    }));
  }
}
