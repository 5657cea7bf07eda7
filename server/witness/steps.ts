/**
 * Which pairs are steps: beyond the threshold in every observable, with enough of the sky unbroken, and staying.
 *
 * A step stays and a glitch of the phases returns: where the pairs that follow take back what one pair moved, nothing
 * is told. A third of the sky with slips at one moment can look like a movement; then it is uncertain, never a step.
 */
import { metres } from '../quantities/brands.ts';
import type { Differences } from './differences.ts';
import { statisticOf } from './judged-pairs.ts';
import type { Step } from './testimony.ts';
import type { PairState } from './watched-spans.ts';
import type { Day } from './witness.ts';
import { JOINT_FROM } from './joint.ts';

/** Fewer satellites give no honest uncertainty. */
const FEWEST = 7;

export function stepsIn(
  day: Day,
  phases: Differences,
): { readonly steps: readonly Step[]; readonly states: readonly PairState[] } {
  const { times, first } = day;
  const pairs = first.satellites.length;
  const states: PairState[] = Array.from({ length: pairs }, (_, pair) => stateOf(day, phases, pair));
  const steps: Step[] = [];
  for (let pair = 0; pair < pairs; pair += 1) {
    if (!exceeds(day, pair) || states[pair] === 'gap') continue;
    if (states[pair] !== 'watched') {
      if (states[pair] === 'lock lost') states[pair] = 'uncertain movement';
      continue;
    }
    let last = pair;
    // A tripod that is knocked swings for some seconds: one event.
    while (last + 1 < pairs && states[last + 1] === 'watched' && exceeds(day, last + 1)) last += 1;
    if (stays(day, pair, last)) steps.push(stepOf(day, pair, last));
    pair = last;
  }
  return { steps, states: times.length > 1 ? states : [] };
}

function exceeds({ threshold, first, second }: Day, pair: number) {
  const own = first.statistic[pair] ?? Number.NaN;
  const other = second ? second.statistic[pair] : undefined;
  // Where the second observable is not solved, for want of a second frequency, the first one decides.
  return own > threshold && (other === undefined || Number.isNaN(other) || other > threshold);
}

function stateOf({ times, interval, first }: Day, phases: Differences, pair: number): PairState {
  const apart = (times[pair + 1] ?? 0) - (times[pair] ?? 0);
  if (apart > 1.5 * interval) return 'gap';
  const used = first.satellites[pair] ?? 0;
  const tracked = phases.tracked[pair] ?? 0;
  const broken = (phases.lost[pair] ?? 0) + (first.rejected[pair] ?? 0);
  if (tracked >= FEWEST && 3 * broken > tracked) return 'lock lost';
  if (used < FEWEST) return 'few satellites';
  if (Number.isNaN(first.statistic[pair] ?? Number.NaN)) return 'unsolved';
  if (interval >= JOINT_FROM && first.galileo[pair] === 0) return 'GPS alone';
  return 'watched';
}

/** The sum over these pairs, and with the pair after them, is still beyond chance. */
function stays(day: Day, from: number, to: number) {
  const { first, threshold } = day;
  if (statisticOf(total(day, from, to), first.covariance.subarray(6 * from, 6 * from + 6), 0) < threshold)
    return false;
  const after = to + 1;
  if (after >= first.satellites.length || Number.isNaN(first.statistic[after] ?? Number.NaN)) return true;
  const both = total(day, from, after);
  return statisticOf(both, first.covariance.subarray(6 * from, 6 * from + 6), 0) > threshold / 4;
}

function total({ first }: Day, from: number, to: number): Float64Array {
  const sum = new Float64Array(3);
  for (let pair = from; pair <= to; pair += 1)
    for (let axis = 0; axis < 3; axis += 1)
      sum[axis] = (sum[axis] ?? 0) + (first.moved[3 * pair + axis] ?? 0);
  return sum;
}

function stepOf(day: Day, from: number, to: number): Step {
  const { times, first } = day;
  const [east = 0, north = 0, up = 0] = total(day, from, to);
  const pairs = to - from + 1;
  const sigma = (axis: number) => metres(Math.sqrt(pairs * (first.covariance[6 * from + axis] ?? 0)));
  return {
    from: times[from] ?? 0,
    to: times[to + 1] ?? 0,
    east: metres(east),
    north: metres(north),
    up: metres(up),
    sigmaEast: sigma(0),
    sigmaNorth: sigma(1),
    sigmaUp: sigma(2),
    statistic: Math.max(...first.statistic.subarray(from, to + 1)),
    satellites: first.satellites[from] ?? 0,
  };
}
