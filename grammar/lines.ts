/** From offsets to lines and columns and back, both counted from 0 in UTF-16 units; an entry's lines are counted once. */
import { keptWith } from './kept-with.ts';
import { entryAt, lineStarts, type Document } from './document.ts';
import type { Entry } from './tree.ts';

export interface Position {
  readonly line: number;
  readonly column: number;
}

/** An offset behind the text's end counts as its end. */
export function positionOf(document: Document, offset: number): Position {
  const within = Math.max(0, Math.min(offset, document.length));
  const index = entryAt(document.starts, within);
  const starts = startsIn(document.entries[index]);
  const inner = within - (document.starts[index] ?? 0);
  const line = entryAt(starts, inner);
  return { line: (firstLines(document.entries)[index] ?? 0) + line, column: inner - (starts[line] ?? 0) };
}

/** A line behind the last one counts as the text's end, a column behind a line's last character as the line's end. */
export function offsetOf(document: Document, { line, column }: Position): number {
  const first = firstLines(document.entries);
  const index = entryAt(first, line);
  const entry = document.entries[index];
  const starts = startsIn(entry);
  const inner = starts[line - (first[index] ?? 0)];
  if (!entry || inner === undefined) return document.length;
  const next = starts[line - (first[index] ?? 0) + 1] ?? entry.text.length;
  const end = withoutBreak(entry.text, inner, next);
  return (document.starts[index] ?? 0) + Math.min(inner + Math.max(0, column), end);
}

export function lineCount({ entries }: Document): number {
  const last = entries.length - 1;
  return (firstLines(entries)[last] ?? 0) + startsIn(entries[last]).length;
}

function withoutBreak(text: string, start: number, end: number): number {
  let at = end;
  while (at > start && (text[at - 1] === '\n' || text[at - 1] === '\r')) at--;
  return at;
}

function startsIn(entry: Entry | undefined): readonly number[] {
  if (!entry) return [0];
  let starts = known.get(entry);
  if (!starts) {
    starts = lineStarts(entry.text);
    known.set(entry, starts);
  }
  return starts;
}
const known = keptWith<Entry, readonly number[]>();

interface Lines {
  readonly entries: readonly Entry[];
  /** The line that each entry starts in. */
  readonly firsts: readonly number[];
}
const NO_LINES: Lines = { entries: [], firsts: [] };
let latest = NO_LINES;

/** The line that each entry starts in: where an edit has added no line, the same as before it. */
function firstLines(entries: readonly Entry[]): readonly number[] {
  if (latest.entries !== entries)
    latest = { entries, firsts: sameLines(latest.entries, entries) ? latest.firsts : countedLines(entries) };
  return latest.firsts;
}

function sameLines(before: readonly Entry[], now: readonly Entry[]): boolean {
  if (before.length !== now.length || now.length === 0) return false;
  return now.every(
    (entry, index) => entry === before[index] || startsIn(entry).length === startsIn(before[index]).length,
  );
}

function countedLines(entries: readonly Entry[]): readonly number[] {
  let line = 0;
  return entries.map((entry) => {
    const first = line;
    line += startsIn(entry).length - 1;
    return first;
  });
}
