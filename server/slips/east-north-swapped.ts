/** East is told as north and north as east, or latitude and longitude change places. */
import { toldGrid } from './grid-told.ts';
import type { Slip } from './slip.ts';

export const eastNorthSwapped: Slip = {
  name: 'east-north-swapped',
  code: 'position/swapped',
  prior: 0.03,
  look: 'which coordinate the receiver asks for first',
  ways: ({ right: { grid, place } }) => {
    if (grid)
      return toldGrid(grid.system, grid.north, grid.east, 'east and north were keyed in each other’s place');
    if (!place || Math.abs(place.longitude) > 90) return [];
    return [
      {
        says: 'latitude and longitude were keyed in each other’s place',
        effect: {
          on: 'told',
          told: { place: { latitude: place.longitude, longitude: place.latitude } },
        },
      },
    ];
  },
};
