/** What a place in a session's text stands on: the entry, its line, and the item in the line. */
import { entryAt } from '../../grammar/document.ts';
import type { Entry, Item, Line } from '../../grammar/tree.ts';
import type { Bound } from '../session/entries.ts';
import type { Session } from '../session/session.ts';

export interface Cursor {
  readonly entry: Entry;
  readonly bound: Bound;
  /** Where the entry starts in the text. */
  readonly start: number;
  /** Counted from the entry's start. */
  readonly at: number;
  readonly line: Line | null;
  /** The item that the place stands in or touches; of two that touch there, the one that begins. */
  readonly item: Item | null;
}

export function cursorAt(session: Session, offset: number): Cursor | null {
  const { entries, starts } = session.document;
  const index = entryAt(starts, offset);
  const entry = entries[index];
  const bound = session.entries[index];
  if (!entry || !bound) return null;
  const start = starts[index] ?? 0;
  const at = offset - start;
  const line = linesOf(entry).find((candidate) => candidate.start <= at && at <= candidate.end) ?? null;
  const touching = line?.items.filter((item) => item.start <= at && at <= item.end) ?? [];
  return { entry, bound, start, at, line, item: touching[touching.length - 1] ?? null };
}

/** The header, where there is one, and the details. */
export function linesOf({ header, details }: Entry): readonly Line[] {
  return header.word || header.items.length > 0 ? [header, ...details] : details;
}

/** A stretch of a document's text. */
export interface Stretch {
  readonly path: string;
  readonly start: number;
  readonly end: number;
}
