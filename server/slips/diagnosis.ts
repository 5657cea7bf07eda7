/** Which of the known slips would explain the checks of a base, which of them cannot be told apart, and whether none does. */
import { keptWith } from '../../grammar/kept-with.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import type { Derivation } from '../derive/derivation.ts';
import type { KeyedValues } from '../derive/setups/keyed.ts';
import type { SetupValues } from '../derive/setups/setup.ts';
import { largestOf } from '../quantities/extremes.ts';
import { isHole } from '../quantities/value.ts';
import { interned, NOTHING } from '../derive/remembered.ts';
import type { Session } from '../session/session.ts';
import { keyedDifferences, type KeyedDifference } from './keyed-differences.ts';
import { fitOf, lengthIn, logSum } from './likelihood.ts';
import { evidenceOf, type Evidence } from './observed-checks.ts';
import { predictionOf } from './prediction.ts';
import { situationOf, type Situation } from './situation.ts';
import type { Slip, SlipName, Way } from './slip.ts';
import { SLIPS } from './slips.ts';
import { logOfHeightAlone, logOfNone } from './unlisted.ts';

export interface Diagnosis {
  readonly setup: SetupValues;
  /** The keyed state that the checks were made in; null where nothing was keyed. */
  readonly keyed: KeyedValues | null;
  /** Those that it rests on: the first ones, where there are very many. */
  readonly checks: readonly CheckValues[];
  /** What the notes themselves show of this state: keyed numbers that are not the right ones. Their part is taken off first. */
  readonly shown: readonly KeyedDifference[];
  /** `none`: no known slip would explain what is left. `nothing`: there is nothing to explain. */
  readonly answer: 'nothing' | 'none' | 'slips';
  /** The likeliest group first; each holds what cannot be told apart by these checks. */
  readonly groups: readonly Group[];
}
export interface Group {
  /** The likeliest first. */
  readonly explanations: readonly Explanation[];
  /** What to look at, to tell them apart or to be sure. */
  readonly looks: readonly string[];
  /** An error that is no listed slip explains the checks nearly as well: the group is no more than a hint. */
  readonly open: boolean;
}
export interface Explanation {
  readonly slips: readonly SlipName[];
  /** A clause that completes "would be explained if". */
  readonly says: string;
  /** How many times likelier it makes what was seen than none of the known slips does, divided by the number of ways. */
  readonly times: number;
  /** The same with how often the slip is made beside others: what the order rests on. */
  readonly odds: number;
  /** What it says of each check, in the order of the evidence's rows; metres. */
  readonly fitted: readonly number[];
  readonly looks: readonly string[];
}

/** How many times likelier than none a slip must be to be offered. */
const OFFERED = 100;
/** What explains the checks less than this many times better than an error that is no listed slip does not exclude one. */
const EXCLUDES = 30;
/** An effect that is not this many times its uncertainty is no explanation. */
const SEEN = 2;
/** Predictions closer than this, in standard deviations of all checks together, are one group. */
const APART = 3;
/** Members of a group that are this many times less likely than its first need not be spoken of. */
const WORTH_SAYING = Math.log(1e-3);
/** Of each kind, for explanations by two slips at once. */
const PAIRED = 8;

/** One for each keyed state of each setup that checks were made in. */
export const diagnosesOf = (session: Session, derivation: Derivation): readonly Diagnosis[] =>
  [...derivation.setups.values()].flatMap((setup) => {
    const own = derivation.checks.filter((check) => check.setup === setup);
    return [...new Set(own.map(({ keyed }) => keyed))].flatMap(
      (keyed) => diagnosisOf(setup, keyed, session, derivation) ?? [],
    );
  });

/** What explains the checks that were made from a base in one keyed state; null where they show nothing. */
export function diagnosisOf(
  setup: SetupValues,
  keyed: KeyedValues | null,
  session: Session,
  derivation: Derivation,
): Diagnosis | null {
  const made = asked.get(derivation) ?? new Map<object, Diagnosis | null>();
  asked.set(derivation, made);
  const state = keyed ?? setup;
  let found = made.get(state);
  if (found === undefined) {
    found = remade(setup, keyed, session, derivation);
    made.set(state, found);
  }
  return found;
}
const asked = keptWith<Derivation, Map<object, Diagnosis | null>>();

function remade(
  setup: SetupValues,
  keyed: KeyedValues | null,
  session: Session,
  derivation: Derivation,
): Diagnosis | null {
  const checks = derivation.checks
    .filter((check) => check.setup === setup && check.keyed === keyed && check.mark !== setup.mark)
    .slice(0, MOST_CHECKS);
  const rests = restsOn(setup, keyed, checks, session, derivation);
  const known = kept.get(rests);
  if (known !== undefined) return known;
  const found = diagnosed(checks, situationOf(setup, keyed, session, derivation));
  kept.set(rests, found);
  return found;
}
const kept = keptWith<readonly object[], Diagnosis | null>();

/** More checks than this add nothing to a diagnosis but time. */
const MOST_CHECKS = 24;

/** Everything that the answer can depend on, as one list: an edit elsewhere leaves it the same, and the answer with it. */
function restsOn(
  setup: SetupValues,
  keyed: KeyedValues | null,
  checks: readonly CheckValues[],
  session: Session,
  { frame, geoid, marks, setups, checks: all }: Derivation,
): readonly object[] {
  return interned<object>([
    setup,
    keyed ?? NOTHING,
    frame,
    session.job ?? NOTHING,
    isHole(geoid) ? NOTHING : geoid,
    ...checks,
    ...marks.values(),
    ...setups.values(),
    ...session.events,
    ...session.surfaces.values(),
    ...session.antennas.values(),
    ...new Set(all.flatMap(({ mark }) => mark ?? [])),
  ]);
}

function diagnosed(checks: readonly CheckValues[], situation: Situation): Diagnosis | null {
  const evidence = evidenceOf(checks);
  if (!evidence) return null;
  const { setup, keyed, session, derivation } = situation;
  const shown = keyedDifferences(session, derivation).filter(
    (one) => one.setup === setup && keyed !== null && one.states.includes(keyed.state.number),
  );
  const candidates = withPairs(candidatesFor(situation, evidence), evidence, logOfNone(evidence));
  const groups = grouped(candidates, evidence);
  const answer = groups.length > 0 ? 'slips' : withinNoise(evidence) ? 'nothing' : 'none';
  return { setup, keyed, checks, shown, answer, groups };
}

interface Candidate {
  /** Its share among the ways to make the slip. */
  readonly share: number;
  readonly slips: readonly Slip[];
  readonly says: string;
  readonly prior: number;
  readonly fitted: readonly number[];
  readonly predicted: readonly number[];
  readonly directions: readonly (readonly number[])[];
  readonly size: number;
  /** ln of density times prior. */
  readonly log: number;
}

/** Every way of every slip, judged. */
function candidatesFor(situation: Situation, evidence: Evidence): Candidate[] {
  return SLIPS.flatMap((slip) => {
    const ways = slip.ways(situation);
    const total = ways.reduce((sum, { weight }) => sum + (weight ?? 1), 0);
    return ways.flatMap((way) => candidate(slip, way, total, situation, evidence));
  });
}

function candidate(
  slip: Slip,
  way: Way,
  total: number,
  situation: Situation,
  evidence: Evidence,
): Candidate[] {
  const prediction = predictionOf(way.effect, situation, evidence);
  if (!prediction) return [];
  const share = (way.weight ?? 1) / total;
  const prior = (way.prior ?? slip.prior) * share;
  const found = judged({ slips: [slip], says: way.says, share, prior, ...prediction }, evidence);
  return explainsTheSize(way, found) ? [found] : [];
}

/** What is known to a spread must come near what was seen by itself: 141 mm are no datum that lies 18 m away. */
function explainsTheSize({ effect }: Way, { predicted, fitted }: Candidate): boolean {
  if (effect.on !== 'told' || !effect.told.spread?.horizontal) return true;
  const missed = Math.hypot(...fitted.map((value, index) => value - (predicted[index] ?? 0)));
  return missed <= 0.5 * Math.hypot(...fitted);
}

function judged(
  of: Omit<Candidate, 'fitted' | 'log'>,
  { residuals, noise, noiseAfter }: Evidence,
): Candidate {
  const here = of.size > LARGE_ENOUGH ? noiseAfter(of.size) : noise;
  const { log, fitted } = fitOf(residuals, of.predicted, of.directions, here);
  return { ...of, fitted, log: log + Math.log(of.prior) };
}
/** Smaller errors of the base bend nothing that a check would see, metres. */
const LARGE_ENOUGH = 2;

/** Two slips at once only where one changes heights alone and the other positions alone. */
function withPairs(singles: readonly Candidate[], evidence: Evidence, none: number): Scored[] {
  const alone = bySlip(singles.map((one) => scored(one, none)));
  const kind = (wanted: 'up' | 'horizontal') =>
    singles.filter((one) => one.size < TOO_LARGE && changesOnly(one, evidence) === wanted);
  const bySide = (wanted: 'up' | 'horizontal') =>
    kind(wanted)
      .map((one) => ({ one, side: sideLog(one, evidence, wanted) }))
      .sort((a, b) => b.side - a.side)
      .slice(0, PAIRED)
      .map(({ one }) => one);
  const best = largestOf(
    alone.map(({ odds }) => odds),
    1,
  );
  const besides = bySide('horizontal');
  const pairs = bySide('up').flatMap((up): Scored[] =>
    besides.flatMap((horizontal) => {
      if (up.slips[0] === horizontal.slips[0]) return [];
      const both = judged(
        {
          slips: [...horizontal.slips, ...up.slips],
          says: `${horizontal.says}, and ${up.says}`,
          share: up.share * horizontal.share,
          prior: up.prior * horizontal.prior,
          predicted: up.predicted.map((value, index) => value + (horizontal.predicted[index] ?? 0)),
          directions: [...up.directions, ...horizontal.directions],
          size: Math.hypot(up.size, horizontal.size),
        },
        evidence,
      );
      return [scored(both, none)];
    }),
  );
  // Two must be that much better than one, as one must be than none.
  return [...alone, ...bySlip(pairs).filter(({ odds }) => odds > OFFERED * best)];
}
/** Of a base that is wrong by more, vectors are bent so much that a second slip cannot be seen beside it, metres. */
const TOO_LARGE = 10_000;

type Scored = Candidate & { readonly odds: number; readonly times: number };

function scored(one: Candidate, none: number): Scored {
  const odds = Math.exp(Math.min(MOST, one.log - none));
  return { ...one, odds, times: (odds * one.share) / one.prior };
}
/** Beyond this a number says nothing more. */
const MOST = 600;

/** A slip was made in one of its ways, so that they add up; the likeliest of them speaks for it. */
function bySlip(ways: readonly Scored[]): Scored[] {
  const slips = new Map<string, Scored[]>();
  for (const way of ways) {
    const name = way.slips.map((slip) => slip.name).join('+');
    const known = slips.get(name);
    if (known) known.push(way);
    else slips.set(name, [way]);
  }
  return [...slips.values()].flatMap((own) => {
    const [first, ...others] = own;
    if (!first) return [];
    const likeliest = others.reduce((best, one) => (one.log > best.log ? one : best), first);
    const sum = (of: (way: Scored) => number) => own.reduce((total, way) => total + of(way), 0);
    return [
      {
        ...likeliest,
        log: logSum(own.map(({ log }) => log)),
        odds: sum(({ odds }) => odds),
        times: sum(({ times }) => times),
      },
    ];
  });
}

/** Which components a candidate touches at all; null where both. */
function changesOnly({ predicted, directions }: Candidate, { rows }: Evidence): 'up' | 'horizontal' | null {
  let up = 0;
  let horizontal = 0;
  for (const values of [predicted, ...directions])
    rows.forEach(({ axis }, index) => {
      const size = Math.abs(values[index] ?? 0);
      if (axis === 'up') up = Math.max(up, size);
      else horizontal = Math.max(horizontal, size);
    });
  if (horizontal < 0.001 + 0.01 * up) return 'up';
  return up < 0.001 + 0.01 * horizontal ? 'horizontal' : null;
}

/** How well a candidate does on its own components alone. */
function sideLog(one: Candidate, evidence: Evidence, side: 'up' | 'horizontal'): number {
  const own = evidence.rows.map(({ axis }) => (axis === 'up') === (side === 'up'));
  const only = (values: readonly number[]) => values.map((value, index) => (own[index] ? value : 0));
  const noise = one.size > LARGE_ENOUGH ? evidence.noiseAfter(one.size) : evidence.noise;
  return (
    fitOf(only(evidence.residuals), only(one.predicted), one.directions.map(only), noise).log +
    Math.log(one.prior)
  );
}

/** Offered slips, the likeliest first, each with what lies too close to be told apart from it. */
function grouped(candidates: readonly Scored[], evidence: Evidence): Group[] {
  const seen = candidates
    .filter(({ fitted }) => lengthIn(fitted, evidence.noise) > SEEN)
    .sort((one, other) => other.log - one.log);
  const groups: Scored[][] = [];
  const placed = new Set<Scored>();
  for (const first of seen) {
    if (first.times <= OFFERED || placed.has(first)) continue;
    const members = seen.filter(
      (one) =>
        !placed.has(one) &&
        (one === first || (one.log > first.log + WORTH_SAYING && distance(one, first, evidence) < APART)),
    );
    for (const one of members) placed.add(one);
    groups.push(members);
  }
  const unlisted = logSum([logOfNone(evidence), logOfHeightAlone(evidence)]) + ALL_PRIORS;
  return groups.map((members) => {
    const explanations = members.map(explanation);
    const open = logSum(members.map(({ log }) => log)) - unlisted < Math.log(EXCLUDES);
    return { explanations, looks: [...new Set(explanations.flatMap(({ looks }) => looks))], open };
  });
}

/** Priors of slips are shares of one another: a listed slip at all is taken to be as likely as an unlisted error. */
const ALL_PRIORS = Math.log(SLIPS.reduce((sum, { prior }) => sum + prior, 0));

const distance = (one: Scored, other: Scored, { noise }: Evidence) =>
  lengthIn(
    one.fitted.map((value, index) => value - (other.fitted[index] ?? 0)),
    noise,
  );

const explanation = ({ slips, says, odds, times, fitted }: Scored): Explanation => ({
  slips: slips.map(({ name }) => name),
  says,
  times,
  odds,
  fitted,
  looks: slips.map(({ look }) => look),
});

/** All residuals together are no larger than chance makes them once in a hundred days. */
function withinNoise({ residuals, noise }: Evidence): boolean {
  const n = residuals.length;
  // Wilson and Hilferty (1931): the quantile of χ² at 99 %.
  const limit = n * (1 - 2 / (9 * n) + 2.326 * Math.sqrt(2 / (9 * n))) ** 3;
  return lengthIn(residuals, noise) ** 2 <= limit;
}
