/** The height to the phase centre is told to a receiver that asks for the reference point. */
import { showLength } from '../quantities/show.ts';
import type { Slip } from './slip.ts';
import { numberOf } from './situation.ts';

export const phaseCentreForArp: Slip = {
  name: 'phase-centre-for-arp',
  code: 'height/phase-centre',
  prior: 0.05,
  look: 'to which point of the antenna the receiver takes the antenna height',
  ways: ({ setup, right }) => {
    const offset = numberOf(setup.antenna?.phaseCentre);
    if (!offset || right.antennaHeight === null || right.toArp !== 0) return [];
    return [
      {
        says: `the antenna height leads to the phase centre, ${showLength(offset)} above the reference point that the receiver takes it to`,
        effect: { on: 'told', told: { antennaHeight: right.antennaHeight + offset } },
      },
    ];
  },
};
