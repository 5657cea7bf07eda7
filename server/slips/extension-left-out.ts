/** The extension between foot and antenna is left out of the antenna height, or another one of a usual length was there. */
import { showLength } from '../quantities/show.ts';
import type { Slip } from './slip.ts';

/** Extensions as they are sold (common practice), metres. */
const USUAL = [0.1, 0.2, 0.25, 0.3, 0.5, 1];

export const extensionLeftOut: Slip = {
  name: 'extension-left-out',
  code: 'height/extension',
  prior: 0.1,
  look: 'what stands between the tripod and the antenna, on a photo or on the site',
  ways: ({ setup, right }) => {
    const { antennaHeight } = right;
    if (antennaHeight === null) return [];
    const noted = setup.height.extension;
    if (noted)
      return [
        {
          says: `the extension of ${showLength(noted.value)} was left out of the antenna height`,
          effect: { on: 'told', told: { antennaHeight: antennaHeight - noted.value } },
        },
      ];
    if (setup.setup.extensions.length > 0) return [];
    return USUAL.map((length) => ({
      says: `an extension of ${showLength(length)} stood below the antenna, and neither the notes nor the antenna height have it`,
      effect: { on: 'told', told: { antennaHeight: antennaHeight - length } },
    }));
  },
};
