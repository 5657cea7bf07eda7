/** The base was not told which antenna it stands with, so that its phase centre is taken for its reference point. */
import { showLength } from '../quantities/show.ts';
import { numberOf } from './situation.ts';
import type { Slip } from './slip.ts';

export const baseAntennaTypeMissing: Slip = {
  name: 'base-antenna-type-missing',
  code: 'antenna/type',
  prior: 0.05,
  look: 'the antenna type that the base sends (message 1033)',
  ways: ({ setup, keyed, session }) => {
    const offset = numberOf(setup.antenna?.phaseCentre);
    if (!offset) return [];
    const type = keyed?.state.antennaType;
    const told = type && type.name !== setup.antenna?.name ? session.antennas.get(type.name) : undefined;
    const toldOffset = numberOf(told?.phaseCentre);
    return [
      {
        says: `no antenna type was keyed at the base, so the ${showLength(offset)} up to the phase centre are missing`,
        // Notes without the type say little, notes with it say that it was meant to be told.
        weight: keyed && !type ? 5 : 1,
        // The rover takes the base's phase centre to be this much lower than it is, and with it all that it measures.
        effect: { on: 'antenna', up: -offset },
      },
      ...(told && toldOffset !== null
        ? [
            {
              says: `the base was keyed with the antenna ${told.name}`,
              weight: 20,
              effect: { on: 'antenna' as const, up: toldOffset - offset },
            },
          ]
        : []),
    ];
  },
};
