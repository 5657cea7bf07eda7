/** The extension between foot and antenna is left out of the antenna height, or another one of a usual length was there. */
import { showLength } from '../quantities/show.ts';
import type { SetupValues } from '../derive/setups/setup.ts';
import type { Slip } from './slip.ts';

/** Extensions as they are sold (common practice), metres. */
const USUAL = [
  { length: 0.25, weight: 1 },
  { length: 0.5, weight: 1 },
  { length: 0.3, weight: 0.5 },
  { length: 0.2, weight: 0.3 },
  { length: 0.1, weight: 0.3 },
  { length: 1, weight: 0.2 },
];

/** An extension that the notes do not have either is rarer than one left out of a sum. */
const NOT_NOTED = 0.03;

export const extensionLeftOut: Slip = {
  name: 'extension-left-out',
  code: 'height/extension',
  prior: 0.1,
  look: 'what stands between the tripod and the antenna, on a photo or on the site',
  ways: ({ setup, right }) => {
    const { antennaHeight } = right;
    if (antennaHeight === null) return [];
    const noted = setup.height.extension;
    if (noted && !isAdded(setup)) return [];
    if (noted)
      return [
        {
          says: `the extension of ${showLength(noted.value)} was left out of the antenna height`,
          effect: { on: 'told', told: { antennaHeight: antennaHeight - noted.value } },
        },
      ];
    if (setup.setup.extensions.length > 0) return [];
    return USUAL.map(({ length, weight }) => ({
      weight,
      prior: NOT_NOTED,
      says: `an extension of ${showLength(length)} stood below the antenna, and neither the notes nor the antenna height have it`,
      effect: { on: 'told', told: { antennaHeight: antennaHeight - length } },
    }));
  },
};

/** A tape held to the antenna itself has the extension inside already; nothing was there to be left out. */
const isAdded = ({ height }: SetupValues) =>
  height.readings.length === 0 || height.readings.some(({ measured }) => measured.to?.name === 'foot');
