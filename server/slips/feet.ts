/** A number in feet is told as metres, or one in metres as feet. */
import type { Slip, Told, Way } from './slip.ts';

/** The international foot, exactly. */
export const FOOT = 0.3048;

export const feet: Slip = {
  name: 'feet',
  code: 'unit/feet',
  prior: 0.05,
  look: 'the unit that the receiver is set to',
  ways: ({ right: { antennaHeight, height } }) => {
    const way = (says: string, told: Told): Way => ({ says, effect: { on: 'told', told } });
    return [
      ...(antennaHeight === null
        ? []
        : [
            way('the antenna height in feet was keyed as metres', { antennaHeight: antennaHeight / FOOT }),
            way('the antenna height in metres was keyed as feet', { antennaHeight: antennaHeight * FOOT }),
          ]),
      ...(height === null
        ? []
        : [
            way('the height in feet was keyed as metres', { height: height / FOOT }),
            way('the height in metres was keyed as feet', { height: height * FOOT }),
          ]),
    ];
  },
};
