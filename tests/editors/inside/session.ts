/** What the tests inside an editor share: the session under test as it lies on the disk, places in it, and waiting. */
import { commands, Range, Uri, window, workspace, type TextDocument, type TextEditor } from 'vscode';
import expected from '../expected.json';

export type Tests = Readonly<Record<string, () => Promise<void>>>;

export async function openSession(name = expected.session): Promise<TextEditor> {
  const folder = workspace.workspaceFolders?.[0];
  if (folder === undefined) throw new Error('the editor has no folder open');
  await commands.executeCommand('workbench.action.closeAllEditors');
  const document = await workspace.openTextDocument(Uri.joinPath(folder.uri, name));
  return window.showTextDocument(document, { preview: false });
}

/** Gives back the text on the disk, so that one test never sees another's typing. */
export async function revert(): Promise<void> {
  await commands.executeCommand('workbench.action.files.revert');
}

export function placeOf(document: TextDocument, text: string): Range {
  const start = document.getText().indexOf(text);
  if (start < 0) throw new Error(`the session does not contain ${text}`);
  return new Range(document.positionAt(start), document.positionAt(start + text.length));
}

export async function replace(editor: TextEditor, text: string, by: string): Promise<void> {
  const place = placeOf(editor.document, text);
  const done = await editor.edit((edit) => edit.replace(place, by));
  if (!done) throw new Error(`the editor refused to replace ${text}`);
}

/** The first answer that is not undefined, asked for ten times a second; after 15 s a failure that names what was missed. */
export async function eventually<Answer>(
  what: string,
  ask: () => Answer | undefined | PromiseLike<Answer | undefined>,
): Promise<Answer> {
  const end = Date.now() + 15_000;
  while (Date.now() < end) {
    const answer = await ask();
    if (answer !== undefined) return answer;
    await new Promise<void>((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`waited 15 s in vain for ${what}`);
}

export function same(what: string, found: unknown, wanted: unknown): void {
  if (found !== wanted)
    throw new Error(`${what}: found ${JSON.stringify(found)}, expected ${JSON.stringify(wanted)}`);
}
