/**
 * LoRa modulation: airtime of a packet, rate, and how faint a signal it still reads.
 *
 * Source: data sheet of a common LoRa transceiver (2020), §4.1: symbol time, bit rate, packet formula, low data rate
 * bit for symbols longer than 16 ms, table of sensitivities at 125 kHz.
 */
import type { BitsPerSecond, Bytes, DecibelMilliwatts, Hertz, Seconds } from '../quantities/brands.ts';
import { bitsPerSecond, bytes, decibelMilliwatts, seconds } from '../quantities/brands.ts';
import type { Link } from './link.ts';

export type Spreading = 6 | 7 | 8 | 9 | 10 | 11 | 12;

/** Settings that must be the same at both ends. */
export interface LoraSettings {
  readonly spreading: Spreading;
  readonly bandwidth: Hertz;
  /** The second number of the coding rate: 5 for 4/5 to 8 for 4/8. */
  readonly coding: 5 | 6 | 7 | 8;
  /** Symbols of preamble, before the 4.25 of synchronisation; 8 where not set. */
  readonly preamble?: number;
  readonly header?: 'explicit' | 'implicit';
  readonly checksum?: boolean;
}

/** The largest payload of a packet. */
const largestLoraPacket: Bytes = bytes(255);

/** Time on the air of one packet with `payload` bytes. */
export function loraAirtime(settings: LoraSettings, payload: Bytes): Seconds {
  const { spreading: SF, coding, preamble = 8, header = 'explicit', checksum = true } = settings;
  const symbol = symbolTime(settings);
  const DE = symbol > longestPlainSymbol ? 1 : 0;
  const IH = header === 'implicit' ? 1 : 0;
  const CRC = checksum ? 1 : 0;
  const blocks = Math.ceil((8 * payload - 4 * SF + 28 + 16 * CRC - 20 * IH) / (4 * (SF - 2 * DE)));
  const payloadSymbols = 8 + Math.max(blocks * coding, 0);
  return seconds((preamble + 4.25 + payloadSymbols) * symbol);
}

/** Rate of the coded bits, SF · BW / 2^SF · 4 / (4 + CR), before preambles and headers. */
export function loraRate({ spreading, bandwidth, coding }: LoraSettings): BitsPerSecond {
  return bitsPerSecond((spreading * bandwidth * 4) / (2 ** spreading * coding));
}

/** What full packets carry of payload in a second: preamble, header and checksum paid. */
export function loraThroughput(settings: LoraSettings): BitsPerSecond {
  return bitsPerSecond((8 * largestLoraPacket) / loraAirtime(settings, largestLoraPacket));
}

/** Duration of one symbol. */
export function symbolTime({ spreading, bandwidth }: LoraSettings): Seconds {
  return seconds(2 ** spreading / bandwidth);
}

/** The link that these settings make. */
export function loraLink(settings: LoraSettings): Link {
  return { largestPacket: largestLoraPacket, airtime: (packet) => loraAirtime(settings, packet) };
}

/**
 * The faintest signal still read: the data sheet's value at 125 kHz, moved with the noise in the bandwidth
 * (10 log BW / 125 kHz). Undefined for SF6, which the table leaves out.
 */
export function loraSensitivity({ spreading, bandwidth }: LoraSettings): DecibelMilliwatts | undefined {
  const at125 = sensitivityAt125kHz[spreading];
  return at125 === undefined ? undefined : decibelMilliwatts(at125 + 10 * Math.log10(bandwidth / 125_000));
}

/** The same radio with one step more of spreading: slower, and heard farther. Undefined at SF12. */
export function slowerLora(settings: LoraSettings): LoraSettings | undefined {
  const spreading = nextSpreading[settings.spreading];
  return spreading && { ...settings, spreading };
}

const longestPlainSymbol = 0.016;

const sensitivityAt125kHz: Partial<Record<Spreading, number>> = {
  7: -123,
  8: -126,
  9: -129,
  10: -132,
  11: -133,
  12: -136,
};

const nextSpreading: Partial<Record<Spreading, Spreading>> = { 6: 7, 7: 8, 8: 9, 9: 10, 10: 11, 11: 12 };
