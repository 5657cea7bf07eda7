/** The commands of the palette that open one of the pages which the server writes about the session in front. */
import { commands, languages, Uri, ViewColumn, window, workspace, type Disposable } from 'vscode';
import { nameOf, sessionInFront } from './in-front.ts';
import { offerRestart } from './server-end.ts';

export function registerCommands(restart: () => Promise<void>): readonly Disposable[] {
  return [
    commands.registerCommand('tribrach.restartServer', restart),
    commands.registerCommand('tribrach.checkSession', () => openPage('check')),
    commands.registerCommand('tribrach.deriveValues', () => openPage('derived values')),
  ];
}

/** The addresses of the pages that stand open, which a server that starts anew has not written. */
export const openPages = (): readonly string[] =>
  workspace.textDocuments.filter(({ uri }) => uri.scheme === SCHEME).map(({ uri }) => uri.toString());

const SCHEME = 'tribrach';
/** A language of its own, whose long lines are wrapped. */
const PAGE_LANGUAGE = 'tribrach-page';

/** Opens `tribrach:/SESSION FILE/PAGE?SESSION URI` beside the session; the server writes its text and keeps it up to date. */
async function openPage(page: string): Promise<void> {
  const session = sessionInFront();
  if (!session) return;
  const uri = Uri.from({
    scheme: SCHEME,
    path: `/${nameOf(session)}/${page}`,
    query: session.toString(),
  });
  try {
    const document = await languages.setTextDocumentLanguage(
      await workspace.openTextDocument(uri),
      PAGE_LANGUAGE,
    );
    await window.showTextDocument(document, {
      viewColumn: ViewColumn.Beside,
      preview: true,
      preserveFocus: true,
    });
  } catch {
    await offerRestart(
      `The page “${page}” could not be opened; the language server may have stopped. Restart it and try again.`,
    );
  }
}
