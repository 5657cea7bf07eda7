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
      headline: `The antenna at ${setup.setup.name} ${by > 0 ? 'rose' : 'sank'} ${showLength(Math.abs(by))} by the tape.`,
      effect: `Points ${between} are up to ${showLength(Math.abs(by))} too ${by > 0 ? 'low' : 'high'}.`,
      action: 'See from the checks when, or note a re-level and what was keyed.',
      rests: [{ message: 'The earlier reading.', place: first.measured.place }],
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
