/** A number in millimetres is told as metres, or one in metres as millimetres. */
import type { Slip, Way } from './slip.ts';

export const millimetresForMetres: Slip = {
  name: 'millimetres-for-metres',
  code: 'unit/thousandfold',
  prior: 0.03,
  look: 'the antenna height on the receiver, with its unit',
  ways: ({ right: { antennaHeight } }) => {
    if (antennaHeight === null) return [];
    const way = (says: string, told: number): Way => ({
      says,
      effect: { on: 'told', told: { antennaHeight: told } },
    });
    return [
      way('the antenna height in millimetres was keyed as metres', antennaHeight * 1000),
      way('the antenna height in metres was keyed as millimetres', antennaHeight / 1000),
    ];
  },
};
