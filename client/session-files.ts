/** Lists for a server without a disk the session files below a folder that the editor has open. */
import { FileType, Uri, workspace } from 'vscode';

/** As far as a server with a disk looks. */
const MOST_FOLDERS = 5_000;
const MOST_SESSIONS = 2_000;

/** Addresses; what cannot be looked into is passed over, and so are links and folders that tools keep for themselves. */
export async function sessionFilesBelow({ address }: { readonly address: string }): Promise<string[]> {
  const folders = [Uri.parse(address)];
  const sessions: string[] = [];
  for (let at = 0; at < folders.length && at < MOST_FOLDERS && sessions.length < MOST_SESSIONS; at += 1) {
    const folder = folders[at];
    if (!folder || workspace.getWorkspaceFolder(folder) === undefined) continue;
    for (const [name, type] of await entriesOf(folder)) {
      const uri = Uri.joinPath(folder, name);
      if (type === FileType.File && name.endsWith('.trib')) sessions.push(uri.toString());
      if (type === FileType.Directory && !/^(\.|node_modules$)/.test(name)) folders.push(uri);
    }
  }
  return sessions;
}

async function entriesOf(folder: Uri): Promise<[string, FileType][]> {
  try {
    return await workspace.fs.readDirectory(folder);
  } catch {
    return [];
  }
}
