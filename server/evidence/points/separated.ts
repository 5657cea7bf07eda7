/** Rows of a text whose cells are parted by a separator, with quoted cells as RFC 4180 has them, streaming. */
import { lineFinder } from '../lines.ts';
import { firstInk } from './blanks.ts';

export interface SeparatedRow {
  /** The line of the file on which the row begins, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** A row whose cells are read where they stand in a text; good until the next row is taken. */
export interface StandingRow {
  readonly line: number;
  readonly text: string;
  /** Of cells. */
  readonly count: number;
  /** Where each cell starts and ends: two numbers a cell. */
  readonly bounds: readonly number[];
}

export interface SeparatedReader {
  readonly push: (chunk: Uint8Array) => void;
  readonly finish: () => void;
}

/**
 * Calls `takeRow` with each row that is not blank, and `takeProblem` with what is wrong at a line. A quoted cell may
 * go on over lines, a hundred at most, so that a quote left open cannot swallow the file.
 */
export const separatedReader = (
  separator: string,
  takeRow: (row: SeparatedRow) => void,
  takeProblem: (sentence: string, line: number) => void,
): SeparatedReader =>
  standingReader(separator, (row) => takeRow({ line: row.line, cells: cellsOf(row) }), takeProblem);

export const cellsOf = ({ text, count, bounds }: StandingRow): readonly string[] =>
  Array.from({ length: count }, (_, index) => text.slice(bounds[2 * index], bounds[2 * index + 1]));

/** Cells that are already cut, one behind the other in a text. */
export function standing({ line, cells }: SeparatedRow): StandingRow {
  const bounds: number[] = [];
  let end = 0;
  for (const cell of cells) bounds.push(end, (end += cell.length));
  return { line, text: cells.join(''), count: cells.length, bounds };
}

/** The same row by row for very many: plain lines are cut where they stand, and only those with a quote are copied. */
export function standingReader(
  separator: string,
  takeRow: (row: StandingRow) => void,
  takeProblem: (sentence: string, line: number) => void,
): SeparatedReader {
  const parting = separator.charCodeAt(0);
  const plain = { line: 0, text: '', count: 0, bounds: [] as number[] };
  let open: { readonly line: number; text: string; lines: number } | undefined;
  const takeLine = (text: string, from: number, to: number, number: number, cut: boolean) => {
    if (cut) takeProblem('This line is too long; its end is not read.', number);
    if (!open) {
      const count = boundsOf(text, from, to, parting, plain.bounds);
      if (count > 0) {
        if (firstInk(text, from, to) === to) return;
        plain.line = number;
        plain.text = text;
        plain.count = count;
        return takeRow(plain);
      }
    }
    const line = text.slice(from, to);
    open = open ?? { line: number, text: '', lines: 0 };
    open.text = open.lines === 0 ? line : `${open.text}\n${line}`;
    open.lines += 1;
    const cells = quotedCells(open.text, separator);
    if (cells) takeRow(standing({ line: open.line, cells }));
    else if (open.lines < mostLines && open.text.length < mostCharacters) return;
    else
      takeProblem(
        `A quote that opens here is not closed; lines ${open.line} to ${number} are not read.`,
        open.line,
      );
    open = undefined;
  };
  const reader = lineFinder('utf-8', takeLine, mostCharacters);
  return {
    push: reader.push,
    finish() {
      reader.finish();
      if (open)
        takeProblem('A quote that opens here is never closed; the rest of the file is not read.', open.line);
    },
  };
}

/** Fills in the bounds of the cells of a line and counts them; 0 where there is a quote in it. */
function boundsOf(text: string, from: number, to: number, parting: number, bounds: number[]): number {
  let filled = 0;
  bounds[filled++] = from;
  for (let at = from; at < to; at++) {
    const code = text.charCodeAt(at);
    if (code === parting) {
      bounds[filled++] = at;
      bounds[filled++] = at + 1;
    } else if (code === QUOTE) return 0;
  }
  bounds[filled++] = to;
  return filled / 2;
}
const QUOTE = 34;

const mostLines = 100;
const mostCharacters = 65_536;

/** The cells of a row with quotes; undefined where it ends inside one. A quote inside an unquoted cell is a character. */
function quotedCells(text: string, separator: string): readonly string[] | undefined {
  const cells: string[] = [];
  let at = 0;
  for (;;) {
    if (text[at] === '"') {
      let cell = '';
      for (;;) {
        const close = text.indexOf('"', at + 1);
        if (close === -1) return undefined;
        cell += text.slice(at + 1, close);
        at = close + 1;
        if (text[at] !== '"') break;
        cell += '"';
      }
      const end = text.indexOf(separator, at);
      cells.push(cell + text.slice(at, end === -1 ? text.length : end));
      at = end;
    } else {
      const end = text.indexOf(separator, at);
      cells.push(text.slice(at, end === -1 ? text.length : end));
      at = end;
    }
    if (at === -1) return cells;
    at += separator.length;
  }
}
