/** A folder held in memory, for an editor without a disk: the tests' workspace, as the page's server hands it out. */
import {
  Disposable,
  EventEmitter,
  FileChangeType,
  FileSystemError,
  FileType,
  Uri,
  workspace,
  type ExtensionContext,
  type FileChangeEvent,
  type FileSystemProvider,
} from 'vscode';

export async function activate(context: ExtensionContext): Promise<void> {
  const address = context.extensionUri.with({ path: '/workspace.json' }).toString(true);
  const encoded = (await (await fetch(address)).json()) as Record<string, string>;
  const contents = new Map(
    Object.entries(encoded).map(([path, base64]) => [`/workspace/${path}`, bytesOf(base64)]),
  );
  const allFiles = { provideFileSearchResults: () => [...contents.keys()].map(inMemory) };
  context.subscriptions.push(
    workspace.registerFileSystemProvider('memory', memoryFiles(contents)),
    proposed.registerFileSearchProvider('memory', allFiles),
  );
}

/** Without a search provider a search for files would never end; the editor's published types do not have it yet. */
const proposed = workspace as typeof workspace & {
  registerFileSearchProvider(scheme: string, provider: { provideFileSearchResults(): Uri[] }): Disposable;
};

function memoryFiles(contents: Map<string, Uint8Array>): FileSystemProvider {
  const changes = new EventEmitter<FileChangeEvent[]>();
  const below = (folder: string) => [...contents.keys()].filter((path) => path.startsWith(`${folder}/`));
  return {
    onDidChangeFile: changes.event,
    watch: () => new Disposable(() => undefined),
    stat: (uri) => {
      const bytes = contents.get(uri.path);
      if (bytes !== undefined) return { type: FileType.File, ctime: 0, mtime: 0, size: bytes.length };
      if (below(uri.path).length === 0) throw FileSystemError.FileNotFound(uri);
      return { type: FileType.Directory, ctime: 0, mtime: 0, size: 0 };
    },
    readDirectory: ({ path }) => {
      const names = below(path).map((file) => file.slice(path.length + 1).split('/'));
      const entries = names.map(([name = '', ...inside]): [string, FileType] => [
        name,
        inside.length > 0 ? FileType.Directory : FileType.File,
      ]);
      return [...new Map(entries)];
    },
    readFile: (uri) => {
      const bytes = contents.get(uri.path);
      if (bytes === undefined) throw FileSystemError.FileNotFound(uri);
      return bytes;
    },
    writeFile: (uri, bytes) => {
      const type = contents.has(uri.path) ? FileChangeType.Changed : FileChangeType.Created;
      contents.set(uri.path, bytes);
      changes.fire([{ type, uri }]);
    },
    delete: (uri) => {
      contents.delete(uri.path);
      changes.fire([{ type: FileChangeType.Deleted, uri }]);
    },
    createDirectory: refuse,
    rename: refuse,
  };
}

function bytesOf(base64: string): Uint8Array {
  return Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
}

function inMemory(path: string): Uri {
  return Uri.from({ scheme: 'memory', path });
}

function refuse(): never {
  throw FileSystemError.NoPermissions('the folder in memory holds files of one level only');
}
