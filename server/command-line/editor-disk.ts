/** The disk as the language server reads it: below the editor's folder, or as far as the command line would. */
import { dirname } from 'node:path';
import type { Files } from '../session/files.ts';
import { diskFiles, rootOf } from './disk-files.ts';
import { sessionsBelow } from './session-paths.ts';

const shared = new Map<string, Files>();

export const editorDisk = {
  filesFor: (path: string, folders: readonly string[]): Files => {
    const root = widest(rootOf(dirname(path)), folders, path);
    const files = shared.get(root) ?? diskFiles(root, '/');
    shared.set(root, files);
    return files;
  },
  sessionsBelow: (folder: string): readonly string[] => sessionsBelow(folder, []),
};

/** The editor's folder that the session lies in, where that reaches further. */
function widest(root: string, folders: readonly string[], path: string): string {
  const holding = folders.filter((folder) => path.startsWith(`${folder}/`));
  return [root, ...holding].reduce((wide, folder) => (folder.length < wide.length ? folder : wide));
}
