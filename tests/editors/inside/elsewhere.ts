/** A folder that lies in no file system of the machine: the samples of the first folder, held in memory under a scheme of their own. */
import {
  Disposable,
  EventEmitter,
  FileSystemError,
  FileType,
  Uri,
  workspace,
  type FileChangeEvent,
} from 'vscode';
import { eventually } from './session.ts';

export async function offerElsewhere(): Promise<void> {
  const first = await eventually('the folders', () => workspace.workspaceFolders?.[0]);
  const contents = new Map<string, Uint8Array>();
  for (const path of ['samples/north-arm.trib', 'samples/marks.trib', 'samples/grids/region.gtx'])
    contents.set(`/${path}`, await workspace.fs.readFile(Uri.joinPath(first.uri, path)));
  const folders = new Set(['/', '/samples', '/samples/grids']);
  workspace.registerFileSystemProvider('elsewhere', {
    onDidChangeFile: new EventEmitter<FileChangeEvent[]>().event,
    watch: () => new Disposable(() => undefined),
    stat: ({ path }) => {
      const bytes = contents.get(path);
      if (!bytes && !folders.has(path)) throw FileSystemError.FileNotFound(path);
      return {
        type: bytes ? FileType.File : FileType.Directory,
        ctime: 0,
        mtime: 0,
        size: bytes?.length ?? 0,
      };
    },
    readDirectory: ({ path }) =>
      [...contents.keys()]
        .filter((file) => file.startsWith(path) && !file.slice(path.length + 1).includes('/'))
        .map((file): [string, FileType] => [file.slice(path.length).replace('/', ''), FileType.File]),
    readFile: ({ path }) => {
      const bytes = contents.get(path);
      if (!bytes) throw FileSystemError.FileNotFound(path);
      return bytes;
    },
    writeFile: ({ path }, bytes) => void contents.set(path, bytes),
    delete: ({ path }) => void contents.delete(path),
    createDirectory: refuse,
    rename: refuse,
  });
}

function refuse(): never {
  throw FileSystemError.NoPermissions('this folder keeps the files that it has');
}
