/** The editor of a session that something else is shown of. */
import { window, workspace, type TextEditor, type Uri } from 'vscode';

export const editorOf = (uri: Uri): TextEditor | undefined =>
  window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri.toString());

/** The cursor's line, from 1. */
export const lineIn = (uri: Uri): number | null => {
  const editor = editorOf(uri);
  return editor ? editor.selection.active.line + 1 : null;
};

export async function backToText(session: Uri | null): Promise<void> {
  const editor = session && editorOf(session);
  if (editor) await window.showTextDocument(editor.document, editor.viewColumn);
}

/** The answer about a session; one that is not open in the editor is opened for it, as after a reload. */
export async function openedFor<Answer>(uri: Uri, ask: () => Promise<Answer | null>): Promise<Answer | null> {
  const answer = await ask();
  if (answer !== null) return answer;
  const opened = await Promise.resolve(workspace.openTextDocument(uri)).then(
    ({ languageId }) => languageId === 'tribrach',
    () => false,
  );
  return opened ? ask() : null;
}
