/** An orthometric height was keyed, and the notes do not say by which geoid model the receiver makes it ellipsoidal. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Setup } from '../../session/entries.ts';
import { kind } from '../finding.ts';

export const heightModelUnnamed = kind({
  code: 'height/model-unnamed',
  find: ({ session }) => modelUnnamed(valuesOf(session.setups)),
  tell: ({ setup }) => ({
    severity: 'warning',
    headline: `No geoid model noted for the height keyed at ${setup.name}.`,
    effect: 'What the base sent is not known.',
    action:
      'Name the model (orthometric geoid "grids/region.gtx"). If the receiver took it as ellipsoidal, write that.',
  }),
});

const modelUnnamed = foundInEach((setup: Setup) =>
  setup.keyed.flatMap(({ height }) =>
    height && height.surface !== null && height.surface !== 'ellipsoidal' && !height.geoid
      ? [{ setup, height, place: height.place }]
      : [],
  ),
);
