/** Broadcast records in order, and the one to use for a satellite at a time. */
import type { Ephemeris } from '../evidence/rinex/ephemeris.ts';
import {
  GALILEO,
  isGalileo,
  type GalileoSecond,
  type Satellite,
} from '../evidence/rinex/raw-observations.ts';

/** Farther from its own time a record is extrapolated too far: GPS fits four hours, Galileo is renewed every ten minutes. */
const LONGEST_GPS = 7200;
const LONGEST_GALILEO = 4200;

export interface EphemerisBook {
  /** The nearest usable record; null where there is none. */
  readonly at: (satellite: Satellite, t: number) => Ephemeris | null;
}

/**
 * Galileo clocks differ by message, so one kind is taken throughout: the one that belongs to the second frequency,
 * or, where the file has none of it, the other.
 */
export function ephemerisBook(records: readonly Ephemeris[], second: GalileoSecond): EphemerisBook {
  const own = second === 'E5a' ? 'FNAV' : 'INAV';
  const hasOwn = records.some(({ message }) => message === own);
  const lists: Ephemeris[][] = Array.from({ length: 2 * GALILEO }, () => []);
  for (const record of records) {
    if (!record.healthy) continue;
    if (isGalileo(record.satellite) && hasOwn && record.message !== own) continue;
    lists[record.satellite]?.push(record);
  }
  for (const list of lists) list.sort((one, other) => one.time - other.time);
  const found = new Array<Ephemeris | null>(2 * GALILEO).fill(null);
  const from = new Float64Array(2 * GALILEO).fill(Number.NaN);
  return {
    at(satellite, t) {
      // What was found holds for half a minute, so that a search is made once for many epochs.
      const slot = Math.floor(t / 30);
      if (from[satellite] === slot) return found[satellite] ?? null;
      from[satellite] = slot;
      const record = nearest(lists[satellite] ?? [], slot * 30 + 15);
      const longest = isGalileo(satellite) ? LONGEST_GALILEO : LONGEST_GPS;
      return (found[satellite] = record && Math.abs(record.time - t) <= longest ? record : null);
    },
  };
}

function nearest(list: readonly Ephemeris[], t: number): Ephemeris | null {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((list[middle]?.time ?? 0) < t) low = middle + 1;
    else high = middle;
  }
  const after = list[low] ?? null;
  const before = list[low - 1] ?? null;
  if (!before || !after) return before ?? after;
  return t - before.time <= after.time - t ? before : after;
}
