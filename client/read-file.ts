/** Hands a server what it cannot read from a disk: the files that sessions name, out of the folders that the editor has open and no others. */
import { FileSystemError, FileType, Uri, workspace } from 'vscode';

/** The most that is sent to a worker at once, in bytes. */
const LARGEST = 256 * 1024 * 1024;

/** Bytes go to a worker as they are; a process is told them in text. */
type Contents = { readonly bytes: Uint8Array } | { readonly base64: string } | { readonly refused: string };

interface Asked {
  readonly address: string;
  readonly inText?: boolean;
}

export async function readFile({ address, inText }: Asked): Promise<Contents> {
  const uri = Uri.parse(address);
  if (workspace.getWorkspaceFolder(uri) === undefined)
    return { refused: 'it lies outside the folders that the editor has open' };
  try {
    const { type, size } = await workspace.fs.stat(uri);
    if ((type & FileType.File) === 0) return { refused: 'it is no ordinary file' };
    if (size > LARGEST)
      return { refused: `it is larger than ${LARGEST / 1024 / 1024} MB, the most that is read` };
    const bytes = await workspace.fs.readFile(uri);
    return inText ? { base64: base64Of(bytes) } : { bytes };
  } catch (error) {
    const missing = error instanceof FileSystemError && error.code === 'FileNotFound';
    return { refused: missing ? 'there is no such file' : 'the editor cannot read it' };
  }
}

function base64Of(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += PIECE)
    text += String.fromCharCode(...bytes.subarray(at, at + PIECE));
  return btoa(text);
}
const PIECE = 8192;
