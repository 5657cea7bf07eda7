/** Readings before and after that differ: the tripod has settled or was moved while the base was working. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Event } from '../../session/entries.ts';
import { largestOf } from '../../quantities/extremes.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { READING_SIGMA, type Reading } from '../../derive/setups/antenna-height.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { kind, type Subject } from '../finding.ts';
import { placeOfLength } from './readings-disagree.ts';
import { clockTime } from '../words.ts';

export const heightSettled = kind({
  code: 'height/settled',
  find: (subject) => settledSetups(subject),
  tell: ({ setup, reading, first, by, asSomeFirst }, subject) => {
    const between = `between ${clockTime(first.instant, subject) ?? 'the first reading'} and ${clockTime(reading.instant, subject) ?? 'this one'}`;
    return {
      severity: 'warning',
      message: `The tape gives ${showLength(Math.abs(by))} ${by > 0 ? 'more' : 'less'} here than before: the antenna at ${setup.setup.name} ${by > 0 ? 'was raised' : 'has sunk'} ${between}. The base went on with the height that it was told, so points measured in between come out up to as much too ${by > 0 ? 'low' : 'high'}. The checks say when it moved; if the tripod was set anew, note it (event re-level), and what was keyed then.`,
      rests: [{ message: 'the earlier reading', place: first.measured.place }],
      causes: [`moved/${setup.setup.name}`],
      // Of two first readings that disagree one may be the wrong one, and then nothing has moved.
      follows: asSomeFirst ? [`reading-unit/${setup.setup.name}`, `reading/${setup.setup.name}`] : [],
    };
  },
});

interface Settled {
  readonly setup: SetupValues;
  readonly reading: Reading;
  readonly first: Reading;
  /** Later less earlier, metres. */
  readonly by: number;
  readonly asSomeFirst: boolean;
  readonly place: Reading['measured']['place'];
}

/** Two-sided, 99 %. The same tape and person before and after share what they share; only the readings count. */
const SURELY = 2.58;

export const settledSetups = ({ derivation, session }: Subject) =>
  settledIn(valuesOf(derivation.setups), session.events);

const settledIn = foundInEach((setup: SetupValues, events: readonly Event[]) => {
  const [first, ...later] = setup.height.groups;
  if (!first) return [];
  const begun = first.readings[0];
  return later.flatMap((group): Settled[] => {
    const [reading] = group.readings;
    if (!begun || !reading || isHole(reading.arp)) return [];
    const by = group.arp.value - first.arp.value;
    const sigma = Math.hypot(spread(first.readings), spread(group.readings));
    if (Math.abs(by) <= SURELY * sigma || keyedAnew(setup, group.arp.value, reading.instant, events))
      return [];
    const asSomeFirst = first.readings.some(
      ({ arp }) =>
        !isHole(arp) && Math.abs(arp.value - group.arp.value) <= SURELY * Math.SQRT2 * READING_SIGMA,
    );
    return [{ setup, reading, first: begun, by, asSomeFirst, place: placeOfLength(reading) }];
  });
});

const spread = (readings: readonly Reading[]) =>
  largestOf(readings.map(({ arp }) => (isHole(arp) ? 0 : (arp.sigma ?? 0)))) / Math.sqrt(readings.length);

/** The tripod was set anew, and the receiver was told the new height. */
function keyedAnew(
  { keyed, setup }: SetupValues,
  height: number,
  instant: number | null,
  events: readonly Event[],
): boolean {
  const relevelled = events.some(
    ({ what, on }) => what === 're-level' && (on === null || on.name === setup.name),
  );
  const state = [...keyed]
    .reverse()
    .find(({ state: { from } }) => from !== null && instant !== null && from <= instant + HALF_AN_HOUR);
  if (!relevelled || !state || isHole(state.antennaHeight)) return false;
  return Math.abs(state.antennaHeight.value - height) < 0.003;
}
const HALF_AN_HOUR = 1800;
