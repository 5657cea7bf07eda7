/** Files that a session names, read from disk and only below its root. */
import { existsSync, realpathSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { openDocument, type Document } from '../../grammar/document.ts';
import { isRefusal, refuse, type Refusal } from '../quantities/refusal.ts';
import type { Files } from '../session/files.ts';
import { isOutside, outside, refusedByForm } from './path-form.ts';
import {
  LARGEST_EVIDENCE,
  LARGEST_SESSION,
  openRegular,
  pieces,
  readWhole,
  reasonOf,
  sessionText,
} from './read-file.ts';

/**
 * @param root the folder that nothing is read outside of, whatever links say
 * @param from the folder that paths without a leading `/` start in
 */
export function diskFiles(root: string, from: string): Files {
  const documents = new Map<string, Kept<Document>>();
  const contents = new Map<string, Kept<Uint8Array>>();
  return {
    document: (path) =>
      kept(documents, path, LARGEST_SESSION, (bytes) => {
        const text = sessionText(bytes);
        return isRefusal(text) ? text : openDocument(path, text);
      }),
    bytes: (path) => kept(contents, path, LARGEST_EVIDENCE, (bytes) => bytes),
  };

  /** The same answer as long as the file's time and size have not changed. */
  function kept<Thing>(
    known: Map<string, Kept<Thing>>,
    path: string,
    largest: number,
    make: (bytes: Uint8Array) => Thing | Refusal,
  ): Thing | Refusal {
    const target = within(root, from, path);
    if (isRefusal(target)) return target;
    const before = known.get(path);
    if (before && before.version === versionOf(target)) return before.thing;
    const read = readWhole(target, largest);
    if (isRefusal(read)) return read;
    const thing = make(read.bytes);
    known.set(path, { thing, version: versionOf(target) });
    return thing;
  }
}

/** The same files piece by piece, for those who read a long one once: nothing of it is kept. */
export function diskChunks(root: string, from: string): (path: string) => Iterable<Uint8Array> | Refusal {
  return (path) => {
    const target = within(root, from, path);
    if (isRefusal(target)) return target;
    const opened = openRegular(target);
    return isRefusal(opened) ? opened : pieces(opened, path);
  };
}

interface Kept<Thing> {
  readonly thing: Thing | Refusal;
  readonly version: string;
}

/** The nearest folder above a session that is under version control, else the session's own. */
export function rootOf(folder: string): string {
  for (let at = resolve(folder); ; at = dirname(at)) {
    if (existsSync(join(at, '.git'))) return at;
    if (dirname(at) === at) return resolve(folder);
  }
}

/** Where a path really leads, when that is below the root; what its form refuses is never looked for. */
function within(root: string, from: string, path: string): string | Refusal {
  const refused = refusedByForm(path, from, root, process.platform);
  if (refused !== null) return refuse(refused);
  try {
    const real = realpathSync(resolve(from, path));
    return isOutside(relative(realpathSync(root), real)) ? refuse(outside(root)) : real;
  } catch (error) {
    return refuse(reasonOf(error));
  }
}

function versionOf(path: string): string {
  const { mtimeMs, size, ino } = statSync(path);
  return `${mtimeMs} ${size} ${ino}`;
}
