/** Which base a check was made from. */
import { steadyList, valuesOf, type Table } from '../../session/each.ts';
import type { Check, Job } from '../../session/entries.ts';
import { instantWithin } from '../../session/session.ts';
import { remembered } from '../remembered.ts';
import type { SetupValues } from '../setups/setup.ts';

/** The base of a check: the one it names, else the one that stood at its time, else the only one; null where several stood. */
export function setupFor(
  check: Pick<Check, 'from' | 'at'>,
  setups: Table<SetupValues>,
  begun: readonly SetupTime[],
  job: Job | null,
): SetupValues | null {
  if (check.from) return setups.get(check.from.name) ?? null;
  if (setups.size === 1) return valuesOf(setups)[0] ?? null;
  const instant = instantWithin(check.at, job, begun);
  if (instant === null) return null;
  // In the very minute in which one ends and the next begins it is of the next.
  let found: SetupTime | null = null;
  for (let index = countBegun(begun, instant) - 1; index >= 0; index -= 1) {
    const time = begun[index];
    if (!time || time.until < instant) continue;
    if (found && time.until > instant) return null;
    found ??= time;
  }
  return found ? (setups.get(found.name) ?? null) : null;
}

/** All bases that stood at an instant. */
export const basesOf = (instant: number, setups: readonly SetupValues[]): SetupValues[] =>
  setups.filter(
    ({ from, until }) => (from === null || from <= instant) && (until === null || until > instant),
  );

/** From when to when a setup stood, in seconds since 1970-01-01 UTC; without end where none is known. */
export interface SetupTime {
  readonly name: string;
  readonly from: number;
  readonly until: number;
}

/** By their beginning; the same list as long as no time is another one. */
export const timesOf = (setups: readonly SetupValues[]): readonly SetupTime[] =>
  byBeginning(
    steadyTimes(
      setups.map(({ setup, from, until }) => ({
        name: setup.name,
        from: from ?? -Infinity,
        until: until ?? Infinity,
      })),
    ),
  );

const steadyTimes = steadyList<SetupTime>(
  (one, other) => one.name === other.name && one.from === other.from && one.until === other.until,
);
const byBeginning = remembered((times: readonly SetupTime[]): readonly SetupTime[] =>
  times.toSorted((one, other) => (one.from === other.from ? 0 : one.from - other.from)),
);

/** How many setups had begun at an instant, by halving. */
function countBegun(begun: readonly SetupTime[], instant: number): number {
  let [low, high] = [0, begun.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((begun[middle]?.from ?? Infinity) <= instant) low = middle + 1;
    else high = middle;
  }
  return low;
}
