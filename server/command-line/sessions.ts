/** Opens and inspects the sessions that a command line names; all of them, or none with the reasons. */
import { dirname } from 'node:path';
import { statSync } from 'node:fs';
import { openDocument } from '../../grammar/document.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { isRefusal } from '../quantities/refusal.ts';
import type { Files } from '../session/files.ts';
import { isDay } from '../record/notes/new-session.ts';
import { diskFiles, rootOf } from './disk-files.ts';
import { CannotRun, type Io } from './io.ts';
import { LARGEST_SESSION, readWhole, reasonOf, sessionText } from './read-file.ts';
import { sessionPaths, STANDARD_INPUT } from './session-paths.ts';

export interface SessionOptions {
  /** The folder that nothing is read outside of. */
  readonly root?: string;
}

export interface Inspected extends Inspection {
  readonly path: string;
}

export async function inspectSessions(
  paths: readonly string[],
  { root }: SessionOptions,
  io: Io,
): Promise<Inspected[]> {
  if (root !== undefined) requireFolder(root);
  const texts = await readTexts(sessionPaths(paths), io);
  const shared = new Map<string, Files>();
  return texts.map(({ path, text }) => {
    const limit = root ?? rootOf(path === STANDARD_INPUT ? '.' : dirname(path));
    const files = shared.get(limit) ?? diskFiles(limit, '.');
    shared.set(limit, files);
    return Object.assign(inspect(openDocument(path, text), files), { path });
  });
}

export interface SessionText {
  readonly path: string;
  readonly text: string;
}

export async function readTexts(paths: readonly string[], io: Io): Promise<SessionText[]> {
  const reasons: string[] = [];
  const texts: SessionText[] = [];
  for (const path of paths) {
    const read = path === STANDARD_INPUT ? { bytes: await io.readInput() } : readWhole(path, LARGEST_SESSION);
    const text = isRefusal(read) ? read : sessionText(read.bytes);
    if (isRefusal(text)) reasons.push(`cannot read ${shownPath(path)}: ${text.refused}`);
    else texts.push({ path, text });
  }
  if (reasons.length > 0) throw new CannotRun(reasons);
  return texts;
}

export const shownPath = (path: string) => (path === STANDARD_INPUT ? 'standard input' : path);

/** What stands on the command line behind `--date` is written into a session as a day. */
export function requireDay(date: string | undefined): void {
  if (date !== undefined && !isDay(date))
    throw new CannotRun([`--date ${date} is no day written as YYYY-MM-DD`]);
}

export function requireFolder(root: string): void {
  try {
    if (!statSync(root).isDirectory()) throw new CannotRun([`--root ${root} is not a folder`]);
  } catch (error) {
    if (error instanceof CannotRun) throw error;
    throw new CannotRun([`--root ${root} cannot be read: ${reasonOf(error)}`]);
  }
}
