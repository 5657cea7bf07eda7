/** The one way by which files are written: whole or not at all, never over what was read or is named, never over a stranger's unasked. */
import {
  closeSync,
  linkSync,
  lstatSync,
  openSync,
  readSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  type Stats,
} from 'node:fs';
import { filesNamed } from '../session/seal.ts';
import type { Session } from '../session/session.ts';
import { putBeside } from './beside.ts';
import { CannotRun } from './io.ts';
import { reasonOf } from './read-file.ts';

export interface Over {
  /** Files that were read for what is written, or that a session names: they stay, whatever is asked for. */
  readonly evidence: readonly string[];
  /** Files of somebody else may be replaced. */
  readonly force: boolean;
  /** What is there may be replaced without being asked, such as the same answer of an earlier run. */
  readonly isOwn?: (head: string) => boolean;
}

/** Replaces a file that was asked to be changed; a link is kept, and what it leads to is replaced; permissions stay. */
export function replaceFile(path: string, text: string): void {
  guarded(path, () => {
    const target = realpathSync(path);
    const { mode } = statSync(target);
    putBeside(target, text, mode);
  });
}

/** A new file, or one in the place of an earlier answer; never in that of evidence, and of a stranger's only by force. */
export function writeFile(path: string, text: string, over: Over): void {
  guarded(path, () => {
    const there = statSync(path, { throwIfNoEntry: false });
    const reason = there ? reasonToKeep(path, there, over) : null;
    if (reason !== null) throw new CannotRun([`cannot write ${path}: ${reason}`]);
    if (there) return replaceFile(path, text);
    // Should one have come in the meantime, it stays: a link never replaces anything.
    putBeside(path, text, 0o666 & ~process.umask(), (beside) => putInPlace(beside, path));
  });
}

/** A new file where none may be. */
export const writeNewFile = (path: string, text: string): void => {
  guarded(path, () => {
    if (lstatSync(path, { throwIfNoEntry: false }))
      throw new CannotRun([`${path} is there already; nothing was written`]);
  });
  writeFile(path, text, { evidence: [], force: false });
};

/** Every file that a session draws on or names. */
export const evidenceOf = (session: Session): string[] => [
  ...session.documents.keys(),
  ...filesNamed(session).map(({ resolved }) => resolved),
];

/** Why what is there must stay; null where it may go. */
export function reasonToKeep(path: string, there: Stats, { evidence, force, isOwn }: Over): string | null {
  if (there.isDirectory()) return 'it is a folder';
  if (!there.isFile()) return 'it is no ordinary file';
  if (evidence.some((other) => isSameFile(there, other)))
    return 'it was read for this, or a session names it';
  if (path.endsWith('.trib')) return 'it is a session';
  return force || isOwn?.(headOf(path)) ? null : 'it is there already; --force replaces it';
}

/** By whatever name or link. */
function isSameFile(there: Stats, other: string): boolean {
  const stats = statSync(other, { throwIfNoEntry: false });
  return stats !== undefined && stats.ino === there.ino && stats.dev === there.dev;
}

function headOf(path: string): string {
  const descriptor = openSync(path, 'r');
  try {
    const head = Buffer.alloc(4096);
    return head.toString('utf8', 0, readSync(descriptor, head, 0, head.length, 0));
  } finally {
    closeSync(descriptor);
  }
}

/** Some disks know no second name for a file. */
function putInPlace(beside: string, path: string): void {
  try {
    linkSync(beside, path);
  } catch (error) {
    if (['EEXIST', 'ENOENT', 'ENOSPC', 'EACCES', 'EROFS'].includes(codeOf(error))) throw error;
    if (lstatSync(path, { throwIfNoEntry: false })) throw error;
    renameSync(beside, path);
    return;
  }
  rmSync(beside, { force: true });
}

function guarded(path: string, act: () => void): void {
  try {
    act();
  } catch (error) {
    throw error instanceof CannotRun ? error : new CannotRun([`cannot write ${path}: ${reasonOf(error)}`]);
  }
}

const codeOf = (error: unknown) => (error instanceof Error && 'code' in error ? String(error.code) : '');
