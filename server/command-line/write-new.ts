/** Writes a file that is not there yet, whole or not at all. */
import { existsSync, linkSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { CannotRun } from './io.ts';
import { reasonOf } from './read-file.ts';

/** One that is there already stays as it is, even when it came in the meantime: a link never replaces anything. */
export function writeNewFile(path: string, text: string): void {
  if (existsSync(path)) throw new CannotRun([`${path} is there already; nothing was written`]);
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.new`);
  try {
    writeFileSync(beside, text, { flag: 'wx' });
    linkSync(beside, path);
  } catch (error) {
    throw new CannotRun([`cannot write ${path}: ${reasonOf(error)}`]);
  } finally {
    rmSync(beside, { force: true });
  }
}
