/** The palette's pages open beside the session and say what the session says. */
import { commands, window, type TextDocument } from 'vscode';
import expected from '../expected.json';
import { eventually, openSession, replace, type Tests } from './session.ts';

const { page, edit } = expected;

export const pageTests: Tests = {
  'what to key opens beside the session and follows the typing': async () => {
    const editor = await openSession();
    await commands.executeCommand(page.command);
    const shown = await eventually('the page to open', openPage);
    await eventually(`the page to say ${page.says}`, () => shown.getText().includes(page.says) || undefined);
    await replace(editor, edit.replace, edit.by);
    await eventually(
      `the page to say ${edit.inlaySays}`,
      () => shown.getText().includes(edit.inlaySays) || undefined,
    );
    await window.showTextDocument(editor.document);
  },

  'the other pages open': async () => {
    const { document } = await openSession();
    for (const command of ['tribrach.checkSession', 'tribrach.deriveValues']) {
      await openSession();
      await commands.executeCommand(command);
      await eventually(`the page of ${command}`, () => (openPage()?.getText() ?? '') !== '' || undefined);
    }
    await window.showTextDocument(document);
  },
};

function openPage(): TextDocument | undefined {
  return window.visibleTextEditors
    .map(({ document }) => document)
    .find(({ uri }) => uri.scheme === 'tribrach');
}
