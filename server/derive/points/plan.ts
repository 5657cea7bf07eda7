/** What the columns of a points entry mean: roles, units, surface and clock, how the file is written, and what is wrong with that. */
import type { Place } from '../../../grammar/tree.ts';
import type {
  Column as PlannedColumn,
  ColumnClock,
  ColumnPlan,
  ColumnRole,
  ColumnUnit,
} from '../../evidence/points/column-plan.ts';
import { COLUMN_UNITS, planProblems } from '../../evidence/points/column-plan.ts';
import { separatedReader } from '../../evidence/points/separated.ts';
import { assumed, isHole, type Assumed } from '../../quantities/value.ts';
import type { Column, Job, Points } from '../../session/entries.ts';
import { nearest } from '../../quantities/near.ts';
import type { SetupTime } from '../checks/base-of-check.ts';

export type PointsForm = 'grid' | 'geographic' | 'geocentric';

export interface PointsPlan {
  readonly plan: ColumnPlan;
  /** Null where the columns make no position. */
  readonly form: PointsForm | null;
  /** Of the height column: orthometric, ellipsoidal or a local surface; null where there is no height. */
  readonly surface: string | null;
  /** The heading has a column `state` that the notes do not speak of: what it calls corrected is believed, and nothing else. */
  readonly unaskedState: boolean;
  readonly problems: readonly PlanProblem[];
  readonly assumptions: readonly Assumed[];
}
export interface PlanProblem {
  readonly sentence: string;
  readonly place: Place;
  /** How the rows are to be read is not known, so that what is wrong with them follows from that. */
  readonly spoilsRows?: boolean;
}

const ROLES: readonly ColumnRole[] = [
  'name',
  'east',
  'north',
  'west',
  'south',
  'height',
  'latitude',
  'longitude',
  'x',
  'y',
  'z',
  'code',
  'time',
  'state',
  'solution',
  'epochs',
  'pdop',
  'satellites',
  'spread',
  'skip',
];
const CLOCKS: readonly ColumnClock[] = ['local', 'utc', 'gps'];
const LENGTHS: readonly ColumnRole[] = ['east', 'north', 'west', 'south', 'height', 'x', 'y', 'z', 'spread'];
const ANGLES: readonly ColumnRole[] = ['latitude', 'longitude'];

/** GPS time was 18 s ahead of UTC from 2017 on (IERS Bulletin C 52). */
const LEAP_SECONDS = assumed('GPS time less UTC', 18, 's', 0, '18 s since 2017 (IERS Bulletin C 52)');

/**
 * @param firstLine of the file, where there is one: it tells the separator and whether it is a heading
 * @param begun when the bases stood, by which times past midnight are known
 */
export function pointsPlan(
  points: Points,
  job: Job | null,
  firstLine: string | null,
  begun: readonly SetupTime[],
): PointsPlan {
  const problems: PlanProblem[] = [];
  const columns = points.columns.map((column) => planned(column, problems));
  const heading = columns.some((column) => column.heading !== undefined);
  const decimal = decimalOf(points, problems);
  const separator = separatorOf(points, decimal, columns.length, firstLine, problems);
  const clock = columns.find((column) => column.role === 'time')?.clock;
  const day = job?.date && !isHole(job.date) ? job.date.typed : undefined;
  const offset = job?.clock && !isHole(job.clock) ? job.clock.seconds : 0;
  const draft: ColumnPlan = {
    columns,
    separator,
    decimal,
    heading: heading ? 'names' : 'none',
    ...(day === undefined ? {} : { date: day }),
    ...(job?.date && !isHole(job.date) ? stoodPast((job.date.day + 1) * DAY - offset, points, begun) : {}),
    utcOffset: offset,
    leapSeconds: LEAP_SECONDS.value,
  };
  const isHeading = !heading && firstLine !== null && looksLikeHeading(firstLine, draft);
  const place = points.columnsPlace ?? points.place;
  for (const sentence of planProblems(draft)) problems.push({ sentence, place });
  const form = formOf(columns);
  // A coordinate without its unit, or a column that nobody knows, has been told of already.
  const unknown = points.columns.some((column) => roleOf(column) === undefined);
  if (points.columns.length > 0 && !form && !unknown && !formOf(points.columns.map(asMeant)))
    problems.push({
      sentence:
        'The columns make no position: east and north, latitude and longitude, or x, y and z are needed.',
      place,
    });
  const height = columns.find((column) => column.role === 'height');
  const written: ColumnPlan = { ...draft, heading: isHeading ? 'skip' : draft.heading };
  const withState = unaskedState(written, firstLine);
  return {
    plan: withState ? { ...written, columns: withState } : written,
    unaskedState: withState !== null,
    form,
    surface: height ? (height.surface ?? null) : null,
    problems,
    assumptions: clock === 'gps' ? [LEAP_SECONDS] : [],
  };
}

/** When the base of the points stood, or any where none is named; nothing where none stood past the midnight. */
function stoodPast(
  midnight: number,
  { from: base }: Points,
  begun: readonly SetupTime[],
): Pick<ColumnPlan, 'stood'> {
  const stood = begun
    .filter(({ name, from }) => Number.isFinite(from) && (!base || base.name === name))
    // One that still stands is taken to do so for half a day: further off, the same time of the day before is as near.
    .map(({ from, until }) => ({ from, until: Number.isFinite(until) ? until : from + DAY / 2 }));
  return stood.some(({ until }) => until > midnight) ? { stood } : {};
}
const DAY = 86_400;

/** The columns with that of the state, where the file's heading has one and nobody has said so; else null. */
function unaskedState(
  { columns, heading, separator }: ColumnPlan,
  firstLine: string | null,
): readonly PlannedColumn[] | null {
  if (heading === 'none' || firstLine === null || columns.some(({ role }) => role === 'state')) return null;
  const at = cellsOfLine(firstLine, separator).findIndex((cell) => cell.trim().toLowerCase() === 'state');
  if (at === -1) return null;
  if (heading === 'names') return [...columns, { role: 'state', heading: 'state' }];
  if (columns[at] && columns[at].role !== 'skip') return null;
  const passed = Array.from(
    { length: Math.max(at, columns.length) },
    (_, index) => columns[index] ?? SKIPPED,
  );
  return [...passed.slice(0, at), { role: 'state' }, ...passed.slice(at + 1)];
}
const SKIPPED: PlannedColumn = { role: 'skip' };

function planned(column: Column, problems: PlanProblem[]): PlannedColumn {
  const { place } = column;
  const role = roleOf(column);
  if (!role) {
    const near = nearest(column.means.toLowerCase(), ROLES);
    const hint = near.length > 0 ? ` Did you mean ${near.join(' or ')}?` : ` Known are ${ROLES.join(', ')}.`;
    problems.push({ sentence: `The column ${column.means} is not known and is passed over.${hint}`, place });
    return { role: 'skip' };
  }
  const words = column.qualifiers;
  const unit = COLUMN_UNITS.find((known) => words.includes(known));
  const above = words[words.indexOf('above') + 1];
  const surface = words.includes('above')
    ? above
    : words.find((word) => word === 'orthometric' || word === 'ellipsoidal');
  const clock = CLOCKS.find((known) => words.some((word) => word.toLowerCase() === known));
  const known = [unit, surface, clock, 'above'];
  const odd = words.find((word) => !known.includes(word) && !known.includes(word.toLowerCase()));
  const passedOver =
    odd === undefined ? '' : `${odd} behind the column ${role} is not known and is passed over. `;
  const lacking = lacks(role, unit, surface, clock);
  if (passedOver !== '' || lacking.length > 0)
    problems.push({ sentence: `${passedOver}${lacking.join(' ')}`.trimEnd(), place });
  return {
    role: fits(role, unit) && (role !== 'time' || clock !== undefined) ? role : 'skip',
    ...(unit === undefined ? {} : { unit }),
    ...(surface === undefined ? {} : { surface }),
    ...(clock === undefined ? {} : { clock }),
    ...(column.header === null ? {} : { heading: column.header }),
  };
}

const roleOf = ({ means }: Column): ColumnRole | undefined =>
  ROLES.find((known) => known === means.toLowerCase());

const asMeant = (column: Column): PlannedColumn => ({ role: roleOf(column) ?? 'skip' });

/** A column whose unit is not said is not read: its numbers could be metres, feet or degrees. */
const fits = (role: ColumnRole, unit: ColumnUnit | undefined) =>
  LENGTHS.includes(role)
    ? unit !== undefined && unit !== '°' && unit !== 'dms'
    : ANGLES.includes(role)
      ? unit === '°' || unit === 'dms'
      : true;

/** What a column does not say, each in a sentence. */
function lacks(
  role: ColumnRole,
  unit: ColumnUnit | undefined,
  surface: string | undefined,
  clock: ColumnClock | undefined,
): string[] {
  const lacking: string[] = [];
  if (!fits(role, unit)) {
    const wanted = ANGLES.includes(role) ? `a unit of angle (${role} °, ${role} dms)` : `a unit (${role} m)`;
    lacking.push(`The column ${role} has no fitting unit. Not read: write ${wanted}.`);
  }
  if (role === 'height' && surface === undefined)
    lacking.push(
      'The surface of the column height is not said, so its heights are not repaired; write height m orthometric, height m ellipsoidal or height m above a named surface.',
    );
  if (role === 'time' && clock === undefined)
    lacking.push(
      'By which clock the column time counts is not said, so it is not read; write time local, time utc or time gps.',
    );
  return lacking;
}

function formOf(columns: readonly PlannedColumn[]): PointsForm | null {
  const has = (role: ColumnRole) => columns.some((column) => column.role === role);
  if ((has('east') || has('west')) && (has('north') || has('south'))) return 'grid';
  if (has('latitude') && has('longitude')) return 'geographic';
  return has('x') && has('y') && has('z') ? 'geocentric' : null;
}

const SEPARATORS: Readonly<Record<string, ColumnPlan['separator']>> = {
  comma: ',',
  ',': ',',
  semicolon: ';',
  ';': ';',
  tab: '\t',
};

const DECIMALS: Readonly<Record<string, ColumnPlan['decimal']>> = {
  comma: ',',
  ',': ',',
  point: '.',
  '.': '.',
};

function decimalOf({ decimal }: Points, problems: PlanProblem[]): ColumnPlan['decimal'] {
  const declared = decimal ? DECIMALS[decimal.name.toLowerCase()] : '.';
  if (decimal && !declared)
    problems.push({
      sentence: `The decimal sign ${decimal.name} is not known; it can be point or comma.`,
      place: decimal.place,
      spoilsRows: true,
    });
  return declared ?? '.';
}

/** As declared; else the one that parts the first line into enough cells. */
function separatorOf(
  points: Points,
  decimal: ColumnPlan['decimal'],
  count: number,
  firstLine: string | null,
  problems: PlanProblem[],
): ColumnPlan['separator'] {
  const declared = points.separator ? SEPARATORS[points.separator.name.toLowerCase()] : undefined;
  if (declared) return declared;
  if (points.separator)
    problems.push({
      sentence: `The separator ${points.separator.name} is not known; it can be comma, semicolon or tab.`,
      place: points.separator.place,
      spoilsRows: true,
    });
  // A decimal comma parts cells as well, but no more than a separator of its own does.
  const candidates: readonly ColumnPlan['separator'][] = decimal === ',' ? [';', '\t'] : [';', '\t', ','];
  const fitting = candidates.find((sign) => (firstLine ?? '').split(sign).length >= Math.max(count, 2));
  return fitting ?? (decimal === ',' ? ';' : ',');
}

/** No cell that should be a coordinate begins like a number. */
function looksLikeHeading(firstLine: string, { columns, separator }: ColumnPlan): boolean {
  const cells = cellsOfLine(firstLine, separator);
  const numbers = columns.flatMap((column, index) =>
    LENGTHS.includes(column.role) || ANGLES.includes(column.role) ? [cells[index] ?? ''] : [],
  );
  return numbers.length > 0 && numbers.every((cell) => !/^\s*[-+\u2212]?\d/.test(cell));
}

function cellsOfLine(line: string, separator: ColumnPlan['separator']): readonly string[] {
  let found: readonly string[] = [];
  const reader = separatedReader(
    separator,
    ({ cells }) => (found = cells),
    () => undefined,
  );
  reader.push(new TextEncoder().encode(line));
  reader.finish();
  return found;
}
