/** The one way by which a session reaches other files; who implements it decides what may be read. */
import type { Document } from '../../grammar/document.ts';
import type { Refusal } from '../quantities/refusal.ts';

export interface Files {
  /** Another session file, opened; the same object as long as it has not changed. */
  document(path: string): Document | Refusal;
  /** The bytes of a grid, a points file or a recording; the same object as long as they have not changed. */
  bytes(path: string): Uint8Array | Refusal;
  /** The same bytes piece by piece, for whoever need not keep a long file in memory. */
  chunks?(path: string): Iterable<Uint8Array> | Refusal;
}

/** No other file may be read. */
export const NO_FILES: Files = {
  document: () => ({ refused: 'other files are not read here' }),
  bytes: () => ({ refused: 'other files are not read here' }),
};

/** A path as typed in one file, seen from where that file lies; `/` parts folders. */
export function resolvePath(from: string, typed: string): string {
  const rooted = typed.startsWith('/');
  const parts = rooted ? [] : from.split('/').slice(0, -1);
  for (const part of typed.split('/')) {
    if (part === '' || part === '.') continue;
    if (part === '..' && parts.length > 0 && parts[parts.length - 1] !== '..') parts.pop();
    else parts.push(part);
  }
  const path = parts.join('/');
  return rooted && !path.startsWith('/') ? `/${path}` : path;
}
