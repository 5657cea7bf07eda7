/** Points as separated values, in the order of columns that the user asks for. */
import type { ColumnRole, ColumnUnit } from '../evidence/points/column-plan.ts';
import type { PointSet } from '../derive/points.ts';
import { coordinates, type RepairedPoint } from '../derive/repair-row.ts';
import { classInWords } from '../derive/trust-words.ts';
import { refuse, type Refusal } from '../quantities/refusal.ts';
import type { FileText } from './file-text.ts';
import { ANGLE_DECIMALS, LENGTH_DECIMALS, writeUtcTime } from './points-numbers.ts';

/** Text of a file, piece by piece. */
export interface PointsWriter {
  readonly head: string;
  readonly row: (point: RepairedPoint, into: FileText) => void;
  readonly tail: string;
}

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

/**
 * The set's own separator and decimal sign, so that who wrote the file can read the result.
 * The state is always among the columns: what has been repaired must not be repaired again.
 */
export function tableWriter(
  set: PointSet,
  asked: readonly TableColumn[],
  confidence: number,
): PointsWriter | Refusal {
  const columns: readonly TableColumn[] = asked.includes('state') ? asked : [...asked, 'state'];
  const missing = columns.find((column) => !has(set, column));
  if (missing) return refuse(`${set.name} has no ${missing.replace('measured-', '')} to write`);
  const { separator, decimal } = set.plan;
  const cells = columns.map((column) => cellOf(column, set, separator, decimal));
  const parting = separator.charCodeAt(0);
  const level = `${Math.round(confidence * 1000) / 10} %`;
  const head = columns.map((column) => textCell(heading(column, set, level), separator)).join(separator);
  return {
    head: `${head}\r\n`,
    row: (point, into) => {
      for (let index = 0; index < cells.length; index++) {
        if (index > 0) into.sign(parting);
        cells[index]?.(point, into);
      }
      into.sign(RETURN);
      into.sign(LINE_FEED);
    },
    tail: '',
  };
}

const RETURN = 13;
const LINE_FEED = 10;

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

const METRES: Partial<Record<ColumnUnit, number>> = {
  m: 1,
  mm: 0.001,
  cm: 0.01,
  km: 1000,
  ft: 0.3048,
  usft: 1200 / 3937,
};

type Cell = (point: RepairedPoint, into: FileText) => void;

function cellOf(column: TableColumn, set: PointSet, separator: string, decimal: '.' | ','): Cell {
  const length = (value: number | null, into: FileText) => into.fixed(value ?? NaN, LENGTH_DECIMALS, decimal);
  const encoded = cached((value) => new TextEncoder().encode(textCell(value, separator)));
  const repeated = (value: string, into: FileText) => into.encoded(encoded(value));
  const measured = column.startsWith('measured-');
  const what = column.replace('measured-', '');
  const index = ['north', 'longitude', 'y'].includes(what) ? 1 : what === 'height' || what === 'z' ? 2 : 0;
  if (what in FORM_OF || what === 'height') {
    const unit = unitOf(set, what);
    const factor = METRES[unit] ?? 1;
    const decimals =
      unit === '°'
        ? ANGLE_DECIMALS
        : unit === 'mm'
          ? 1
          : unit === 'cm'
            ? 2
            : unit === 'km'
              ? 7
              : LENGTH_DECIMALS;
    const valueOf = measured
      ? (point: RepairedPoint) => coordinates(point.row, set)[index] ?? NaN
      : repairedCoordinate(index);
    return (point, into) => into.fixed(valueOf(point) / factor, decimals, decimal);
  }
  const cells: Partial<Record<TableColumn, Cell>> = {
    name: ({ row }, into) => into.text(textCell(row.name ?? '', separator)),
    code: ({ row }, into) => repeated(row.code ?? '', into),
    time: ({ row }, into) => writeUtcTime(row.time, into),
    class: ({ label }, into) => repeated(label, into),
    'class-as-repaired': ({ fate }, into) => repeated(classInWords(fate.asRepaired), into),
    'shift-east': ({ shift }, into) => length(shift?.east ?? 0, into),
    'shift-north': ({ shift }, into) => length(shift?.north ?? 0, into),
    'shift-up': ({ shift }, into) => length(shift?.up ?? 0, into),
    'uncertainty-horizontal': ({ horizontal }, into) => length(horizontal, into),
    'uncertainty-up': ({ up }, into) => length(up, into),
    reason: ({ reason }, into) => repeated(reason, into),
    state: ({ shift, row }, into) => repeated(shift ? 'corrected' : stateOf(row.state, set), into),
  };
  return cells[column] ?? (() => undefined);
}

const repairedCoordinate = (index: 0 | 1 | 2): ((point: RepairedPoint) => number) =>
  index === 0 ? ({ first }) => first : index === 1 ? ({ second }) => second : ({ third }) => third;

const stateOf = (own: string | undefined, { entry }: PointSet) => own ?? entry.state?.name ?? '';

function cached<Made>(make: (value: string) => Made): (value: string) => Made {
  let last = '';
  let made = make('');
  return (value) => {
    if (value !== last) [last, made] = [value, make(value)];
    return made;
  };
}

/**
 * A text as a cell: quoted where it must be (RFC 4180), and with an apostrophe before what a spreadsheet would run as a
 * formula. What reads points takes that apostrophe away again.
 */
export function textCell(text: string, separator: string): string {
  if (ORDINARY.test(text)) return text;
  const plain = text.replace(/[\r\n]+/g, ' ');
  const harmless = /^'*[=+\-@\t]/.test(plain) ? `'${plain}` : plain;
  return harmless.includes(separator) || harmless.includes('"') || /^\s|\s$/.test(harmless)
    ? `"${harmless.replaceAll('"', '""')}"`
    : harmless;
}
/** Most names and codes: nothing in them needs a second look, whatever the separator. */
const ORDINARY = /^[A-Za-z0-9][\w./-]*$/;
