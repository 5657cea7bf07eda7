/** What of a single point keeps it from the class of its time: how it was observed, where it lies, whether it can be read. */
import type { PointRow, RowQuality } from '../../evidence/points/points-file.ts';
import { assumed, given, isHole, type Value } from '../../quantities/value.ts';
import { showLength } from '../../quantities/show.ts';
import type { Limits, Quality } from '../../session/entries.ts';
import type { Derivation } from '../derivation.ts';
import type { PointSet } from '../points/points.ts';
import type { SetupValues } from '../setups/setup.ts';
import { decidesNothing, shortfallsOf, type Shortfall } from '../checks/quality.ts';
import { TRUST_CLASSES, type TrustClass } from '../trust/spans.ts';
import { distanceFrom } from './distance.ts';

/** What a point itself may be, from the best to the worst; no proof takes any of these. */
export const FLAW_CLASSES = ['too-weak', 'outside-base', 'misplaced', 'unreadable'] as const;
export type FlawClass = (typeof FLAW_CLASSES)[number];

/** A point's class: that of its base and time, or what is wrong with the point itself. */
export type PointClass = TrustClass | FlawClass;
export const POINT_CLASSES: readonly PointClass[] = [...TRUST_CLASSES, ...FLAW_CLASSES];

export const isFlaw = (found: PointClass): found is FlawClass =>
  (FLAW_CLASSES as readonly PointClass[]).includes(found);

const WORDS: Readonly<Record<FlawClass, string>> = {
  'too-weak': 'too weak',
  'outside-base': "outside the base's time",
  misplaced: 'misplaced',
  unreadable: 'unreadable',
};
export const pointClassInWords = (found: PointClass): string =>
  isFlaw(found) ? WORDS[found] : found.replace('-', ' ');

export interface Flaw {
  readonly class: FlawClass;
  /** A sentence. */
  readonly reason: string;
}
export type FlawOf = (row: PointRow, setup: SetupValues | null) => Flaw | null;

/** No correction from one base is used so far from it. */
export const REACH = assumed(
  'farthest point from a base',
  50_000,
  'm',
  0,
  'no correction of one base is used beyond some 50 km (common practice)',
);
/** A radius of the epochs of one point. */
export const SPREAD_LIMIT = assumed(
  'largest spread of a point',
  0.05,
  'm',
  0,
  'the job sets no limit, so 50 mm (common practice)',
);

/** The flaws of a set's rows, judged like checks by the job's limits. */
export function flawsOf(set: PointSet, derivation: Derivation): FlawOf {
  const limits = derivation.frame.job?.limits ?? null;
  const placed = placement(set, derivation);
  return (row, setup) => {
    if (row.isUnreadable) return UNREADABLE;
    const misplaced = setup ? placed(row, setup) : null;
    return misplaced ?? weakness(set, row, limits);
  };
}

const UNREADABLE: Flaw = {
  class: 'unreadable',
  reason: 'This row cannot be read, so nothing is given for it.',
};

function weakness(set: PointSet, { quality }: PointRow, limits: Limits | null): Flaw | null {
  const own = set.entry.kind === 'point' ? set.entry : null;
  const stated = quality ? asQuality(quality, set) : (own?.quality ?? null);
  const shortfalls = stated ? shortfallsOf(stated, limits) : [];
  const spread = quality?.spread ?? spreadOf(set);
  const reasons = decidesNothing(shortfalls) ? shortfalls.filter(counts).map(({ sentence }) => sentence) : [];
  if (spread !== undefined && spread > SPREAD_LIMIT.value)
    reasons.push(`spread ${showLength(spread)} where at most ${showLength(SPREAD_LIMIT.value)} is wanted`);
  if (reasons.length === 0) return null;
  return { class: 'too-weak', reason: `Observed too weakly: ${reasons.join(', ')}.` };
}

const counts = ({ byJob, unfit }: Shortfall) => byJob || unfit;

/** The horizontal spread that a recording or the notes of a single point tell. */
function spreadOf({ entry }: PointSet): number | undefined {
  const stated = entry.kind === 'point' ? entry.spread?.horizontal?.constant : undefined;
  return stated && !isHole(stated) ? stated.value : undefined;
}

function asQuality({ solution, epochs, pdop, satellites }: RowQuality, set: PointSet): Quality {
  const place = set.placeOf(1);
  const count = (name: string, value: number | undefined): Value | null =>
    value === undefined ? null : given(name, value, '', 0, String(value), place);
  return {
    solution: solution === undefined ? null : { name: solution, place },
    epochs: count('epochs', epochs),
    pdop: count('pdop', pdop),
    satellites: count('satellites', satellites),
    place,
  };
}

/** Whether rows lie where a base can serve them; nothing is said where its place is not known in their system. */
function placement(set: PointSet, { frame }: Derivation): (row: PointRow, setup: SetupValues) => Flaw | null {
  const { form, system } = set;
  if (!form || isHole(system)) return () => null;
  if (form === 'grid' && system !== frame.grid) return () => null;
  const known = new Map<SetupValues, ReturnType<typeof distanceFrom>>();
  return (row, setup) => {
    const distance = known.get(setup) ?? distanceFrom(setup, { form, system });
    known.set(setup, distance);
    const [first, second, third] = placeOf(row);
    const far = distance(first, second, third);
    if (!(far > REACH.value)) return null;
    const base = setup.setup.name;
    const swapped = form === 'geocentric' ? NaN : distance(second, first, third);
    const names = form === 'grid' ? 'East and north' : 'Latitude and longitude';
    return {
      class: 'misplaced',
      reason:
        swapped <= REACH.value
          ? `${names} look swapped: exchanged, the point lies ${inKilometres(swapped)} from ${base}.`
          : `The point lies ${inKilometres(far)} from ${base}, and no base serves so far.`,
    };
  };
}

const inKilometres = (length: number) =>
  length < 1000 ? `${Math.round(length)} m` : `${(length / 1000).toFixed(length < 10_000 ? 1 : 0)} km`;

export const placeOf = (row: PointRow): readonly [number, number, number] => [
  row.east ?? row.latitude ?? row.x ?? NaN,
  row.north ?? row.longitude ?? row.y ?? NaN,
  row.z ?? row.height ?? NaN,
];
