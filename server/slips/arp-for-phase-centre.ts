/** The height to the reference point is told to a receiver that takes it as one to the phase centre. */
import { showLength } from '../quantities/show.ts';
import { numberOf } from './situation.ts';
import type { Slip } from './slip.ts';

export const arpForPhaseCentre: Slip = {
  name: 'arp-for-phase-centre',
  code: 'height/phase-centre',
  prior: 0.03,
  look: 'to which point of the antenna the receiver takes the antenna height',
  ways: ({ setup, right }) => {
    const offset = numberOf(setup.antenna?.phaseCentre);
    if (!offset || right.antennaHeight === null) return [];
    return [
      {
        says: `the antenna height leads to the reference point, ${showLength(offset)} below the phase centre that the receiver takes it to`,
        effect: { on: 'told', told: { antennaHeight: right.antennaHeight - offset } },
      },
    ];
  },
};
