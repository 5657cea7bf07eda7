/** Opens and inspects the sessions that a command line names; all of them, or none with the reasons. */
import { dirname } from 'node:path';
import { statSync } from 'node:fs';
import { attempted, isFault } from '../../grammar/fault.ts';
import { openDocument } from '../../grammar/document.ts';
import { faultMessage, PROGRAM_FAULT } from '../findings/program/fault.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { isRefusal } from '../quantities/refusal.ts';
import type { Files } from '../session/files.ts';
import { isDay } from '../record/notes/new-session.ts';
import { diskFiles, rootOf } from './disk-files.ts';
import { CannotRun, type Io } from './io.ts';
import { LARGEST_SESSION, readWhole, reasonOf, sessionText } from './read-file.ts';
import { harmless } from './terminal-text.ts';
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

/** Tells of each session that the program failed over a part of, which the answer then lacks; exit status 1. */
export function tellFaults(sessions: readonly Inspected[], io: Io): void {
  for (const { path, session, derivation, findings } of sessions) {
    if (derivation.whole && !session.remarks.some(({ about }) => about === 'fault')) continue;
    for (const { message } of findings.filter(({ code }) => code === PROGRAM_FAULT))
      io.complain(`tribrach: ${shownPath(path)}: ${message}\n`);
    io.exitWith(1);
  }
}

/** A part of an answer, or the sentence that it cannot be given; exit status 1 where it cannot. */
export function partOf(path: string, io: Io, work: () => string): string {
  const part = attempted(work);
  if (!isFault(part)) return part;
  io.exitWith(1);
  return `${harmless(shownPath(path))}: ${harmless(faultMessage(part.fault))}\n`;
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
