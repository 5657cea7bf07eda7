/** The tape was held to a point on the antenna, and the way from there down to the reference point was forgotten. */
import { showLength } from '../quantities/show.ts';
import { isHole } from '../quantities/value.ts';
import { firstReadings, meanOf, riseOf } from './readings.ts';
import type { Slip } from './slip.ts';

export const riseForgotten: Slip = {
  name: 'rise-forgotten',
  code: 'height/slope',
  prior: 0.05,
  look: 'how the antenna height was worked out',
  ways: ({ setup, right }) => {
    const readings = firstReadings(setup.height);
    if (right.antennaHeight === null || readings.length === 0) return [];
    const rise = meanOf(readings, ({ measured }) => riseOf(measured, setup.antenna));
    const wrong = meanOf(readings, ({ measured, arp }) => {
      const above = riseOf(measured, setup.antenna);
      return above === null || isHole(arp) ? null : arp.value + above;
    });
    if (wrong === null || rise === null || rise === 0) return [];
    return [
      {
        says: `the ${showLength(rise)} from the taped point down to the reference point were forgotten`,
        effect: { on: 'told', told: { antennaHeight: wrong - right.toArp } },
      },
    ];
  },
};
