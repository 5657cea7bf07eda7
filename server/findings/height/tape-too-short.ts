/** A taped slope that is not longer than its distance off the plumb line: no triangle, and no height. */
import type { SetupValues } from '../../derive/setups/setup.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import { kind } from '../finding.ts';
import { misreadAs } from './reading-units.ts';
import { impossibleUnder } from './impossible.ts';
import { placeOfLength } from './readings-disagree.ts';

export const heightTapeTooShort = kind({
  code: 'height/tape-too-short',
  find: ({ derivation }) => tooShort(valuesOf(derivation.setups)),
  tell: ({ setup, length, beyond, place }) => ({
    severity: 'error',
    follows: [misreadAs(setup.setup.name, place), ...impossibleUnder(setup)],
    headline: `Tape of ${showLength(length.value)} is shorter than its offset of ${showLength(beyond.value)}.`,
    effect: 'It gives no antenna height.',
    action: 'Look for a wrong unit or digit, or the two numbers swapped.',
  }),
});

const tooShort = foundInEach((setup: SetupValues) =>
  setup.height.readings.flatMap((reading) => {
    const { length, beyond } = reading;
    return isHole(length) || !beyond ? [] : [{ setup, length, beyond, place: placeOfLength(reading) }];
  }),
);
