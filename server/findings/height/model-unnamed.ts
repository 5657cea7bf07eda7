/** An orthometric height was keyed, and the notes do not say by which geoid model the receiver makes it ellipsoidal. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Setup } from '../../session/entries.ts';
import { kind } from '../finding.ts';

export const heightModelUnnamed = kind({
  code: 'height/model-unnamed',
  find: ({ session }) => modelUnnamed(valuesOf(session.setups)),
  tell: ({ setup }) => ({
    severity: 'warning',
    message: `The height keyed at ${setup.name} is not ellipsoidal, and by which geoid model the receiver makes it so is not said. So the height that the base sent is not known, and nothing compares it. Name the model behind it (orthometric geoid "grids/region.gtx"); if the receiver took the number as ellipsoidal, write that: it is what it was told.`,
  }),
});

const modelUnnamed = foundInEach((setup: Setup) =>
  setup.keyed.flatMap(({ height }) =>
    height && height.surface !== null && height.surface !== 'ellipsoidal' && !height.geoid
      ? [{ setup, height, place: height.place }]
      : [],
  ),
);
