/** A taped slope that is not longer than its distance off the plumb line: no triangle, and no height. */
import type { SetupValues } from '../../derive/setups/setup.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import { kind } from '../finding.ts';
import { impossibleUnder } from './impossible.ts';
import { placeOfLength } from './readings-disagree.ts';

export const heightTapeTooShort = kind({
  code: 'height/tape-too-short',
  find: ({ derivation }) => tooShort(valuesOf(derivation.setups)),
  tell: ({ setup, length, beyond }) => ({
    severity: 'error',
    follows: impossibleUnder(setup),
    message: `The tape, ${showLength(length.value)}, is not longer than its distance off the plumb line, ${showLength(beyond.value)}, and no slope is. So this reading gives no antenna height, and nothing is compared with it. One of the two has a wrong unit or a wrong digit, or they stand in each other’s place.`,
  }),
});

const tooShort = foundInEach((setup: SetupValues) =>
  setup.height.readings.flatMap((reading) => {
    const { length, beyond } = reading;
    return isHole(length) || !beyond ? [] : [{ setup, length, beyond, place: placeOfLength(reading) }];
  }),
);
