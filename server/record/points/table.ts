/** Points as separated values, in the order of columns that the user asks for. */
import { metresIn } from '../../evidence/points/cells.ts';
import type { ColumnRole, ColumnUnit } from '../../evidence/points/column-plan.ts';
import type { PointSet } from '../../derive/points/points.ts';
import { coordinates, type RepairedPoint } from '../../derive/repair/row.ts';
import { pointClassInWords } from '../../derive/repair/flaws.ts';
import { refuse, type Refusal } from '../../quantities/refusal.ts';
import { ANGLE_DECIMALS, LENGTH_DECIMALS } from './numbers.ts';
import { TableBlocks, type ColumnForm, type TableBlock, type TableForm } from './table-block.ts';

/** Every column that can be asked for. */
export const TABLE_COLUMNS = [
  'name',
  'east',
  'north',
  'latitude',
  'longitude',
  'x',
  'y',
  'z',
  'height',
  'measured-east',
  'measured-north',
  'measured-latitude',
  'measured-longitude',
  'measured-height',
  'code',
  'time',
  'class',
  'class-as-repaired',
  'shift-east',
  'shift-north',
  'shift-up',
  'uncertainty-horizontal',
  'uncertainty-up',
  'reason',
  'state',
] as const;
export type TableColumn = (typeof TABLE_COLUMNS)[number];

export const isTableColumn = (word: string): word is TableColumn =>
  (TABLE_COLUMNS as readonly string[]).includes(word);

/** The columns of a set where nobody asks for others. */
export function usualColumns(set: PointSet): TableColumn[] {
  const place: Record<string, readonly TableColumn[]> = {
    grid: ['east', 'north', 'height'],
    geographic: ['latitude', 'longitude', 'height'],
    geocentric: ['x', 'y', 'z'],
  };
  return [
    'name',
    ...(place[set.form ?? ''] ?? []),
    'code',
    'time',
    'class',
    'shift-east',
    'shift-north',
    'shift-up',
    'uncertainty-horizontal',
    'uncertainty-up',
    'reason',
    'state',
  ];
}

/** A table while it is written: rows are gathered in blocks, and whoever has one writes it out. */
export interface PointsTable {
  readonly head: string;
  readonly form: TableForm;
  /** Gives back a block that is full with this point. */
  readonly add: (point: RepairedPoint) => TableBlock | null;
  /** What has been gathered since. */
  readonly rest: () => TableBlock;
}

/**
 * The set's own separator and decimal sign, so that who wrote the file can read the result.
 * The state is always among the columns: what has been repaired must not be repaired again.
 */
export function pointsTable(
  set: PointSet,
  asked: readonly TableColumn[],
  confidence: number,
): PointsTable | Refusal {
  const columns: readonly TableColumn[] = asked.includes('state') ? asked : [...asked, 'state'];
  const missing = columns.find((column) => !has(set, column));
  if (missing) return refuse(`${set.name} has no ${missing.replace('measured-', '')} to write`);
  const { separator, decimal } = set.plan;
  const cells = columns.map((column) => cellOf(column, set));
  const level = `${Math.round(confidence * 1000) / 10} %`;
  const head = columns.map((column) => textCell(heading(column, set, level), separator)).join(separator);
  const texts = cells.filter(({ form }) => form.kind === 'text').length;
  const blocks = new TableBlocks(cells.length - texts, texts, (text) => textCell(text, separator));
  return {
    head: `${head}\r\n`,
    form: { columns: cells.map(({ form }) => form), separator, decimal },
    add(point) {
      for (const cell of cells) cell.put(point, blocks);
      return blocks.endRow();
    },
    rest: () => blocks.taken(),
  };
}

const FORM_OF: Partial<Record<string, PointSet['form']>> = {
  east: 'grid',
  north: 'grid',
  latitude: 'geographic',
  longitude: 'geographic',
  x: 'geocentric',
  y: 'geocentric',
  z: 'geocentric',
};

function has(set: PointSet, column: TableColumn): boolean {
  const form = FORM_OF[column.replace('measured-', '')];
  if (form !== undefined) return set.form === form;
  return column.endsWith('height') ? set.form !== 'geocentric' : true;
}

function heading(column: TableColumn, set: PointSet, level: string): string {
  const plain = column.replaceAll('-', ' ');
  if (column.startsWith('shift')) return `${plain} (m)`;
  if (column.startsWith('uncertainty')) return `${plain} ${level} (m)`;
  if (column === 'time') return 'time (UTC)';
  const what = column.replace('measured-', '');
  return what in FORM_OF || what === 'height' ? `${plain} (${unitOf(set, what)})` : plain;
}

/** Units are the file's own; angles are written in decimal degrees. */
function unitOf(set: PointSet, what: string): ColumnUnit {
  const turned: Record<string, ColumnRole> = { east: 'west', north: 'south' };
  const column = set.plan.columns.find(({ role }) => role === what || role === turned[what]);
  const unit = column?.unit ?? (what === 'latitude' || what === 'longitude' ? '°' : 'm');
  return unit === 'dms' ? '°' : unit;
}

interface Cell {
  readonly form: ColumnForm;
  readonly put: (point: RepairedPoint, into: TableBlocks) => void;
}
const numberCell = (value: (point: RepairedPoint) => number, factor: number, decimals: number): Cell => ({
  form: { kind: 'number', factor, decimals },
  put: (point, into) => into.addNumber(value(point)),
});
const lengthCell = (value: (point: RepairedPoint) => number | null): Cell =>
  numberCell((point) => value(point) ?? NaN, 1, LENGTH_DECIMALS);
const textual = (text: (point: RepairedPoint) => string): Cell => ({
  form: { kind: 'text' },
  put: (point, into) => into.addText(text(point)),
});

function cellOf(column: TableColumn, set: PointSet): Cell {
  switch (column) {
    case 'name':
      return textual(({ row }) => row.name ?? '');
    case 'code':
      return textual(({ row }) => row.code ?? '');
    case 'time':
      return { form: { kind: 'time' }, put: ({ row }, into) => into.addNumber(row.time ?? NaN) };
    case 'class':
      return textual(({ label }) => label);
    case 'class-as-repaired':
      return textual(({ fate, flaw }) => pointClassInWords(flaw?.class ?? fate.asRepaired));
    case 'shift-east':
      return lengthCell((point) => shiftOf(point, 'east'));
    case 'shift-north':
      return lengthCell((point) => shiftOf(point, 'north'));
    case 'shift-up':
      return lengthCell((point) => shiftOf(point, 'up'));
    case 'uncertainty-horizontal':
      return lengthCell(({ horizontal }) => horizontal);
    case 'uncertainty-up':
      return lengthCell(({ up }) => up);
    case 'reason':
      return textual(({ reason }) => reason);
    case 'state':
      return textual(({ shift, row }) => (shift ? 'corrected' : stateOf(row.state, set)));
    default:
      return coordinateCell(column, set);
  }
}

/** So many that a tenth of a millimetre stays: one more for a unit ten times as large. */
function decimalsIn(unit: ColumnUnit): number {
  const metres = metresIn(unit);
  return metres === undefined ? ANGLE_DECIMALS : LENGTH_DECIMALS + Math.ceil(Math.log10(metres));
}

function coordinateCell(column: TableColumn, set: PointSet): Cell {
  const what = column.replace('measured-', '');
  const index = ['north', 'longitude', 'y'].includes(what) ? 1 : what === 'height' || what === 'z' ? 2 : 0;
  const unit = unitOf(set, what);
  const value = column.startsWith('measured-')
    ? ({ row }: RepairedPoint) => coordinates(row, set)[index]
    : repairedCoordinate(index);
  return numberCell(value, metresIn(unit) ?? 1, decimalsIn(unit));
}

const repairedCoordinate = (index: 0 | 1 | 2): ((point: RepairedPoint) => number) =>
  index === 0 ? ({ first }) => first : index === 1 ? ({ second }) => second : ({ third }) => third;

/** Nought only where nothing is known to take off; null where nobody knows, or where there is no height to shift. */
export function shiftOf(
  { shift, isRight, third }: RepairedPoint,
  axis: 'east' | 'north' | 'up',
): number | null {
  if (axis === 'up' && Number.isNaN(third)) return null;
  return shift ? shift[axis] : isRight ? 0 : null;
}

const stateOf = (own: string | undefined, { entry }: PointSet) => own ?? entry.state?.name ?? '';

/**
 * A text as a cell: quoted where it must be (RFC 4180), and with an apostrophe before what a spreadsheet would run as a
 * formula, in whatever width it is written. What reads points takes that apostrophe away again. Characters that steer
 * are written by number, and what looks like that already as well, so that two texts never come out the same.
 */
export function textCell(text: string, separator: string): string {
  if (ORDINARY.test(text)) return text;
  const plain = text.replace(/\\(?=x[0-9a-f]{2})|\p{Cc}/gu, byNumber);
  const harmless = FORMULA.test(plain) ? `'${plain}` : plain;
  return harmless.includes(separator) || harmless.includes('"') || /^\s|\s$/.test(harmless)
    ? `"${harmless.replaceAll('"', '""')}"`
    : harmless;
}
const FORMULA = /^'*[=+\-@\uff1d\uff0b\uff0d\uff20]/;
const byNumber = (sign: string) => `\\x${sign.charCodeAt(0).toString(16).padStart(2, '0')}`;
/** Most names and codes: nothing in them needs a second look, whatever the separator. */
const ORDINARY = /^[A-Za-z0-9][\w./-]*$/;
