/** Rows of a text whose cells are parted by a separator, with quoted cells as RFC 4180 has them, streaming. */
import { lineReader } from '../lines.ts';

export interface SeparatedRow {
  /** The line of the file on which the row begins, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

export interface SeparatedReader {
  readonly push: (chunk: Uint8Array) => void;
  readonly finish: () => void;
}

/**
 * Calls `takeRow` with each row that is not blank, and `takeProblem` with what is wrong at a line. A quoted cell may
 * go on over lines, a hundred at most, so that a quote left open cannot swallow the file.
 *
 * Plain lines are split where they stand; only lines with a quote are read character by character.
 */
export function separatedReader(
  separator: string,
  takeRow: (row: SeparatedRow) => void,
  takeProblem: (sentence: string, line: number) => void,
): SeparatedReader {
  let open: { readonly line: number; text: string; lines: number } | undefined;
  const takeLine = (text: string, number: number, cut: boolean) => {
    if (cut) takeProblem('This line is too long; its end is not read.', number);
    if (!open && !text.includes('"')) {
      if (text.trim() !== '') takeRow({ line: number, cells: text.split(separator) });
      return;
    }
    open = open ?? { line: number, text: '', lines: 0 };
    open.text = open.lines === 0 ? text : `${open.text}\n${text}`;
    open.lines += 1;
    const cells = quotedCells(open.text, separator);
    if (cells) takeRow({ line: open.line, cells });
    else if (open.lines < mostLines && open.text.length < mostCharacters) return;
    else
      takeProblem(
        `A quote that opens here is not closed; lines ${open.line} to ${number} are not read.`,
        open.line,
      );
    open = undefined;
  };
  const reader = lineReader('utf-8', takeLine, mostCharacters);
  return {
    push: reader.push,
    finish() {
      reader.finish();
      if (open)
        takeProblem('A quote that opens here is never closed; the rest of the file is not read.', open.line);
    },
  };
}

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
