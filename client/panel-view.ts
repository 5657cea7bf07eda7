/** A panel of drawings: alive while the text is typed, with the cursor's line shown in it and a way from each thing to its line. */
import {
  Range,
  Uri,
  ViewColumn,
  window,
  workspace,
  type TextDocument,
  type TextEditor,
  type WebviewPanel,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { addressOf, pathOf } from '../server/protocol/addresses.ts';
import { drawingsOf } from './drawings.ts';
import { isSession, nameOf } from './in-front.ts';
import type { FromPage, Line, ToPage } from './panel/messages.ts';
import { pageHtml } from './panel/page-html.ts';
import { pageParts } from './page-parts.ts';
import { backToText, editorOf, lineIn } from './session-editor.ts';

export type Panel = ReturnType<typeof openPanel>;

export function openPanel(view: WebviewPanel, folder: Uri, client: BaseLanguageClient, closed: () => void) {
  let session: Uri | null = null;
  /** Null until the page is there and has said how wide it is. */
  let width: number | null = null;
  /** Of the cursor in the session, from 1. */
  let line: number | null = null;
  let wanted = false;
  let asking = false;
  /** Only a part around the cursor is drawn. */
  let partly = false;
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
    if (message.kind === 'leave') return void backToText(session);
    width = message.width;
    refresh();
  });
  view.webview.html = pageHtml(pageParts(view.webview, folder, 'panel'));

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
      const asked = session;
      const told = await drawingsOf(client, asked, width ?? 0, line);
      took = performance.now() - start;
      if (!open || asked !== session) continue;
      partly = told.kind === 'drawings' && told.part !== null;
      await send(told);
      follow(window.activeTextEditor);
    }
    asking = false;
  }

  const send = async (message: ToPage): Promise<void> => void (await view.webview.postMessage(message));

  function follow(editor: TextEditor | undefined): void {
    if (!editor || width === null || !isSession(editor.document)) return;
    const at = editor.selection.active.line;
    const own = editor.document.uri.toString() === session?.toString();
    if (own && line !== at + 1) {
      line = at + 1;
      if (partly) refresh();
    }
    void send({
      kind: 'cursor',
      path: pathOf(editor.document.uri.toString()),
      line: at + 1,
      entry: headOf(editor.document, at) + 1,
    });
  }

  return {
    show: (uri: Uri) => {
      session = uri;
      line = lineIn(uri);
      view.title = `Drawings of ${nameOf(uri)}`;
      refresh();
    },
    reveal: (takesFocus: boolean) => view.reveal(undefined, !takesFocus),
    isShowing: (uri: Uri) => view.visible && session?.toString() === uri.toString(),
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
      viewColumn: editorOf(uri)?.viewColumn ?? (session && editorOf(session)?.viewColumn) ?? ViewColumn.One,
      selection: new Range(lineNumber, start, lineNumber, text.trimEnd().length),
    });
  } catch {
    void window.showErrorMessage(
      `Line ${line} of ${path} cannot be shown; the file may have changed or gone.`,
    );
  }
}
