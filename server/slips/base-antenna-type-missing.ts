/** The base was not told which antenna it stands with, so that its phase centre is taken for its reference point. */
import { showLength } from '../quantities/show.ts';
import { numberOf } from './situation.ts';
import type { Slip } from './slip.ts';

export const baseAntennaTypeMissing: Slip = {
  name: 'base-antenna-type-missing',
  code: 'antenna/type',
  prior: 0.05,
  look: 'the antenna type that the base sends (message 1033)',
  ways: ({ setup }) => {
    const offset = numberOf(setup.antenna?.phaseCentre);
    if (!offset) return [];
    return [
      {
        says: `the base was not told its antenna type, so that the ${showLength(offset)} up to the phase centre are missing`,
        // The rover takes the base's phase centre to be this much lower than it is, and with it all that it measures.
        effect: { on: 'antenna', up: -offset },
      },
    ];
  },
};
