/** The panel beside a session: one for the whole editor, it shows the session that it was asked for last, and comes back after a reload. */
import { commands, Uri, ViewColumn, window, type Disposable, type WebviewPanel } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { sessionInFront } from './in-front.ts';
import { openPanel, type Panel } from './panel-view.ts';
import type { Remembered } from './panel/messages.ts';
import { whenSessionsChange } from './session-changes.ts';

const VIEW = 'tribrach.drawings';

export function registerPanel(extension: Uri, client: BaseLanguageClient): readonly Disposable[] {
  const folder = Uri.joinPath(extension, 'dist');
  const options = { enableScripts: true, localResourceRoots: [folder] };
  let panel: Panel | null = null;

  const openIn = (view: WebviewPanel): Panel => openPanel(view, folder, client, () => (panel = null));

  return [
    commands.registerCommand('tribrach.showDrawings', () => {
      const session = sessionInFront();
      if (!session) return;
      // Asked for again, it takes the focus, so that its things can be reached by keyboard.
      const again = panel?.isShowing(session) ?? false;
      panel ??= openIn(
        window.createWebviewPanel(
          VIEW,
          'Drawings',
          { viewColumn: ViewColumn.Beside, preserveFocus: true },
          options,
        ),
      );
      panel.show(session);
      panel.reveal(again);
    }),
    window.registerWebviewPanelSerializer(VIEW, {
      deserializeWebviewPanel: async (view: WebviewPanel, state: Partial<Remembered> | null) => {
        if (panel || typeof state?.address !== 'string') return view.dispose();
        view.webview.options = options;
        panel = openIn(view);
        panel.show(Uri.parse(state.address, true));
      },
    }),
    ...whenSessionsChange(client, () => panel?.refresh()),
    window.onDidChangeTextEditorSelection(({ textEditor }) => panel?.follow(textEditor)),
    window.onDidChangeActiveTextEditor((editor) => panel?.follow(editor)),
    { dispose: () => panel?.close() },
  ];
}
