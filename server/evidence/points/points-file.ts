/** A points file as a controller exports it, row by row, with the file's own line numbers. */
import type { GridEast, GridNorth, Latitude, Longitude, Metres } from '../../quantities/brands.ts';
import { gridEast, gridNorth, latitude, longitude, metres } from '../../quantities/brands.ts';
import type { EvidenceProblem } from '../problems.ts';
import { clipped, problemList } from '../problems.ts';
import { endOfInk, firstInk } from './blanks.ts';
import { angleOf, metresIn, numberIn, textOf, timeReader } from './cells.ts';
import type { Column, ColumnPlan, ColumnRole } from './column-plan.ts';
import { planProblems } from './column-plan.ts';
import type { SeparatedRow, StandingRow } from './separated.ts';
import { cellsOf, standing, standingReader } from './separated.ts';

/** One point of the file; what a cell does not give is undefined. Every row has every field, which keeps reading quick. */
export interface PointRow {
  readonly line: number;
  readonly name: string | undefined;
  readonly east: GridEast | undefined;
  readonly north: GridNorth | undefined;
  readonly latitude: Latitude | undefined;
  readonly longitude: Longitude | undefined;
  readonly x: Metres | undefined;
  readonly y: Metres | undefined;
  readonly z: Metres | undefined;
  /** Above the surface that the plan's column names. */
  readonly height: Metres | undefined;
  readonly code: string | undefined;
  readonly state: string | undefined;
  /** UTC seconds since 1970; undefined where no date is known. */
  readonly time: number | undefined;
  /** UTC seconds of the day, where the date is not known. */
  readonly timeOfDay: number | undefined;
  /** How well it was observed; undefined where no column tells. */
  readonly quality: RowQuality | undefined;
  /** What it needs cannot be read, or its cells are not those of the columns, so that none of its numbers can be relied on. */
  readonly isUnreadable: boolean;
}

export interface RowQuality {
  readonly solution: string | undefined;
  readonly epochs: number | undefined;
  readonly pdop: number | undefined;
  readonly satellites: number | undefined;
  /** Of its epochs, metres. */
  readonly spread: number | undefined;
}

export interface PointsFacts {
  readonly rowCount: number;
  /** Cells of the heading, where the plan has one. */
  readonly headings: readonly string[];
  readonly problems: readonly EvidenceProblem[];
  /** Rows with a comma between the digits of a number where the decimal sign is a point. */
  readonly decimalCommas: DecimalCommas | null;
}

export interface DecimalCommas {
  readonly rows: number;
  /** Most rows have one, so that the file is written so. */
  readonly isHabit: boolean;
  /** Of the first one. */
  readonly line: number;
  readonly typed: string;
}

export interface PointsReader {
  readonly push: (chunk: Uint8Array) => void;
  readonly finish: () => PointsFacts;
}

/** Reads a points file chunk by chunk and hands over each row; nothing of the rows is kept. */
export function pointsReader(plan: ColumnPlan, takeRow: (row: PointRow) => void): PointsReader {
  const rows = standingRowReader(plan, takeRow);
  const reader = standingReader(plan.separator, rows.take, rows.addProblem);
  return {
    push: reader.push,
    finish() {
      reader.finish();
      return rows.finish();
    },
  };
}

/** The same for rows that are already cut into cells, as a session has them. */
export function rowReader(
  plan: ColumnPlan,
  takeRow: (row: PointRow) => void,
): { readonly take: (row: SeparatedRow) => void; readonly finish: () => PointsFacts } {
  const { take, finish } = standingRowReader(plan, takeRow);
  return { take: (row) => take(standing(row)), finish };
}

function standingRowReader(
  plan: ColumnPlan,
  takeRow: (row: PointRow) => void,
): {
  readonly take: (row: StandingRow) => void;
  readonly addProblem: (sentence: string, line: number) => void;
  readonly finish: () => PointsFacts;
} {
  const problems = problemList();
  const unfit = planProblems(plan);
  for (const sentence of unfit) problems.add({ sentence });
  let places =
    plan.heading === 'names' ? undefined : plan.columns.map((column, index) => placeOf(column, index, plan));
  let headings: readonly string[] | undefined = plan.heading === 'none' ? [] : undefined;
  let rowCount = 0;
  let wide: { rows: number; readonly line: number; readonly cells: number } | null = null;
  let commas: { rows: number; readonly line: number; readonly typed: string } | null = null;
  let toldEncoding = false;
  // Very many rows stand in one text, which is looked through once.
  let seen = '';
  let lost = false;

  const takeCells = (row: StandingRow) => {
    const { line, text, count, bounds } = row;
    if (headings === undefined) {
      headings = cellsOf(row).map((cell) => cell.trim());
      places ??= placesByHeading(plan, headings, (sentence) => problems.add({ sentence, line }));
      return;
    }
    if (!places || unfit.length > 0) return;
    rowCount += 1;
    const draft = emptyRow(line);
    const width = Math.max(places.length, headings.length);
    if (
      count > width &&
      cellsOf(row)
        .slice(width)
        .some((cell) => cell.trim() !== '')
    ) {
      // Which cell is which is not known: of such a row nothing but its name is taken.
      draft.isUnreadable = true;
      draft.name = cellsOf(row)[places.find(({ role }) => role === 'name')?.index ?? -1]?.trim();
      wide ??= { rows: 0, line, cells: cellsOf(row).length };
      wide.rows += 1;
      takeRow(draft);
      return;
    }
    let unread: string[] | undefined;
    let comma: string | undefined;
    for (const place of places) {
      const start = bounds[2 * place.index] ?? 0;
      const end = bounds[2 * place.index + 1] ?? 0;
      const from = place.index < count ? firstInk(text, start, end) : end;
      const to = endOfInk(text, from, end);
      if (from === to) {
        if (place.isNeeded) (unread ??= []).push(`no ${place.role}`);
        if (place.isNeeded && place.isNumber) draft.isUnreadable = true;
      } else if (!place.read(text, from, to, draft)) {
        const cell = text.slice(from, to);
        if (place.isNumber) draft.isUnreadable = true;
        if (place.isNumber && plan.decimal === '.' && COMMA_NUMBER.test(cell))
          comma ??= `${place.role} "${clipped(cell)}"`;
        else (unread ??= []).push(`${place.role} "${clipped(cell)}"`);
      }
    }
    if (comma !== undefined) {
      commas ??= { rows: 0, line, typed: comma };
      commas.rows += 1;
    }
    if (unread) {
      const sentence =
        rowCount === 1 && plan.heading === 'none' && unread.length > 1
          ? `This line looks like a heading: ${unread.join(', ')}.`
          : `This row cannot be read in full: ${unread.join(', ')}.`;
      problems.add({ sentence, line });
    }
    if (text !== seen) [seen, lost] = [text, hasLostLetters(text)];
    if (lost && !toldEncoding && (hasLostLetters(draft.name) || hasLostLetters(draft.code))) {
      toldEncoding = true;
      problems.add({
        sentence: 'The file is not written in UTF-8; letters beyond the plain ones are lost.',
        line,
      });
    }
    takeRow(draft);
  };
  return {
    take: takeCells,
    addProblem: (sentence, line) => problems.add({ sentence, line }),
    finish() {
      if (rowCount === 0 && unfit.length === 0) problems.add({ sentence: 'There is no point in this file.' });
      const decimalCommas = commas ? { ...commas, isHabit: 2 * commas.rows > rowCount } : null;
      const told = [
        ...(decimalCommas ? [{ sentence: decimalCommasTold(decimalCommas), line: decimalCommas.line }] : []),
        ...(wide ? [{ sentence: tooWide(wide, places?.length ?? 0, plan), line: wide.line }] : []),
      ];
      return {
        rowCount,
        headings: headings ?? [],
        problems: [...told, ...problems.listed()],
        decimalCommas,
      };
    },
  };
}

const COMMA_NUMBER = /^[-+\u2212]?\d+,\d+$/;

/** Each comma too many parts a number in two, and what stands behind it would be read as another column. */
function tooWide({ rows, cells }: { rows: number; cells: number }, width: number, plan: ColumnPlan): string {
  const numbers = plan.columns.filter(({ role }) => !textRoles.has(role)).length;
  const mayBeCommas = plan.separator === ',' && cells - width <= numbers;
  const fault = `${rows} ${rows === 1 ? 'row has' : 'rows have'} more cells than the ${width} columns, first ${cells}: not used.`;
  return mayBeCommas
    ? `${fault} If these are decimal commas, export with semicolons between the cells and add the line: decimal comma. Else name each column, and skip those that do not matter.`
    : `${fault} Name each column, and skip those that do not matter.`;
}

/** One sentence for all rows. */
export const decimalCommasTold = ({ rows, typed, isHabit }: DecimalCommas) =>
  `Decimal comma in ${rows} ${rows === 1 ? 'row' : 'rows'}, first ${typed}. ${
    isHabit ? 'Where the file writes commas, add a line: decimal comma.' : 'Write a point there.'
  }`;

/** What was no UTF-8 has become the replacement character. */
const hasLostLetters = (text: string | undefined) => text !== undefined && text.includes('\ufffd');

type Draft = { -readonly [Key in keyof PointRow]: PointRow[Key] };

/** A column of the file, and how its cells enter a row; `read` is false where the cell cannot be read. */
interface Place {
  readonly role: string;
  readonly index: number;
  readonly isNeeded: boolean;
  readonly isNumber: boolean;
  readonly read: (text: string, from: number, to: number, into: Draft) => boolean;
}

const optionalRoles = new Set<ColumnRole>([
  ...(['code', 'time', 'state', 'skip', 'height'] as const),
  ...(['solution', 'epochs', 'pdop', 'satellites', 'spread'] as const),
]);
const textRoles = new Set<ColumnRole>(['name', 'code', 'time', 'state', 'skip']);

function placeOf(column: Column, index: number, plan: ColumnPlan): Place {
  return {
    role: column.role,
    index,
    isNeeded: !optionalRoles.has(column.role),
    isNumber: !textRoles.has(column.role),
    read: readerOf(column, plan),
  };
}

function placesByHeading(
  plan: ColumnPlan,
  headings: readonly string[],
  addProblem: (sentence: string) => void,
) {
  const plain = (text: string) => text.trim().toLowerCase();
  const known = headings.map(plain);
  return plan.columns
    .filter((column) => column.role !== 'skip')
    .flatMap((column) => {
      const index = known.indexOf(plain(column.heading ?? ''));
      if (index === -1) addProblem(`The file has no column "${clipped(column.heading ?? '')}".`);
      return index === -1 ? [] : [placeOf(column, index, plan)];
    });
}

function readerOf({ role, unit, clock = 'utc' }: Column, plan: ColumnPlan): Place['read'] {
  const { decimal } = plan;
  const timeIn = timeReader(clock, plan);
  const length = (assign: (into: Draft, value: number) => void): Place['read'] => {
    const factor = metresIn(unit ?? 'm');
    return (text, from, to, into) => {
      const value = numberIn(text, from, to, decimal);
      if (value === undefined || factor === undefined) return false;
      assign(into, value * factor);
      return true;
    };
  };
  const graded = (change: Partial<RowQuality>, into: Draft) =>
    (into.quality = { ...(into.quality ?? UNGRADED), ...change });
  const count = (what: 'epochs' | 'pdop' | 'satellites'): Place['read'] => {
    return (text, from, to, into) => {
      const value = numberIn(text, from, to, decimal);
      if (value === undefined || value < 0) return false;
      graded({ [what]: value }, into);
      return true;
    };
  };
  const cell = (take: (cell: string, into: Draft) => boolean): Place['read'] => {
    return (text, from, to, into) => take(text.slice(from, to), into);
  };
  const readers: Readonly<Record<Column['role'], Place['read']>> = {
    skip: () => true,
    name: cell((name, into) => ((into.name = textOf(name)), true)),
    code: cell((code, into) => ((into.code = textOf(code)), true)),
    state: cell((state, into) => ((into.state = state), true)),
    solution: cell((word, into) => {
      const solution = word.toLowerCase();
      if (SOLUTIONS.has(solution)) graded({ solution }, into);
      return SOLUTIONS.has(solution);
    }),
    epochs: count('epochs'),
    pdop: count('pdop'),
    satellites: count('satellites'),
    spread: length((into, spread) => graded({ spread }, into)),
    east: length((into, value) => (into.east = gridEast(value))),
    west: length((into, value) => (into.east = gridEast(-value))),
    north: length((into, value) => (into.north = gridNorth(value))),
    south: length((into, value) => (into.north = gridNorth(-value))),
    height: length((into, value) => (into.height = metres(value))),
    x: length((into, value) => (into.x = metres(value))),
    y: length((into, value) => (into.y = metres(value))),
    z: length((into, value) => (into.z = metres(value))),
    latitude: cell((angle, into) => {
      const value = angleOf(angle, unit ?? '°', decimal, 90, ['N', 'S']);
      if (value !== undefined) into.latitude = latitude(value);
      return value !== undefined;
    }),
    longitude: cell((angle, into) => {
      const value = angleOf(angle, unit ?? '°', decimal, 180, ['E', 'W']);
      if (value !== undefined) into.longitude = longitude(value);
      return value !== undefined;
    }),
    time: (text, from, to, into) => {
      const value = timeIn(text, from, to);
      if (value?.dated) into.time = value.seconds;
      else if (value) into.timeOfDay = value.seconds;
      return value !== undefined;
    },
  };
  return readers[role];
}

const SOLUTIONS = new Set(['fixed', 'float', 'differential', 'autonomous']);
const UNGRADED: RowQuality = {
  solution: undefined,
  epochs: undefined,
  pdop: undefined,
  satellites: undefined,
  spread: undefined,
};

function emptyRow(line: number): Draft {
  return {
    line,
    name: undefined,
    east: undefined,
    north: undefined,
    latitude: undefined,
    longitude: undefined,
    x: undefined,
    y: undefined,
    z: undefined,
    height: undefined,
    code: undefined,
    state: undefined,
    time: undefined,
    timeOfDay: undefined,
    quality: undefined,
    isUnreadable: false,
  };
}
