/** The extension is added to the slant before the slope is taken off, instead of behind it. */
import { showLength } from '../quantities/show.ts';
import { isHole } from '../quantities/value.ts';
import { firstReadings, meanOf, radiusOf } from './readings.ts';
import type { Slip } from './slip.ts';

export const extensionInsideSlant: Slip = {
  name: 'extension-inside-slant',
  code: 'height/extension',
  prior: 0.01,
  look: 'how the antenna height was worked out',
  ways: ({ setup, right }) => {
    const { extension } = setup.height;
    if (!extension || right.antennaHeight === null) return [];
    const readings = firstReadings(setup.height).filter(({ measured }) => measured.to?.name === 'foot');
    const wrong = meanOf(readings, (reading) => {
      const radius = radiusOf(reading.measured, setup.antenna);
      if (radius === null || radius === 0 || isHole(reading.length)) return null;
      return Math.sqrt((reading.length.value + extension.value) ** 2 - radius ** 2);
    });
    if (wrong === null) return [];
    return [
      {
        says: `the extension of ${showLength(extension.value)} was added before the slope was taken off`,
        effect: { on: 'told', told: { antennaHeight: wrong - right.toArp } },
      },
    ];
  },
};
