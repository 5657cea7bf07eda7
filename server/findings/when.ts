/** Moments as instants that can be compared with one another, or nothing where the notes do not say enough for that. */
import { isHole, type Maybe } from '../quantities/value.ts';
import type { Moment } from '../session/moments.ts';
import { instantOf } from '../session/session.ts';
import { remembered } from '../derive/remembered.ts';
import type { Job, Setup } from '../session/entries.ts';

/** Seconds since 1970-01-01 UTC; times with a date or in UTC need the job's date and clock beside them. */
export function instantIn(job: Job | null, moment: Maybe<Moment> | null): number | null {
  if (!moment || isHole(moment)) return null;
  if (moment.day !== null && (!job?.date || isHole(job.date))) return null;
  if (moment.utc && (!job?.clock || isHole(job.clock))) return null;
  return instantOf(moment, job);
}

/** From when to when a setup stood; an end before the start is a slip of its own, and counts as no end. */
export interface Standing {
  readonly setup: Setup;
  readonly from: number | null;
  readonly until: number | null;
}

export function standingOf(setup: Setup, job: Job | null): Standing {
  const from = instantIn(job, setup.at);
  const until = instantIn(job, setup.until);
  return { setup, from, until: from !== null && until !== null && until <= from ? null : until };
}

/** Whether any of them stood at an instant. */
export function anyStood(standings: readonly Standing[], instant: number): boolean {
  const { begins, longest } = byBeginning(standings);
  let [low, high] = [0, begins.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((begins[middle] ?? Infinity) <= instant) low = middle + 1;
    else high = middle;
  }
  return low > 0 && (longest[low - 1] ?? -Infinity) >= instant;
}

/** When each began, in order, and until when the longest of those up to it stood. */
const byBeginning = remembered((standings: readonly Standing[]) => {
  const inOrder = standings
    .map(({ from, until }) => ({ from: from ?? -Infinity, until: until ?? Infinity }))
    .sort((one, other) => (one.from === other.from ? 0 : one.from - other.from));
  let last = -Infinity;
  return {
    begins: inOrder.map(({ from }) => from),
    longest: inOrder.map(({ until }) => (last = Math.max(last, until))),
  };
});

/** The moment as it was typed. */
export const typedOf = (moment: Maybe<Moment> | null) =>
  moment && !isHole(moment) ? moment.typed : 'an unknown time';
