/** The taped readings that an antenna height was worked out from, and other heights that they could have been made into. */
import type { AntennaHeight, Reading } from '../derive/setups/antenna-height.ts';
import { isHole } from '../quantities/value.ts';
import type { Antenna, Measured } from '../session/entries.ts';

/** Those of the setup's start. */
export const firstReadings = (height: AntennaHeight): readonly Reading[] => height.groups[0]?.readings ?? [];

/** The mean of what is made of each reading; null where nothing is made of one of them, and where there are none. */
export function meanOf(readings: readonly Reading[], of: (reading: Reading) => number | null): number | null {
  const heights = readings.map(of).filter((height) => height !== null);
  return heights.length === 0 || heights.length < readings.length
    ? null
    : heights.reduce((sum, height) => sum + height, 0) / heights.length;
}

/** How far from the plumb line the taped point lies; 0 where the tape hung straight down. */
export function radiusOf(measured: Measured, antenna: Antenna | null): number | null {
  if (measured.manner === 'vertical') return 0;
  if (measured.offCentre) return isHole(measured.offCentre) ? null : measured.offCentre.value;
  const point = tapePointOf(measured, antenna);
  if (!point) return 0;
  return isHole(point.radius) ? null : point.radius.value;
}

/** How far above the ARP the taped point lies; null where the tape was not held to a point of the antenna. */
export function riseOf(measured: Measured, antenna: Antenna | null): number | null {
  const point = tapePointOf(measured, antenna);
  return !point || isHole(point.above) ? null : point.above.value;
}

const tapePointOf = (measured: Measured, antenna: Antenna | null) =>
  antenna?.tapePoints.find((candidate) => candidate.name === measured.to?.name);
