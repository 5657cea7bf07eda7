/** Commands of the palette for which the command line does the work, in a terminal that shows what it says. */
import {
  commands,
  ProcessExecution,
  Task,
  TaskScope,
  tasks,
  Uri,
  window,
  workspace,
  type Disposable,
  type ExtensionContext,
} from 'vscode';
import { nameOf, sessionInFront } from './in-front.ts';

export function registerProgramTasks(context: ExtensionContext): readonly Disposable[] {
  const program = context.asAbsolutePath('dist/tribrach.cjs');
  const run = (title: string, words: readonly string[]) => {
    // The editor's own engine, asked to be Node.
    const execution = new ProcessExecution(process.execPath, [program, ...words], {
      env: { ELECTRON_RUN_AS_NODE: '1' },
    });
    return tasks.executeTask(
      new Task({ type: 'process' }, TaskScope.Workspace, title, 'Tribrach', execution),
    );
  };
  return [
    commands.registerCommand('tribrach.repairPoints', async () => {
      const session = sessionInFront();
      if (!session || !(await saved(session))) return;
      const [folder] = (await window.showOpenDialog(FOLDER)) ?? [];
      if (!folder) return;
      const out = Uri.joinPath(folder, `${nameOf(session).replace(/\.trib$/, '')} points`).fsPath;
      await run('Points', ['points', session.fsPath, '--out', out]);
    }),
    commands.registerCommand('tribrach.lookIntoRecording', async () => {
      const [file] = (await window.showOpenDialog({ title: 'A recording of corrections' })) ?? [];
      if (file) await run('Recording', ['capture', file.fsPath]);
    }),
    commands.registerCommand('tribrach.marksFromRegister', async () => {
      const [file] = (await window.showOpenDialog({ title: 'An extract of a register of marks' })) ?? [];
      if (!file) return;
      const target = await window.showSaveDialog({
        title: 'Save the marks file',
        defaultUri: Uri.joinPath(file, '..', 'marks.trib'),
        filters: { Sessions: ['trib'] },
      });
      const columns = /json$/i.test(file.path) ? [] : await askColumns();
      if (target && columns) await run('Marks', ['marks', file.fsPath, ...columns, '--out', target.fsPath]);
    }),
  ];
}

const FOLDER = {
  title: 'Where the points are to be written',
  openLabel: 'Write Here',
  canSelectFiles: false,
  canSelectFolders: true,
};

/** The command line reads what is on the disk. */
async function saved(session: Uri): Promise<boolean> {
  if (session.scheme !== 'file') {
    void window.showInformationMessage('Save the session to a file first; its points are read beside it.');
    return false;
  }
  const document = workspace.textDocuments.find(({ uri }) => uri.toString() === session.toString());
  return document === undefined || !document.isDirty || document.save();
}

async function askColumns(): Promise<string[] | null> {
  const columns = await window.showInputBox({
    title: 'What the columns of the extract mean, in their order',
    value: 'name, east m, north m, height m orthometric',
  });
  return columns === undefined ? null : ['--columns', columns];
}
