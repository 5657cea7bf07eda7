/** Readings before and after that differ: the tripod has settled or was moved while the base was working. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import { showLength } from '../../quantities/show.ts';
import { settledReadings } from '../../derive/setups/settled.ts';
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

export const settledSetups = ({ derivation }: Subject) => settledIn(valuesOf(derivation.setups));

const settledIn = foundInEach((setup: SetupValues) =>
  settledReadings(setup).map((one) => ({ ...one, place: placeOfLength(one.reading) })),
);
