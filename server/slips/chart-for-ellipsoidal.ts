/** The height above a local surface, chart datum say, is told to a receiver that wants the height above the ellipsoid. */
import { isHole } from '../quantities/value.ts';
import { numberOf } from './situation.ts';
import type { Slip } from './slip.ts';

export const chartForEllipsoidal: Slip = {
  name: 'chart-for-ellipsoidal',
  code: 'height/wrong-surface',
  prior: 0.05,
  look: 'the height on the receiver, and which surface it names beside it',
  ways: ({ session, right }) =>
    [...session.surfaces.values()].flatMap(({ name, offset, against }) => {
      const from =
        against === 'orthometric' ? right.orthometric : against === 'ellipsoidal' ? right.height : null;
      const apart = numberOf(offset);
      if (from === null || apart === null || right.height === null || (offset && isHole(offset))) return [];
      return [
        {
          says: `the height above ${name} was keyed as the ellipsoidal one`,
          effect: { on: 'told', told: { height: from - apart } },
        },
      ];
    }),
};
