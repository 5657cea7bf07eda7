/** The disk as the language server reads it: below the editor's folder, or as far as the command line would. */
import { readdirSync, type Dirent } from 'node:fs';
import { dirname } from 'node:path';
import type { Files } from '../session/files.ts';
import { diskFiles, rootOf } from './disk-files.ts';

const shared = new Map<string, Files>();

export const editorDisk = {
  filesFor: (path: string, folders: readonly string[]): Files => {
    const root = widest(rootOf(dirname(path)), folders, path);
    const files = shared.get(root) ?? diskFiles(root, '/');
    shared.set(root, files);
    return files;
  },
  sessionsBelow,
};

/** An editor may have a whole disk open; the folders nearest to its own are looked through, and no more than these. */
const MOST_FOLDERS = 5_000;
const MOST_SESSIONS = 2_000;

/** Links and folders that tools keep for themselves are left alone. */
function sessionsBelow(folder: string): readonly string[] {
  const folders = [folder];
  const sessions: string[] = [];
  for (let at = 0; at < folders.length && at < MOST_FOLDERS && sessions.length < MOST_SESSIONS; at += 1) {
    const path = folders[at] ?? folder;
    for (const entry of entriesOf(path)) {
      if (entry.isFile() && entry.name.endsWith('.trib')) sessions.push(`${path}/${entry.name}`);
      if (entry.isDirectory() && !/^(\.|node_modules$)/.test(entry.name))
        folders.push(`${path}/${entry.name}`);
    }
  }
  return sessions;
}

function entriesOf(folder: string): readonly Dirent[] {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch {
    return [];
  }
}

/** The editor's folder that the session lies in, where that reaches further. */
function widest(root: string, folders: readonly string[], path: string): string {
  const holding = folders.filter((folder) => path.startsWith(`${folder}/`));
  return [root, ...holding].reduce((wide, folder) => (folder.length < wide.length ? folder : wide));
}
