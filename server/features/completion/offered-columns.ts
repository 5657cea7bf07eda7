/** What a column of a points entry means, in which unit, and what the file itself calls it in its first line. */
import type { Item } from '../../../grammar/tree.ts';
import { LENGTH_UNITS } from '../../../grammar/units.ts';
import type { Inspection } from '../../inspect.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import type { Points } from '../../session/entries.ts';
import { resolvePath, type Files } from '../../session/files.ts';
import type { Before, Offer } from './completion.ts';

const MEANINGS: readonly (readonly [string, string])[] = [
  ['name', 'the name of the point'],
  ['east', 'grid coordinate'],
  ['north', 'grid coordinate'],
  ['west', 'grid coordinate'],
  ['south', 'grid coordinate'],
  ['height', 'with its unit and surface'],
  ['latitude', 'with its unit'],
  ['longitude', 'with its unit'],
  ['x', 'geocentric'],
  ['y', 'geocentric'],
  ['z', 'geocentric'],
  ['code', 'what it is a point of'],
  ['time', 'local, UTC or GPS'],
  ['state', 'as broadcast or corrected'],
  ['solution', 'fixed, float, differential or autonomous'],
  ['epochs', 'how many were observed'],
  ['pdop', 'of the satellites'],
  ['satellites', 'how many were used'],
  ['spread', 'of the epochs, with its unit'],
  ['skip', 'a column to pass over'],
];
const LENGTHS = ['east', 'north', 'west', 'south', 'height', 'x', 'y', 'z', 'spread'];
const ANGLES = ['latitude', 'longitude'];

const UNITS_OF_LENGTH = LENGTH_UNITS.map(({ unit, says }) => [unit, says] as const);
const UNITS_OF_ANGLE = [
  ['°', 'decimal degrees'],
  ['dms', 'degrees, minutes and seconds'],
] as const;
const CLOCKS = [
  ['local', 'by the clock of the job'],
  ['utc', 'universal time'],
  ['gps', 'GPS time'],
] as const;

/** Each with a few words on what it means. */
export const COLUMN_WORDS = [...MEANINGS, ...UNITS_OF_LENGTH, ...UNITS_OF_ANGLE, ...CLOCKS].map(
  ([word, says]) => ({ word, says }),
);

export function offeredColumns(before: Before, inspection: Inspection, files: Files): Offer[] {
  const { items, start } = before;
  const columns = columnsIn(items);
  const current = columns.at(-1) ?? [];
  const word = ([label, beside]: readonly [string, string]): Offer => ({
    kind: 'word',
    label,
    beside,
    text: label,
    start,
  });
  const heads = headings(before, inspection, files, columns);
  if (isQuoting(before, inspection)) return heads;
  if (current.length === 0) {
    const said = new Set(columns.map(([first]) => saidIn(first)));
    return MEANINGS.filter(([means]) => means === 'skip' || !said.has(means)).map(word);
  }
  const said = current.map(saidIn);
  return [...qualifiers(said, inspection).map(word), ...(current.some(isText) ? [] : heads)];
}

/** What a column may still say of itself: unit, then surface, or its clock. */
function qualifiers(
  [means = '', ...said]: readonly string[],
  { session }: Inspection,
): (readonly [string, string])[] {
  const has = (options: readonly (readonly [string, string])[]) =>
    options.some(([word]) => said.includes(word));
  if (ANGLES.includes(means)) return has(UNITS_OF_ANGLE) ? [] : [...UNITS_OF_ANGLE];
  if (means === 'time') return has(CLOCKS) ? [] : [...CLOCKS];
  if (!LENGTHS.includes(means)) return [];
  if (!has(UNITS_OF_LENGTH)) return [...UNITS_OF_LENGTH];
  if (means !== 'height') return [];
  const surfaces = [
    ['orthometric', 'above the geoid or levelling datum'] as const,
    ['ellipsoidal', 'above the ellipsoid'] as const,
    ...[...session.surfaces.values()].map(
      ({ name, description }) => [name, description ?? 'a local surface'] as const,
    ),
  ];
  return has(surfaces) ? [] : surfaces;
}

/** The items of each column, the one being typed last. */
function columnsIn(items: readonly Item[]): Item[][] {
  const columns: Item[][] = [[]];
  for (const item of items) {
    if (item.kind === 'comma') columns.push([]);
    else columns.at(-1)?.push(item);
  }
  return columns;
}

const isText = ({ kind }: Item) => kind === 'text';
const saidIn = (item: Item | undefined) =>
  item?.kind === 'word'
    ? item.word
    : item?.kind === 'name'
      ? item.name
      : item?.kind === 'junk'
        ? item.text
        : '';

/** The file's own names of columns that none has been given yet, each with where it stands. */
function headings(
  before: Before,
  inspection: Inspection,
  files: Files,
  columns: readonly (readonly Item[])[],
): Offer[] {
  const { bound } = before.cursor;
  if (bound.kind !== 'points' || !bound.file) return [];
  const given = new Set(columns.flat().flatMap((item) => (item.kind === 'text' ? [item.text] : [])));
  const quoting = isQuoting(before, inspection);
  const start = quoting ? openQuote(before, inspection) : before.start;
  const file = bound.file.text;
  return headingOf(bound, resolvePath(inspection.session.document.path, file), files)
    .map((name, index) => ({ name, index }))
    .filter(({ name }) => name !== '' && !given.has(name))
    .map(({ name, index }) => {
      const text = `"${name.replaceAll('"', '""')}"`;
      return { kind: 'value', label: text, beside: `column ${index + 1} of ${file}`, text, start };
    });
}

/** The cells of the file's first line, where none of them is a number. */
function headingOf({ separator, decimal }: Points, path: string, files: Files): string[] {
  const line = firstLine(path, files);
  if (line === null) return [];
  const named = { comma: ',', semicolon: ';', tab: '\t' }[separator?.name ?? ''];
  const parting = named ?? [';', '\t', ','].find((sign) => line.includes(sign)) ?? ',';
  const cells = cellsOf(line, parting);
  const number = decimal?.name === 'comma' ? /^[+-]?\d+(,\d+)?$/ : /^[+-]?\d+(\.\d+)?$/;
  return cells.some((cell) => number.test(cell)) ? [] : cells;
}

/** Quoted cells may hold what parts the others. */
function cellsOf(line: string, parting: string): string[] {
  const cells = [''];
  let quoted = false;
  for (const sign of line) {
    if (sign === '"') quoted = !quoted;
    else if (sign === parting && !quoted) cells.push('');
    else cells[cells.length - 1] += sign;
  }
  return cells.map((cell) => cell.trim());
}

/** As much as a heading may need; what is longer is none. */
const LONGEST = 4096;

function firstLine(path: string, files: Files): string | null {
  const pieces = files.chunks?.(path) ?? whole(files.bytes(path));
  if (isRefusal(pieces)) return null;
  for (const piece of pieces) {
    const text = new TextDecoder().decode(piece.subarray(0, LONGEST));
    return /^\s*([^\r\n]*)[\r\n]/.exec(text)?.[1] ?? null;
  }
  return null;
}

const whole = (bytes: ReturnType<Files['bytes']>) => (isRefusal(bytes) ? bytes : [bytes]);

const isQuoting = (before: Before, inspection: Inspection) => openQuote(before, inspection) >= 0;

/** Where the quotation mark stands that has not been closed before the cursor; -1 where none is open. */
function openQuote({ cursor, offset }: Before, { session }: Inspection): number {
  const from = cursor.start + (cursor.line?.start ?? 0);
  const typed = session.document.text.slice(from, offset);
  const marks = typed.split('"').length - 1;
  return marks % 2 === 1 ? from + typed.lastIndexOf('"') : -1;
}
