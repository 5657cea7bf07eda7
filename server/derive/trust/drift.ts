/** Movements of a base that its checks or its tape show: between which times, and how far. */
import { isHole } from '../../quantities/value.ts';
import { circularRadius, normalHalfWidth } from '../../quantities/statistics.ts';
import type { CheckValues } from '../checks/check.ts';
import { comparedPairs } from '../checks/together.ts';
import { LONG_TAILS } from '../checks/verdict.ts';
import type { Frame } from '../positions/frame.ts';
import type { SetupValues } from '../setups/setup.ts';
import { settledReadings, type Settled } from '../setups/settled.ts';
import { movementBetween, type Movement } from './movement.ts';
import { reclassed, type Span } from './spans.ts';

/** Something that moved between two times; null where they are not known. */
export interface Drift {
  readonly from: number | null;
  readonly until: number | null;
  /** Metres; a size horizontally, and with its sign up. */
  readonly horizontal: number;
  readonly up: number;
  /** Of the two the one that chance explains least. */
  readonly most: 'horizontal' | 'up';
  readonly by: { readonly movement: Movement } | { readonly settled: Settled };
}

/**
 * Two checks on one mark that differ by more than chance does among all tests of the day.
 *
 * @param each the probability for each of them
 */
export function driftsByChecks(checks: readonly CheckValues[], each: number, frame: Frame): Drift[] {
  const standing = checks.filter(({ verdict }) => verdict !== 'fails');
  return comparedPairs(standing).flatMap(([from, to]): Drift[] => {
    const movement = movementBetween(from, to, frame);
    const excess = excessOf(movement, each, frame);
    if (Math.max(excess.horizontal, excess.up) <= 1) return [];
    const size = (value: Movement['up']) => (isHole(value) ? 0 : value.value);
    const { horizontal, up } = movement;
    return [
      {
        from: from.instant,
        until: to.instant,
        horizontal: size(horizontal),
        up: size(up),
        most: excess.horizontal > excess.up ? 'horizontal' : 'up',
        by: { movement },
      },
    ];
  });
}

/** What a closing tape shows; where the first readings disagree, one of them may be the wrong one and nothing has moved. */
export const driftsByTape = (setup: SetupValues): Drift[] =>
  settledReadings(setup)
    .filter(({ asSomeFirst }) => !asSomeFirst)
    .map((settled) => ({
      from: settled.first.instant,
      until: settled.reading.instant,
      horizontal: 0,
      up: settled.by,
      most: 'up',
      by: { settled },
    }));

/** How many times what chance allows: a movement is one beyond 1. */
export function excessOf({ horizontal, up, budget }: Movement, each: number, { confidence }: Frame) {
  const ratio = (
    size: Movement['up'],
    limit: Movement['up'],
    factor: (probability: number) => number,
  ): number =>
    isHole(size) || isHole(limit) || limit.value === 0
      ? 0
      : (Math.abs(size.value) / limit.value) * (factor(confidence.value) / (LONG_TAILS * factor(each)));
  return {
    horizontal: ratio(horizontal, budget.horizontal, circularRadius),
    up: ratio(up, budget.up, normalHalfWidth),
  };
}

/** Those with no other one inside them: a drift that two checks in a row show need not be looked for in the whole day. */
export const narrowest = (drifts: readonly Drift[]): Drift[] =>
  drifts.filter((one) => !drifts.some((other) => other !== one && within(other, one) && !within(one, other)));

const within = (inner: Drift, outer: Drift) =>
  start(outer) <= start(inner) && end(inner) <= end(outer) && inner.until !== null;
const start = ({ from }: Pick<Drift, 'from'>) => from ?? -Infinity;
const end = ({ until }: Pick<Drift, 'until'>) => until ?? Infinity;

/**
 * A span in which the base moved is not bracketed. Its points carry the movement where the tolerance has room for it, and
 * are in doubt where it has not; a tape alone puts nothing in doubt, since checks that agree outweigh it.
 */
export function shaken(span: Span, drifts: readonly Drift[]): Span {
  const own = drifts.filter((drift) => start(drift) < end(span) && start(span) < end(drift));
  if (own.length === 0 || span.class === 'in-doubt') return span;
  const moved = {
    horizontal: Math.max(...own.map(({ horizontal }) => horizontal)),
    up: Math.max(...own.map(({ up }) => Math.abs(up))),
  };
  const beside = [span.before, span.after].filter((check) => check !== null);
  const room = (component: 'horizontal' | 'up') =>
    beside.every(({ tolerance, expected }) => {
      const limit = isHole(tolerance[component]) ? expected[component] : tolerance[component];
      return !isHole(limit) && moved[component] <= limit.value;
    });
  const carried =
    own.every(({ by }) => 'settled' in by) || (beside.length > 0 && room('horizontal') && room('up'));
  const found = reclassed(span, (one) => {
    if (!carried) return 'in-doubt';
    return one === 'bracketed' || one === 'held' ? 'not-closed' : one;
  });
  return { ...found, drifts: own };
}

/** What points of a span carry for a movement in it, in full; metres. */
export const carriedBy = ({ drifts }: Pick<Span, 'drifts'>) => ({
  horizontal: Math.max(0, ...drifts.map(({ horizontal }) => horizontal)),
  up: Math.max(0, ...drifts.map(({ up }) => Math.abs(up))),
});
