/** The height above sea level is told to a receiver that wants the height above the ellipsoid. */
import type { Slip } from './slip.ts';

export const orthometricForEllipsoidal: Slip = {
  name: 'orthometric-for-ellipsoidal',
  code: 'height/wrong-surface',
  prior: 0.15,
  look: 'the height on the receiver, and which surface it names beside it',
  ways: ({ right }) =>
    right.orthometric === null || right.height === null
      ? []
      : [
          {
            says: 'the orthometric height was keyed as the ellipsoidal one',
            effect: { on: 'told', told: { height: right.orthometric } },
          },
        ],
};
