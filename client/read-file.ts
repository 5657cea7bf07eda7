/** Hands a server without a disk the files that sessions name, out of the folders that the editor has open and no others. */
import { FileSystemError, FileType, Uri, workspace } from 'vscode';

/** The most that is sent to a worker at once, in bytes. */
const LARGEST = 256 * 1024 * 1024;

type Contents = { readonly bytes: Uint8Array } | { readonly refused: string };

export async function readFile({ address }: { readonly address: string }): Promise<Contents> {
  const uri = Uri.parse(address);
  if (workspace.getWorkspaceFolder(uri) === undefined)
    return { refused: 'it lies outside the folders that the editor has open' };
  try {
    const { type, size } = await workspace.fs.stat(uri);
    if ((type & FileType.File) === 0) return { refused: 'it is no ordinary file' };
    if (size > LARGEST)
      return { refused: `it is larger than ${LARGEST / 1024 / 1024} MB, the most that is read` };
    return { bytes: await workspace.fs.readFile(uri) };
  } catch (error) {
    const missing = error instanceof FileSystemError && error.code === 'FileNotFound';
    return { refused: missing ? 'there is no such file' : 'the editor cannot read it' };
  }
}
