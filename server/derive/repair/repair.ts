/** What is to be taken off a day's points, from when to when, with what uncertainty, and why some cannot be repaired. */
import { topocentricOf, geocentricVectorOf } from '../../geodesy/topocentric.ts';
import {
  latitude as asLatitude,
  longitude as asLongitude,
  metres,
  type Geocentric,
  type Geographic,
  type Topocentric,
} from '../../quantities/brands.ts';
import { allOf, showLength } from '../../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Correction } from '../../session/entries.ts';
import type { CheckValues } from '../checks/check.ts';
import { eachOf, testsOf } from '../checks/together.ts';
import { judgedOn, verdictOf } from '../checks/verdict.ts';
import { sameDatum, type Frame } from '../positions/frame.ts';
import type { KeyedValues } from '../setups/keyed.ts';
import { keyedLimit, keyedTransformation } from '../setups/keyed-transformation.ts';
import type { MarkValues } from '../marks/mark.ts';
import type { TransformationLimit } from '../positions/transformation-error.ts';
import type { SetupValues } from '../setups/setup.ts';
import { proofOf, roverTrust, type DayFacts, type RoverTrust, type Trust } from '../trust/trust.ts';
import { movementBetween, type Movement } from '../trust/movement.ts';
import type { Proof } from '../trust/spans.ts';
import { boundaryInWords } from '../trust/words.ts';

/** One error to take off the points of a base, or of a rover, in a span of time. */
export interface Remedy {
  /** By what was keyed, by a slip that a correction confirms, or by the failing checks after an event. */
  readonly by: 'keyed' | 'slip' | 'event';
  readonly setup: SetupValues;
  /** Null where it concerns every rover. */
  readonly rover: string | null;
  readonly from: number | null;
  readonly until: number | null;
  /** Broadcast ARP minus true ARP; nothing for a slip at the rover. */
  readonly base: Geocentric;
  /** A slip at the rover, in the horizon of each point; nothing for an error of the base. */
  readonly atRover: Topocentric;
  /** The error in the horizon of the base. */
  readonly size: Topocentric;
  /** What repaired points stand on: standard uncertainty of each axis, and up; null where nobody has said. */
  readonly reference: Reference;
  /** A sentence. */
  readonly reason: string;
  /** The checks that it was taken from. */
  readonly checks: readonly CheckValues[];
}
export interface Reference {
  readonly axis: number | null;
  readonly up: number | null;
  /** The marks that it comes from. */
  readonly marks: readonly MarkValues[];
}

/** A slip that somebody has confirmed, with the error that it makes. */
export interface ConfirmedSlip {
  readonly correction: Correction;
  /** The slip in words. */
  readonly slip: string;
  /** The base that it happened at; null where it happened at a rover. */
  readonly setup: string | null;
  readonly rover: string | null;
  /** Seconds since 1970-01-01 UTC; null for the whole of the setup. */
  readonly from: number | null;
  readonly until: number | null;
  /** Broadcast ARP minus true ARP; or shown minus true, in the horizon of each point. */
  readonly base: Geocentric | null;
  readonly atRover: Topocentric | null;
  /** The base was moved: how far, the checks after it tell, and one of them is then enough. */
  readonly moved?: true;
}

/** Why points of a span cannot be repaired, or need not be. */
export interface NoRemedy {
  readonly setup: SetupValues;
  readonly rover: string | null;
  readonly from: number | null;
  readonly until: number | null;
  /** Nothing is wrong, so that nothing need be taken off. */
  readonly agrees: boolean;
  readonly because: string;
  /** What the points stand on; null where that is their base's mark alone. */
  readonly reference: Reference | null;
}

/** A check as it would have been without the error. */
export interface RepairedCheck {
  readonly check: CheckValues;
  readonly east: number | null;
  readonly north: number | null;
  readonly up: number | null;
  readonly verdict: CheckValues['verdict'];
  readonly judged: CheckValues['judged'];
  /** The error was taken from this very check, so that it proves nothing. */
  readonly ownError: boolean;
}

export interface Repair {
  readonly facts: DayFacts;
  readonly remedies: readonly Remedy[];
  readonly refusals: readonly NoRemedy[];
  readonly checks: readonly RepairedCheck[];
  /** Trust with the checks as repaired by what was keyed or confirmed. */
  readonly asRepaired: readonly RoverTrust[];
}

/** Keyed values that make less than this are rounding: 0.00001″ and a millimetre. */
export const ROUNDING = 0.001;

export function repairOf(facts: DayFacts, trust: Trust, confirmed: readonly ConfirmedSlip[]): Repair {
  const keyed = facts.setups.flatMap((setup) =>
    setup.broadcasts.length === 0
      ? [nothingTold(setup)]
      : setup.broadcasts.map((state) => keyedRemedy(setup, state, facts)),
  );
  const remedies = keyed.filter((found): found is Remedy => 'by' in found);
  const refusals = keyed.filter((found): found is NoRemedy => 'because' in found);
  for (const slip of confirmed) if (!slip.moved) remedies.push(...slipRemedies(slip, facts, remedies));
  const events = trust.rovers.flatMap((one) => eventRemedies(one, facts, remedies, confirmed));
  const all = [...remedies, ...events.filter((found): found is Remedy => 'by' in found)];
  for (const found of events) if ('because' in found) refusals.push(found);
  const each = eachOfDay(facts);
  const judge = (check: CheckValues): Proof => proofOf(check, repairedCheck(check, remedies, each));
  return {
    facts,
    remedies: all,
    refusals,
    checks: facts.checks.map((check) => repairedCheck(check, all, each)),
    asRepaired:
      remedies.length === 0
        ? trust.rovers
        : trust.rovers.map(({ setup, rover }) => roverTrust(setup, rover, facts, judge)),
  };
}

const eachOfDay = ({ checks, frame }: DayFacts) => eachOf(testsOf(checks), frame);

/** Whether a remedy or its absence concerns this base, rover and time. */
export const concerns = (
  { setup, rover, from, until }: Pick<Remedy, 'setup' | 'rover' | 'from' | 'until'>,
  at: { readonly setup: SetupValues; readonly rover: string | null; readonly instant: number },
) =>
  setup === at.setup &&
  (rover === null || at.rover === null || rover === at.rover) &&
  (from === null || from <= at.instant) &&
  (until === null || at.instant < until);

const nothingTold = (setup: SetupValues): NoRemedy => ({
  setup,
  rover: null,
  from: null,
  until: null,
  agrees: false,
  because: `What ${setup.setup.name} was told is not noted, so what it broadcast is not known.`,
  reference: null,
});

function keyedRemedy(setup: SetupValues, values: KeyedValues, facts: DayFacts): Remedy | NoRemedy {
  const { frame } = facts;
  const { state, broadcast, recorded } = values;
  const { name } = setup.setup;
  // What was keyed when the setup began holds for what is noted a minute too early, too.
  const span = {
    from: values === setup.broadcasts[0] ? null : state.from,
    until: values === setup.broadcasts.at(-1) ? null : state.until,
  };
  const none = (because: string, agrees = false, reference: Reference | null = null): NoRemedy => ({
    setup,
    rover: null,
    ...span,
    agrees,
    because,
    reference,
  });
  const told =
    recorded !== undefined
      ? `What ${name} broadcast, as ${recorded.text} shows it,`
      : setup.keyed.length > 1
        ? `What ${name} was told as state ${state.number}`
        : `What ${name} was told`;
  if (!setup.mark)
    return none(`${name} stands on no known mark, so what it should have broadcast is not known.`);
  if (isHole(broadcast)) return none(`What ${name} broadcast is not known: ${broadcast.hole}.`);
  const { arp } = values.wanted;
  if (isHole(arp)) return none(`What ${name} should have broadcast is not known: ${arp.hole}.`);
  if (
    !isHole(values.located) &&
    !isHole(frame.keyed) &&
    !sameDatum(values.located.system.datum, frame.keyed.datum)
  )
    return none(
      `${told} is in ${values.located.system.datum.name}, and the base in ${frame.keyed.datum.name}.`,
    );
  const origin = placeOf(setup.mark);
  if (!origin) return none(`Where ${setup.mark.mark.name} lies is not known.`);
  const whole = topocentricOf(origin, minus(broadcast, arp));
  if (lengthOf(whole) < ROUNDING) return none(`${told} agrees with what it should have been.`, true);
  const reference = keyedReference(setup.mark, values, setup);
  const size = outsideLimit(whole, keyedLimit(values, setup, frame.confidence.value));
  if (lengthOf(size) < ROUNDING)
    return none(
      `${told} agrees with what it should have been, as far as the transformation is known.`,
      true,
      reference,
    );
  const base = size === whole ? minus(broadcast, arp) : geocentricVectorOf(origin, size);
  const remedy: Remedy = {
    by: 'keyed',
    setup,
    rover: null,
    ...span,
    base,
    atRover: STILL,
    size,
    reference,
    reason: `${told} put its antenna ${inWords(size)}.`,
    checks: [],
  };
  const against = recorded === undefined ? checksAgainst(remedy, facts) : [];
  if (against.length === 0) return remedy;
  const names = allOf(against.map(({ check }) => check.name));
  return none(
    `By the notes, ${remedy.reason.replace('What', 'what')} Yet ${names} ${against.length === 1 ? 'agrees' : 'agree'} as measured, so the note may be wrong and nothing is taken off; look at the receiver or its log first.`,
  );
}

/** Checks that pass as measured and would fail without the error; none where it explains a check that fails. */
function checksAgainst(remedy: Remedy, facts: DayFacts): CheckValues[] {
  const each = eachOfDay(facts);
  const own = facts.checks.filter(({ setup }) => setup === remedy.setup);
  const without = (check: CheckValues) => repairedCheck(check, [remedy], each).verdict;
  if (own.some((check) => check.verdict === 'fails' && without(check) !== 'fails')) return [];
  return own.filter((check) => check.verdict === 'passes' && without(check) === 'fails');
}

/** Nothing more is taken off for a slip that the keyed values already show. */
function slipRemedies(slip: ConfirmedSlip, { setups }: DayFacts, keyed: readonly Remedy[]): Remedy[] {
  const { correction } = slip;
  return setups.flatMap((setup): Remedy[] => {
    if (slip.setup !== null && slip.setup !== setup.setup.name) return [];
    const origin = setup.mark ? placeOf(setup.mark) : null;
    if (!setup.mark || !origin) return [];
    const base = slip.base ?? NOTHING_GEOCENTRIC;
    const size = slip.base ? topocentricOf(origin, slip.base) : (slip.atRover ?? STILL);
    const shown = keyed.some(
      (one) =>
        one.setup === setup &&
        one.by === 'keyed' &&
        lengthOf(differenceOf(one.size, size)) < lengthOf(size) / 2,
    );
    if (shown && slip.base) return [];
    const by = correction.by ? `, as ${correction.by.name} confirmed` : ', as confirmed';
    return [
      {
        by: 'slip',
        setup,
        rover: slip.rover,
        from: slip.from,
        until: slip.until,
        base,
        atRover: slip.atRover ?? STILL,
        size,
        reference: baseReference(setup.mark),
        reason: `${slip.slip}${by}: that put ${slip.base ? 'the antenna' : 'the rover'} ${inWords(size)}.`,
        checks: [],
      },
    ];
  });
}

/** The failing checks of a stretch that an event opened tell how far the base moved: their mean, where they agree. */
function eventRemedies(
  one: RoverTrust,
  facts: DayFacts,
  keyed: readonly Remedy[],
  confirmed: readonly ConfirmedSlip[],
): (Remedy | NoRemedy)[] {
  const { setup, rover, stretches, checks } = one;
  const known = confirmed.some(({ moved, setup: of }) => moved && of === setup.setup.name);
  const each = eachOfDay(facts);
  return stretches.flatMap((stretch): (Remedy | NoRemedy)[] => {
    const { opened, closed } = stretch;
    if (!opened.event) return [];
    const inside = checks.filter(({ instant }) => within(instant, stretch));
    const repaired = inside.map((check) => repairedCheck(check, keyed, each));
    const strong = repaired.filter(({ check }) => !check.weak);
    const failing = strong.filter(({ verdict }) => verdict === 'fails').map(({ check }) => check);
    const passing = strong.filter(({ verdict }) => verdict === 'passes').map(({ check }) => check);
    const span = { from: stretch.from, until: closed ? stretch.until : null };
    const event = boundaryInWords(opened, facts.job);
    const none = (because: string): NoRemedy => ({
      setup,
      rover,
      ...span,
      agrees: false,
      because,
      reference: null,
    });
    if (failing.length === 0) return [];
    const names = allOf(failing.map(({ check }) => check.name));
    if (passing.length > 0)
      return [
        none(
          `After ${event} ${names} ${failing.length > 1 ? 'fail' : 'fails'} and ${allOf(passing.map(({ check }) => check.name))} ${passing.length > 1 ? 'pass' : 'passes'}, so that no one movement explains them.`,
        ),
      ];
    const unsteady = failing.find((check, index) => {
      const next = failing[index + 1];
      return next && isUnsteady(movementBetween(check, next, facts.frame));
    });
    if (unsteady)
      return [
        none(`The checks after ${event} do not agree with one another: the base may have kept moving.`),
      ];
    const vectors = failing.map((check) => errorAt(check, keyed));
    if (vectors.some((vector) => vector === null))
      return [none(`${names} after ${event} cannot be compared in all three directions.`)];
    const base = meanOf(vectors.filter((vector) => vector !== null));
    const origin = setup.mark ? placeOf(setup.mark) : null;
    if (!origin) return [none('Where the base stands is not known.')];
    const size = topocentricOf(origin, base);
    const [first, second] = failing;
    if (first && !second && !known)
      return [
        none(
          `After ${event} ${first.check.name} shows the points ${inWords(size)}. One check alone may be a bad occupation, so nothing is taken off: occupy ${first.mark?.mark.name ?? 'a known mark'} again, or confirm it (correction "base moved").`,
        ),
      ];
    return [
      {
        by: 'event',
        setup,
        rover,
        ...span,
        base,
        atRover: STILL,
        size,
        reference: checkReference(failing),
        reason: `After ${event} ${names} ${failing.length > 1 ? 'show' : 'shows'} the points ${inWords(size)}${failing.length > 1 ? ' in the mean' : ', and somebody confirmed that the base was moved'}.`,
        checks: failing,
      },
    ];
  });
}

/** Chance exceeds one and a half times its 95 % level in some three of a thousand comparisons. */
const STEADY = 1.5;
const isUnsteady = ({ horizontal, up, budget }: Movement) =>
  [
    [horizontal, budget.horizontal],
    [up, budget.up],
  ].some(
    ([size, limit]) =>
      size && limit && !isHole(size) && !isHole(limit) && Math.abs(size.value) > STEADY * limit.value,
  );

const within = (instant: number | null, { from, until }: { from: number | null; until: number | null }) =>
  instant !== null && (from === null || from <= instant) && (until === null || instant < until);

/** The residual of a check without what remedies explain, as a geocentric vector. */
function errorAt(check: CheckValues, remedies: readonly Remedy[]): Geocentric | null {
  const { east, north, up } = repairedCheck(check, remedies, 1);
  const origin = check.mark ? placeOf(check.mark) : null;
  if (!origin || east === null || north === null || up === null) return null;
  return geocentricVectorOf(origin, { east: metres(east), north: metres(north), up: metres(up) });
}

function repairedCheck(values: CheckValues, remedies: readonly Remedy[], each: number): RepairedCheck {
  const { residual, mark, setup, instant, check } = values;
  const active =
    setup && instant !== null
      ? remedies.filter((remedy) => concerns(remedy, { setup, rover: check.by?.name ?? null, instant }))
      : [];
  const origin = mark ? placeOf(mark) : null;
  const raw = { east: number(residual.east), north: number(residual.north), up: number(residual.up) };
  if (active.length === 0 || !origin)
    return { check: values, ...raw, verdict: values.verdict, judged: values.judged, ownError: false };
  const explained = topocentricOf(origin, sumOf(active.map(({ base }) => base)));
  const less = (axis: 'east' | 'north' | 'up') => {
    const size = raw[axis];
    return size === null
      ? null
      : active.reduce((rest, { atRover }) => rest - atRover[axis], size - explained[axis]);
  };
  const rest = { east: less('east'), north: less('north'), up: less('up') };
  return {
    check: values,
    ...rest,
    ...verdictOn(rest, values, each),
    ownError: active.some(({ checks }) => checks.includes(values)),
  };
}

/** @param each the probability for each test of the day */
function verdictOn(
  { east, north, up }: Pick<RepairedCheck, 'east' | 'north' | 'up'>,
  check: CheckValues,
  each: number,
): Pick<RepairedCheck, 'verdict' | 'judged'> {
  const horizontal = east === null || north === null ? null : Math.hypot(east, north);
  const judged = judgedOn({ horizontal, up }, check, each);
  return { verdict: verdictOf(judged, check.absent), judged };
}

/** Failing checks of a base, whole in all three directions, and whether each would pass without a given error. */
export function residualsWithout(setup: SetupValues, checks: readonly CheckValues[], frame: Frame) {
  const each = eachOf(testsOf(checks), frame);
  return checks
    .filter((check) => check.setup === setup && check.verdict === 'fails')
    .flatMap((check) => {
      const { east, north, up } = repairedCheck(check, [], each);
      if (east === null || north === null || up === null) return [];
      const within = (error: Topocentric, of: { east: number; north: number; up: number }) =>
        verdictOn(
          { east: of.east - error.east, north: of.north - error.north, up: of.up - error.up },
          check,
          each,
        ).verdict !== 'fails';
      return [{ check, east, north, up, within }];
    });
}

export const baseReference = (mark: MarkValues): Reference => ({
  axis: mark.sigmaHorizontal,
  up: mark.sigmaVertical,
  marks: [mark],
});

/** A mark that was brought to the datum of what was keyed is known there no better than the transformation. */
function keyedReference(mark: MarkValues, keyed: KeyedValues, setup: SetupValues): Reference {
  const { axis, up } = keyedTransformation(keyed, setup);
  if (axis === 0 && up === 0) return baseReference(mark);
  const together = (sigma: number | null, more: number) => (sigma === null ? null : Math.hypot(sigma, more));
  return { axis: together(mark.sigmaHorizontal, axis), up: together(mark.sigmaVertical, up), marks: [mark] };
}

/** The error without those parts that may come of the transformation alone. */
function outsideLimit(error: Topocentric, { horizontal, up }: TransformationLimit): Topocentric {
  const beside = Math.hypot(error.east, error.north) > horizontal;
  const above = Math.abs(error.up) > up;
  if (beside && above) return error;
  return {
    east: beside ? error.east : metres(0),
    north: beside ? error.north : metres(0),
    up: above ? error.up : metres(0),
  };
}

/** The mean of several checks: their occupations count in the mean, the marks that they share in full. */
function checkReference(checks: readonly CheckValues[]): Reference {
  const marks = [...new Set(checks.map(({ mark }) => mark).filter((mark) => mark !== null))];
  const of = (direction: 'axis' | 'up'): number | null => {
    const own = checks.map(({ occupation }) => occupation?.[direction].value ?? null);
    const known = marks.map((mark) => (direction === 'axis' ? mark.sigmaHorizontal : mark.sigmaVertical));
    if (own.includes(null) || known.includes(null) || marks.length === 0) return null;
    const squares = (sizes: readonly (number | null)[]) =>
      sizes.reduce<number>((sum, size) => sum + (size ?? 0) ** 2, 0);
    return Math.sqrt(squares(own) / checks.length ** 2 + squares(known) / marks.length ** 2);
  };
  return { axis: of('axis'), up: of('up'), marks };
}

/** `12 mm east, 3.0 mm south and 54.917 m too low`. */
export function inWords({ east, north, up }: Topocentric): string {
  const parts = [
    [east, 'east', 'west'],
    [north, 'north', 'south'],
    [up, 'too high', 'too low'],
  ] as const;
  const told = parts
    .filter(([size]) => Math.abs(size) >= ROUNDING / 2)
    .map(([size, more, less]) => `${showLength(Math.abs(size))} ${size > 0 ? more : less}`);
  return told.length === 0 ? 'off by less than its rounding' : allOf(told);
}

export const STILL: Topocentric = { east: metres(0), north: metres(0), up: metres(0) };
const NOTHING_GEOCENTRIC: Geocentric = { x: metres(0), y: metres(0), z: metres(0) };

const number = (value: Maybe<Value>) => (isHole(value) ? null : value.value);

function placeOf({ located }: MarkValues): Geographic | null {
  if (isHole(located)) return null;
  return { latitude: asLatitude(located.latitude.value), longitude: asLongitude(located.longitude.value) };
}

type GeocentricValues = Readonly<Record<'x' | 'y' | 'z', Value>>;
const minus = (one: GeocentricValues, other: GeocentricValues): Geocentric => ({
  x: metres(one.x.value - other.x.value),
  y: metres(one.y.value - other.y.value),
  z: metres(one.z.value - other.z.value),
});

export const sumOf = (vectors: readonly Geocentric[]): Geocentric =>
  vectors.reduce(
    (sum, vector) => ({
      x: metres(sum.x + vector.x),
      y: metres(sum.y + vector.y),
      z: metres(sum.z + vector.z),
    }),
    NOTHING_GEOCENTRIC,
  );
function meanOf(vectors: readonly Geocentric[]): Geocentric {
  const { x, y, z } = sumOf(vectors);
  return { x: metres(x / vectors.length), y: metres(y / vectors.length), z: metres(z / vectors.length) };
}
const differenceOf = (one: Topocentric, other: Topocentric): Topocentric => ({
  east: metres(one.east - other.east),
  north: metres(one.north - other.north),
  up: metres(one.up - other.up),
});
const lengthOf = ({ east, north, up }: Topocentric) => Math.hypot(east, north, up);
