/**
 * The session in spans: in which a step of what size would have been seen, and in which nothing can be said.
 *
 * A step of size s along one axis is seen with 80 % power where s/σ exceeds √threshold + 0.84 (the normal quantile of
 * 0.8); with two observables that must both exceed it, √threshold + 1.25 (0.89 each, as if they were independent).
 */
import { metres } from '../quantities/brands.ts';
import { normalQuantile } from '../quantities/statistics.ts';
import type { JudgedPairs } from './judged-pairs.ts';
import { quantile } from './stood.ts';
import type { Silence, WatchedSpan } from './testimony.ts';
import type { Day } from './witness.ts';

export type PairState = 'watched' | Silence;

/** A pair that sees so much less than the session's usual one says nothing. */
const WEAK = 3;
/** The size that is stated would be seen at 19 of 20 moments of the span. */
const NEARLY_ALL = 0.95;

export function watchedSpans(day: Day, states: readonly PairState[]): readonly WatchedSpan[] {
  const sizes = visible(day);
  const usual = {
    horizontal: quantile(finite(sizes.horizontal), 0.5),
    vertical: quantile(finite(sizes.vertical), 0.5),
  };
  const spans: WatchedSpan[] = [];
  let from = 0;
  const judgedState = (pair: number): PairState => {
    const state = states[pair] ?? 'unsolved';
    const weak =
      (sizes.horizontal[pair] ?? 0) > WEAK * usual.horizontal ||
      (sizes.vertical[pair] ?? 0) > WEAK * usual.vertical;
    return state === 'watched' && weak ? 'few satellites' : state;
  };
  for (let pair = 0; pair < states.length; pair += 1) {
    const state = judgedState(pair);
    if (pair + 1 < states.length && judgedState(pair + 1) === state) continue;
    spans.push(spanOf(day, sizes, state, from, pair));
    from = pair + 1;
  }
  return spans;
}

function spanOf({ times }: Day, sizes: Visible, state: PairState, first: number, last: number): WatchedSpan {
  const when = { from: times[first] ?? 0, to: times[last + 1] ?? 0 };
  if (state !== 'watched') return { ...when, watched: false, because: state };
  const size = (values: Float64Array) => metres(quantile([...values.subarray(first, last + 1)], NEARLY_ALL));
  return { ...when, watched: true, horizontal: size(sizes.horizontal), vertical: size(sizes.vertical) };
}

interface Visible {
  readonly horizontal: Float64Array;
  readonly vertical: Float64Array;
}

function visible({ first, second, threshold }: Day): Visible {
  const pairs = first.satellites.length;
  const horizontal = new Float64Array(pairs);
  const vertical = new Float64Array(pairs);
  const factor = Math.sqrt(threshold) + normalQuantile(second ? Math.sqrt(0.8) : 0.8);
  for (let pair = 0; pair < pairs; pair += 1) {
    const own = spread(first, pair);
    const other = second ? spread(second, pair) : own;
    // NaN where the second is not solved: then the first alone decides.
    horizontal[pair] = factor * Math.max(own.level, other.level || 0);
    vertical[pair] = factor * Math.max(own.up, other.up || 0);
  }
  return { horizontal, vertical };
}

/** Standard uncertainty along the weakest horizontal direction, and up. */
function spread({ covariance }: JudgedPairs, pair: number) {
  const e = covariance[6 * pair] ?? Number.NaN;
  const n = covariance[6 * pair + 1] ?? Number.NaN;
  const half = Math.hypot((e - n) / 2, covariance[6 * pair + 3] ?? 0);
  return { level: Math.sqrt((e + n) / 2 + half), up: Math.sqrt(covariance[6 * pair + 2] ?? Number.NaN) };
}

const finite = (values: Float64Array) => [...values.filter((value) => value > 0)];
