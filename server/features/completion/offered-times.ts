/** Times of day that may come next: just after the last one that stands above the cursor. */
import { entryAt } from '../../../grammar/document.ts';
import type { Entry, Time } from '../../../grammar/tree.ts';
import type { Inspection } from '../../inspect.ts';
import { isHole } from '../../quantities/value.ts';
import { linesOf } from '../cursor.ts';
import type { Before, Offer } from './completion.ts';

/** What a clock shows, and the day that it shows it on. */
export interface Now {
  /** Of the day, in universal time. */
  readonly seconds: number;
  /** Counted from 1970-01-01. */
  readonly day: number;
}

export function offeredTimes({ start }: Before, { session }: Inspection, now: Now | null): Offer[] {
  const last = lastTimeBefore(session.document.entries, session.document.starts, start);
  const present = now && presentTime(now, session.job);
  const first: Offer[] = present
    ? [{ kind: 'time', label: present, beside: 'now, by the clock of the job', text: present, start }]
    : [];
  if (!last) return first;
  const minute = Math.floor(last.seconds / 60) + 1;
  const later = [1, 5, 15, 30, 60].map((step) => Math.ceil(minute / step) * step);
  const times = [...new Set(later)]
    .filter((minutes) => minutes < 24 * 60)
    .map((minutes): Offer => {
      const text = clock(minutes) + (last.utc ? 'Z' : '');
      return { kind: 'time', label: text, beside: `after ${last.typed}`, text, start };
    });
  return [...first, ...times.filter(({ label }) => label !== present)];
}

/** Only on the day of the notes: who writes them up later has no use for what the clock shows. */
function presentTime({ seconds, day }: Now, job: Inspection['session']['job']): string | null {
  if (!job?.clock || isHole(job.clock) || !job.date || isHole(job.date)) return null;
  const local = day * DAY + seconds + job.clock.seconds;
  if (Math.floor(local / DAY) !== job.date.day) return null;
  return clock(Math.floor((local % DAY) / 60));
}

/** In seconds. */
const DAY = 86_400;

function lastTimeBefore(
  entries: readonly Entry[],
  starts: readonly number[],
  offset: number,
): (Time & { seconds: number }) | null {
  for (let index = entryAt(starts, offset); index >= 0; index--) {
    const entry = entries[index];
    const at = offset - (starts[index] ?? 0);
    const times = entry ? linesOf(entry).flatMap(({ items }) => items.filter(isTime)) : [];
    const found = times.findLast((time) => time.end <= at);
    if (found) return found;
  }
  return null;
}

const isTime = (item: { kind: string }): item is Time & { seconds: number } =>
  item.kind === 'time' && (item as Time).seconds !== null;

function clock(minutes: number): string {
  const pad = (number: number) => String(number).padStart(2, '0');
  return `${pad(Math.floor(minutes / 60))}:${pad(minutes % 60)}`;
}
