/** The minutes in which a base was keyed anew: what was measured then has the values before or after, and nobody knows which. */
import { isHole } from '../../quantities/value.ts';
import type { Keyed } from '../../session/entries.ts';
import type { SetupValues } from '../setups/setup.ts';
import type { Trust } from '../trust/trust.ts';

/** Seconds since 1970-01-01 UTC, up to and without `until`. */
export interface Rekeying {
  readonly from: number;
  readonly until: number;
}

/** Those of a setup that change what it sends; a time noted to the second leaves nothing open. */
export function rekeyingsOf(setup: SetupValues, { rovers }: Pick<Trust, 'rovers'>): Rekeying[] {
  const stretches = rovers.find((one) => one.setup === setup)?.stretches ?? [];
  return stretches.flatMap(({ opened: { kind, at } }) => {
    if (kind !== 're-keyed' || at === null) return [];
    const lines = setup.broadcasts.find(({ state }) => state.from === at)?.state.lines ?? [];
    return lines.length > 0 && lines.every(isToTheMinute) ? [{ from: at, until: at + MINUTE }] : [];
  });
}
const MINUTE = 60;

/** `10:00`, not `10:00:15`. */
const isToTheMinute = ({ at }: Keyed) => at !== null && !isHole(at) && !/:\d\d:\d\d/.test(at.typed);

export const isDuring = (rekeyings: readonly Rekeying[], instant: number | null) =>
  instant !== null && rekeyings.some(({ from, until }) => from <= instant && instant < until);
