/** A radio modem known by its rate over the air and its channel spacing alone. */
import type { BitsPerSecond, Bytes, DecibelMilliwatts, Hertz, Seconds } from '../quantities/brands.ts';
import { bitsPerSecond, decibelMilliwatts, seconds } from '../quantities/brands.ts';
import type { Link } from './link.ts';

export interface AirRateSettings {
  readonly rate: BitsPerSecond;
  readonly channel?: Hertz;
  /** Share of the rate that carries data, the rest being error correction and framing; 1 where not stated. */
  readonly usable?: number;
  /** Time to bring the transmitter up before each burst; none where not stated. */
  readonly keyUp?: Seconds;
}

/** Time on the air of a burst: key-up, then its bits at the usable rate. */
export function airRateAirtime(settings: AirRateSettings, burst: Bytes): Seconds {
  return seconds((settings.keyUp ?? 0) + (8 * burst) / usableRate(settings));
}

/** Bits of data a second. */
export function usableRate({ rate, usable = 1 }: AirRateSettings): BitsPerSecond {
  return bitsPerSecond(rate * usable);
}

/** The link that these settings make; a burst goes out in one piece. */
export function airRateLink(settings: AirRateSettings): Link {
  return { airtime: (burst) => airRateAirtime(settings, burst) };
}

/**
 * The fastest rate usual in a channel: 9600 bit/s in 12.5 kHz, 19200 in 25 kHz, so 0.768 bit/s for each hertz
 * (common practice). A faster one stated for the channel is probably a slip in one of the two.
 */
export function usualLargestRate(channel: Hertz): BitsPerSecond {
  return bitsPerSecond(0.768 * channel);
}

/**
 * The faintest signal that a narrow-band modem usually reads: thermal noise in the channel, -174 dBm + 10 log B, and
 * 20 dB for the receiver's own noise and for detection together (common practice, an assumption to be shown).
 */
export function usualSensitivity(channel: Hertz): DecibelMilliwatts {
  return decibelMilliwatts(-174 + 10 * Math.log10(channel) + 20);
}
