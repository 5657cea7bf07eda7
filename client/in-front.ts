/** Which session a command is about: the one in front, else a sentence that says how to get one there. */
import { commands, languages, window, type TextDocument, type Uri } from 'vscode';

export const nameOf = (uri: Uri): string => uri.path.split('/').at(-1) ?? uri.path;

export const isSession = (document: TextDocument): boolean =>
  languages.match({ language: 'tribrach' }, document) > 0;

/** The session in front; where there is none, one can be begun or opened from the message that says so. */
export function sessionInFront(): Uri | null {
  // With the focus in the panel no editor is active, and the session beside it is meant.
  const editors = [window.activeTextEditor, ...window.visibleTextEditors];
  const document = editors.find((editor) => editor && isSession(editor.document))?.document;
  if (document) return document.uri;
  void offerSession();
  return null;
}

async function offerSession(): Promise<void> {
  const begin = 'Begin a Session';
  const open = 'Open a File…';
  const chosen = await window.showInformationMessage(
    'No session is in front. Open a session file (.trib), or begin one.',
    begin,
    open,
  );
  if (chosen === begin) await commands.executeCommand('tribrach.newSession');
  if (chosen === open) await commands.executeCommand('workbench.action.files.openFile');
}
