/** Moments as instants that can be compared with one another, or nothing where the notes do not say enough for that. */
import { isHole, type Maybe } from '../quantities/value.ts';
import type { Moment } from '../session/moments.ts';
import { instantOf } from '../session/session.ts';
import type { Setup } from '../session/entries.ts';
import type { Subject } from './finding.ts';

/** Seconds since 1970-01-01 UTC; times with a date or in UTC need the job's date and clock beside them. */
export function instantIn({ session: { job } }: Subject, moment: Maybe<Moment> | null): number | null {
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

export function standingOf(subject: Subject, setup: Setup): Standing {
  const from = instantIn(subject, setup.at);
  const until = instantIn(subject, setup.until);
  return { setup, from, until: from !== null && until !== null && until <= from ? null : until };
}

export const stoodAt = ({ from, until }: Standing, instant: number) =>
  (from === null || from <= instant) && (until === null || instant <= until);

/** The moment as it was typed. */
export const typedOf = (moment: Maybe<Moment> | null) =>
  moment && !isHole(moment) ? moment.typed : 'an unknown time';
