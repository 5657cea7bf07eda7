/**
 * Rows of a table between their values and their digits: plain numbers, and the bytes of their texts. Writing the digits
 * is half of the work of a table, and in this form it can be handed to another thread.
 */
import { FileText } from '../file-text.ts';
import { writeUtcTime } from './numbers.ts';

/** How a column is written. Numbers and times have one place among the numbers of a row, texts one among its texts. */
export type ColumnForm =
  | { readonly kind: 'number'; readonly factor: number; readonly decimals: number }
  | { readonly kind: 'time' }
  | { readonly kind: 'text' };

export interface TableForm {
  readonly columns: readonly ColumnForm[];
  readonly separator: string;
  readonly decimal: '.' | ',';
}

export interface TableBlock {
  readonly rows: number;
  /** Row by row; not a number where there is none. */
  readonly numbers: Float64Array;
  /** All texts, cell by cell, one behind the other. */
  readonly texts: Uint8Array;
  /** Where each text ends, row by row; AS_ABOVE where it is that of the row above. */
  readonly ends: Int32Array;
}
const AS_ABOVE = -1;

/** Rows of a block: few enough to be done while they are in the cache, enough to be worth handing over. */
const ROWS = 2048;

/** Gathers rows into blocks: each cell in the order of the columns, numbers and texts apart. */
export class TableBlocks {
  private rows = 0;
  private numbers: Float64Array;
  private ends: Int32Array;
  private readonly texts = new FileText();
  private readonly above: string[];
  private number = 0;
  private text = 0;

  constructor(
    private readonly numbersInRow: number,
    private readonly textsInRow: number,
    /** What a text looks like in its cell. */
    private readonly cell: (text: string) => string,
  ) {
    this.above = Array.from({ length: textsInRow }, () => '');
    this.numbers = new Float64Array(ROWS * numbersInRow);
    this.ends = new Int32Array(ROWS * textsInRow);
  }

  addNumber(value: number): void {
    this.numbers[this.number++] = value;
  }

  addText(text: string): void {
    const column = this.text % this.textsInRow;
    if (this.rows > 0 && this.above[column] === text) this.ends[this.text++] = AS_ABOVE;
    else {
      this.above[column] = text;
      this.texts.text(this.cell(text));
      this.ends[this.text++] = this.texts.length;
    }
  }

  /** Gives back a block that is full with it. */
  endRow(): TableBlock | null {
    this.rows += 1;
    return this.rows === ROWS ? this.taken() : null;
  }

  taken(): TableBlock {
    const { rows, numbers, ends } = this;
    this.rows = this.number = this.text = 0;
    this.numbers = new Float64Array(ROWS * this.numbersInRow);
    this.ends = new Int32Array(ROWS * this.textsInRow);
    return { rows, numbers, texts: this.texts.taken().slice(), ends };
  }
}

/** The rows of a block as they stand in the file. */
export function writeBlock(
  block: TableBlock,
  { columns, separator, decimal }: TableForm,
  into: FileText,
): void {
  const { numbers, texts, ends } = block;
  const parting = separator.charCodeAt(0);
  const starts = columns.map(() => 0);
  const stops = columns.map(() => 0);
  let number = 0;
  let text = 0;
  let textStart = 0;
  for (let row = 0; row < block.rows; row++) {
    for (let index = 0; index < columns.length; index++) {
      const column = columns[index];
      if (index > 0) into.sign(parting);
      if (column?.kind === 'number')
        into.fixed((numbers[number++] ?? NaN) / column.factor, column.decimals, decimal);
      else if (column?.kind === 'time') writeUtcTime(numbers[number++], into);
      else {
        const end = ends[text++] ?? 0;
        if (end !== AS_ABOVE) {
          starts[index] = textStart;
          stops[index] = textStart = end;
        }
        into.encoded(texts, starts[index] ?? 0, stops[index] ?? 0);
      }
    }
    into.sign(RETURN);
    into.sign(LINE_FEED);
  }
}
const RETURN = 13;
const LINE_FEED = 10;
