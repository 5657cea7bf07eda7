/** A hand that types into a session which the server has open, and the text as the editor keeps it. */
import type { TextEdit } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Client } from './language-client.ts';

/** What a hand does to the text, told to the server and kept here as the editor keeps it. */
export function typist(client: Client, name: string, text: string) {
  const uri = client.uri(name);
  let document = TextDocument.create(uri, 'tribrach', 1, text);
  void client.notify('textDocument/didOpen', {
    textDocument: { uri, languageId: 'tribrach', version: 1, text },
  });
  return {
    uri,
    text: () => document.getText(),
    version: () => document.version,
    place: (wanted: string, behind = 0) => document.positionAt(document.getText().indexOf(wanted) + behind),
    whole: () => ({ start: { line: 0, character: 0 }, end: { line: document.lineCount, character: 0 } }),
    /** Replaces so many characters from the start of `wanted` on. */
    type: (wanted: string, behind: number, count: number, inserted: string) => {
      const at = document.getText().indexOf(wanted) + behind;
      const range = { start: document.positionAt(at), end: document.positionAt(at + count) };
      const contentChanges = [{ range, text: inserted }];
      document = TextDocument.update(document, contentChanges, document.version + 1);
      void client.notify('textDocument/didChange', {
        textDocument: { uri, version: document.version },
        contentChanges,
      });
    },
    apply: (edits: readonly TextEdit[]) => {
      const contentChanges = [{ text: TextDocument.applyEdits(document, [...edits]) }];
      document = TextDocument.update(document, contentChanges, document.version + 1);
      void client.notify('textDocument/didChange', {
        textDocument: { uri, version: document.version },
        contentChanges,
      });
    },
  };
}
