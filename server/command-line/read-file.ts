/** Reads whole regular files, and says in a sentence why one cannot be read. */
import { closeSync, constants, fstatSync, openSync, readSync, type Stats } from 'node:fs';
import { CannotRun } from './io.ts';
import { refuse, type Refusal } from '../quantities/refusal.ts';

/** Sessions are notes: a file beyond this is not one. */
export const LARGEST_SESSION = 32 * 1024 * 1024;
/** Grids, points and recordings. */
export const LARGEST_EVIDENCE = 512 * 1024 * 1024;

export interface Contents {
  readonly bytes: Uint8Array;
  readonly stats: Stats;
}

/**
 * The bytes of a regular file of at most `largest` bytes.
 * It is opened without waiting, so that a pipe that nobody writes to cannot hold the program up.
 */
export function readWhole(path: string, largest: number): Contents | Refusal {
  let descriptor: number | undefined;
  try {
    descriptor = openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    const stats = fstatSync(descriptor);
    if (stats.isDirectory()) return refuse('it is a folder');
    if (!stats.isFile()) return refuse('it is no ordinary file');
    if (stats.size > largest)
      return refuse(`it is larger than ${largest / 1024 / 1024} MB, the most that is read`);
    return { bytes: readAll(descriptor, stats.size), stats };
  } catch (error) {
    return refuse(reasonOf(error));
  } finally {
    if (descriptor !== undefined) closeSync(descriptor);
  }
}

function readAll(descriptor: number, size: number): Uint8Array {
  const bytes = new Uint8Array(size);
  let filled = 0;
  while (filled < size) {
    const count = readSync(descriptor, bytes, filled, size - filled, filled);
    if (count === 0) break;
    filled += count;
  }
  return bytes.subarray(0, filled);
}

/** The descriptor of a regular file of any size. */
export function openRegular(path: string): number | Refusal {
  try {
    const descriptor = openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    const stats = fstatSync(descriptor);
    if (stats.isFile()) return descriptor;
    closeSync(descriptor);
    return refuse(stats.isDirectory() ? 'it is a folder' : 'it is no ordinary file');
  } catch (error) {
    return refuse(reasonOf(error));
  }
}

/** What is read from a descriptor, piece by piece; it is closed when the last piece has been taken, or whoever takes them stops. */
export function* pieces(descriptor: number, name: string): Generator<Uint8Array> {
  const piece = new Uint8Array(PIECE);
  try {
    for (;;) {
      const count = readPiece(descriptor, piece, name);
      if (count === 0) return;
      yield piece.subarray(0, count);
    }
  } finally {
    closeSync(descriptor);
  }
}
const PIECE = 1 << 16;

function readPiece(descriptor: number, piece: Uint8Array, name: string): number {
  try {
    return readSync(descriptor, piece, 0, PIECE, null);
  } catch (error) {
    throw new CannotRun([`cannot read ${name}: ${reasonOf(error)}`]);
  }
}

/** The text of a session file, byte order mark included. */
export function sessionText(bytes: Uint8Array): string | Refusal {
  if (bytes.length > LARGEST_SESSION)
    return refuse(`it is larger than ${LARGEST_SESSION / 1024 / 1024} MB, the most that is read`);
  if (startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0xfe, 0xff]))
    return refuse('it is written in UTF-16; save it as UTF-8');
  if (bytes.subarray(0, 8192).includes(0)) return refuse('it is not a text file');
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return refuse(`line ${firstBadLine(bytes)} is not UTF-8; save the file as UTF-8`);
  }
}

const startsWith = (bytes: Uint8Array, head: readonly number[]) =>
  head.every((byte, index) => bytes[index] === byte);

/** The first line, counted from 1, that is no UTF-8 by itself. */
function firstBadLine(bytes: Uint8Array): number {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let line = 1;
  for (let start = 0; start < bytes.length; line++) {
    const end = bytes.indexOf(10, start);
    const next = end < 0 ? bytes.length : end + 1;
    try {
      decoder.decode(bytes.subarray(start, next));
    } catch {
      return line;
    }
    start = next;
  }
  return line;
}

/** What the system says, in words that need no manual. */
export function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const known = REASONS[code];
  if (known) return known;
  return error instanceof Error ? error.message : String(error);
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file',
  EACCES: 'that is not permitted',
  EPERM: 'that is not permitted',
  EISDIR: 'it is a folder',
  ELOOP: 'its links lead in a circle',
  ENAMETOOLONG: 'its name is too long',
  ENXIO: 'it is no ordinary file',
  EFBIG: 'it grows larger than a file may be here',
  ENOSPC: 'there is no room left on the disk',
  EIO: 'the disk cannot be read there',
  EMFILE: 'too many files are open',
  EBUSY: 'it is in use',
  EINVAL: 'it cannot be read as a file',
  EEXIST: 'something of that name is there already',
  EROFS: 'the disk can only be read',
};
