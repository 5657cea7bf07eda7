/** Rows are split into raw cells, whatever their numbers look like. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mangledPiece } from '../tests/mangled.ts';
import { cellsOf } from './cells.ts';
import { openDocument } from './document.ts';

const rowOf = (row: string) => {
  const entry = openDocument('', `points "p.csv"\n  row ${row}\n`).entries[0];
  const line = entry?.details[0];
  return { entry, cells: entry && line ? cellsOf(entry.text, line) : [] };
};
const texts = (row: string) => rowOf(row).cells.map((cell) => cell.text);

describe('cellsOf', () => {
  it.each([
    ['101, -40990.120, 165002.331', ['101', '-40990.120', '165002.331']],
    ['101,-40990.120,165002.331', ['101', '-40990.120', '165002.331']],
    ['101 ,  1 234.5 ,, KB 2', ['101', '1 234.5', '', 'KB 2']],
    ['"a, b", "5""", x', ['a, b', '5"', 'x']],
    ['101, 5", x', ['101', '5"', 'x']],
    ['\u201ca, b\u201d, c', ['a, b', 'c']],
    ['101, "open, to the end', ['101', '"open, to the end']],
    ['101, 2,', ['101', '2', '']],
    ['1\u200b01, \u00a02', ['101', '2']],
    ['101, 2   # a comment, no cell', ['101', '2']],
    ['', []],
  ])('splits %j', (row, expected) => expect(texts(row)).toEqual(expected));

  it('knows where each cell stands', () => {
    const { entry, cells } = rowOf('101,  "a b" , 5');
    expect(cells.map((cell) => entry?.text.slice(cell.start, cell.end))).toEqual(['101', '"a b"', '5']);
  });

  it('remarks on no number of a row', () => {
    expect(rowOf('101,1,5, .5, 1e3, 1 234.5').entry?.slips).toEqual([]);
    expect(rowOf('101, "open').entry?.slips.map((slip) => slip.slip)).toEqual(['unclosed-text']);
  });

  it('keeps its cells in order inside the line, whatever the line', () => {
    fc.assert(
      fc.property(mangledPiece, (row) => {
        const { entry, cells } = rowOf(row);
        let before = 0;
        for (const cell of cells) {
          expect(cell.start).toBeGreaterThanOrEqual(before);
          expect(cell.end).toBeGreaterThanOrEqual(cell.start);
          before = cell.end;
        }
        expect(before).toBeLessThanOrEqual(entry?.text.length ?? 0);
      }),
      { numRuns: 500 },
    );
  });
});
