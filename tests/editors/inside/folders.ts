/** In a workspace of several folders each session finds its own files, also where one of the folders is no place on a disk. */
import { languages, Uri, window, workspace, type TextDocument } from 'vscode';
import { offerElsewhere } from './elsewhere.ts';
import { eventually, same, type Tests } from './session.ts';

export const folderTests: Tests = {
  'there are two folders, one of them not on the disk of the server': async () => {
    await offerElsewhere();
    same('folders', workspace.workspaceFolders?.length, 2);
    same('schemes', new Set(workspace.workspaceFolders?.map(({ uri }) => uri.scheme)).size, 2);
  },

  'a session in each folder reads the files that it names': async () => {
    for (const folder of bothFolders()) {
      const { uri } = await shown(Uri.joinPath(folder.uri, 'samples', 'north-arm.trib'));
      const codes = () => languages.getDiagnostics(uri).map(({ message }) => message);
      // Its marks come from another file; without it the session would be full of errors.
      await eventually('the inlays of the session', async () => codes());
      await new Promise<void>((resolve) => setTimeout(resolve, 3000));
      same(`what is found in ${uri.toString()}`, codes().join('\n'), '');
    }
  },

  'what is missing in one folder is not taken from the other': async () => {
    for (const folder of bothFolders()) {
      const content = 'job "Quay"\nuse "nowhere.trib"\n';
      const uri = Uri.joinPath(folder.uri, 'quay.trib');
      await workspace.fs.writeFile(uri, new TextEncoder().encode(content));
      await shown(uri);
      await eventually(
        'the finding about the missing file',
        () =>
          languages.getDiagnostics(uri).some(({ message }) => message.includes('nowhere.trib')) || undefined,
      );
      await workspace.fs.delete(uri);
    }
  },
};

/** A test that met no folder would have tried nothing. */
function bothFolders() {
  same('folders', workspace.workspaceFolders?.length, 2);
  return workspace.workspaceFolders ?? [];
}

async function shown(uri: Uri): Promise<TextDocument> {
  const document = await workspace.openTextDocument(uri);
  await window.showTextDocument(document);
  return document;
}
