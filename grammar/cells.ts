/** The cells of a `row`: raw text between commas, since rows are data of a file and not phrases of the language. */
import { isBlank, isQuote, isUnseen } from './characters.ts';
import { textEnd } from './tokens.ts';
import type { Line, Span } from './tree.ts';

/** Empty cells are cells; their span is where their text would stand. */
export interface Cell extends Span {
  /** Without the blanks around it and the quotes that it may stand in. */
  readonly text: string;
  readonly quoted: boolean;
}

/** Splits what stands behind a line's first word at every comma outside quotes, with or without blanks. */
export function cellsOf(entryText: string, line: Line): Cell[] {
  const cells: Cell[] = [];
  const start = line.word?.end ?? line.start;
  if (start === line.end) return cells;
  let from = start;
  let isEmpty = true;
  for (let at = start; at <= line.end; at++) {
    const character = at < line.end ? entryText[at] : ',';
    if (character === ',') {
      cells.push(cell(entryText, from, at));
      from = at + 1;
      isEmpty = true;
    } else if (isEmpty && isQuote(character)) {
      at = Math.min(textEnd(entryText, at).end, line.end) - 1;
      isEmpty = false;
    } else isEmpty &&= isMargin(character);
  }
  return cells;
}

function cell(text: string, from: number, to: number): Cell {
  let start = from;
  let end = to;
  while (start < end && isMargin(text[start])) start++;
  while (end > start && isMargin(text[end - 1])) end--;
  const typed = [...text.slice(start, end)].filter((character) => !isUnseen(character)).join('');
  const { end: closing, closed } = textEnd(typed, 0);
  if (!closed || closing < typed.length) return { text: typed, quoted: false, start, end };
  return { text: typed.slice(1, -1).replaceAll('""', '"'), quoted: true, start, end };
}

const isMargin = (character: string | undefined) => isBlank(character) || isUnseen(character);
