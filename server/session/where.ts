/** From places to lines and columns, counted from 1 in UTF-16 units. */
import { startOf, type Document } from '../../grammar/document.ts';
import { positionOf } from '../../grammar/lines.ts';
import type { Place } from '../../grammar/tree.ts';
import type { Leaf } from '../quantities/value.ts';
import type { Session } from './session.ts';

export interface Where {
  readonly path: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}
/** Offsets in the whole text. */
export interface Offsets {
  readonly path: string;
  readonly start: number;
  readonly end: number;
}

/** Null where the place belongs to no document of this session. */
export function offsetsOf(session: Pick<Session, 'documents'>, place: Place): Offsets | null {
  const document = session.documents.get(place.path);
  const start = document ? startOf(document, place) : null;
  return start === null ? null : { path: place.path, start: start + place.start, end: start + place.end };
}

export function whereIs(session: Pick<Session, 'documents'>, place: Place): Where {
  const document = session.documents.get(place.path);
  const offsets = offsetsOf(session, place);
  if (!document || !offsets) return { path: place.path, line: 1, column: 1, endLine: 1, endColumn: 1 };
  const from = positionAt(document, offsets.start);
  const to = positionAt(document, offsets.end);
  return { path: place.path, line: from.line, column: from.column, endLine: to.line, endColumn: to.column };
}

/** `line 12`, or `line 3 of marks.trib` for another file that takes part. */
export function lineInWords(session: Pick<Session, 'document' | 'documents'>, place: Place): string {
  const { path, line } = whereIs(session, place);
  const own = session.document.path;
  return path === own ? `line ${line}` : `line ${line} of ${seenFrom(own, path)}`;
}

/** Line and column of an offset, both from 1. */
export function positionAt(document: Document, offset: number): { line: number; column: number } {
  const { line, column } = positionOf(document, offset);
  return { line: line + 1, column: column + 1 };
}

/** Where a number stands, in words for a story: `line 12`, or `line 3 of marks.trib` as seen from the session's folder. */
export const tellPlace =
  (session: Pick<Session, 'document' | 'documents'>) =>
  (leaf: Leaf): string =>
    leaf.origin === 'assumed' ? leaf.because : lineInWords(session, leaf.place);

function seenFrom(own: string, path: string): string {
  const folder = own.slice(0, own.lastIndexOf('/') + 1);
  return path.startsWith(folder) ? path.slice(folder.length) : path;
}
