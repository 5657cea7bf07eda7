/** North is told for south, or east for west. */
import type { Slip } from './slip.ts';

export const hemisphere: Slip = {
  name: 'hemisphere',
  code: 'position/keyed-differs',
  prior: 0.03,
  look: 'the hemisphere letters on the receiver',
  ways: ({ right: { place, grid } }) => {
    if (!place || grid) return [];
    const { latitude, longitude } = place;
    return [
      {
        says: `${latitude < 0 ? 'north was keyed for south' : 'south was keyed for north'}`,
        effect: { on: 'told', told: { place: { latitude: -latitude, longitude } } },
      },
      {
        says: `${longitude < 0 ? 'east was keyed for west' : 'west was keyed for east'}`,
        effect: { on: 'told', told: { place: { latitude, longitude: -longitude } } },
      },
    ];
  },
};
