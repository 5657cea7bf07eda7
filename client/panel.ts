/** The panel beside a session: its drawings, alive while the text is typed, with a way from each drawn thing to its line. */
import {
  commands,
  languages,
  Range,
  Uri,
  ViewColumn,
  window,
  workspace,
  type Disposable,
  type TextDocument,
  type TextEditor,
  type WebviewPanel,
} from 'vscode';
import { State, type BaseLanguageClient } from 'vscode-languageclient';
import { addressOf, pathOf } from '../server/protocol/addresses.ts';
import type { SessionDrawings } from '../server/record/session-drawings.ts';
import type { FromPage, Line, ToPage } from './panel/messages.ts';
import { pageHtml } from './panel/page-html.ts';

type Panel = ReturnType<typeof openPanel>;

/** There is one panel; asked for from another session, it shows that one. */
export function registerPanel(extension: Uri, client: BaseLanguageClient): readonly Disposable[] {
  let panel: Panel | null = null;
  const isOfLanguage = (document: TextDocument) => languages.match({ language: 'tribrach' }, document) > 0;
  return [
    commands.registerCommand('tribrach.showDrawings', () => {
      const session = window.activeTextEditor?.document;
      if (session === undefined || !isOfLanguage(session)) {
        void window.showInformationMessage('Open a session file (.trib) first; its drawings show beside it.');
        return;
      }
      panel ??= openPanel(extension, client, () => (panel = null));
      panel.show(session.uri);
    }),
    // A session may use others, so that any of them can change its drawings.
    workspace.onDidChangeTextDocument(({ document }) => {
      if (isOfLanguage(document)) panel?.refresh();
    }),
    languages.onDidChangeDiagnostics(() => panel?.refresh()),
    client.onDidChangeState(({ newState }) => {
      if (newState !== State.Starting) panel?.refresh();
    }),
    window.onDidChangeTextEditorSelection(({ textEditor }) => panel?.follow(textEditor)),
    window.onDidChangeActiveTextEditor((editor) => panel?.follow(editor)),
    { dispose: () => panel?.close() },
  ];
}

function openPanel(extension: Uri, client: BaseLanguageClient, closed: () => void) {
  const folder = Uri.joinPath(extension, 'dist');
  const view = window.createWebviewPanel(
    'tribrach.drawings',
    'Drawings',
    { viewColumn: ViewColumn.Beside, preserveFocus: true },
    { enableScripts: true, localResourceRoots: [folder] },
  );
  let session: Uri | null = null;
  /** Null until the page is there and has said how wide it is. */
  let width: number | null = null;
  let wanted = false;
  let asking = false;
  /** Milliseconds that the last drawings took. */
  let took = 0;
  let open = true;

  view.onDidDispose(() => {
    open = false;
    closed();
  });
  view.onDidChangeViewState(() => {
    // A page that is not seen is taken down; it says its width when it is built up again.
    if (!view.visible) width = null;
  });
  view.webview.onDidReceiveMessage((message: FromPage) => {
    if (message.kind === 'goTo') return void goTo(message, session);
    width = message.width;
    refresh();
  });
  view.webview.html = page(view, folder);

  /** One question at a time, so that no answer comes after a later one; what changes meanwhile is asked for next. */
  function refresh(): void {
    wanted = true;
    if (!asking) void askWhileWanted();
  }

  async function askWhileWanted(): Promise<void> {
    asking = true;
    while (wanted && open && session && width !== null) {
      // Large drawings wait until the typing has paused, so that findings never wait for them.
      do {
        wanted = false;
        await pause(PAUSE.least + Math.min(PAUSE.most, 2 * took));
      } while (wanted && took > SLOW);
      const start = performance.now();
      const message = await drawingsOf(client, session, width ?? 0);
      took = performance.now() - start;
      if (!open || message.uri !== session) continue;
      await send(message.told);
      follow(window.activeTextEditor);
    }
    asking = false;
  }

  const send = async (message: ToPage): Promise<void> => void (await view.webview.postMessage(message));

  function follow(editor: TextEditor | undefined): void {
    if (!editor || width === null || editor.document.languageId !== 'tribrach') return;
    const line = editor.selection.active.line;
    void send({
      kind: 'cursor',
      path: pathOf(editor.document.uri.toString()),
      line: line + 1,
      entry: headOf(editor.document, line) + 1,
    });
  }

  return {
    show: (uri: Uri) => {
      session = uri;
      view.title = `Drawings of ${nameOf(uri)}`;
      view.reveal(undefined, true);
      refresh();
    },
    refresh,
    follow,
    close: () => view.dispose(),
  };
}

/** Milliseconds in which further keystrokes are waited for. */
const PAUSE = { least: 60, most: 1500 };
/** Drawings that take so many milliseconds are not made between two keystrokes. */
const SLOW = 100;

const pause = (milliseconds: number) => new Promise<void>((resolve) => setTimeout(resolve, milliseconds));

async function drawingsOf(
  client: BaseLanguageClient,
  uri: Uri,
  width: number,
): Promise<{ uri: Uri; told: ToPage }> {
  const trouble = (sentence: string) => ({ uri, told: { kind: 'trouble', sentence } as const });
  if (!client.isRunning())
    return trouble(
      'The language server is not running, so the drawings may be out of date. Use “Tribrach: Restart the Language Server”.',
    );
  try {
    const answer = await client.sendRequest<SessionDrawings | null>('tribrach/drawings', {
      uri: uri.toString(),
      width,
    });
    if (!answer) return trouble(`${nameOf(uri)} is not open. Open it, and its drawings follow it again.`);
    return { uri, told: { kind: 'drawings', session: nameOf(uri), ...answer } };
  } catch {
    return trouble(
      'The language server could not draw the session. Use “Tribrach: Restart the Language Server” and try again.',
    );
  }
}

const nameOf = (uri: Uri) => uri.path.split('/').at(-1) ?? uri.path;

/** The first line of the entry that a line belongs to: entries begin in the first column, and all of theirs is indented. */
function headOf(document: TextDocument, line: number): number {
  for (let head = line; head >= 0; head--) if (/^[^\s#]/.test(document.lineAt(head).text)) return head;
  return line;
}

async function goTo({ path, line }: Line, session: Uri | null): Promise<void> {
  const uri = session && pathOf(session.toString()) === path ? session : Uri.parse(addressOf(path), true);
  try {
    const document = await workspace.openTextDocument(uri);
    const { firstNonWhitespaceCharacterIndex: start, text, lineNumber } = document.lineAt(line - 1);
    await window.showTextDocument(document, {
      viewColumn: columnOf(uri) ?? (session && columnOf(session)) ?? ViewColumn.One,
      selection: new Range(lineNumber, start, lineNumber, text.trimEnd().length),
    });
  } catch {
    void window.showErrorMessage(
      `Line ${line} of ${path} cannot be shown; the file may have changed or gone.`,
    );
  }
}

const columnOf = (uri: Uri): ViewColumn | undefined =>
  window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri.toString())?.viewColumn;

function page({ webview }: WebviewPanel, folder: Uri): string {
  const address = (file: string) => webview.asWebviewUri(Uri.joinPath(folder, file)).toString();
  return pageHtml({
    script: address('panel.js'),
    style: address('panel.css'),
    source: webview.cspSource,
    nonce: crypto.randomUUID().replaceAll('-', ''),
  });
}
