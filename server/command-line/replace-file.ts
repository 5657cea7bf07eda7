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
