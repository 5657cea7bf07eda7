/** The first minutes: a session to fill in, an example day without a fault, and a slip planted in it that is caught. */
import {
  commands,
  CompletionItemKind,
  DiagnosticSeverity,
  languages,
  Uri,
  window,
  workspace,
  type CompletionList,
  type TextEditor,
} from 'vscode';
import { eventually, openSession, same, type Tests } from './session.ts';

export const firstMinutesTests: Tests = {
  'a session is begun in a file, with its questions, and one leads to the next': async () => {
    await openSession();
    const folder = workspace.workspaceFolders?.[0]?.uri;
    if (!folder) throw new Error('the editor has no folder open');
    const file = Uri.joinPath(folder, 'begun.trib');
    await commands.executeCommand('tribrach.newSession', { name: 'North quay', file });
    const editor = front();
    const { document } = editor;
    same('the language', document.languageId, 'tribrach');
    same('where it lies', document.uri.toString(), file.toString());
    same('whether it is saved', document.isDirty, false);
    same('the job', document.getText().includes('job "North quay"'), true);
    const now = new Date();
    same('this year', document.getText().includes(`date        ${now.getFullYear()}-`), true);
    same('what is chosen', document.getText(editor.selection), '?');
    same('the question', asked(editor), 'clock');
    await commands.executeCommand('hideSuggestWidget');
    await commands.executeCommand('tribrach.nextQuestion');
    same('the next question', asked(editor), 'observer');
    same('what is chosen next', document.getText(editor.selection), '?');
    await commands.executeCommand('tribrach.previousQuestion');
    same('the question before', asked(editor), 'clock');
    await commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
    await workspace.fs.delete(file);
  },

  'a question offers its answers, which take its place': async () => {
    const editor = await openSession();
    const end = editor.document.lineAt(editor.document.lineCount - 1).range.end;
    await editor.edit((edit) => edit.insert(end, '\nmark NEW\n  found       ?\n'));
    const at = editor.document.positionAt(editor.document.getText().lastIndexOf('?') + 1);
    const offers = await eventually('the answers', async () => {
      const { items } = await commands.executeCommand<CompletionList>(
        'vscode.executeCompletionItemProvider',
        editor.document.uri,
        at,
      );
      return items.some(({ kind }) => kind === CompletionItemKind.EnumMember) ? items : undefined;
    });
    const labels = offers.map(({ label }) => (typeof label === 'string' ? label : label.label));
    same('the answers', labels.join(' '), 'intact damaged disturbed destroyed not-found');
    same('what the editor compares', offers[0]?.filterText, '?intact');
  },

  'a slip planted in the example day is caught at its line': async () => {
    await openSession();
    await commands.executeCommand('tribrach.openExampleDay');
    const { document } = front();
    await eventually('the hints of the example day to be read', () => languages.getDiagnostics(document.uri));
    same('errors in the example day', errors(document.uri).length, 0);
    await commands.executeCommand('tribrach.plantSlip');
    const [found] = await eventually('the slip to be caught', () => {
      const all = errors(document.uri);
      return all.length > 0 ? all : undefined;
    });
    same(
      'what is found',
      String(found?.code instanceof Object ? found.code.value : found?.code),
      'height/extension',
    );
    same('the text there', found && document.getText(found.range), '1.283 m');
    const text = document.getText();
    await commands.executeCommand('tribrach.plantSlip');
    same('the text, planted again', document.getText(), text);
    await commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  },
};

function front(): TextEditor {
  const editor = window.activeTextEditor;
  if (!editor) throw new Error('no text is in front');
  return editor;
}

const asked = ({ document, selection }: TextEditor) =>
  document.lineAt(selection.start.line).text.trim().split(' ')[0];

const errors = (uri: Uri) =>
  languages.getDiagnostics(uri).filter(({ severity }) => severity === DiagnosticSeverity.Error);
