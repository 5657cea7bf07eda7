/**
 * The base's own raw observations as its witness: where its antenna stood, and whether it was moved.
 *
 * What it does not say: a slow movement, and anything within a gap.
 */
import type { Ephemeris, Klobuchar } from '../evidence/rinex/ephemeris.ts';
import { satelliteCode, type RawObservations } from '../evidence/rinex/raw-observations.ts';
import { seconds } from '../quantities/brands.ts';
import { differences } from './differences.ts';
import { displacements } from './displacement.ts';
import { ephemerisBook } from './ephemerides.ts';
import { JOINT_FROM } from './joint.ts';
import { judged, stepThreshold, type JudgedPairs } from './judged-pairs.ts';
import { withoutDrift } from './running-median.ts';
import { withSmoothedIonosphere } from './smoothed-ionosphere.ts';
import { standing, median } from './stood.ts';
import { stepsIn } from './steps.ts';
import { watchedSpans, type PairState } from './watched-spans.ts';
import type { Testimony, Trace } from './testimony.ts';

export interface Navigation {
  readonly records: readonly Ephemeris[];
  readonly ionosphere: Klobuchar | null;
}

export function testimonyOf(raw: RawObservations, { records, ionosphere }: Navigation): Testimony {
  const { times } = raw;
  const interval = usualInterval(times);
  const book = ephemerisBook(records, raw.second.E);
  const sky = { raw, book, ionosphere };
  const sample = times.length > 0 ? standing(sky) : null;
  const common = {
    from: times[0] ?? 0,
    to: times[times.length - 1] ?? 0,
    interval: seconds(interval),
    epochs: times.length,
    skipped: raw.skipped,
  };
  if (!sample) {
    const why = times.length === 0 ? [] : [{ sentence: unsolved(raw, records) }];
    const spans =
      times.length === 0
        ? []
        : [
            {
              from: common.from,
              to: common.to,
              watched: false as const,
              because: records.length === 0 ? ('no ephemerides' as const) : ('unsolved' as const),
            },
          ];
    const problems = [...raw.problems, ...why];
    return { ...common, systems: 'GPS', stood: null, steps: [], spans, trace: NO_TRACE, problems };
  }
  const joint = interval >= JOINT_FROM;
  const phases = differences(sky, sample.place);
  const solve = (observable: Float64Array) => {
    const pairs = displacements(phases, observable, interval);
    withoutDrift(pairs.moved, 3);
    return judged(pairs);
  };
  const first = solve(joint ? withSmoothedIonosphere(phases) : phases.first);
  const second = joint ? solve(phases.free) : null;
  const threshold = stepThreshold(interval);
  const day: Day = { times, interval, threshold, first, second };
  const { steps, states } = stepsIn(day, phases);
  return {
    ...common,
    systems: sample.systems,
    stood: sample.stood,
    steps,
    spans: watchedSpans(day, states),
    trace: traceOf(day, states),
    problems: raw.problems,
  };
}

/** All pairs of a session, by one observable or by two. */
export interface Day {
  readonly times: Float64Array;
  readonly interval: number;
  readonly threshold: number;
  readonly first: JudgedPairs;
  readonly second: JudgedPairs | null;
}

function usualInterval(times: Float64Array): number {
  const apart = Array.from({ length: Math.min(5000, Math.max(0, times.length - 1)) }, (_, index) => {
    const at = Math.floor((index * (times.length - 1)) / Math.min(5000, times.length - 1));
    return (times[at + 1] ?? 0) - (times[at] ?? 0);
  });
  return apart.length === 0 ? 0 : Math.round(median(apart) * 1000) / 1000;
}

function unsolved(raw: RawObservations, records: readonly Ephemeris[]): string {
  if (records.length === 0) return 'No epoch can be solved: there are no ephemerides.';
  const seen = new Set(raw.satellites);
  const known = records.filter(({ satellite }) => seen.has(satellite));
  const nearest = Math.min(...known.slice(0, 5000).map(({ time }) => Math.abs(time - (raw.times[0] ?? 0))));
  if (nearest > 14_400)
    return 'No epoch can be solved: the ephemerides are of another day than the observations.';
  const names = [...seen].slice(0, 3).map(satelliteCode).join(', ');
  return `No epoch can be solved: fewer than five satellites (${names} …) have ephemerides and agree.`;
}

/** What a drawing can show. */
const DRAWN = 1500;
const NO_TRACE: Trace = {
  times: [],
  east: [],
  north: [],
  up: [],
  limitEast: [],
  limitNorth: [],
  limitUp: [],
  satellites: [],
};

/** Of each piece the pair with the largest statistic. */
function traceOf({ times, threshold, first }: Day, states: readonly PairState[]): Trace {
  const { statistic, moved, covariance, satellites } = first;
  const piece = Math.max(1, Math.ceil(statistic.length / DRAWN));
  const kept: number[] = [];
  for (let from = 0; from < statistic.length; from += piece) {
    let best = -1;
    for (let pair = from; pair < Math.min(statistic.length, from + piece); pair += 1) {
      if (states[pair] === 'gap' || Number.isNaN(statistic[pair])) continue;
      if (best < 0 || (statistic[pair] ?? 0) > (statistic[best] ?? 0)) best = pair;
    }
    if (best >= 0) kept.push(best);
  }
  const limit = (axis: number) =>
    kept.map((pair) => Math.sqrt(threshold * (covariance[6 * pair + axis] ?? 0)));
  const component = (axis: number) => kept.map((pair) => moved[3 * pair + axis] ?? 0);
  return {
    times: kept.map((pair) => times[pair + 1] ?? 0),
    east: component(0),
    north: component(1),
    up: component(2),
    limitEast: limit(0),
    limitNorth: limit(1),
    limitUp: limit(2),
    satellites: kept.map((pair) => satellites[pair] ?? 0),
  };
}
