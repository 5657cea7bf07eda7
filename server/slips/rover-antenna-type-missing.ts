/** The rover was not told which antenna it carries, so that its phase centre is taken for its reference point. */
import type { Slip } from './slip.ts';

/** Phase centres of rover antennas lie 40 to 140 mm above the reference point (common practice). */
const MIDDLE = 0.09;
const HALF = 0.025;

export const roverAntennaTypeMissing: Slip = {
  name: 'rover-antenna-type-missing',
  code: null,
  prior: 0.03,
  look: 'the antenna type in the controller',
  ways: () => [
    {
      says: 'the controller did not have the rover’s antenna type, so its phase centre was taken for its reference point',
      effect: {
        on: 'rover',
        shift: () => ({ east: 0, north: 0, up: MIDDLE }),
        free: [() => ({ east: 0, north: 0, up: HALF })],
      },
    },
  ],
};
