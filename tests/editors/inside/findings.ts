/** Findings appear while typing, at the right place, and their fixes put them right. */
import {
  commands,
  DiagnosticSeverity,
  languages,
  workspace,
  type CodeAction,
  type Diagnostic,
  type Uri,
} from 'vscode';
import expected from '../expected.json';
import { eventually, openSession, placeOf, replace, same, type Tests } from './session.ts';

const { finding, fix } = expected;

export const findingTests: Tests = {
  'a slip in the file is found, at its place and severity': async () => {
    const { document } = await openSession();
    const found = await appears(document.uri);
    same('the line', found.range.start.line, placeOf(document, finding.at).start.line);
    same('the column', found.range.start.character, placeOf(document, finding.at).start.character);
    same('the severity', DiagnosticSeverity[found.severity].toLowerCase(), finding.severity);
    same('the source', found.source, 'tribrach');
  },

  'the finding leaves with the slip and comes back with it': async () => {
    const editor = await openSession();
    await appears(editor.document.uri);
    await replace(editor, finding.at, fix.offers);
    await leaves(editor.document.uri);
    await editor.edit((edit) => edit.replace(placeOf(editor.document, fix.offers), finding.at));
    await appears(editor.document.uri);
  },

  'a fix is offered and leaves the right text': async () => {
    const { document } = await openSession();
    const { range } = await appears(document.uri);
    const action = await eventually('the fix', async () => {
      const actions = await commands.executeCommand<CodeAction[]>(
        'vscode.executeCodeActionProvider',
        document.uri,
        range,
        'quickfix',
        10,
      );
      return actions.find(({ title, edit }) => title.includes(fix.offers) && edit !== undefined);
    });
    if (action.edit === undefined) throw new Error('the fix has no edit');
    same('applied', await workspace.applyEdit(action.edit), true);
    same('the line', document.lineAt(range.start.line).text, fix.leaves);
    await leaves(document.uri);
  },
};

function appears(session: Uri): Promise<Diagnostic> {
  return eventually(`the finding ${finding.code}`, () => slips(session)[0]);
}

async function leaves(session: Uri): Promise<void> {
  await eventually(`${finding.code} to leave`, () => slips(session).length === 0 || undefined);
}

function slips(session: Uri): readonly Diagnostic[] {
  return languages.getDiagnostics(session).filter(({ code }) => {
    const name = typeof code === 'object' ? code.value : code;
    return name === finding.code;
  });
}
