/** Whether an observation was good enough: against the job's limits, else against defaults that are shown as assumptions. */
import { assumed, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Limits, Quality } from '../../session/entries.ts';

/** One respect in which an observation falls short. */
export interface Shortfall {
  /** `float where fixed is wanted`, `pdop 5.1 where at most 3 is wanted`. */
  readonly sentence: string;
  /** The limit is the job's own, not a default. */
  readonly byJob: boolean;
  /** A phase solution without whole numbers of waves decides nothing, whatever else is said; nor does one of few epochs. */
  readonly unfit: boolean;
}

/** Defaults where the job sets no limit; all common practice. */
export const PDOP_LIMIT = assumed('largest pdop', 4, '', 0, 'the job sets no limit, so 4 (common practice)');
export const SATELLITES_LIMIT = assumed(
  'fewest satellites',
  6,
  '',
  0,
  'the job sets no limit, so 6 (common practice)',
);
export const EPOCHS_LIMIT = assumed(
  'fewest epochs',
  5,
  '',
  0,
  'the job sets no limit, so 5 (common practice)',
);

/** What is not noted is not held against the observation. */
export function shortfallsOf(quality: Quality | null, limits: Limits | null): Shortfall[] {
  if (!quality) return [];
  const wanted = limits?.solution?.name ?? 'fixed';
  const solution = quality.solution?.name;
  const found: Shortfall[] = [];
  if (solution !== undefined && rank(solution) < rank(wanted))
    found.push({
      sentence: `${solution}, not ${wanted}`,
      byJob: limits?.solution !== undefined && limits?.solution !== null,
      unfit: rank(solution) < rank('fixed'),
    });
  const judge = (
    what: string,
    got: Maybe<Value> | null,
    limit: Maybe<Value> | null,
    standIn: Value,
    most: boolean,
    unfit = false,
  ) => {
    if (!got || isHole(got)) return;
    const byJob = limit !== null && !isHole(limit);
    const bound = byJob ? limit.value : standIn.value;
    if (most ? got.value <= bound : got.value >= bound) return;
    const sentence = `${what} ${got.value} (at ${most ? 'most' : 'least'} ${bound})`;
    found.push({ sentence, byJob, unfit });
  };
  judge('pdop', quality.pdop, limits?.pdop ?? null, PDOP_LIMIT, true);
  judge('satellites', quality.satellites, limits?.satellites ?? null, SATELLITES_LIMIT, false);
  judge('epochs', quality.epochs, limits?.epochs ?? null, EPOCHS_LIMIT, false, true);
  return found;
}

/** Whether a check with these shortfalls decides anything: not without a fix, not with few epochs, not against the job's own limits. */
export const decidesNothing = (shortfalls: readonly Shortfall[]) =>
  shortfalls.some(({ byJob, unfit }) => byJob || unfit);

export const isWeak = (quality: Quality | null, limits: Limits | null) =>
  decidesNothing(shortfallsOf(quality, limits));

/** Standard uncertainties of an axis and of up where whole waves are not known; decimetres, code alone metres (common practice). */
export const UNFIXED: Readonly<Record<string, { readonly horizontal: number; readonly up: number }>> = {
  float: { horizontal: 0.25, up: 0.4 },
  differential: { horizontal: 0.7, up: 1.2 },
  autonomous: { horizontal: 4, up: 8 },
};
/** How far off such an observation may be by itself, in metres: a radius, and a half-width up (common practice). */
const REACH: Readonly<Record<string, { readonly horizontal: number; readonly up: number }>> = {
  // Over few epochs the waves may be counted wrongly, which is as bad as not counted.
  fixed: { horizontal: 2, up: 3 },
  float: { horizontal: 2, up: 3 },
  differential: { horizontal: 5, up: 8 },
  autonomous: { horizontal: 25, up: 40 },
};

export const weakReach = (quality: Quality | null) =>
  REACH[quality?.solution?.name ?? 'fixed'] ?? { horizontal: 25, up: 40 };

const rank = (solution: string) => ['autonomous', 'differential', 'float', 'fixed'].indexOf(solution);
