/** 5 ft 2 in is told as 5.2 ft. */
import { FOOT } from './feet.ts';
import type { Slip, Way } from './slip.ts';

export const feetAndInchesAsDecimals: Slip = {
  name: 'feet-and-inches-as-decimals',
  code: 'unit/feet',
  prior: 0.02,
  look: 'how the tape is divided, and the antenna height on the receiver',
  ways: ({ right: { antennaHeight } }) => {
    if (antennaHeight === null || antennaHeight <= 0) return [];
    const inches = Math.round(antennaHeight / (FOOT / 12));
    const [whole, rest] = [Math.floor(inches / 12), inches % 12];
    // 5 ft 2 in becomes 5.2 or 5.02; 5 ft 11 in becomes 5.11.
    const typed = [...new Set([`${whole}.${rest}`, `${whole}.${String(rest).padStart(2, '0')}`])];
    return typed.map((text): Way => ({
      says: `${whole} ft ${rest} in were keyed as ${text} ft`,
      effect: { on: 'told', told: { antennaHeight: Number(text) * FOOT } },
    }));
  },
};
