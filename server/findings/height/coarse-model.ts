/** A height to key that rests on the coarse global model, which is good for finding blunders and not for keying. */
import type { SetupValues } from '../../derive/setups/setup.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import { kind } from '../finding.ts';

export const heightCoarseModel = kind({
  code: 'height/coarse-model',
  find: ({ derivation }) => coarse(valuesOf(derivation.setups)),
  tell: ({ mark }) => ({
    severity: 'warning',
    message: `The ellipsoidal height to key at ${mark.mark.name} rests on EGM96, which is good to about a metre: good for finding blunders, and not for keying. All heights of the day share its error, and checks on marks nearby do not show it. Use the published separation, or name a regional geoid grid.`,
  }),
});

const coarse = foundInEach((setup: SetupValues) =>
  setup.tell.coarse && setup.mark
    ? [{ setup, mark: setup.mark, place: setup.setup.on?.place ?? setup.setup.place }]
    : [],
);
