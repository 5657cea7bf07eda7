/** Times of day that may come next: just after the last one that stands above the cursor. */
import { entryAt } from '../../../grammar/document.ts';
import type { Entry, Time } from '../../../grammar/tree.ts';
import type { Inspection } from '../../inspect.ts';
import { linesOf } from '../cursor.ts';
import type { Before, Offer } from './completion.ts';

export function offeredTimes({ start }: Before, { session }: Inspection): Offer[] {
  const last = lastTimeBefore(session.document.entries, session.document.starts, start);
  if (!last) return [];
  const minute = Math.floor(last.seconds / 60) + 1;
  const later = [1, 5, 15, 30, 60].map((step) => Math.ceil(minute / step) * step);
  return [...new Set(later)]
    .filter((minutes) => minutes < 24 * 60)
    .map((minutes) => {
      const text = clock(minutes) + (last.utc ? 'Z' : '');
      return { kind: 'time', label: text, beside: `after ${last.typed}`, text, start };
    });
}

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
