/** The separation is taken off the orthometric height instead of added. */
import type { Slip } from './slip.ts';

export const separationSign: Slip = {
  name: 'separation-sign',
  code: 'height/separation-sign',
  prior: 0.05,
  look: 'how the ellipsoidal height was worked out',
  ways: ({ right: { orthometric, separation, height } }) =>
    orthometric === null || separation === null || height === null
      ? []
      : [
          {
            says: 'the separation was taken off the orthometric height instead of added',
            effect: { on: 'told', told: { height: orthometric - separation } },
          },
        ],
};
