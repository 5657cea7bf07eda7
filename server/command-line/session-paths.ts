/** Which session files a command line means: files as named, folders with every session below. */
import { readdirSync, statSync, type Dirent } from 'node:fs';
import { CannotRun } from './io.ts';
import { reasonOf } from './read-file.ts';

export const STANDARD_INPUT = '-';

/** Each file once, in the order of the command line; folders in the order of their names, and without a session only where that may be. */
export function sessionPaths(paths: readonly string[], mayBeNone = false): string[] {
  const reasons: string[] = [];
  const found = paths.flatMap((path) => {
    try {
      return path === STANDARD_INPUT || !statSync(path).isDirectory() ? [tidy(path)] : below(path);
    } catch (error) {
      reasons.push(`cannot read ${path}: ${reasonOf(error)}`);
      return [];
    }
  });
  if (reasons.length > 0) throw new CannotRun(reasons);
  return [...new Set(found)];

  function below(folder: string): string[] {
    const sessions = sessionsBelow(tidy(folder), reasons);
    if (sessions.length === 0 && reasons.length === 0 && !mayBeNone)
      reasons.push(`there is no session file (NAME.trib) in ${folder}`);
    return sessions;
  }
}

/** Links are not followed: what they lead to inside the folder is found there, and what lies outside was not asked for. */
function sessionsBelow(folder: string, reasons: string[]): string[] {
  const inside = (entry: Dirent) =>
    folder === '.' ? entry.name : `${folder}${folder.endsWith('/') ? '' : '/'}${entry.name}`;
  let entries: Dirent[];
  try {
    entries = readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    reasons.push(`cannot read ${folder}: ${reasonOf(error)}`);
    return [];
  }
  return entries
    .sort((one, other) => (one.name < other.name ? -1 : 1))
    .flatMap((entry) => {
      if (entry.isDirectory()) return SKIPPED.has(entry.name) ? [] : sessionsBelow(inside(entry), reasons);
      return entry.isFile() && entry.name.endsWith('.trib') ? [inside(entry)] : [];
    });
}

const SKIPPED = new Set(['node_modules', '.git']);

/**
 * `/` between folders, and one spelling for a path, so that a file used and a file named are the same.
 * @param platform as Node names it; on Windows a disk (`C:/`) and another machine (`//server/share`) begin as they do there
 */
export function tidy(path: string, platform: string = process.platform): string {
  if (platform !== 'win32') return plain(path, '');
  const slashed = path.replaceAll('\\', '/');
  const [start = ''] = /^(?:\/\/(?=[^/])|[a-z]:\/+)?/i.exec(slashed) ?? [];
  return start === ''
    ? plain(slashed, '')
    : plain(slashed.slice(start.length), start.replace(/(?<=:)\/+/, '/'));
}

const plain = (path: string, start: string) =>
  start +
  path
    .replace(/\/+/g, '/')
    .replace(/^(\.\/)+(?=.)/, '')
    .replace(/(?<=.)\/$/, '');
