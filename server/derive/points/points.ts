/** The points of a session, from files, from rows and one by one: read row by row, counted, and judged by the trust of the day. */
import type { Place } from '../../../grammar/tree.ts';
import { lineReader } from '../../evidence/lines.ts';
import type { EvidenceProblem } from '../../evidence/problems.ts';
import {
  pointsReader,
  rowReader,
  type DecimalCommas,
  type PointRow,
  type PointsFacts,
} from '../../evidence/points/points-file.ts';
import { halfTurn, toRadians } from '../../geodesy/angles.ts';
import type { CoordinateSystem } from '../../geodesy/system.ts';
import { gridEast, gridNorth, latitude, longitude, metres } from '../../quantities/brands.ts';
import { isRefusal, refuse, type Refusal } from '../../quantities/refusal.ts';
import { given, hole, isHole, type Assumed, type Maybe, type Value } from '../../quantities/value.ts';
import type { Named, Surface } from '../../session/coordinates.ts';
import type { Bound, Job, LocalSurface, Point, Points } from '../../session/entries.ts';
import { resolvePath, type Files } from '../../session/files.ts';
import { instantOf, type Session } from '../../session/session.ts';
import { foundInEach } from '../../session/each.ts';
import type { SetupTime } from '../checks/base-of-check.ts';
import { withRecording } from '../evidence/recording.ts';
import { gridNamed, systemNamed, type Frame } from '../positions/frame.ts';
import { placedHeight } from '../heights/heights.ts';
import { pointsPlan, type PlanProblem, type PointsForm } from './plan.ts';
import { NOTHING, remembered, sameRefusal, tokenOf, type Nothing, type Token } from '../remembered.ts';
import type { ColumnPlan } from '../../evidence/points/column-plan.ts';

/** Points that share their columns, base, rover and state. */
export interface PointSet {
  readonly kind: 'file' | 'rows' | 'point';
  readonly entry: Points | Point;
  /** The file as typed, the name of the point, or what rows are called, else `rows`. */
  readonly name: string;
  /** Where the file lies, seen from where the session was opened. */
  readonly path: string | null;
  readonly plan: ColumnPlan;
  readonly form: PointsForm | null;
  readonly system: Maybe<CoordinateSystem>;
  readonly height: Maybe<HeightSurface>;
  /** The rows have a state that the notes do not speak of: `corrected` is believed, and nothing else. */
  readonly unaskedState: boolean;
  readonly problems: readonly PlanProblem[];
  readonly assumptions: readonly Assumed[];
  /** Hands over every row and keeps none. */
  readonly read: (take: (row: PointRow) => void) => PointsFacts | Refusal;
  /** The same for a long file, piece by piece, so that whoever takes the rows can have a rest in between. */
  readonly steps?: (take: (row: PointRow) => void) => Steps<PointsFacts | Refusal>;
  /** What is the same however often it is asked: how many rows, when, and what is wrong with them. */
  readonly scan: () => PointsScan;
  /** The place of a row that stands in the notes themselves. */
  readonly placeOf: (line: number) => Place;
}

/** Work that rests after each piece, and has an answer at its end. */
export type Steps<Answer> = Generator<undefined, Answer>;

/** What the heights of a set stand on, once local surfaces are taken off. */
export interface HeightSurface {
  readonly surface: 'orthometric' | 'ellipsoidal';
  /** Added to a height as written it gives one above that surface, in metres. */
  readonly offset: number;
}

export interface PointsScan {
  readonly rowCount: number;
  /** UTC seconds since 1970 of each row; not a number where the row has no time. */
  readonly times: Float64Array;
  /** What the rows themselves say of their state, and how many say so. */
  readonly states: ReadonlyMap<string, number>;
  readonly problems: readonly EvidenceProblem[];
  /** Some rows tell how well they were observed, or cannot be read. */
  readonly graded: boolean;
  /** Names that come again elsewhere. */
  readonly clashes: Clashes;
  /** Rows with decimal commas that nobody has declared. */
  readonly decimalCommas: DecimalCommas | null;
  /** The rows that lie farthest out, whichever way one looks. */
  readonly outermost: readonly PointRow[];
  /** Names that come again at least twenty minutes later. */
  readonly repeated: readonly Repeated[];
  /** Repeated points were looked for up to here only, since there were more names than are kept. */
  readonly manyNames: boolean;
  /** Why the file cannot be read at all. */
  readonly refused: string | null;
}

/** One point measured twice, from another initialisation: at least twenty minutes apart. */
export interface Repeated {
  readonly name: string;
  readonly first: Occurrence;
  readonly second: Occurrence;
}
/** Coordinates as written, in the order of the set's form. */
export interface Occurrence {
  readonly line: number;
  readonly time: number;
  readonly first: number;
  readonly second: number;
  readonly third: number;
}
/** Points of one name that are not one place. */
export interface Clashes {
  readonly count: number;
  /** The farthest apart. */
  readonly worst: {
    readonly name: string;
    readonly lines: readonly [number, number];
    readonly apart: number;
  } | null;
}
/** Two measurements of one point are nearer to one another than this, metres. */
const ONE_PLACE = 0.5;
const ANOTHER_INITIALISATION = 20 * 60;
/** Beyond this many names repeated points are no longer looked for, so that memory stays bounded. */
const MOST_NAMES = 100_000;
const MOST_REPEATED = 1000;

/** Every set of points of a session, in the order of the notes. */
export function pointSets(
  session: Session,
  frame: Frame,
  surfaces: ReadonlyMap<string, LocalSurface>,
  begun: readonly SetupTime[],
  files: Files,
): PointSet[] {
  return pointsIn(session.entries).map((entry): PointSet => {
    if (entry.kind === 'point') return pointSet(asRecorded(entry, session, frame, files), frame, surfaces);
    if (!entry.file) return rowsSet(entry, frame, surfaces, begun);
    const path = resolvePath(session.document.path, entry.file.text);
    if (files.chunks) return streamedSet(entry, path, frame, surfaces, begun, files);
    const bytes = files.bytes(path);
    return fileSet(
      entry,
      isRefusal(bytes) ? NOTHING : bytes,
      frame,
      surfaces,
      begun,
      refusalOf(bytes),
      tokenOf(path),
    );
  });
}
const pointsIn = foundInEach((entry: Bound) =>
  entry.kind === 'point' || entry.kind === 'points' ? [entry] : [],
);

/** A point whose log stands in for what a controller showed. */
function asRecorded(point: Point, session: Session, frame: Frame, files: Files): Point {
  const file = point.observed?.recording?.file;
  if (!file) return point;
  const bytes = files.bytes(resolvePath(session.document.path, file.text));
  const rover = point.by ? session.rovers.get(point.by.name) : undefined;
  return withRecording(point, isRefusal(bytes) ? sameRefusal(bytes) : bytes, rover ?? NOTHING, frame);
}

const refusalOf = (bytes: Uint8Array | Refusal): Refusal | Nothing =>
  isRefusal(bytes) ? sameRefusal(bytes) : NOTHING;

const fileSet = remembered(
  (
    entry: Points,
    bytes: Uint8Array | Nothing,
    frame: Frame,
    surfaces: ReadonlyMap<string, LocalSurface>,
    begun: readonly SetupTime[],
    refusal: Refusal | Nothing,
    { worth: path }: Token<string>,
  ): PointSet => {
    const whole = bytes === NOTHING ? null : (bytes as Uint8Array);
    const chunks = () => (whole ? sliced(whole) : isRefusal(refusal) ? refusal : refuse('it cannot be read'));
    return setFromFile(entry, path, frame, surfaces, begun, chunks);
  },
);

function streamedSet(
  entry: Points,
  path: string,
  frame: Frame,
  surfaces: ReadonlyMap<string, LocalSurface>,
  begun: readonly SetupTime[],
  files: Files,
): PointSet {
  return setFromFile(
    entry,
    path,
    frame,
    surfaces,
    begun,
    () => files.chunks?.(path) ?? refuse('it cannot be read'),
  );
}

const CHUNK = 1 << 18;
function* sliced(bytes: Uint8Array): Iterable<Uint8Array> {
  for (let at = 0; at < bytes.length; at += CHUNK) yield bytes.subarray(at, at + CHUNK);
}

function setFromFile(
  entry: Points,
  path: string,
  frame: Frame,
  surfaces: ReadonlyMap<string, LocalSurface>,
  begun: readonly SetupTime[],
  chunks: () => Iterable<Uint8Array> | Refusal,
): PointSet {
  const planned = pointsPlan(entry, frame.job, firstLine(chunks()), begun);
  const steps = function* (take: (row: PointRow) => void): Steps<PointsFacts | Refusal> {
    const pieces = chunks();
    if (isRefusal(pieces)) return pieces;
    const reader = pointsReader(planned.plan, take);
    for (const piece of pieces) {
      reader.push(piece);
      yield;
    }
    return reader.finish();
  };
  const read: PointSet['read'] = (take) => {
    const work = steps(take);
    for (;;) {
      const { done, value } = work.next();
      if (done) return value;
    }
  };
  return {
    kind: 'file',
    entry,
    name: entry.file?.text ?? '',
    path,
    ...shared(entry, planned, frame, surfaces),
    read,
    steps,
    scan: once(() => scanned(read)),
    placeOf: () => entry.file?.place ?? entry.place,
  };
}

/** The first line that is not blank, as far as the first piece of the file shows it. */
function firstLine(pieces: Iterable<Uint8Array> | Refusal): string | null {
  if (isRefusal(pieces)) return null;
  let found: string | null = null;
  const reader = lineReader('utf-8', (line) => {
    if (found === null && line.trim() !== '') found = line;
  });
  for (const piece of pieces) {
    reader.push(piece);
    break;
  }
  reader.finish();
  return found;
}

const rowsSet = remembered(
  (
    entry: Points,
    frame: Frame,
    surfaces: ReadonlyMap<string, LocalSurface>,
    begun: readonly SetupTime[],
  ): PointSet => {
    const planned = pointsPlan({ ...entry, separator: null }, frame.job, null, begun);
    const read: PointSet['read'] = (take) => {
      const reader = rowReader({ ...planned.plan, heading: 'none' }, take);
      entry.rows.forEach((row, index) =>
        reader.take({ line: index + 1, cells: row.cells.map((cell) => cell.text) }),
      );
      return reader.finish();
    };
    return {
      kind: 'rows',
      entry,
      name: entry.title ?? 'rows',
      path: null,
      ...shared(entry, planned, frame, surfaces),
      read,
      scan: once(() => scanned(read)),
      placeOf: (line) => entry.rows[line - 1]?.place ?? entry.place,
    };
  },
);

function shared(
  entry: Points,
  { plan, form, surface, unaskedState, problems, assumptions }: ReturnType<typeof pointsPlan>,
  frame: Frame,
  surfaces: ReadonlyMap<string, LocalSurface>,
) {
  const place = entry.columnsPlace ?? entry.place;
  const hasHeight = plan.columns.some((column) => column.role === 'height');
  const system: Maybe<CoordinateSystem> = form === 'grid' ? frame.grid : frame.geographic;
  return {
    plan,
    form,
    system: form ? system : hole('the columns make no position', place),
    height: !hasHeight
      ? hole('the points have no heights', place)
      : surface === null
        ? hole('the surface of the heights is not said', place)
        : surfaceNamed(surfaceOf(surface, place), surfaces, place),
    unaskedState,
    problems,
    assumptions,
  };
}

const surfaceOf = (name: string, place: Place): Surface =>
  name === 'orthometric' || name === 'ellipsoidal' ? name : { above: { name, place } };

/** A height of nothing above the surface tells how far the surface itself lies. */
function surfaceNamed(
  surface: Surface,
  surfaces: ReadonlyMap<string, LocalSurface>,
  place: Place,
): Maybe<HeightSurface> {
  const zero = given('height', 0, 'm', 0, '0', place);
  const placed = placedHeight({ value: zero, surface, geoid: null, place }, surfaces, 'the points');
  return isHole(placed) ? placed : { surface: placed.surface, offset: placed.value.value };
}

const pointSet = remembered(
  (entry: Point, frame: Frame, surfaces: ReadonlyMap<string, LocalSurface>): PointSet => {
    const { observed, name } = entry;
    const position = observed?.position ?? null;
    const form = position?.form ?? null;
    const system: Maybe<CoordinateSystem> = !position
      ? hole(`nothing was observed at ${name}`, observed?.place ?? entry.place)
      : position.system
        ? form === 'grid'
          ? gridNamed(position.system, frame)
          : systemNamed(position.system, frame)
        : form === 'grid'
          ? frame.grid
          : frame.geographic;
    const height = observed?.height ?? null;
    const row = rowOf(entry, frame.job);
    const read: PointSet['read'] = (take) => {
      take(row);
      return { rowCount: 1, headings: [], problems: [], decimalCommas: null };
    };
    return {
      kind: 'point',
      entry,
      name,
      path: null,
      plan: POINT_PLAN,
      form,
      system,
      height: height?.surface
        ? surfaceNamed(height.surface, surfaces, height.place)
        : hole(`no height was observed at ${name}`, observed?.place ?? entry.place),
      unaskedState: false,
      problems: [],
      assumptions: [],
      read,
      scan: once(() => scanned(read)),
      placeOf: () => namePlace(entry),
    };
  },
);

/** Of the name behind the first word. */
function namePlace({ entry, place }: Point): Place {
  const name = entry.header.items[0];
  return name ? { ...place, start: name.start, end: name.end } : place;
}

const POINT_PLAN: ColumnPlan = { columns: [], separator: ',', decimal: '.', heading: 'none' };

function rowOf(entry: Point, job: Job | null): PointRow {
  const position = entry.observed?.position;
  const height = entry.observed?.height?.value;
  const number = (value: Maybe<Value> | undefined) => (value && !isHole(value) ? value.value : undefined);
  const branded = <Brand>(value: Maybe<Value> | undefined, brand: (value: number) => Brand) => {
    const plain = number(value);
    return plain === undefined ? undefined : brand(plain);
  };
  const grid = position?.form === 'grid' ? position : undefined;
  const geographic = position?.form === 'geographic' ? position : undefined;
  const geocentric = position?.form === 'geocentric' ? position : undefined;
  const first = grid?.east ?? geographic?.latitude ?? geocentric?.x;
  const second = grid?.north ?? geographic?.longitude ?? geocentric?.y;
  return {
    line: 1,
    name: entry.name,
    east: branded(grid?.east, gridEast),
    north: branded(grid?.north, gridNorth),
    latitude: branded(geographic?.latitude, latitude),
    longitude: branded(geographic?.longitude, longitude),
    x: branded(geocentric?.x, metres),
    y: branded(geocentric?.y, metres),
    z: branded(geocentric?.z, metres),
    height: branded(height, metres),
    code: undefined,
    state: entry.state?.name,
    time: instantOf(entry.at, job) ?? undefined,
    timeOfDay: undefined,
    quality: undefined,
    isUnreadable: !position || [number(first), number(second)].includes(undefined),
  };
}

function once<Answer>(make: () => Answer): () => Answer {
  let made: { readonly answer: Answer } | undefined;
  return () => (made ??= { answer: make() }).answer;
}

/** Keeps the farthest row in each of these directions of the coordinates as written. */
function outermostFinder() {
  const farthest = DIRECTIONS.map((): { reach: number; row: PointRow | null } => ({
    reach: -Infinity,
    row: null,
  }));
  /** Longitudes count from the first one, since those of neighbours jump by a whole turn at 180°. */
  let meridian: number | undefined;
  const turned = (degrees: number) => {
    meridian ??= degrees;
    const from = degrees - meridian;
    return from > 180 ? from - 360 : from < -180 ? from + 360 : from;
  };
  return {
    take(row: PointRow) {
      const { longitude: degrees } = row;
      const first = row.east ?? (degrees === undefined ? row.x : turned(degrees));
      const second = row.north ?? row.latitude ?? row.y;
      if (first === undefined || second === undefined) return;
      const third = row.z ?? 0;
      for (let index = 0; index < DIRECTIONS.length; index++) {
        const [i = 0, j = 0, k = 0] = DIRECTIONS[index] ?? [];
        const reach = i * first + j * second + k * third;
        const best = farthest[index];
        if (best && reach > best.reach) {
          best.reach = reach;
          best.row = row;
        }
      }
    },
    found: () => [...new Set(farthest.flatMap(({ row }) => row ?? []))],
  };
}

/** Along the axes and halfway between them. */
const DIRECTIONS: readonly (readonly [number, number, number])[] = [-1, 0, 1].flatMap((i) =>
  [-1, 0, 1].flatMap((j) =>
    [-1, 0, 1]
      .filter((k) => i !== 0 || j !== 0 || k !== 0)
      .map((k) => [i, j, k].map((part) => part / Math.hypot(i, j, k)))
      .map(([x = 0, y = 0, z = 0]) => [x, y, z] as const),
  ),
);

function scanned(read: PointSet['read']): PointsScan {
  let times = new Float64Array(1024);
  let rowCount = 0;
  let graded = false;
  const states = new Map<string, number>();
  const repeated = repeatedFinder();
  const outermost = outermostFinder();
  const facts = read((row) => {
    outermost.take(row);
    if (rowCount === times.length) times = enlarged(times);
    times[rowCount] = row.time ?? NaN;
    rowCount += 1;
    if (row.quality || row.isUnreadable) graded = true;
    if (row.state !== undefined && states.size < MOST_REPEATED)
      states.set(row.state, (states.get(row.state) ?? 0) + 1);
    repeated.take(row);
  });
  return {
    rowCount,
    times: times.subarray(0, rowCount),
    states,
    graded,
    problems: isRefusal(facts) ? [] : facts.problems,
    decimalCommas: isRefusal(facts) ? null : facts.decimalCommas,
    outermost: outermost.found(),
    ...repeated.found(),
    refused: isRefusal(facts) ? facts.refused : null,
  };
}

/** Looks for points that come again, row by row; of each name it keeps a few numbers. */
export function repeatedFinder(): {
  readonly take: (row: PointRow) => void;
  readonly found: () => Pick<PointsScan, 'repeated' | 'manyNames' | 'clashes'>;
} {
  const seen = new Map<string, number>();
  // Plain numbers, five for each name, since very many small objects cost more than what is in them.
  let firsts = new Float64Array(5 * 1024);
  const repeated: Repeated[] = [];
  let manyNames = false;
  let clashes: Clashes = { count: 0, worst: null };
  return {
    take(row) {
      const { name, time = NaN, isUnreadable } = row;
      if (manyNames || name === undefined || isUnreadable) return;
      const known = seen.get(name);
      if (known === undefined) {
        const at = 5 * seen.size;
        if (at === firsts.length) firsts = enlarged(firsts);
        firsts[at] = row.line;
        firsts[at + 1] = time;
        firsts[at + 2] = firstOf(row);
        firsts[at + 3] = secondOf(row);
        firsts[at + 4] = thirdOf(row);
        seen.set(name, at);
        manyNames = seen.size >= MOST_NAMES;
        return;
      }
      const [line = NaN, before = NaN, first = NaN, second = NaN, third = NaN] = firsts.subarray(
        known,
        known + 5,
      );
      const apart = apartInMetres(row, first, second);
      if (apart > ONE_PLACE) {
        const isWorst = apart > (clashes.worst?.apart ?? 0);
        const found = { name, lines: [line, row.line] as const, apart };
        clashes = { count: clashes.count + 1, worst: isWorst ? found : clashes.worst };
      }
      if (!(Math.abs(time - before) >= ANOTHER_INITIALISATION) || repeated.length >= MOST_REPEATED) return;
      repeated.push({
        name,
        first: { line, time: before, first, second, third },
        second: { line: row.line, time, first: firstOf(row), second: secondOf(row), third: thirdOf(row) },
      });
    },
    found: () => ({ repeated, manyNames, clashes }),
  };
}

/** Near enough to tell one place from another. */
function apartInMetres(row: PointRow, first: number, second: number): number {
  const [a, b] = [firstOf(row) - first, secondOf(row) - second];
  if (row.latitude === undefined) return Math.hypot(a, b);
  return DEGREE * Math.hypot(a, halfTurn(b) * Math.cos(toRadians(row.latitude)));
}
const DEGREE = 111_195;

const firstOf = (row: PointRow) => row.east ?? row.latitude ?? row.x ?? NaN;
const secondOf = (row: PointRow) => row.north ?? row.longitude ?? row.y ?? NaN;
const thirdOf = (row: PointRow) => row.height ?? row.z ?? NaN;

function enlarged(numbers: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(numbers.length * 2);
  larger.set(numbers);
  return larger;
}

/** What the notes say of a set as a whole. */
export const saidOf = ({
  entry,
}: PointSet): { from: Named | null; by: Named | null; state: Named | null } => ({
  from: entry.from,
  by: entry.by,
  state: entry.state,
});
