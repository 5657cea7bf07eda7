/** One point as repaired: its coordinates, what was added to them, how good they are, and why. */
import { isRefusal } from '../../quantities/refusal.ts';
import type { PointRow } from '../../evidence/points/points-file.ts';
import { halfTurn, toRadians } from '../../geodesy/angles.ts';
import { meridianRadius, primeVerticalRadius } from '../../geodesy/radii.ts';
import { topocentricOf } from '../../geodesy/topocentric.ts';
import {
  latitude as asLatitude,
  longitude as asLongitude,
  metres,
  type Geocentric,
  type Topocentric,
} from '../../quantities/brands.ts';
import { circularRadius, normalHalfWidth } from '../../quantities/statistics.ts';
import { assumed, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { occupationSpread } from '../checks/budget.ts';
import type { Derivation } from '../derivation.ts';
import { sameDatum } from '../positions/frame.ts';
import type { GeoidModel } from '../heights/geoid.ts';
import type { PointSet } from '../points/points.ts';
import { BEND_WORTH_PROCESSING, bendBound, GEOID_SLOPE, type ErrorSize } from './bend.ts';
import { distanceFrom } from './distance.ts';
import type { Fate, FateAt } from './fate.ts';
import { flawsOf, isFlaw, pointClassInWords, type Flaw } from './flaws.ts';
import { latticed } from './lattice.ts';
import { exactShift, type ShiftAt, type ShiftSpace } from './shift.ts';
import { baseReference, STILL, sumOf } from './repair.ts';
import type { SetupValues } from '../setups/setup.ts';

export interface RepairedPoint {
  readonly row: PointRow;
  readonly fate: Fate;
  /** East, latitude or x; north, longitude or y; height or z: as repaired, NaN where the row has none. */
  readonly first: number;
  readonly second: number;
  readonly third: number;
  /** What keeps the point itself from the class of its time. */
  readonly flaw: Flaw | null;
  /** Nothing is known that should be taken off: the shift is nought, where else it is not known. */
  readonly isRight: boolean;
  /** What was added, in metres: along the axes of a grid, else in the horizon of the point; null where nothing was. */
  readonly shift: Topocentric | null;
  /** At the confidence of the job: a radius, and a half-width up; null where nobody can say. */
  readonly horizontal: number | null;
  readonly up: number | null;
  /** The part of that which the wrong base leaves behind for good, at 95 %. */
  readonly bend: number;
  readonly label: string;
  readonly reason: string;
}

/** Repairs the rows of a set one by one; the same row always comes out the same. */
export function rowRepairer(
  set: PointSet,
  fates: FateAt,
  derivation: Derivation,
): (row: PointRow) => RepairedPoint {
  const prepared = new Map<Fate, Prepared>();
  const flaws = flawsOf(set, derivation);
  // Rows that follow one another mostly share their fate.
  let last: { readonly fate: Fate; readonly ready: Prepared } | undefined;
  return (row) => {
    const fate = fates(row.time ?? null, row.state);
    if (last?.fate !== fate) {
      const ready = prepared.get(fate) ?? prepare(set, fate, derivation);
      prepared.set(fate, ready);
      last = { fate, ready };
    }
    const flaw = flaws(row, fate.setup);
    const point = repaired(row, fate, last.ready, set);
    return flaw ? flawed(point, flaw, set) : point;
  };
}

interface Prepared {
  readonly shiftAt: ShiftAt | null;
  /** Without the bending, which is added. */
  readonly uncertainty: ((distance: number) => ErrorSize) | null;
  readonly bend: (distance: number) => ErrorSize;
  readonly distance: (first: number, second: number, third: number) => number;
  /** The reason where the bending counts. */
  readonly advice: string;
}

/** A known error is taken off a weak point as well; what lies nowhere or cannot be read stays as it is, or is not given. */
function flawed(point: RepairedPoint, flaw: Flaw, set: PointSet): RepairedPoint {
  const none = { flaw, isRight: false, horizontal: null, up: null };
  const label = pointClassInWords(flaw.class);
  if (flaw.class === 'too-weak') {
    const { reason } = point;
    const also = point.shift ? `${label}, repaired` : label;
    return { ...point, ...none, isRight: point.isRight, label: also, reason: `${flaw.reason} ${reason}` };
  }
  const [first, second, third] = flaw.class === 'unreadable' ? [NaN, NaN, NaN] : coordinates(point.row, set);
  return { ...point, ...none, first, second, third, shift: null, bend: 0, label, reason: flaw.reason };
}

function repaired(row: PointRow, fate: Fate, ready: Prepared, set: PointSet): RepairedPoint {
  const first = (set.form === 'grid' ? row.east : set.form === 'geographic' ? row.latitude : row.x) ?? NaN;
  const second = (set.form === 'grid' ? row.north : set.form === 'geographic' ? row.longitude : row.y) ?? NaN;
  const third = (set.form === 'geocentric' ? row.z : row.height) ?? NaN;
  const missing = Number.isNaN(first) || Number.isNaN(second);
  const distance = missing ? NaN : ready.distance(first, second, third);
  const uncertainty = missing || !ready.uncertainty ? null : ready.uncertainty(distance);
  const bent = ready.bend(distance);
  // What a base moves and what a wrong base bends is added in full (JCGM 100:2008, F.2.4.5).
  const horizontal = uncertainty ? uncertainty.horizontal + bent.horizontal + fate.moved.horizontal : null;
  const up = uncertainty && !Number.isNaN(third) ? uncertainty.up + bent.up + fate.moved.up : null;
  const isRight = !fate.refused && fate.remedies.length === 0 && isTrusted(fate);
  const shift =
    ready.shiftAt && !missing ? ready.shiftAt(first, second, Number.isNaN(third) ? undefined : third) : null;
  if (!shift || isRefusal(shift)) {
    const refused = shift !== null || (missing && ready.shiftAt !== null);
    const reason = !refused
      ? fate.reason
      : shift
        ? shift.refused
        : 'The coordinates of this row cannot be read.';
    const label = refused ? fate.label.replace(', repaired', '') : fate.label;
    return {
      row,
      fate,
      first,
      second,
      third,
      flaw: null,
      isRight,
      shift: null,
      horizontal,
      up,
      bend: 0,
      label,
      reason,
    };
  }
  const bend = Math.max(bent.horizontal, bent.up);
  return {
    row,
    fate,
    first: first + shift.first,
    second: set.form === 'geographic' ? halfTurn(second + shift.second) : second + shift.second,
    third: third + shift.third,
    flaw: null,
    isRight: false,
    shift: inMetres(shift, first, second, third, set),
    horizontal,
    up,
    bend,
    label: fate.label,
    reason: bend > BEND_WORTH_PROCESSING ? ready.advice : fate.reason,
  };
}

/** As written, in the unit that the form counts in. */
export function coordinates(row: PointRow, { form }: PointSet): readonly [number, number, number] {
  if (form === 'grid') return [row.east ?? NaN, row.north ?? NaN, row.height ?? NaN];
  if (form === 'geographic') return [row.latitude ?? NaN, row.longitude ?? NaN, row.height ?? NaN];
  return [row.x ?? NaN, row.y ?? NaN, row.z ?? NaN];
}

/** A difference of coordinates, in metres along the axes of a grid, else in the horizon of the point. */
export function inMetres(
  shift: { first: number; second: number; third: number },
  first: number,
  second: number,
  third: number,
  { form, system }: PointSet,
): Topocentric {
  const up = metres(Number.isNaN(third) ? 0 : shift.third);
  if (form === 'grid') return { east: metres(shift.first), north: metres(shift.second), up };
  if (isHole(system)) return STILL;
  const { ellipsoid } = system.datum;
  if (form === 'geographic') {
    const φ = asLatitude(first);
    return {
      east: metres(toRadians(shift.second) * primeVerticalRadius(ellipsoid, φ) * Math.cos(toRadians(first))),
      north: metres(toRadians(shift.first) * meridianRadius(ellipsoid, φ)),
      up,
    };
  }
  const at = {
    latitude: asLatitude((Math.atan2(third, Math.hypot(first, second)) * 180) / Math.PI),
    longitude: asLongitude((Math.atan2(second, first) * 180) / Math.PI),
  };
  return topocentricOf(at, { x: metres(shift.first), y: metres(shift.second), z: metres(shift.third) });
}

function prepare(set: PointSet, fate: Fate, derivation: Derivation): Prepared {
  const { setup, remedies } = fate;
  const space = setup ? spaceOf(set, fate, setup, derivation) : null;
  const base = sumOf(remedies.map((remedy) => remedy.base));
  const atRover = remedies.reduce(
    (sum, remedy): Topocentric => ({
      east: metres(sum.east + remedy.atRover.east),
      north: metres(sum.north + remedy.atRover.north),
      up: metres(sum.up + remedy.atRover.up),
    }),
    STILL,
  );
  const error = {
    horizontal: sumSizes(fate, ({ east, north }) => Math.hypot(east, north)),
    up: sumSizes(fate, ({ up }) => Math.abs(up)),
  };
  const shiftAt =
    space && remedies.length > 0 ? latticed(space.form, exactShift(space, { base, rover: atRover })) : null;
  return {
    shiftAt,
    uncertainty:
      setup && space && isTrusted(fate)
        ? uncertaintyOf(set, fate, setup, space, base, error, derivation)
        : null,
    bend: (distance) => bendBound(error, distance),
    distance: setup && space ? distanceFrom(setup, space) : () => NaN,
    advice: `${fate.reason} The bent vectors count for more than 5 mm here: process the raw observations again with the right base.`,
  };
}

/** Only errors of the base bend vectors. */
const sumSizes = ({ remedies }: Fate, size: (error: Topocentric) => number) =>
  remedies
    .filter(({ base }) => base.x !== 0 || base.y !== 0 || base.z !== 0)
    .reduce((sum, remedy) => sum + size(remedy.size), 0);

/** Of a point whose known error stays in it, or that is in doubt as it stands, nobody can say how good it is. */
const isTrusted = (fate: Fate) =>
  !fate.refused && !isFlaw(fate.class) && (fate.remedies.length > 0 || fate.class !== 'in-doubt');

function spaceOf(
  set: PointSet,
  { rover }: Fate,
  setup: SetupValues,
  derivation: Derivation,
): ShiftSpace | null {
  const { form, system, height } = set;
  if (!form || isHole(system)) return null;
  const mark = setup.mark;
  const value = (found: Maybe<Value> | undefined) => (found && !isHole(found) ? found.value : 0);
  const factor = rover?.scale && !isHole(rover.scale) ? rover.scale.value : 1;
  return {
    form,
    system,
    height: isHole(height) ? null : height,
    geoid: controllersGeoid(rover, derivation),
    base: { height: value(mark?.ellipsoidalHeight), separation: value(mark?.separation) },
    scale:
      form === 'grid' && factor !== 1 && mark
        ? { factor, east: value(mark.east), north: value(mark.north) }
        : null,
  };
}

/** The job's model, unless the controller is said to have had another one. */
export function controllersGeoid(rover: Fate['rover'], { geoid, frame }: Derivation): GeoidModel | null {
  const named = rover?.geoid;
  if (named && named.name !== frame.job?.geoid?.name) return null;
  return isHole(geoid) ? null : geoid;
}

/**
 * Receivers, centring and pole as for a check; the mark that the points stand on; how the geoid runs along the shift where
 * no model tells. The bending of the vectors is added to it in full.
 */
function uncertaintyOf(
  set: PointSet,
  { reference: own, rover }: Fate,
  setup: SetupValues,
  space: ShiftSpace,
  base: Geocentric,
  error: { readonly horizontal: number; readonly up: number },
  { frame }: Derivation,
): Prepared['uncertainty'] {
  const reference = own ?? (setup.mark ? baseReference(setup.mark) : null);
  if (!reference || reference.axis === null || reference.up === null) return null;
  const spread = spreadByDistance(setup, set, rover);
  const shifted = Math.hypot(base.x, base.y, base.z);
  const slope =
    space.height?.surface === 'orthometric' && !space.geoid ? GEOID_SLOPE.value * error.horizontal : 0;
  const turned = turnOf(space, setup, shifted);
  const k = { axis: circularRadius(frame.confidence.value), up: normalHalfWidth(frame.confidence.value) };
  const fixed = { axis: Math.hypot(reference.axis, turned), up: Math.hypot(reference.up, turned, slope) };
  return (distance) => {
    const own = spread(distance);
    return {
      horizontal: k.axis * Math.sqrt(own.axis ** 2 + fixed.axis ** 2),
      up: k.up * Math.sqrt(own.up ** 2 + fixed.up ** 2),
    };
  };
}

/** How far the vector may be turned where the grid of the points has another datum than the base, or a ground scale about an unknown place: 10″ of it. */
const TURN = 5e-5;
function turnOf({ system, scale, base }: ShiftSpace, setup: SetupValues, size: number): number {
  const known = setup.mark?.located;
  const otherDatum = known && !isHole(known) && !sameDatum(known.system.datum, system.datum);
  const scaled = scale ? (Math.abs(scale.factor - 1) * Math.hypot(scale.east, scale.north)) / EARTH : 0;
  const unknownHeight = base.height === 0 ? UNKNOWN_HEIGHT / EARTH : 0;
  return size * Math.hypot(otherDatum ? TURN : 0, scaled, unknownHeight);
}
const EARTH = 6_371_000;
const UNKNOWN_HEIGHT = 500;

/** The occupation's spread at any distance, from its parts that grow with it and its parts that do not. */
function spreadByDistance(
  setup: SetupValues,
  set: PointSet,
  rover: Fate['rover'],
): (distance: number) => { readonly axis: number; readonly up: number } {
  const pole = set.entry.kind === 'point' ? set.entry.pole : null;
  const at = (metresAway: number) =>
    occupationSpread(
      setup,
      { name: set.name, pole },
      rover,
      assumed('distance', metresAway, 'm', 0, 'to see how the receivers spread'),
    );
  const [near, far] = [at(0), at(FAR)];
  const growth = (direction: 'axis' | 'up') => {
    const [start, end] = [near.parts.receivers[direction].value, far.parts.receivers[direction].value];
    return { start, slope: (end - start) / FAR, rest: near[direction].value ** 2 - start ** 2 };
  };
  const [axis, up] = [growth('axis'), growth('up')];
  return (distance) => ({
    axis: Math.sqrt((axis.start + axis.slope * distance) ** 2 + axis.rest),
    up: Math.sqrt((up.start + up.slope * distance) ** 2 + up.rest),
  });
}
/** Receivers spread in a straight line with the distance, so that two distances tell it. */
const FAR = 10_000;
