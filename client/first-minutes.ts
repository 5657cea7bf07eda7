/** The first minutes: a session of one's own to fill in, and an example day to plant a slip in and see it caught. */
import {
  commands,
  DiagnosticSeverity,
  languages,
  Range,
  Selection,
  TextEditorRevealType,
  Uri,
  ViewColumn,
  window,
  workspace,
  type Disposable,
  type TextDocument,
  type TextEditor,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { today } from './calendar.ts';
import { nameOf } from './in-front.ts';
import { offerRestart } from './server-end.ts';

export function registerFirstMinutes(extension: Uri, client: BaseLanguageClient): readonly Disposable[] {
  let example: TextDocument | null = null;

  async function showExample(): Promise<TextEditor> {
    if (!example || example.isClosed) {
      const file = Uri.joinPath(extension, 'samples', 'example-day.trib');
      example = await opened(new TextDecoder().decode(await workspace.fs.readFile(file)));
    }
    return show(example);
  }

  return [
    commands.registerCommand('tribrach.newSession', (told?: Begun) => beginSession(client, told ?? {})),
    commands.registerCommand('tribrach.openExampleDay', async () => void (await showExample())),
    commands.registerCommand('tribrach.plantSlip', async () => plantSlip(await showExample())),
  ];
}

/** Who begins a session from elsewhere may say what it is called and where it lies; what is not said is asked. */
interface Begun {
  readonly name?: string;
  readonly file?: Uri;
}

/** A file with the questions of the day, saved under the day and the name of the job; its first question is chosen. */
async function beginSession(client: BaseLanguageClient, told: Begun): Promise<void> {
  if (!client.isRunning()) {
    const running = await offerRestart('A session is begun by the language server, which is not running.');
    if (!running) return;
  }
  const name = told.name ?? (await askName());
  if (name === undefined) return;
  const file = told.file ?? (await askFile(name));
  if (!file) return;
  const asked = { date: today(), ...(name === '' ? {} : { name }) };
  const { text } = await client.sendRequest<{ text: string }>('tribrach/newSession', asked);
  try {
    await workspace.fs.writeFile(file, new TextEncoder().encode(text));
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    void window.showErrorMessage(`${nameOf(file)} could not be written: ${reason}`);
    return;
  }
  await show(await workspace.openTextDocument(file));
  await commands.executeCommand('tribrach.nextQuestion');
}

const askName = () =>
  window.showInputBox({
    title: 'Begin a session (1 of 2)',
    prompt: 'What is measured, and where? It becomes the name of the job. Leave it empty to answer later.',
    placeHolder: 'Breakwater as-built',
  });

/** Named after the day and the job, beside the other sessions. */
function askFile(name: string): Thenable<Uri | undefined> {
  const file = `${[today(), ...name.toLowerCase().split(/[^\p{L}\p{N}]+/u)].filter(Boolean).join('-')}.trib`;
  const folder = workspace.workspaceFolders?.[0]?.uri;
  return window.showSaveDialog({
    title: 'Begin a session (2 of 2): where to keep it',
    saveLabel: 'Begin',
    ...(folder ? { defaultUri: Uri.joinPath(folder, file) } : {}),
    filters: { 'Survey sessions': ['trib'] },
  });
}

/** What was keyed without the extension of 250 mm, and the heights that the checks would then have shown. */
const SLIP = [
  { right: 'antenna-height 1.533 m', wrong: 'antenna-height 1.283 m' },
  { right: 'height 5.203 m', wrong: 'height 4.953 m' },
  { right: 'height 5.199 m', wrong: 'height 4.949 m' },
] as const;

/** Leaves out the extension in the example day, and shows what is found. */
async function plantSlip(editor: TextEditor): Promise<void> {
  const text = editor.document.getText();
  const places = SLIP.map(({ right, wrong }) => ({ at: text.indexOf(right), right, wrong }));
  if (places.every(({ at }) => at >= 0))
    await editor.edit((edit) => {
      for (const { at, right, wrong } of places)
        edit.replace(placeOf(editor.document, at, right.length), wrong);
    });
  const [{ wrong }] = SLIP;
  const keyed = editor.document.getText().indexOf(wrong);
  if (keyed < 0) {
    void window.showInformationMessage(
      'The example day has been changed where the slip would be planted. Close it without saving, and plant the slip again.',
    );
    return;
  }
  choose(editor, keyed + wrong.lastIndexOf('283'), 0);
  if (!(await isCaught(editor.document))) return;
  // Scrolling and marks that come in would hide what is shown at once.
  await pause(500);
  await commands.executeCommand('editor.action.showHover', { focus: 'noAutoFocus' });
}

/** Findings follow the typing closely; whoever waits longer than this has a slow machine, and sees the wave all the same. */
const PATIENCE = { tries: 50, pause: 100 };

async function isCaught(document: TextDocument): Promise<boolean> {
  for (let tries = 0; tries < PATIENCE.tries; tries++) {
    const found = languages.getDiagnostics(document.uri);
    if (found.some(({ severity }) => severity === DiagnosticSeverity.Error)) return true;
    await pause(PATIENCE.pause);
  }
  return false;
}

const pause = (milliseconds: number) => new Promise<void>((resolve) => setTimeout(resolve, milliseconds));

const opened = (content: string): Promise<TextDocument> =>
  Promise.resolve(workspace.openTextDocument({ language: 'tribrach', content }));

/** Beside a walkthrough, which is no editor of text; else where the cursor is. */
async function show(document: TextDocument): Promise<TextEditor> {
  const shown = window.visibleTextEditors.find((editor) => editor.document === document);
  const inWalkthrough = !window.activeTextEditor && window.tabGroups.activeTabGroup.tabs.length > 0;
  const viewColumn = shown?.viewColumn ?? (inWalkthrough ? ViewColumn.Beside : ViewColumn.Active);
  return window.showTextDocument(document, { viewColumn, preview: false });
}

const placeOf = (document: TextDocument, at: number, length: number): Range =>
  new Range(document.positionAt(at), document.positionAt(at + length));

function choose(editor: TextEditor, at: number, length: number): void {
  const place = placeOf(editor.document, at, length);
  editor.selection = new Selection(place.start, place.end);
  editor.revealRange(place, TextEditorRevealType.InCenterIfOutsideViewport);
}
