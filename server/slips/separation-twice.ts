/** The separation is added to a height that already has it. */
import type { Slip } from './slip.ts';

export const separationTwice: Slip = {
  name: 'separation-twice',
  code: 'height/wrong-surface',
  prior: 0.03,
  look: 'how the ellipsoidal height was worked out',
  ways: ({ right: { separation, height } }) =>
    separation === null || height === null
      ? []
      : [
          {
            says: 'the separation was added twice',
            effect: { on: 'told', told: { height: height + separation } },
          },
        ],
};
