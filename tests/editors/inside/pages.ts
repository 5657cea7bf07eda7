/** The palette's pages open beside the session and say what the session says. */
import {
  commands,
  languages,
  TabInputWebview,
  Uri,
  window,
  workspace,
  type CodeAction,
  type Tab,
  type TextDocument,
} from 'vscode';
import expected from '../expected.json';
import { eventually, openSession, placeOf, replace, same, type Tests } from './session.ts';

const { page } = expected;

export const pageTests: Tests = {
  'what was found opens beside the session and follows the typing': async () => {
    const editor = await openSession();
    await commands.executeCommand('tribrach.checkSession');
    const shown = await eventually('the page to open', openPage);
    const { code } = expected.finding;
    await eventually(`the page to say ${code}`, () => shown.getText().includes(code) || undefined);
    await replace(editor, expected.finding.at, expected.fix.offers);
    await eventually(`the page to be without ${code}`, () => !shown.getText().includes(code) || undefined);
    await window.showTextDocument(editor.document);
  },

  'what to key opens beside the session, once': async () => {
    const { document } = await openSession();
    await commands.executeCommand(page.command);
    await eventually('the card', () => cards().length > 0 || undefined);
    await window.showTextDocument(document);
    await commands.executeCommand(page.command);
    same('cards', cards().length, 1);
    same('its title', cards()[0]?.label, `What to key: ${expected.session}`);
  },

  'a finding has an action that explains it': async () => {
    const { document } = await openSession();
    const place = placeOf(document, expected.finding.at);
    const action = await eventually('the action', async () => {
      const actions = await commands.executeCommand<CodeAction[]>(
        'vscode.executeCodeActionProvider',
        document.uri,
        place,
      );
      return actions.find(({ title }) => title === `Explain ${expected.finding.code}`);
    });
    const [code] = (action.command?.arguments ?? []) as string[];
    const uri = Uri.from({ scheme: 'tribrach', path: '/page.md', query: `explains=${code ?? ''}` });
    const explained = await workspace.openTextDocument(uri);
    same('its heading', explained.lineAt(0).text, `# ${expected.finding.code}`);
    same('what to do', explained.getText().includes('**What to do.**'), true);
  },

  'the code of a finding leads to its page': async () => {
    const { document } = await openSession();
    const target = await eventually(
      'the address',
      () =>
        languages
          .getDiagnostics(document.uri)
          .map(({ code }) => (typeof code === 'object' ? code : null))
          .find((code) => code?.value === expected.finding.code)?.target,
    );
    const explained = await workspace.openTextDocument(target);
    same('its heading', explained.lineAt(0).text, `# ${expected.finding.code}`);
  },

  'a page about a session wraps its lines': async () => {
    await openSession();
    await commands.executeCommand('tribrach.checkSession');
    const shown = await eventually('the page to open', openPage);
    const asked = workspace.getConfiguration('editor', { languageId: shown.languageId });
    same('wrapping', asked.get('wordWrap'), 'on');
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

const cards = (): Tab[] =>
  window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(({ input }) => input instanceof TabInputWebview && input.viewType.endsWith('tribrach.card'));
