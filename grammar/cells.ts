/** The cells of a `row`: raw text between commas, so that a cell may hold whatever a points file may. */
import type { Entry, Line, Span } from './tree.ts';

export interface Cell extends Span {
  readonly text: string;
}

/** Cells without the blanks around them; a quoted cell loses its quotes, and its commas part nothing. */
export function cellsOf(entry: Entry, line: Line): Cell[] {
  const cells: Cell[] = [];
  let start = line.word?.end ?? line.start;
  let quoted = false;
  for (let at = start; at <= line.end; at++) {
    const character = entry.text[at];
    if (character === '"') quoted = !quoted;
    if (at < line.end && (character !== ',' || quoted)) continue;
    cells.push(trimmed(entry.text, start, at));
    start = at + 1;
  }
  return cells;
}

function trimmed(text: string, from: number, to: number): Cell {
  const raw = text.slice(from, to);
  const start = from + raw.length - raw.trimStart().length;
  const end = Math.max(start, from + raw.trimEnd().length);
  const inner = text.slice(start, end);
  const quoted = inner.length > 1 && inner.startsWith('"') && inner.endsWith('"');
  return { text: quoted ? inner.slice(1, -1).replaceAll('""', '"') : inner, start, end };
}
