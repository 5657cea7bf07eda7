/** What each part of a base's day is worth for one rover, by the checks on both sides of it. */
import { isHole } from '../../quantities/value.ts';
import type { CheckValues } from '../checks/check.ts';
import type { Component } from '../checks/verdict.ts';
import type { Frame } from '../positions/frame.ts';
import type { Drift } from './drift.ts';
import { movementBetween, verdictIn, type Movement } from './movement.ts';
import { stretchOf, type Stretch } from './stretches.ts';

/** From the best to the worst. */
export const TRUST_CLASSES = [
  'bracketed',
  'held',
  'not-closed',
  'not-opened',
  'position-only',
  'height-only',
  'unchecked',
  'in-doubt',
] as const;
export type TrustClass = (typeof TRUST_CLASSES)[number];

export const isWorse = (one: TrustClass, other: TrustClass) =>
  TRUST_CLASSES.indexOf(one) > TRUST_CLASSES.indexOf(other);
export const worst = (classes: readonly TrustClass[]): TrustClass | null =>
  classes.reduce<TrustClass | null>(
    (found, one) => (found === null || isWorse(one, found) ? one : found),
    null,
  );
export const best = (classes: readonly TrustClass[]): TrustClass | null =>
  classes.reduce<TrustClass | null>(
    (found, one) => (found === null || isWorse(found, one) ? one : found),
    null,
  );

/** The class of points of which position and height are worth so much: the worse, but what nothing proves is named. */
export function together(position: TrustClass, height: TrustClass): TrustClass {
  if (position === height || position === 'in-doubt') return position;
  if (position === 'unchecked' && height !== 'in-doubt') return 'height-only';
  if (height === 'unchecked') return 'position-only';
  return isWorse(position, height) ? position : height;
}

/** What a span is worth in one component, and the checks on both sides that decide it. */
export interface Part {
  readonly class: TrustClass;
  readonly before: CheckValues | null;
  readonly after: CheckValues | null;
}
export type Parts = Readonly<Record<Component, Part>>;

export interface Span {
  /** Seconds since 1970-01-01 UTC; null where the notes do not say. */
  readonly from: number | null;
  readonly until: number | null;
  readonly class: TrustClass;
  /** Of the setup's stretches, from 0. */
  readonly stretch: number;
  /** The checks on both sides that decide. */
  readonly before: CheckValues | null;
  readonly after: CheckValues | null;
  /** What moved in it. */
  readonly drifts: readonly Drift[];
  /** Checks agree on both sides, and an event without a time may lie between them. */
  readonly mayBeParted?: boolean;
  /** Where a check of the day proves one component alone: what each is worth by itself. */
  readonly parts?: Parts;
}

/** The same span with other classes, of its parts too. */
export function reclassed(span: Span, of: (found: TrustClass) => TrustClass): Span {
  const { parts } = span;
  if (!parts) return { ...span, class: of(span.class) };
  const [horizontal, up] = [parts.horizontal, parts.up].map((part) => ({ ...part, class: of(part.class) }));
  return horizontal && up
    ? { ...span, class: together(horizontal.class, up.class), parts: { horizontal, up } }
    : span;
}

/** Whether a disturbance was held, and the comparisons that say so. */
export interface Join {
  /** The stretches before and after it. */
  readonly stretches: readonly [number, number];
  readonly held: boolean;
  readonly movements: readonly Movement[];
}

/** What a check proves: nothing where it cannot be judged or was too weak. */
export type Judged = 'passes' | 'fails' | null;
/** Of each component; one that fails in either fails in both, since nobody knows what else is wrong. */
export type Proof = Readonly<Record<Component, Judged>>;

export interface Chronicle {
  readonly spans: readonly Span[];
  readonly joins: readonly Join[];
}

/** @param checks of this base and rover, with times, in order of time */
export function chronicleOf(
  stretches: readonly Stretch[],
  checks: readonly CheckValues[],
  judge: (check: CheckValues) => Proof,
  frame: Frame,
): Chronicle {
  const isWhole = checks.every((check) => judge(check).horizontal === judge(check).up);
  if (isWhole) return chronicleIn('whole', stretches, checks, (check) => judge(check).horizontal, frame);
  const [position, height] = (['horizontal', 'up'] as const).map((component) =>
    chronicleIn(component, stretches, checks, (check) => judge(check)[component], frame),
  ) as [Chronicle, Chronicle];
  return merged(stretches, checks, position, height);
}

function chronicleIn(
  of: Component | 'whole',
  stretches: readonly Stretch[],
  checks: readonly CheckValues[],
  judge: (check: CheckValues) => Judged,
  frame: Frame,
): Chronicle {
  const placed = stretches.map(() => [] as CheckValues[]);
  for (const check of checks) placed[stretchOf(stretches, check)]?.push(check);
  const judged = placed.map((inside) => inside.filter((check) => judge(check) !== null));
  const spans = stretches.flatMap((stretch, index) => spansIn(stretch, index, judged[index] ?? [], judge));
  const joins = joinsOf(stretches, placed, judge, frame, of);
  return { spans: spans.map((span) => joined(span, spans, joins)), joins };
}

function spansIn(
  stretch: Stretch,
  index: number,
  checks: readonly CheckValues[],
  judge: (check: CheckValues) => Judged,
): Span[] {
  const cuts = [null, ...checks, null];
  return cuts.slice(1).flatMap((after, position) => {
    const before = cuts[position] ?? null;
    const from = before ? before.instant : stretch.from;
    const until = after ? after.instant : stretch.until;
    // A check in the minute in which a stretch begins or ends leaves nothing before or behind it.
    if (from !== null && until !== null && from >= until && (before !== null) !== (after !== null)) return [];
    return [
      { from, until, class: classBetween(before, after, judge), stretch: index, before, after, drifts: [] },
    ];
  });
}

function classBetween(
  before: CheckValues | null,
  after: CheckValues | null,
  judge: (check: CheckValues) => Judged,
): TrustClass {
  const sides = [before, after].map((check) => (check ? judge(check) : null));
  if (sides.includes('fails')) return 'in-doubt';
  const [opened, closed] = sides;
  if (opened && closed) return 'bracketed';
  if (closed) return 'not-opened';
  return opened ? 'not-closed' : 'unchecked';
}

/**
 * Stretches parted only by disturbances are joined where a passing check lies on each side and they agree within their
 * movement budget. On each mark the last check before is compared with the first one after; a nail without coordinates
 * can part the stretches, but not join them.
 */
function joinsOf(
  stretches: readonly Stretch[],
  placed: readonly (readonly CheckValues[])[],
  judge: (check: CheckValues) => Judged,
  frame: Frame,
  of: Component | 'whole',
): Join[] {
  const joins: Join[] = [];
  for (let start = 0; start < stretches.length; start++) {
    if (!placed[start]?.some((check) => judge(check) !== null)) continue;
    let next = start + 1;
    while (
      stretches[next]?.opened.kind === 'disturbance' &&
      !placed[next]?.some((check) => judge(check) !== null)
    )
      next++;
    if (stretches[next]?.opened.kind !== 'disturbance') continue;
    const between = placed.slice(start + 1, next).flat();
    joins.push({
      stretches: [start, next],
      ...compared(placed[start] ?? [], between, placed[next] ?? [], judge, frame, of),
    });
  }
  return joins;
}

function compared(
  before: readonly CheckValues[],
  between: readonly CheckValues[],
  after: readonly CheckValues[],
  judge: (check: CheckValues) => Judged,
  frame: Frame,
  of: Component | 'whole',
): Pick<Join, 'held' | 'movements'> {
  const last = before.filter((check) => judge(check) !== null).at(-1);
  const first = after.find((check) => judge(check) !== null);
  if (!last || !first || judge(last) !== 'passes' || judge(first) !== 'passes')
    return { held: false, movements: [] };
  const usable = (check: CheckValues) => judge(check) === 'passes' || isOnNail(check);
  const pairs = [...before, ...between].filter(usable).reduce((found, check) => {
    const partner = after.find((other) => usable(other) && other.mark === check.mark && check.mark !== null);
    return partner && check.mark ? found.set(check.mark.mark.name, [check, partner] as const) : found;
  }, new Map<string, readonly [CheckValues, CheckValues]>());
  const movements = [...pairs.values()].map(([one, other]) => movementBetween(one, other, frame));
  if (!movements.some(({ from }) => !isOnNail(from))) movements.push(movementBetween(last, first, frame));
  const held =
    movements.every((movement) => verdictIn(movement, of) !== 'moved') &&
    movements.some((movement) => verdictIn(movement, of) === 'agrees' && !isOnNail(movement.from));
  return { held, movements };
}

/** A mark without coordinates speaks of movement only. */
const isOnNail = ({ mark, absent }: CheckValues) =>
  mark !== null && isHole(mark.located) && !(absent.includes('horizontal') && !absent.includes('up'));

/** The spans of both components, cut wherever one of them is. */
function merged(
  stretches: readonly Stretch[],
  checks: readonly CheckValues[],
  position: Chronicle,
  height: Chronicle,
): Chronicle {
  const order = new Map(checks.map((check, index) => [check, index]));
  const placeOf = (check: CheckValues | null, none: number) => (check ? (order.get(check) ?? none) : none);
  const spans = stretches.flatMap((_, stretch) => {
    const own = [position, height].map((one) => one.spans.filter((span) => span.stretch === stretch));
    const [levels = [], rises = []] = own;
    const found: Span[] = [];
    let [at, other] = [0, 0];
    for (;;) {
      const [level, rise] = [levels[at], rises[other]];
      if (!level || !rise) return found;
      found.push(mergedSpan(level, rise, placeOf));
      const [end, second] = [level, rise].map(({ after }) => placeOf(after, Infinity));
      if ((end ?? Infinity) <= (second ?? Infinity)) at += 1;
      if ((second ?? Infinity) <= (end ?? Infinity)) other += 1;
    }
  });
  return { spans, joins: joinsOfBoth(position.joins, height.joins) };
}

/** A disturbance was held where both components were. */
function joinsOfBoth(position: readonly Join[], height: readonly Join[]): Join[] {
  const partnerOf = ({ stretches: [from, to] }: Join, others: readonly Join[]) =>
    others.find(({ stretches: [start, end] }) => start <= from && to <= end);
  const both = (one: Join, other: Join | undefined): Join => ({
    ...one,
    held: one.held && (other?.held ?? false),
    movements: [...new Set([...one.movements, ...(other?.movements ?? [])])],
  });
  return [
    ...position.map((join) => both(join, partnerOf(join, height))),
    ...height.filter((join) => !partnerOf(join, position)).map((join) => both(join, undefined)),
  ];
}

/** Where two spans overlap, between the nearest checks of either. */
function mergedSpan(
  level: Span,
  rise: Span,
  placeOf: (check: CheckValues | null, none: number) => number,
): Span {
  const opens = placeOf(level.before, -1) >= placeOf(rise.before, -1) ? level : rise;
  const closes = placeOf(level.after, Infinity) <= placeOf(rise.after, Infinity) ? level : rise;
  const part = ({ class: found, before, after }: Span): Part => ({ class: found, before, after });
  return {
    from: opens.from,
    until: closes.until,
    class: together(level.class, rise.class),
    stretch: level.stretch,
    before: opens.before,
    after: closes.after,
    drifts: [],
    parts: { horizontal: part(level), up: part(rise) },
  };
}

/** A span that is open towards a disturbance that was held takes the check on its far side. */
function joined(span: Span, spans: readonly Span[], joins: readonly Join[]): Span {
  const lastOf = (stretch: number) =>
    spans.filter((other) => other.stretch === stretch).at(-1)?.before ?? null;
  const firstOf = (stretch: number) => spans.find((other) => other.stretch === stretch)?.after ?? null;
  if (span.class === 'bracketed' || span.class === 'in-doubt') return span;
  const ahead = joins.find(
    ({ held, stretches: [from, to] }) => held && from <= span.stretch && span.stretch < to && !span.after,
  );
  const behind = joins.find(
    ({ held, stretches: [from, to] }) => held && from < span.stretch && span.stretch <= to && !span.before,
  );
  const before = span.before ?? (behind ? lastOf(behind.stretches[0]) : null);
  const after = span.after ?? (ahead ? firstOf(ahead.stretches[1]) : null);
  return before && after ? { ...span, class: 'held', before, after } : span;
}
