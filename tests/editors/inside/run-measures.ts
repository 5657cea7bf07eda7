/** What the extension host calls to measure: how soon a session's findings follow its start, and how long completion takes in a long one. */
import { commands, languages, Uri, window, workspace, type CompletionList, type TextEditor } from 'vscode';

export async function run(): Promise<void> {
  await opening();
  await completion();
  tell('finished');
}

/** The first session that is opened starts the extension. */
async function opening(): Promise<void> {
  const start = performance.now();
  const { document } = await opened('short.trib');
  await document.save();
  const shown = performance.now();
  // The samples that are measured carry nothing wrong but a hint or two; a slip is typed in at once to be found.
  const editor = await window.showTextDocument(document);
  await editor.edit((edit) => edit.insert(document.lineAt(document.lineCount - 1).range.end, '\nmark\n'));
  while (languages.getDiagnostics(document.uri).length === 0) await pause(5);
  const found = performance.now();
  tell(
    `from opening the first session, which starts the extension, to its findings ${(found - start).toFixed(0)} ms, ${(found - shown).toFixed(0)} of them after the text was shown`,
  );
  await commands.executeCommand('workbench.action.files.revert');
}

async function completion(): Promise<void> {
  const { document } = await opened('long.trib');
  while ((await offers(document.uri, 9_000)) === 0) await pause(100);
  const times: number[] = [];
  for (let line = 1_000; line < 9_000; line += 200) {
    const start = performance.now();
    await offers(document.uri, line);
    times.push(performance.now() - start);
  }
  times.sort((one, other) => one - other);
  const at = (share: number) => (times[Math.floor(share * times.length)] ?? 0).toFixed(0);
  tell(
    `completion in 10,000 lines, ${times.length} times: median ${at(0.5)} ms, nine in ten within ${at(0.9)} ms`,
  );
}

async function offers(uri: Uri, line: number): Promise<number> {
  const document = await workspace.openTextDocument(uri);
  const { range } = document.lineAt(line);
  const list = await commands.executeCommand<CompletionList>(
    'vscode.executeCompletionItemProvider',
    uri,
    range.end,
  );
  return list.items.length;
}

async function opened(name: string): Promise<TextEditor> {
  const folder = workspace.workspaceFolders?.[0];
  if (!folder) throw new Error('the editor has no folder open');
  return window.showTextDocument(await workspace.openTextDocument(Uri.joinPath(folder.uri, name)));
}

const pause = (milliseconds: number) => new Promise<void>((resolve) => setTimeout(resolve, milliseconds));

// The console of the extension host is all that reaches the page, and from there the runner.
// eslint-disable-next-line no-console
const tell = (line: string): void => console.log(`[test] ${line}`);
