/** The extension is counted twice, most often because the height already had it. */
import { showLength } from '../quantities/show.ts';
import type { Slip } from './slip.ts';

export const extensionTwice: Slip = {
  name: 'extension-twice',
  code: 'height/extension',
  prior: 0.05,
  look: 'the antenna height on the receiver',
  ways: ({ setup, right }) => {
    const noted = setup.height.extension;
    if (!noted || right.antennaHeight === null) return [];
    return [
      {
        says: `the extension of ${showLength(noted.value)} was counted twice in the antenna height`,
        effect: { on: 'told', told: { antennaHeight: right.antennaHeight + noted.value } },
      },
    ];
  },
};
