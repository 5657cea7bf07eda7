/** Whether an observation was good enough: against the job's limits, else against defaults that are shown as assumptions. */
import { assumed, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Limits, Quality } from '../../session/entries.ts';

/** One respect in which an observation falls short. */
export interface Shortfall {
  /** `float where fixed is wanted`, `pdop 5.1 where at most 3 is wanted`. */
  readonly sentence: string;
  /** The limit is the job's own, not a default. */
  readonly byJob: boolean;
  /** A phase solution without whole numbers of waves proves nothing, whatever else is said. */
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
      sentence: `${solution} where ${wanted} is wanted`,
      byJob: limits?.solution !== undefined && limits?.solution !== null,
      unfit: rank(solution) < rank('fixed'),
    });
  const judge = (
    what: string,
    got: Maybe<Value> | null,
    limit: Maybe<Value> | null,
    standIn: Value,
    most: boolean,
  ) => {
    if (!got || isHole(got)) return;
    const byJob = limit !== null && !isHole(limit);
    const bound = byJob ? limit.value : standIn.value;
    if (most ? got.value <= bound : got.value >= bound) return;
    const sentence = `${what} ${got.value} where at ${most ? 'most' : 'least'} ${bound} is wanted`;
    found.push({ sentence, byJob, unfit: false });
  };
  judge('pdop', quality.pdop, limits?.pdop ?? null, PDOP_LIMIT, true);
  judge('satellites', quality.satellites, limits?.satellites ?? null, SATELLITES_LIMIT, false);
  judge('epochs', quality.epochs, limits?.epochs ?? null, EPOCHS_LIMIT, false);
  return found;
}

/** Whether a check with these shortfalls still proves something: not without a fix, and not against the job's own limits. */
export const provesNothing = (shortfalls: readonly Shortfall[]) =>
  shortfalls.some(({ byJob, unfit }) => byJob || unfit);

const rank = (solution: string) => ['autonomous', 'differential', 'float', 'fixed'].indexOf(solution);
