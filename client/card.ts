/** The key card beside a session: it follows the text and the cursor, copies numbers, and comes back after a reload. */
import { commands, env, Uri, ViewColumn, window, type Disposable, type WebviewPanel } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { ShownCard } from '../server/protocol/key-card.ts';
import { cardPageHtml } from './card/page-html.ts';
import type { FromCard, ToCard } from './card/messages.ts';
import { isSession, nameOf, sessionInFront } from './in-front.ts';
import { backToText, lineIn, openedFor } from './session-editor.ts';
import { pageParts } from './page-parts.ts';
import { whenSessionsChange } from './session-changes.ts';

const VIEW = 'tribrach.card';

export function registerCard(extension: Uri, client: BaseLanguageClient): readonly Disposable[] {
  const folder = Uri.joinPath(extension, 'dist');
  const options = { enableScripts: true, localResourceRoots: [folder] };
  let card: ReturnType<typeof openCard> | null = null;
  const openIn = (view: WebviewPanel) => openCard(view, folder, client, () => (card = null));

  return [
    commands.registerCommand('tribrach.showWhatToKey', () => {
      const session = sessionInFront();
      if (!session) return;
      // Asked for again, it takes the focus, so that its buttons can be reached by keyboard.
      const again = card?.isShowing(session) ?? false;
      const place = { viewColumn: ViewColumn.Beside, preserveFocus: true };
      card ??= openIn(window.createWebviewPanel(VIEW, 'What to Key', place, options));
      card.show(session);
      card.reveal(again);
    }),
    window.registerWebviewPanelSerializer(VIEW, {
      deserializeWebviewPanel: async (view: WebviewPanel, state: { readonly address?: unknown } | null) => {
        if (card || typeof state?.address !== 'string') return view.dispose();
        view.webview.options = options;
        card = openIn(view);
        card.show(Uri.parse(state.address, true));
      },
    }),
    ...whenSessionsChange(client, () => card?.refresh()),
    window.onDidChangeTextEditorSelection(({ textEditor: { document } }) => {
      if (isSession(document)) card?.follow(document.uri);
    }),
    window.onDidChangeActiveTextEditor((editor) => {
      if (editor && isSession(editor.document)) card?.follow(editor.document.uri);
    }),
    { dispose: () => card?.close() },
  ];
}

/** Milliseconds in which further keystrokes are waited for. */
const PAUSE = 80;

function openCard(view: WebviewPanel, folder: Uri, client: BaseLanguageClient, closed: () => void) {
  let session: Uri | null = null;
  let ready = false;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let asked = 0;

  view.onDidDispose(() => {
    clearTimeout(waiting);
    session = null;
    closed();
  });
  view.onDidChangeViewState(() => {
    // A page that is not seen is taken down; it says so when it is there again.
    if (!view.visible) ready = false;
  });
  view.webview.onDidReceiveMessage((message: FromCard) => {
    if (message.kind === 'copy') return void env.clipboard.writeText(message.text);
    if (message.kind === 'print') return void commands.executeCommand('tribrach.saveCard', session);
    if (message.kind === 'leave') return void backToText(session);
    ready = true;
    refresh();
  });
  view.webview.html = cardPageHtml(pageParts(view.webview, folder, 'card'));

  function refresh(): void {
    clearTimeout(waiting);
    waiting = setTimeout(() => void tell(), PAUSE);
  }

  /** An answer that comes after a later question is not shown. */
  async function tell(): Promise<void> {
    if (!session || !ready) return;
    const own = ++asked;
    const message = await cardOf(client, session);
    if (own === asked && session) await view.webview.postMessage(message);
  }

  return {
    show: (uri: Uri) => {
      session = uri;
      view.title = `What to key: ${nameOf(uri)}`;
      refresh();
    },
    reveal: (takesFocus: boolean) => view.reveal(undefined, !takesFocus),
    isShowing: (uri: Uri) => view.visible && session?.toString() === uri.toString(),
    follow: (uri: Uri) => {
      if (session?.toString() === uri.toString()) refresh();
    },
    refresh,
    close: () => view.dispose(),
  };
}

async function cardOf(client: BaseLanguageClient, uri: Uri): Promise<ToCard> {
  const address = uri.toString();
  const trouble = (sentence: string): ToCard => ({ kind: 'trouble', sentence });
  if (!client.isRunning())
    return trouble(
      'The language server is not running, so this card may be out of date. Use “Tribrach: Restart the Language Server”.',
    );
  try {
    const ask = () =>
      client.sendRequest<ShownCard | null>('tribrach/keyCard', { uri: address, line: lineIn(uri) });
    const answer = await openedFor(uri, ask);
    if (!answer) return trouble(`${nameOf(uri)} cannot be read. Open it, and show what to key again.`);
    return { kind: 'card', session: nameOf(uri), address, ...answer };
  } catch {
    return trouble('The card could not be made. Use “Tribrach: Restart the Language Server” and try again.');
  }
}
