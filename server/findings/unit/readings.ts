/** What the two findings about a reading's unit share: which reading agrees with another one in which unit. */
import type { Place } from '../../../grammar/tree.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Subject, Told } from '../finding.ts';
import { placeOfLength } from '../height/readings-disagree.ts';
import { misreadAs, reunited, type Reunited } from '../height/reading-units.ts';

export interface Misread {
  readonly place: Place;
  readonly read: Reunited;
  readonly setup: SetupValues;
}

/** Of two readings that disagree each could be the wrong one; the first that another unit puts right is told. */
export const misread = ({ derivation }: Subject) => misreadAt(valuesOf(derivation.setups));

const misreadAt = foundInEach((setup: SetupValues): Misread[] => {
  const { groups, readings } = setup.height;
  const found = [
    ...groups.flatMap((group) =>
      group.readings.flatMap((reading) => reunited(group.readings, reading) ?? []).slice(0, 1),
    ),
    ...readings.flatMap((reading) => (reading.beyond && reunited(readings, reading)) ?? []),
  ];
  return found.map((read) => ({ read, setup, place: placeOfLength(read.reading) }));
});

export const tellMisread = ({ read, setup: { setup }, place }: Misread): Told => ({
  severity: 'error',
  headline: `Tape reading agrees with the other one only as ${read.meant}.`,
  effect: `It spoils the antenna height of ${setup.name}.`,
  action: `If you read ${read.meant}, write it so.`,
  rests: [{ message: 'The other reading.', place: read.other.measured.place }],
  causes: [`reading-unit/${setup.name}`, misreadAs(setup.name, place)],
});
