/** A file written whole under a name of its own and then moved to its place, and what a run that was killed left of such. */
import { randomBytes } from 'node:crypto';
import {
  closeSync,
  fchmodSync,
  fsyncSync,
  lstatSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';

/** Writes the whole of it to the disk under a name of its own, and takes that away again where it is not moved. */
export function putBeside(
  path: string,
  content: string | Uint8Array,
  mode: number,
  move = (beside: string) => renameSync(beside, path),
): void {
  clearLeftovers(dirname(path));
  const beside = join(dirname(path), freshName());
  const descriptor = openSync(beside, 'wx', mode & 0o777);
  try {
    try {
      const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
      for (let written = 0; written < bytes.length;) written += writeSync(descriptor, bytes, written);
      fchmodSync(descriptor, mode & 0o777);
      fsyncSync(descriptor);
    } finally {
      closeSync(descriptor);
    }
    move(beside);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}

/** By chance and not by the number of the process, which another machine or container may have as well. */
export const freshName = () => `.tribrach-${randomBytes(8).toString('hex')}.part`;
const LEFTOVER = /^\.tribrach-[0-9a-f]{16}\.part$/;
/** Milliseconds; another run may be writing meanwhile, and none takes so long. */
const OLD = 60 * 60 * 1000;

/** What a run that was killed has left in this folder; nothing else is called so, and what is young may be in use. */
export function clearLeftovers(folder: string): void {
  let names: string[];
  try {
    names = readdirSync(folder).filter((name) => LEFTOVER.test(name));
  } catch {
    return;
  }
  for (const name of names) {
    try {
      const path = join(folder, name);
      const stats = lstatSync(path);
      if (stats.isSymbolicLink() || Date.now() - stats.mtimeMs < OLD) continue;
      rmSync(path, { recursive: stats.isDirectory(), force: true });
    } catch {
      // Somebody else's, then.
    }
  }
}
