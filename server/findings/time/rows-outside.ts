/** Rows of points at times when their base did not stand, and what that says of the clock. */
import type { Place } from '../../../grammar/tree.ts';
import type { PointSet } from '../../derive/points/points.ts';
import type { Derivation } from '../../derive/derivation.ts';
import { isOutside } from '../../derive/repair/fate.ts';
import { timeInWords } from '../../derive/trust/words.ts';
import { allOf } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import type { Job } from '../../session/entries.ts';
import { setInWords } from '../points/set-in-words.ts';

export interface RowsOutside {
  readonly place: Place;
  readonly headline: string;
  readonly effect: string;
  readonly action: string;
}

/** Notes count in minutes. */
const MINUTE = 60;

/** What is told of a set; null where no row lies outside. */
export function rowsOutside(set: PointSet, { setups }: Derivation, job: Job | null): RowsOutside | null {
  if (set.kind === 'point') return null;
  const own = set.entry.from ? setups.get(set.entry.from.name) : undefined;
  const bases = own ? [own] : set.entry.from ? [] : [...setups.values()];
  if (bases.length === 0) return null;
  const isOut = (time: number) => bases.every((one) => isOutside(one, time) && isOutside(one, time - MINUTE));
  const times = set.scan().times.filter((time) => !Number.isNaN(time));
  const outside = times.filter(isOut);
  if (outside.length === 0) return null;
  const { subject, be } = setInWords(set, outside.length, set.scan().rowCount);
  const ends = [Math.min, Math.max].map((of) =>
    timeInWords(
      outside.reduce((one, other) => of(one, other)),
      job,
    ),
  );
  const when =
    ends[0] === ends[1] ? `at ${ends[0] ?? '?'}` : `between ${ends[0] ?? '?'} and ${ends[1] ?? '?'}`;
  const stood = bases.map(
    ({ setup, from, until }) =>
      `${setup.name} stood ${timeInWords(from, job) ?? '?'} to ${timeInWords(until, job) ?? 'now'}`,
  );
  return {
    place: set.placeOf(1),
    headline: `${subject} ${be} outside the base's time.`,
    effect: `Measured ${when}; ${allOf(stood)}. No proof takes them.`,
    action:
      clockHint(set, times, outside, isOut, job) ??
      'Correct the times, or name the base (from) of these points.',
  };
}

/** Every row would fit if the file counted by the other clock: exactly so a clock in UTC shows. */
function clockHint(
  { plan }: PointSet,
  times: Float64Array,
  outside: Float64Array,
  isOut: (time: number) => boolean,
  job: Job | null,
): string | null {
  const clock = plan.columns.find(({ role }) => role === 'time')?.clock;
  const ahead = job?.clock && !isHole(job.clock) ? job.clock.seconds : 0;
  if (ahead === 0 || clock === undefined) return null;
  const [other, shift] = clock === 'local' ? ['utc', ahead] : ['local', -ahead];
  if (outside.some((time) => isOut(time + shift))) return null;
  const all = times.every((time) => !isOut(time + shift));
  const hours = Math.abs(ahead) / 3600;
  return `A clock in ${other === 'utc' ? 'UTC' : 'local time'} is ${hours} h off${all ? ': with it every row fits' : ' and shows this'}. Look at the controller's clock; if so, write time ${other}.`;
}
