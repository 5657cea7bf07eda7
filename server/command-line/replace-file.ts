/** Replaces a file's text in one step, so that a crash or a full disk leaves either the old text or the new one. */
import {
  closeSync,
  fchmodSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
  type Stats,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { CannotRun } from './io.ts';
import { reasonOf } from './read-file.ts';

/** A link is kept, and what it leads to is replaced; permissions stay. */
export function replaceFile(path: string, text: string): void {
  let beside: string | null = null;
  try {
    const target = realpathSync(path);
    beside = join(dirname(target), `.${basename(target)}.${process.pid}.new`);
    writeNew(beside, text, statSync(target).mode);
    renameSync(beside, target);
  } catch (error) {
    if (beside !== null) rmSync(beside, { force: true });
    throw new CannotRun([`cannot write ${path}: ${reasonOf(error)}`]);
  }
}

/** The same for a file that may not be there yet; never over a session, one of `kept`, or what is no file. */
export function writeWhole(path: string, text: string, kept: readonly string[]): void {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there) {
    const reason = reasonToKeep(path, there, kept);
    if (reason !== null) throw new CannotRun([`cannot write ${path}: ${reason}`]);
    return replaceFile(path, text);
  }
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.new`);
  try {
    writeNew(beside, text, 0o666 & ~process.umask());
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw new CannotRun([`cannot write ${path}: ${reasonOf(error)}`]);
  }
}

function reasonToKeep(path: string, there: Stats, kept: readonly string[]): string | null {
  if (there.isDirectory()) return 'it is a folder';
  if (!there.isFile()) return 'it is no ordinary file';
  if (path.endsWith('.trib')) return 'it is a session';
  return kept.some((other) => samePath(path, other)) ? 'it is what the answer is made from' : null;
}

function samePath(one: string, other: string): boolean {
  try {
    return realpathSync(one) === realpathSync(other);
  } catch {
    return false;
  }
}

function writeNew(path: string, text: string, mode: number): void {
  const descriptor = openSync(path, 'wx', mode & 0o777);
  try {
    const bytes = new TextEncoder().encode(text);
    for (let written = 0; written < bytes.length;) written += writeSync(descriptor, bytes, written);
    fchmodSync(descriptor, mode & 0o777);
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
}
