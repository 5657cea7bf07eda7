/** The commands of the palette: restart the server, and open one of the pages it writes about the session in front. */
import { commands, languages, Uri, ViewColumn, window, workspace, type Disposable } from 'vscode';

export function registerCommands(restart: () => Promise<void>): readonly Disposable[] {
  return [
    commands.registerCommand('tribrach.restartServer', restart),
    commands.registerCommand('tribrach.showWhatToKey', () => openPage('what to key')),
    commands.registerCommand('tribrach.checkSession', () => openPage('check')),
    commands.registerCommand('tribrach.deriveValues', () => openPage('derived values')),
  ];
}

/** Opens `tribrach:/SESSION FILE/PAGE?SESSION URI` beside the session; the server writes its text and keeps it up to date. */
async function openPage(page: string): Promise<void> {
  const session = window.activeTextEditor?.document;
  if (session === undefined || languages.match({ language: 'tribrach' }, session) === 0) {
    void window.showInformationMessage('Open a session file (.trib) first; this command speaks about it.');
    return;
  }
  const name = session.uri.path.split('/').at(-1) ?? session.uri.path;
  const uri = Uri.from({
    scheme: 'tribrach',
    path: `/${name}/${page}`,
    query: session.uri.toString(),
  });
  try {
    const document = await workspace.openTextDocument(uri);
    await window.showTextDocument(document, {
      viewColumn: ViewColumn.Beside,
      preview: true,
      preserveFocus: true,
    });
  } catch {
    void window.showErrorMessage(
      `The page “${page}” could not be opened; the language server may have stopped. Restart it and try again.`,
    );
  }
}
