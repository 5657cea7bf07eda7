/** The slope of the tape is not taken off: a slant told as a vertical height. */
import { isHole } from '../quantities/value.ts';
import { firstReadings, meanOf, radiusOf, riseOf } from './readings.ts';
import type { Slip } from './slip.ts';

export const slopeNotReduced: Slip = {
  name: 'slope-not-reduced',
  code: 'height/slope',
  prior: 0.05,
  look: 'whether the receiver was set to a slant or to a vertical height',
  ways: ({ setup, right }) => {
    const readings = firstReadings(setup.height);
    if (right.antennaHeight === null || readings.length === 0) return [];
    const wrong = meanOf(readings, ({ length, slope, arp }) =>
      isHole(length) || isHole(arp) || !slope ? null : arp.value + slope.value,
    );
    const unreduced =
      wrong === null
        ? []
        : [
            {
              says: 'the slope of the tape was not taken off',
              effect: { on: 'told' as const, told: { antennaHeight: wrong - right.toArp } },
            },
          ];
    return [...unreduced, ...rawReading(readings, setup.antenna, right.toArp)];
  },
};

/** The reading to a point of the antenna keyed as it was read. */
function rawReading(
  readings: ReturnType<typeof firstReadings>,
  antenna: Parameters<typeof riseOf>[1],
  toArp: number,
) {
  const raw = meanOf(readings, ({ measured, length }) =>
    isHole(length) || riseOf(measured, antenna) === null || !radiusOf(measured, antenna)
      ? null
      : length.value,
  );
  if (raw === null) return [];
  return [
    {
      says: 'the slant to the edge of the antenna was keyed as the height of its reference point',
      effect: { on: 'told' as const, told: { antennaHeight: raw - toArp } },
    },
  ];
}
