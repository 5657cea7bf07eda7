/** Which part of a day's points stands: stretch by stretch and rover by rover, from the checks on both sides. */
import { attempted, isFault } from '../../../grammar/fault.ts';
import { largestOf, smallestOf } from '../../quantities/extremes.ts';
import { isHole, type Value } from '../../quantities/value.ts';
import type { Event, Job, Point, Points } from '../../session/entries.ts';
import type { Named } from '../../session/coordinates.ts';
import type { Session } from '../../session/session.ts';
import type { CheckValues } from '../checks/check.ts';
import { decides, eachOf, testsOf } from '../checks/together.ts';
import type { Component } from '../checks/verdict.ts';
import type { Derivation } from '../derivation.ts';
import type { Frame } from '../positions/frame.ts';
import { interned, NOTHING, orNull, remembered, tokenOf, type Nothing, type Token } from '../remembered.ts';
import type { SetupValues } from '../setups/setup.ts';
import { driftsByChecks, driftsByTape, narrowest, shaken, type Drift } from './drift.ts';
import { movementBetween, type Movement } from './movement.ts';
import {
  best,
  chronicleOf,
  isWorse,
  reclassed,
  together,
  worst,
  type Join,
  type Judged,
  type Parts,
  type Proof,
  type Span,
  type TrustClass,
} from './spans.ts';
import { eventsOf, stretchesOf, stretchOf, undatedEvents, type Stretch } from './stretches.ts';
import { verdictSentence } from './words.ts';

export interface Trust {
  /** One for each base and each rover that worked from it. */
  readonly rovers: readonly RoverTrust[];
  readonly events: readonly EventDoubt[];
  /** What the day as a whole is worth, its points apart. */
  readonly day: TrustClass;
  /** One sentence. */
  readonly verdict: string;
  /** What the program said where it failed over the judgement itself; else null. */
  readonly fault: string | null;
}

export interface RoverTrust {
  readonly setup: SetupValues;
  /** Null where no rover is named anywhere. */
  readonly rover: string | null;
  readonly stretches: readonly Stretch[];
  /** In order of time, without gaps. */
  readonly spans: readonly Span[];
  readonly joins: readonly Join[];
  /** Of this base and rover, with times, in order of time. */
  readonly checks: readonly CheckValues[];
  /** The day's class: the worst from the first check to the last, but for what was keyed anew since. */
  readonly day: TrustClass;
  /** The smallest movement that the checks around the proved part would have seen anywhere in it; null where nothing is proved. */
  readonly smallest: { readonly horizontal: Value; readonly up: Value; readonly movement: Movement } | null;
  /** What its checks and its tape show to have moved. */
  readonly drifts: readonly Drift[];
}

/** What an event puts in doubt: for each rover, whether it was held, and what the points on both sides are worth. */
export interface EventDoubt {
  readonly event: Event;
  readonly setup: SetupValues;
  readonly rover: string | null;
  readonly held: boolean;
  readonly before: Span | null;
  readonly after: Span | null;
  readonly movements: readonly Movement[];
}

/** What points a proof asks for: from the strictest to the mildest. */
export const PROOF_CLASSES = {
  bracketed: ['bracketed'],
  held: ['bracketed', 'held'],
  checked: ['bracketed', 'held', 'not-closed', 'not-opened'],
} as const satisfies Record<string, readonly TrustClass[]>;
export type RequiredProof = keyof typeof PROOF_CLASSES;

export const meets = (found: TrustClass, required: RequiredProof) =>
  (PROOF_CLASSES[required] as readonly TrustClass[]).includes(found);

/**
 * The trust of a session; computed once for the same setups, checks, events and points. A day of which a part could not
 * be computed is never proved, whatever is left of it.
 */
export function trustOf(session: Session, derivation: Derivation): Trust {
  if (!derivation.whole || session.remarks.some(({ about }) => about === 'fault')) return notJudged(null);
  const trust = attempted(() => trustFrom(dayFacts(session, derivation)));
  return isFault(trust) ? notJudged(trust.fault) : trust;
}

const notJudged = (fault: string | null): Trust => ({
  rovers: [],
  events: [],
  day: 'in-doubt',
  verdict: 'not judged: Tribrach failed over a part of this day.',
  fault,
});

/** What a session's trust and repair are judged from; the same object as long as nothing of it has changed. */
export const dayFacts = (session: Session, derivation: Derivation): DayFacts =>
  factsOf(
    interned([...derivation.setups.values()]),
    interned(derivation.checks),
    interned(session.events),
    interned<Points | Point>([...session.points, ...session.singlePoints]),
    session.job ?? NOTHING,
    derivation.frame,
  );

const factsOf = remembered(
  (
    setups: readonly SetupValues[],
    checks: readonly CheckValues[],
    events: readonly Event[],
    points: readonly (Points | Point)[],
    job: Job | Nothing,
    frame: Frame,
  ): DayFacts => ({
    setups,
    checks,
    events,
    rovers: roverNames(checks, points),
    job: orNull<Job>(job),
    frame,
    each: eachOf(testsOf(checks), frame),
  }),
);

/** What trust is judged from. */
export interface DayFacts {
  readonly setups: readonly SetupValues[];
  readonly checks: readonly CheckValues[];
  readonly events: readonly Event[];
  readonly rovers: readonly (string | null)[];
  readonly job: Job | null;
  readonly frame: Frame;
  /** The probability for each test of the day that leaves the whole at the job's confidence. */
  readonly each: number;
}

const trustFrom = remembered((facts: DayFacts): Trust => {
  const { setups, events, job } = facts;
  const rovers = setups.flatMap(dayAt(facts));
  const day = worst(rovers.map((one) => one.day)) ?? 'unchecked';
  const doubts = rovers.flatMap((one) => eventDoubts(one, eventsOf(one.setup, events)));
  return { rovers, events: doubts, day, verdict: verdictSentence(rovers, job), fault: null };
});

/** The trust of each base, judged anew only where something that concerns it has changed. */
function dayAt({ checks, events, rovers, job, frame, each }: DayFacts) {
  const bySetup = new Map<SetupValues | null, CheckValues[]>();
  for (const check of checks) {
    const own = bySetup.get(check.setup);
    if (own) own.push(check);
    else bySetup.set(check.setup, [check]);
  }
  const names = interned(rovers.map(tokenOf));
  return (setup: SetupValues): readonly RoverTrust[] => {
    // A check of which nobody knows the base may be of this one.
    const own = bySetup.has(null)
      ? checks.filter((check) => check.setup === null || check.setup === setup)
      : (bySetup.get(setup) ?? []);
    const happened = eventsOf(setup, events);
    const concerns = [interned(own), interned(happened), names] as const;
    return trustAt(setup, ...concerns, job ?? NOTHING, frame, tokenOf(each));
  };
}

const trustAt = remembered(
  (
    setup: SetupValues,
    checks: readonly CheckValues[],
    events: readonly Event[],
    names: readonly Token<string | null>[],
    job: Job | Nothing,
    frame: Frame,
    { worth: each }: Token<number>,
  ): readonly RoverTrust[] => {
    const rovers = names.map(({ worth }) => worth);
    const facts = {
      setups: [setup],
      checks,
      events,
      rovers,
      job: orNull<Job>(job),
      frame,
      each,
    };
    return rovers.map((rover) => roverTrust(setup, rover, facts, rawJudge));
  },
);

/** Rovers that checks or points name; where there is but one, what names none is its, too. */
function roverNames(
  checks: readonly CheckValues[],
  points: readonly { readonly by: Named | null }[],
): readonly (string | null)[] {
  const named = [...checks.map(({ check }) => check.by), ...points.map(({ by }) => by)];
  const names = [...new Set(named.filter((by) => by !== null).map((by) => by.name))];
  return names.length > 0 ? names : [null];
}

/** @param judge what a check proves, as measured or as repaired */
export function roverTrust(
  setup: SetupValues,
  rover: string | null,
  { checks, events, rovers, job, frame, each }: DayFacts,
  judge: (check: CheckValues) => Proof,
): RoverTrust {
  const own = eventsOf(setup, events);
  const stretches = stretchesOf(setup, own, job);
  const judged = (check: CheckValues): Proof => {
    const found = judge(check);
    if (found === FAILS) return found;
    return isCertain(check, setup, rovers) && stoodAt(setup, check.instant) ? found : NOTHING_PROVED;
  };
  const mine = checks.filter((check) => concerns(check, setup, rover));
  const timed = mine
    .filter(({ instant }) => instant !== null)
    .toSorted((one, other) => (one.instant ?? 0) - (other.instant ?? 0) || byName(one, other));
  const { spans, joins } = chronicleOf(stretches, timed, judged, frame);
  const placed = (check: CheckValues) => stretchOf(stretches, check);
  const drifts = [...driftsByChecks(mine, each, frame), ...driftsByTape(setup)];
  const unexplained = narrowest(drifts.filter((drift) => !atAnEvent(drift, placed, joins)));
  const steady = spans.map((span) => shaken(span, unexplained));
  const cautious = withUndated(steady, mine, own, job, judged);
  return {
    setup,
    rover,
    stretches,
    spans: cautious,
    joins,
    checks: timed,
    day: dayOf(cautious, stretches),
    smallest: smallestSeen(cautious, timed, judged, frame),
    drifts,
  };
}

/** Of one minute the order is that of the names, whatever the order of the notes. */
const byName = ({ check: one }: CheckValues, { check: other }: CheckValues) =>
  one.name < other.name ? -1 : one.name > other.name ? 1 : 0;

/** A check that names no base or no rover may be of any; when it fails, that counts against each. */
function concerns(check: CheckValues, setup: SetupValues, rover: string | null): boolean {
  if (check.setup !== null && check.setup !== setup) return false;
  return check.check.by === null || rover === null || check.check.by.name === rover;
}

function isCertain(check: CheckValues, setup: SetupValues, rovers: readonly (string | null)[]): boolean {
  return check.setup === setup && (check.check.by !== null || rovers.length === 1);
}

/** Whether the base stood then, as far as the notes say; an end before the start is no end. */
function stoodAt({ from, until }: SetupValues, instant: number | null): boolean {
  if (instant === null || from === null) return true;
  return from <= instant && (until === null || until <= from || instant <= until);
}

/** What a check proves as measured: nothing on the base's own mark, and one that is too weak neither proves nor condemns. */
const rawJudge = (values: CheckValues): Proof => proofOf(values, values);

/** @param as as measured, or as repaired */
export function proofOf(
  check: CheckValues,
  { verdict, judged }: Pick<CheckValues, 'verdict' | 'judged'>,
): Proof {
  if (check.weak) return NOTHING_PROVED;
  if (verdict === 'fails') return FAILS;
  if (verdict === 'marginal' || !decides(check)) return NOTHING_PROVED;
  const of = (component: Component): Judged =>
    judged[component] === 'passes' && !check.absent.includes(component) ? 'passes' : null;
  return { horizontal: of('horizontal'), up: of('up') };
}

const FAILS: Proof = { horizontal: 'fails', up: 'fails' };
const NOTHING_PROVED: Proof = { horizontal: null, up: null };
const proves = ({ horizontal, up }: Proof) => horizontal === 'passes' || up === 'passes';

/** A failing check without a time may have been made at any; an event without one may have come between any two checks. */
function withUndated(
  spans: readonly Span[],
  checks: readonly CheckValues[],
  events: readonly Event[],
  job: Job | null,
  judge: (check: CheckValues) => Proof,
): readonly Span[] {
  const fails = checks.some((check) => check.instant === null && judge(check) === FAILS);
  if (fails) return spans.map((span) => reclassed(span, () => 'in-doubt'));
  if (undatedEvents(events, job).length === 0) return spans;
  return spans.map((span) => {
    const parted = reclassed(span, (found) => (isProved(found) ? 'not-closed' : found));
    const wasProved = [span, ...Object.values(span.parts ?? {})].some(({ class: found }) => isProved(found));
    return wasProved ? { ...parted, mayBeParted: true } : span;
  });
}

const isProved = (found: TrustClass) => found === 'bracketed' || found === 'held';

/** The worse of position and height, each judged between its own first check and its last. */
const dayOf = (spans: readonly Span[], stretches: readonly Stretch[]): TrustClass =>
  spans.some(({ parts }) => parts)
    ? together(dayIn('horizontal', spans, stretches), dayIn('up', spans, stretches))
    : dayIn('horizontal', spans, stretches);

/** What lies before the first check and behind the last counts only where it is in doubt, or was never checked at all. */
function dayIn(component: Component, spans: readonly Span[], stretches: readonly Stretch[]): TrustClass {
  const counted = spans
    .filter(({ stretch }) => stretches[stretch]?.closed?.kind !== 're-keyed')
    .map((span) => ({ ...span, ...span.parts?.[component] }));
  const times = counted
    .flatMap(({ before, after }) => [before?.instant, after?.instant])
    .filter((instant) => typeof instant === 'number');
  const [first, last] = [smallestOf(times), largestOf(times)];
  const inside = counted.filter(
    ({ from, until }) => from !== null && until !== null && from >= first && until <= last,
  );
  const outside = counted.filter((span) => !inside.includes(span));
  const needed = outside.filter((span) => span.class === 'in-doubt' || span.class === 'unchecked');
  const found = worst([...inside, ...needed].map((span) => span.class));
  return found ?? best(outside.map((span) => span.class)) ?? 'unchecked';
}

/** For each gap between two checks the best pair around it; of all gaps the worst, since a movement may fall in any. */
function smallestSeen(
  spans: readonly Span[],
  checks: readonly CheckValues[],
  judge: (check: CheckValues) => Proof,
  frame: Frame,
): RoverTrust['smallest'] {
  const usable = checks.filter((check) => proves(judge(check)) || (check.mark && isHole(check.mark.located)));
  const byMark = onTheirMarks(usable);
  let found: RoverTrust['smallest'] = null;
  for (const span of spans) {
    if (span.class !== 'bracketed' && span.class !== 'held') continue;
    const pair = bestPair(span, byMark, frame);
    if (!pair) return null;
    if (!found || pair.horizontal.value > found.horizontal.value) found = pair;
  }
  return found;
}

type InOrder = readonly CheckValues[];

/** Checks of each mark that has more than one, in order of time: only those can make a pair. */
function onTheirMarks(checks: InOrder): InOrder[] {
  const byMark = new Map<object, CheckValues[]>();
  for (const check of checks) {
    if (!check.mark) continue;
    const own = byMark.get(check.mark);
    if (own) own.push(check);
    else byMark.set(check.mark, [check]);
  }
  return [...byMark.values()].filter((own) => own.length > 1);
}

function bestPair(span: Span, byMark: readonly InOrder[], frame: Frame): RoverTrust['smallest'] {
  const { before, after } = span;
  if (!before || !after) return null;
  const pairs = [[before, after] as const, ...byMark.flatMap((checks) => pairAround(before, after, checks))];
  let found: RoverTrust['smallest'] = null;
  for (const [one, other] of pairs) {
    const movement = movementBetween(one, other, frame);
    const { horizontal, up } = movement.smallest;
    if (isHole(horizontal) || isHole(up)) continue;
    if (!found || horizontal.value < found.horizontal.value) found = { horizontal, up, movement };
  }
  return found;
}

/** The last check of a mark that is not after the one, and its first that is not before the other. */
function pairAround(
  before: CheckValues,
  after: CheckValues,
  checks: InOrder,
): (readonly [CheckValues, CheckValues])[] {
  const first = checks[countBefore(checks, before.instant ?? 0, true) - 1];
  const second = checks[countBefore(checks, after.instant ?? 0, false)];
  return first && second ? [[first, second]] : [];
}

/** How many checks lie before a time, by halving. */
function countBefore(checks: InOrder, time: number, including: boolean): number {
  let [low, high] = [0, checks.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const instant = checks[middle]?.instant ?? 0;
    if (instant < time || (including && instant <= time)) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** A movement across an event that was not held happened there, as far as anybody can say: the stretches tell it. */
function atAnEvent(
  { by }: Drift,
  stretchOfCheck: (check: CheckValues) => number,
  joins: readonly Join[],
): boolean {
  if (!('movement' in by)) return false;
  const [first, last] = [by.movement.from, by.movement.to].map(stretchOfCheck);
  if (first === undefined || last === undefined) return false;
  const isHeld = (stretch: number) =>
    joins.some(({ held, stretches: [from, to] }) => held && from <= stretch && stretch < to);
  for (let stretch = first; stretch < last; stretch += 1) if (!isHeld(stretch)) return true;
  return false;
}

function eventDoubts(one: RoverTrust, events: readonly Event[]): EventDoubt[] {
  return one.stretches.flatMap((stretch, index): EventDoubt[] => {
    const { event } = stretch.opened;
    if (!event || !events.includes(event)) return [];
    const join = one.joins.find(({ stretches: [from, to] }) => from < index && index <= to);
    return [
      {
        event,
        setup: one.setup,
        rover: one.rover,
        held: join?.held ?? false,
        before: one.spans.filter((span) => span.stretch === index - 1).at(-1) ?? null,
        after: one.spans.find((span) => span.stretch === index) ?? null,
        movements: join?.movements ?? [],
      },
    ];
  });
}

/** When and with what a point was measured, as far as that is known. */
export interface PointCircumstance {
  readonly setup: SetupValues | null;
  readonly rover: string | null;
  readonly instant: number | null;
}

/** What moved while a point was measured, as far as its time, rover and base are known. */
export const driftsAt = (rovers: readonly RoverTrust[], circumstance: PointCircumstance): readonly Drift[] =>
  possibleFor(rovers, circumstance).flatMap((one) =>
    spansAt(one, circumstance.instant).flatMap(({ drifts }) => drifts),
  );

function possibleFor(rovers: readonly RoverTrust[], { setup, rover }: PointCircumstance) {
  const several = rovers.some((one) => one.rover !== rovers[0]?.rover);
  return rovers.filter(
    (one) =>
      (setup === null || one.setup === setup) &&
      (rover === null ? true : one.rover === rover || (one.rover === null && !several)),
  );
}

/** What position and height of a point are worth by themselves, where that differs; null where it does not, or is not known. */
export function partsAt(rovers: readonly RoverTrust[], circumstance: PointCircumstance): Parts | null {
  const found = possibleFor(rovers, circumstance).flatMap((one) => spansAt(one, circumstance.instant));
  const [only] = found;
  const parts = found.length === 1 ? only?.parts : undefined;
  return parts && parts.horizontal.class !== parts.up.class ? parts : null;
}

/** The class of a point: the worst that it could have, where time, rover or base are not known. */
export function classOf(rovers: readonly RoverTrust[], circumstance: PointCircumstance): TrustClass {
  const classes = possibleFor(rovers, circumstance).flatMap((one) => {
    const found = worst(spansAt(one, circumstance.instant).map((span) => span.class));
    return found ? [found] : [];
  });
  return worst(classes) ?? 'unchecked';
}

/** Spans that a time may fall in; all of them where it is not known or lies outside the setup. */
function spansAt({ setup, spans }: RoverTrust, instant: number | null): readonly Span[] {
  const outside =
    instant === null ||
    (setup.from !== null && instant < setup.from) ||
    (setup.until !== null && instant > setup.until);
  if (outside) return spans;
  const inside = spans.filter(
    ({ from, until }) => (from === null || from <= instant) && (until === null || instant <= until),
  );
  return inside.length > 0 ? bestAtEdge(inside) : spans;
}

/** A point in the very minute of a passing check belongs to the part that the check proves, unless the other is in doubt. */
function bestAtEdge(inside: readonly Span[]): readonly Span[] {
  if (inside.length < 2 || inside.some((span) => span.class === 'in-doubt')) return inside;
  if (inside.some((span, index) => index > 0 && span.stretch !== inside[0]?.stretch)) return inside;
  return [inside.reduce((found, span) => (isWorse(found.class, span.class) ? span : found))];
}
