/** How far points came to lie elsewhere between two versions of a session: the farthest of them, and why. */
import type { PointSet } from '../../derive/points/points.ts';
import { coordinates, inMetres, type RepairedPoint } from '../../derive/repair/row.ts';
import type { PointRow } from '../../evidence/points/points-file.ts';
import { halfTurn } from '../../geodesy/angles.ts';
import type { Inspection } from '../../inspect.ts';
import { isHole } from '../../quantities/value.ts';
import { sessionRepair } from '../points/repair.ts';

export interface PointsShift {
  /** The set that the farthest point belongs to, its name there and its line in the file. */
  readonly set: string;
  readonly point: string;
  readonly line: number;
  /** In metres; along the axes of a grid, else in the horizon of the point. */
  readonly distance: number;
  readonly east: number;
  readonly north: number;
  readonly up: number;
  readonly because: string;
  /** How many points moved. */
  readonly moved: number;
  /** More points wait for one of their name than are kept, so that what follows was not compared. */
  readonly partly: boolean;
}

/** Less than this does not show in the files of points, which have tenths of a millimetre. */
export const SMALLEST_SHIFT = 5e-5;
/** So that memory stays bounded whatever the files. */
const MOST_WAITING = 100_000;

export function largestShift(before: Inspection, after: Inspection): PointsShift | null {
  const farthest = { shift: null as PointsShift | null, moved: 0, partly: false };
  const then = setsByName(before);
  const repairs = [before, after].map(({ session, derivation }) => sessionRepair(session, derivation));
  for (const [key, now] of setsByName(after)) {
    const old = then.get(key);
    if (!old || !isComparable(old, now)) continue;
    const pairs = matched(
      repairedPoints(old, repairs[0]?.repairer(old)),
      repairedPoints(now, repairs[1]?.repairer(now)),
    );
    for (const pair of pairs) {
      if (pair === 'too many') farthest.partly = true;
      else take(shiftBetween(...pair, old, now), farthest);
    }
  }
  const { shift, moved, partly } = farthest;
  return shift && { ...shift, moved, partly };
}

function take(found: PointsShift | null, farthest: { shift: PointsShift | null; moved: number }): void {
  if (!found) return;
  farthest.moved += 1;
  if (!farthest.shift || found.distance > farthest.shift.distance) farthest.shift = found;
}

/** Sets of one name are told apart by their order. */
function setsByName({ derivation }: Inspection): ReadonlyMap<string, PointSet> {
  const counts = new Map<string, number>();
  return new Map(
    derivation.points.map((set) => {
      const count = (counts.get(set.name) ?? 0) + 1;
      counts.set(set.name, count);
      return [JSON.stringify([set.kind, set.name, count]), set];
    }),
  );
}

/** In another system the same place has other coordinates; that one was changed for another is told by the values. */
const isComparable = (old: PointSet, now: PointSet) =>
  now.form !== null &&
  old.form === now.form &&
  !isHole(old.system) &&
  !isHole(now.system) &&
  old.system.name === now.system.name &&
  old.system.code === now.system.code;

function* repairedPoints(
  set: PointSet,
  repair: ((row: PointRow) => RepairedPoint) | undefined,
): Generator<RepairedPoint> {
  if (!repair) return;
  let piece: PointRow[] = [];
  const keep = (row: PointRow) => void piece.push(row);
  if (!set.steps) {
    set.read(keep);
    for (const row of piece) yield repair(row);
    return;
  }
  const work = set.steps(keep);
  try {
    for (let ended = false; !ended;) {
      ended = work.next().done ?? false;
      const rows = piece;
      piece = [];
      for (const row of rows) yield repair(row);
    }
  } finally {
    // Whoever stops early lets go of the file.
    work.return({ refused: 'nobody reads on' });
  }
}

type Pair = readonly [old: RepairedPoint, now: RepairedPoint];

/** Points of one name, the first with the first; while the rows agree in their order none has to wait. */
function* matched(
  olds: Generator<RepairedPoint>,
  nows: Generator<RepairedPoint>,
): Generator<Pair | 'too many'> {
  const waiting = { old: new Waiting(), now: new Waiting() };
  try {
    for (;;) {
      const [old, now] = [olds.next(), nows.next()];
      if (old.done && now.done) return;
      const none = waiting.old.count + waiting.now.count === 0;
      if (none && !old.done && !now.done && keyOf(old.value) === keyOf(now.value)) {
        yield [old.value, now.value];
        continue;
      }
      if (!old.done) {
        const other = waiting.now.taken(old.value);
        if (other) yield [old.value, other];
        else waiting.old.add(old.value);
      }
      if (!now.done) {
        const other = waiting.old.taken(now.value);
        if (other) yield [other, now.value];
        else waiting.now.add(now.value);
      }
      if (waiting.old.count + waiting.now.count > MOST_WAITING) return yield 'too many';
    }
  } finally {
    olds.return(undefined);
    nows.return(undefined);
  }
}

const keyOf = ({ row }: RepairedPoint) => row.name ?? `line ${row.line}`;

/** Points that wait for their like of the other version. */
class Waiting {
  private readonly points = new Map<string, RepairedPoint[]>();
  count = 0;

  add(point: RepairedPoint): void {
    const key = keyOf(point);
    const queue = this.points.get(key);
    if (queue) queue.push(point);
    else this.points.set(key, [point]);
    this.count += 1;
  }

  taken(like: RepairedPoint): RepairedPoint | null {
    const key = keyOf(like);
    const queue = this.points.get(key);
    const point = queue?.shift();
    if (!queue || !point) return null;
    if (queue.length === 0) this.points.delete(key);
    this.count -= 1;
    return point;
  }
}

function shiftBetween(
  old: RepairedPoint,
  now: RepairedPoint,
  oldSet: PointSet,
  set: PointSet,
): PointsShift | null {
  const along = now.second - old.second;
  const difference = {
    first: now.first - old.first,
    second: set.form === 'geographic' ? halfTurn(along) : along,
    third: now.third - old.third,
  };
  if (Number.isNaN(difference.first) || Number.isNaN(difference.second)) return null;
  const hasUp = !Number.isNaN(difference.third);
  const { east, north, up } = inMetres(difference, old.first, old.second, hasUp ? old.third : NaN, oldSet);
  const distance = Math.hypot(east, north, up);
  if (!(distance >= SMALLEST_SHIFT)) return null;
  const { row } = now;
  return {
    set: set.name,
    point: row.name ?? '',
    line: row.line,
    ...{ distance, east, north, up },
    because: reasonOf(old, now, oldSet, set),
    ...{ moved: 1, partly: false },
  };
}

function reasonOf(old: RepairedPoint, now: RepairedPoint, oldSet: PointSet, set: PointSet): string {
  const was = coordinates(old.row, oldSet);
  const isNoted = coordinates(now.row, set).every((value, index) => Object.is(value, was[index]));
  if (!isNoted) return 'Its own coordinates stand otherwise now.';
  if (now.shift) return now.reason;
  return `It is repaired no more. ${now.reason}`;
}
