/** Which session a command is about: the one in front, else a sentence that says how to get one there. */
import { commands, languages, window, type TextDocument, type Uri } from 'vscode';

export const nameOf = (uri: Uri): string => uri.path.split('/').at(-1) ?? uri.path;

export const isSession = (document: TextDocument): boolean =>
  languages.match({ language: 'tribrach' }, document) > 0;

/** The session with the cursor; with the focus in the panel no editor is active, and the session beside it is meant. */
export function frontSession(): TextDocument | null {
  const active = window.activeTextEditor;
  if (active) return isSession(active.document) ? active.document : null;
  return window.visibleTextEditors.find(({ document }) => isSession(document))?.document ?? null;
}

/** The session in front; where there is none, the message that says so offers to begin or open one. */
export function sessionInFront(): Uri | null {
  const document = frontSession();
  if (!document) void offerSession();
  return document?.uri ?? null;
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
