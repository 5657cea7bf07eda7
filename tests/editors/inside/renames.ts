/** A mark is renamed wherever the session speaks of it, and found in sessions that are not open. */
import { commands, workspace, type Location, type WorkspaceEdit } from 'vscode';
import expected from '../expected.json';
import { eventually, openSession, placeOf, same, type Tests } from './session.ts';

const { from, to, places } = expected.rename;

export const renameTests: Tests = {
  'a mark is renamed everywhere': async () => {
    const { document } = await openSession();
    const place = placeOf(document, from).start.translate(0, 1);
    const edit = await eventually('the rename', async () => {
      const answer = await commands.executeCommand<WorkspaceEdit>(
        'vscode.executeDocumentRenameProvider',
        document.uri,
        place,
        to,
      );
      return answer.size > 0 ? answer : undefined;
    });
    same('applied', await workspace.applyEdit(edit), true);
    same('old names left', document.getText().split(from).length - 1, 0);
    same('new names', document.getText().split(to).length - 1, places);
  },

  'a mark is found where it is written down': async () => {
    const { document } = await openSession();
    const use = document.positionAt(document.getText().lastIndexOf(from) + 1);
    const [definition] = await eventually('the definition', async () => {
      const answer = await commands.executeCommand<Location[]>(
        'vscode.executeDefinitionProvider',
        document.uri,
        use,
      );
      return answer.length > 0 ? answer : undefined;
    });
    same('the line', definition?.range.start.line, placeOf(document, `mark ${from}`).start.line);
  },

  'a mark is found in a session that nobody has opened': async () => {
    const { document } = await openSession('samples/marks.trib');
    const place = placeOf(document, from).start.translate(0, 1);
    await eventually('the session that uses the marks', async () => {
      const found = await commands.executeCommand<Location[]>(
        'vscode.executeReferenceProvider',
        document.uri,
        place,
      );
      return found.some(({ uri }) => uri.path.endsWith('/samples/north-arm.trib')) || undefined;
    });
  },
};
