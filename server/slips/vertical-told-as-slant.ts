/** A height read straight down is told as a slant, so that a slope is taken off that was never there. */
import { isHole } from '../quantities/value.ts';
import { firstReadings, meanOf, radiusOf } from './readings.ts';
import type { Slip, Way } from './slip.ts';

export const verticalToldAsSlant: Slip = {
  name: 'vertical-told-as-slant',
  code: 'height/slope',
  prior: 0.03,
  look: 'whether the tape was held straight down',
  ways: ({ setup, right }) => {
    const { antenna, height } = setup;
    const readings = firstReadings(height);
    const { antennaHeight } = right;
    if (antennaHeight === null || readings.length === 0) return [];
    const told = readings.map(({ length, measured, arp, slope }) => {
      if (isHole(length) || isHole(arp)) return null;
      // The notes carry a slope that was never there: the antenna really stands higher by it.
      if (slope) return arp.value - slope.value;
      const radius = antenna?.tapePoints[0]?.radius;
      if (!radius || isHole(radius) || radiusOf(measured, antenna) !== 0) return null;
      if (length.value <= radius.value) return null;
      return arp.value - length.value + Math.sqrt(length.value ** 2 - radius.value ** 2);
    });
    const wrong = meanOf(readings, (reading) => told[readings.indexOf(reading)] ?? null);
    if (wrong === null) return [];
    const way: Way = {
      says: 'the tape was held straight down and its reading was reduced as a slant',
      effect: { on: 'told', told: { antennaHeight: wrong - right.toArp } },
    };
    return [way];
  },
};
