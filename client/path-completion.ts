/** Paths behind the words that name a file, such as `use` and `geoid`: what lies in the folder that was typed so far. */
import {
  CompletionItem,
  CompletionItemKind,
  FileType,
  languages,
  Range,
  Uri,
  workspace,
  type Disposable,
  type Position,
  type TextDocument,
} from 'vscode';
import { pathBefore, type TypedPath } from './typed-path.ts';

export const registerPaths = (): Disposable =>
  languages.registerCompletionItemProvider({ language: 'tribrach' }, { provideCompletionItems }, '"', '/');

async function provideCompletionItems(document: TextDocument, position: Position): Promise<CompletionItem[]> {
  const typed = pathBefore(document.lineAt(position).text, position.character);
  // In a folder that nobody trusts no file is read that a session names, and none is listed either.
  if (!typed || !workspace.isTrusted || document.uri.scheme === 'untitled') return [];
  try {
    const entries = await workspace.fs.readDirectory(
      Uri.joinPath(document.uri, '..', typed.folder.replace(/\/$/, '')),
    );
    const range = new Range(position.translate(0, -typed.started.length), position);
    return entries.flatMap(([name, type]) => offered(name, type, typed, range));
  } catch {
    return [];
  }
}

function offered(name: string, type: FileType, { endings }: TypedPath, range: Range): CompletionItem[] {
  const isFolder = (type & FileType.Directory) !== 0;
  const fits = isFolder || endings === null || endings.some((ending) => name.toLowerCase().endsWith(ending));
  // A quote in a name would end the text; what begins with a point is for programs.
  if (!fits || name.startsWith('.') || name.includes('"')) return [];
  const item = new CompletionItem(
    isFolder ? `${name}/` : name,
    isFolder ? CompletionItemKind.Folder : CompletionItemKind.File,
  );
  item.range = range;
  item.sortText = `${isFolder ? '1' : '0'}${name}`;
  if (isFolder) item.command = { command: 'editor.action.triggerSuggest', title: 'Go on' };
  return [item];
}
