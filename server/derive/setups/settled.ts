/** Tape readings of a base that differ by more than the tape does: it sank while it worked. */
import { largestOf } from '../../quantities/extremes.ts';
import { isHole } from '../../quantities/value.ts';
import { remembered } from '../remembered.ts';
import { READING_SIGMA, type Reading } from './antenna-height.ts';
import type { SetupValues } from './setup.ts';

export interface Settled {
  readonly setup: SetupValues;
  readonly reading: Reading;
  readonly first: Reading;
  /** Later less earlier, metres. */
  readonly by: number;
  /** One of the first readings agrees with it, so that the other one may be the wrong one. */
  readonly asSomeFirst: boolean;
}

/** Two-sided, 99 %. The same tape and person before and after share what they share; only the readings count. */
const SURELY = 2.58;

/** Each later group of readings at another height than the first; where it was levelled anew, the new height is one. */
export const settledReadings = remembered((setup: SetupValues): readonly Settled[] => {
  const [first] = setup.height.groups;
  const begun = first?.readings[0];
  if (!first || !begun) return [];
  const anew = new Set(setup.standings.filter((one) => one.anew).map(({ group }) => group));
  return setup.height.groups.slice(1).flatMap((group): Settled[] => {
    const [reading] = group.readings;
    if (!reading || isHole(reading.arp) || anew.has(group)) return [];
    const by = group.arp.value - first.arp.value;
    const sigma = Math.hypot(spread(first.readings), spread(group.readings));
    if (Math.abs(by) <= SURELY * sigma) return [];
    const asSomeFirst = first.readings.some(
      ({ arp }) =>
        !isHole(arp) && Math.abs(arp.value - group.arp.value) <= SURELY * Math.SQRT2 * READING_SIGMA,
    );
    return [{ setup, reading, first: begun, by, asSomeFirst }];
  });
});

const spread = (readings: readonly Reading[]) =>
  largestOf(readings.map(({ arp }) => (isHole(arp) ? 0 : (arp.sigma ?? 0)))) / Math.sqrt(readings.length);
