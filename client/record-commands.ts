/** The commands that hand something over: the report and the key card as pages, the line of a review, a comparison. */
import { commands, env, Range, Uri, ViewColumn, window, workspace, type Disposable } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { today } from './calendar.ts';
import { nameOf, sessionInFront } from './in-front.ts';

export function registerRecordCommands(client: BaseLanguageClient): readonly Disposable[] {
  const ask = async (method: string, session: Uri, more: object = {}): Promise<string | null> => {
    try {
      const asked = { uri: session.toString(), ...more };
      return (await client.sendRequest<{ text: string }>(method, asked)).text;
    } catch (error) {
      void window.showErrorMessage(error instanceof Error ? error.message : String(error));
      return null;
    }
  };
  const command = (name: string, act: (session: Uri) => Promise<void>) =>
    commands.registerCommand(name, async (told?: unknown) => {
      const session = told instanceof Uri ? told : sessionInFront();
      if (session) await act(session);
    });

  return [
    command('tribrach.saveReport', async (session) => {
      const text = await ask('tribrach/report', session);
      if (text !== null) await savePage(session, 'report', text);
    }),
    command('tribrach.saveCard', async (session) => {
      const text = await ask('tribrach/cardToPrint', session);
      if (text !== null) await savePage(session, 'what to key', text);
    }),
    command('tribrach.sealSession', async (session) => {
      const by = await window.showInputBox({
        title: 'Seal the session',
        prompt: 'Who reviewed it? The seal shows a later change; it proves nobody’s identity.',
      });
      if (!by?.trim()) return;
      const line = await ask('tribrach/seal', session, { by: by.trim(), date: today() });
      if (line !== null) await appendLine(session, line);
    }),
    command('tribrach.compareSession', async (session) => {
      const [older] =
        (await window.showOpenDialog({
          title: `Compare ${nameOf(session)} with an older version`,
          openLabel: 'Compare',
          defaultUri: Uri.joinPath(session, '..'),
          filters: { Sessions: ['trib'] },
        })) ?? [];
      if (!older) return;
      const old = new TextDecoder().decode(await workspace.fs.readFile(older));
      const text = await ask('tribrach/compare', session, { old, oldName: nameOf(older) });
      if (text === null) return;
      const document = await workspace.openTextDocument({ language: 'plaintext', content: text });
      await window.showTextDocument(document, { viewColumn: ViewColumn.Beside, preview: true });
    }),
  ];
}

/** Asks where to, writes the file, and offers to open it in a browser, where it is printed. */
async function savePage(session: Uri, what: string, text: string): Promise<void> {
  const name = `${nameOf(session).replace(/\.trib$/, '')} ${what}.html`;
  const folder =
    session.scheme === 'untitled' ? workspace.workspaceFolders?.[0]?.uri : Uri.joinPath(session, '..');
  const target = await window.showSaveDialog({
    title: `Save the page “${what}”`,
    ...(folder ? { defaultUri: Uri.joinPath(folder, name) } : {}),
    filters: { 'Web page': ['html'] },
  });
  if (!target) return;
  try {
    await workspace.fs.writeFile(target, new TextEncoder().encode(text));
  } catch (error) {
    void window.showErrorMessage(`${nameOf(target)} could not be written: ${reasonOf(error)}`);
    return;
  }
  const open = 'Open in a Browser to Print';
  const chosen = await window.showInformationMessage(`Saved ${nameOf(target)}.`, open);
  if (chosen === open) await env.openExternal(target);
}

const reasonOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

/** At the end, on a line of its own; the reviewer saves it. */
async function appendLine(session: Uri, line: string): Promise<void> {
  const document = await workspace.openTextDocument(session);
  const editor = await window.showTextDocument(document);
  const text = document.getText();
  const end = document.positionAt(text.length);
  await editor.edit((edit) => edit.insert(end, text === '' || text.endsWith('\n') ? line : `\n${line}`));
  editor.revealRange(new Range(end, end));
}
