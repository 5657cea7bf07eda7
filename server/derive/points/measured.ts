/** Whether anything was measured in a part of the day, as far as the notes and their points files say. */
import { keptWith } from '../../../grammar/kept-with.ts';
import type { PointSet } from './points.ts';

/** When and with what the points of a part of the day would have been measured; times in seconds since 1970-01-01 UTC. */
export interface Part {
  readonly setup: string;
  readonly rover: string | null;
  readonly from: number | null;
  readonly until: number | null;
}

/** A point without a time, a base or a rover may lie anywhere; without any points nothing is known to have been measured. */
export function isMeasured(sets: readonly PointSet[], { setup, rover, from, until }: Part): boolean {
  return sets.some((set) => {
    const { entry } = set;
    if (entry.from && entry.from.name !== setup) return false;
    if (entry.by && rover !== null && entry.by.name !== rover) return false;
    const { times, undated } = timesOf(set);
    const first = times[countBefore(times, from ?? -Infinity)];
    return undated || (first !== undefined && first <= (until ?? Infinity));
  });
}

interface Times {
  /** In order. */
  readonly times: Float64Array;
  readonly undated: boolean;
}

const known = keptWith<PointSet, Times>();
function timesOf(set: PointSet): Times {
  const found = known.get(set) ?? sorted(set.scan().times);
  known.set(set, found);
  return found;
}

function sorted(all: Float64Array): Times {
  const times = all.filter((time) => !Number.isNaN(time)).sort();
  return { times, undated: times.length < all.length };
}

function countBefore(times: Float64Array, time: number): number {
  let [low, high] = [0, times.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((times[middle] ?? Infinity) < time) low = middle + 1;
    else high = middle;
  }
  return low;
}
