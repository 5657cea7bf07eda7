/** The first minutes: a session to fill in, an example day without a fault, and a slip planted in it that is caught. */
import { commands, DiagnosticSeverity, languages, window, type TextEditor, type Uri } from 'vscode';
import { eventually, openSession, same, type Tests } from './session.ts';

export const firstMinutesTests: Tests = {
  'a session is begun with its questions, the first of them chosen': async () => {
    await openSession();
    await commands.executeCommand('tribrach.newSession');
    const { document, selection } = front();
    same('the language', document.languageId, 'tribrach');
    same('where it lies', document.uri.scheme, 'untitled');
    same('what is chosen', document.getText(selection), '?');
    const now = new Date();
    same('this year', document.getText().includes(`date        ${now.getFullYear()}-`), true);
    await commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
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

const errors = (uri: Uri) =>
  languages.getDiagnostics(uri).filter(({ severity }) => severity === DiagnosticSeverity.Error);
