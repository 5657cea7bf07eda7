/** A height to key that rests on the coarse global model, which is good for finding blunders and not for keying. */
import type { SetupValues } from '../../derive/setups/setup.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import { kind } from '../finding.ts';

export const heightCoarseModel = kind({
  code: 'height/coarse-model',
  find: ({ derivation }) => coarse(valuesOf(derivation.setups)),
  tell: ({ mark }) => ({
    severity: 'warning',
    headline: `Height to key at ${mark.mark.name} rests on EGM96, good to 1 m.`,
    effect: 'All heights share its error; nearby checks do not show it.',
    action: 'Use the published separation or a regional geoid grid.',
  }),
});

const coarse = foundInEach((setup: SetupValues) =>
  setup.tell.coarse && setup.mark
    ? [{ setup, mark: setup.mark, place: setup.setup.on?.place ?? setup.setup.place }]
    : [],
);
