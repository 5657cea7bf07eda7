/** How many bits each RTCM 3 message carries, and how many bytes it takes on the air with its frame. */
import type { Bits, Bytes } from '../quantities/brands.ts';
import { bits, bytes } from '../quantities/brands.ts';

export type Constellation = 'GPS' | 'GLONASS' | 'Galileo' | 'SBAS' | 'QZSS' | 'BeiDou' | 'NavIC';

/** The satellites of one constellation that the base follows, and on how many signals each. */
export interface Tracked {
  readonly constellation: Constellation;
  readonly satellites: number;
  readonly signals: number;
}

/** What a stream's messages have to carry; lengths of texts are in bytes (at most 31 are customary). */
export interface StreamContent {
  readonly tracked: readonly Tracked[];
  readonly antennaDescriptor?: number;
  readonly antennaSerial?: number;
  readonly receiverDescriptor?: number;
  readonly receiverFirmware?: number;
  readonly receiverSerial?: number;
  /** Length of the text of a 1029, in bytes of UTF-8. */
  readonly text?: number;
  /** How many messages a 1013 announces. */
  readonly announced?: number;
  /** How many of the four GLONASS signals a 1230 gives a bias for. */
  readonly biases?: number;
}

/** One message as it is sent. */
export interface MessageSize {
  readonly payload: Bits;
  /** Preamble, length and checksum included. */
  readonly frame: Bytes;
}

export type MessagePurpose =
  'position' | 'equipment' | 'observations' | 'biases' | 'ephemeris' | 'text' | 'system';

/** Multiple signal messages: which constellation and which of the seven kinds. */
export interface SignalMessage {
  readonly constellation: Constellation;
  readonly kind: 1 | 2 | 3 | 4 | 5 | 6 | 7;
}

/**
 * Sizes of the message, or messages, that one sending of `number` takes. Observations that do not fit one message (64
 * cells in a multiple signal message, 31 satellites in a legacy one) are split, satellite by satellite. An ephemeris
 * is counted as one satellite's. An empty list means that there is nothing to send; undefined, that this size is not
 * known here or that the counts are no counts.
 *
 * Source: RTCM 10403.3, the message tables; every frame adds 6 bytes (8 bit preamble, 6 reserved, 10 length, 24 CRC).
 */
export function messageSizes(number: number, content: StreamContent): readonly MessageSize[] | undefined {
  const payloads = payloadBits(number, content);
  return payloads?.every((size) => Number.isInteger(size) && size >= 0)
    ? payloads.map((size) => ({ payload: bits(size), frame: frameBytes(bits(size)) }))
    : undefined;
}

/** The bytes on the air of a payload: filled up to whole bytes, framed. */
export function frameBytes(payload: Bits): Bytes {
  return bytes(Math.ceil(payload / 8) + 6);
}

/** Bytes of one whole sending. */
export function sendingBytes(sizes: readonly MessageSize[]): Bytes {
  return bytes(sizes.reduce((sum, size) => sum + size.frame, 0));
}

/** Reads a number of the multiple signal family, 1071 to 1137; undefined for any other. */
export function signalMessage(number: number): SignalMessage | undefined {
  const constellation = constellations[Math.floor(number / 10) - 107];
  const kind = number % 10;
  return constellation && isKind(kind) ? { constellation, kind } : undefined;
}

/** The number of a multiple signal message. */
export function signalMessageNumber({ constellation, kind }: SignalMessage): number {
  return 1070 + 10 * constellations.indexOf(constellation) + kind;
}

/** The most cells, satellites times signals, that one multiple signal message has room for. */
export const mostSignalCells = 64;

/** Payload of a multiple signal message: header and masks, then each satellite, then each cell that is filled. */
export function signalMessageBits(
  kind: SignalMessage['kind'],
  satellites: number,
  signals: number,
  filledCells: number,
): Bits {
  const { satellite, cell } = signalMessageParts[kind];
  return bits(169 + satellites * signals + satellites * satellite + filledCells * cell);
}

/** What a message is for, where this table knows it. */
export function messagePurpose(number: number): MessagePurpose | undefined {
  return signalMessage(number) ? 'observations' : fixed[number]?.purpose;
}

/** A message's name in the words of the trade, for people; undefined where it is not known here. */
export function messageTitle(number: number): string | undefined {
  const signal = signalMessage(number);
  return signal ? `${signal.constellation} observations, MSM${signal.kind}` : fixed[number]?.title;
}

/** The observation messages before the multiple signal ones: bits of the header and of each satellite. */
export const legacyObservations: Readonly<
  Record<
    number,
    {
      readonly constellation: 'GPS' | 'GLONASS';
      readonly signals: 1 | 2;
      readonly header: number;
      readonly satellite: number;
    }
  >
> = {
  1001: { constellation: 'GPS', signals: 1, header: 64, satellite: 58 },
  1002: { constellation: 'GPS', signals: 1, header: 64, satellite: 74 },
  1003: { constellation: 'GPS', signals: 2, header: 64, satellite: 101 },
  1004: { constellation: 'GPS', signals: 2, header: 64, satellite: 125 },
  1009: { constellation: 'GLONASS', signals: 1, header: 61, satellite: 64 },
  1010: { constellation: 'GLONASS', signals: 1, header: 61, satellite: 79 },
  1011: { constellation: 'GLONASS', signals: 2, header: 61, satellite: 107 },
  1012: { constellation: 'GLONASS', signals: 2, header: 61, satellite: 130 },
};

const constellations: readonly Constellation[] = [
  'GPS',
  'GLONASS',
  'Galileo',
  'SBAS',
  'QZSS',
  'BeiDou',
  'NavIC',
];
const mostLegacySatellites = 31;

const signalMessageParts = {
  1: { satellite: 10, cell: 15 },
  2: { satellite: 10, cell: 27 },
  3: { satellite: 10, cell: 42 },
  4: { satellite: 18, cell: 48 },
  5: { satellite: 36, cell: 63 },
  6: { satellite: 18, cell: 65 },
  7: { satellite: 36, cell: 80 },
} as const;

interface FixedMessage {
  readonly title: string;
  readonly purpose: MessagePurpose;
  readonly bits: (content: StreamContent) => readonly number[];
}

const always = (size: number) => () => [size];
const characters = (length: number | undefined) => 8 * (length ?? 0);
const legacyBits = (number: number) => (content: StreamContent) => {
  const legacy = legacyObservations[number];
  if (!legacy) return [];
  const satellites = satellitesOf(content, legacy.constellation);
  return shares(satellites, mostLegacySatellites).map((count) => legacy.header + legacy.satellite * count);
};

const fixed: Readonly<Record<number, FixedMessage>> = {
  1001: { title: 'GPS L1 observations', purpose: 'observations', bits: legacyBits(1001) },
  1002: { title: 'GPS L1 observations, extended', purpose: 'observations', bits: legacyBits(1002) },
  1003: { title: 'GPS L1 and L2 observations', purpose: 'observations', bits: legacyBits(1003) },
  1004: {
    title: 'GPS L1 and L2 observations, extended',
    purpose: 'observations',
    bits: legacyBits(1004),
  },
  1005: { title: 'station position (ARP)', purpose: 'position', bits: always(152) },
  1006: { title: 'station position (ARP) and antenna height', purpose: 'position', bits: always(168) },
  1007: {
    title: 'antenna descriptor',
    purpose: 'equipment',
    bits: (content) => [40 + characters(content.antennaDescriptor)],
  },
  1008: {
    title: 'antenna descriptor and serial number',
    purpose: 'equipment',
    bits: (content) => [48 + characters(content.antennaDescriptor) + characters(content.antennaSerial)],
  },
  1009: { title: 'GLONASS L1 observations', purpose: 'observations', bits: legacyBits(1009) },
  1010: {
    title: 'GLONASS L1 observations, extended',
    purpose: 'observations',
    bits: legacyBits(1010),
  },
  1011: {
    title: 'GLONASS L1 and L2 observations',
    purpose: 'observations',
    bits: legacyBits(1011),
  },
  1012: {
    title: 'GLONASS L1 and L2 observations, extended',
    purpose: 'observations',
    bits: legacyBits(1012),
  },
  1013: {
    title: 'system parameters',
    purpose: 'system',
    bits: (content) => [70 + 29 * (content.announced ?? 0)],
  },
  1019: { title: 'GPS ephemeris', purpose: 'ephemeris', bits: always(488) },
  1020: { title: 'GLONASS ephemeris', purpose: 'ephemeris', bits: always(360) },
  1029: { title: 'text', purpose: 'text', bits: (content) => [72 + characters(content.text)] },
  1033: {
    title: 'receiver and antenna description',
    purpose: 'equipment',
    bits: (content) => [
      72 +
        characters(content.antennaDescriptor) +
        characters(content.antennaSerial) +
        characters(content.receiverDescriptor) +
        characters(content.receiverFirmware) +
        characters(content.receiverSerial),
    ],
  },
  1042: { title: 'BeiDou ephemeris', purpose: 'ephemeris', bits: always(511) },
  1044: { title: 'QZSS ephemeris', purpose: 'ephemeris', bits: always(485) },
  1045: { title: 'Galileo F/NAV ephemeris', purpose: 'ephemeris', bits: always(496) },
  1046: { title: 'Galileo I/NAV ephemeris', purpose: 'ephemeris', bits: always(504) },
  1230: { title: 'GLONASS biases', purpose: 'biases', bits: (content) => [32 + 16 * (content.biases ?? 4)] },
};

function payloadBits(number: number, content: StreamContent): readonly number[] | undefined {
  if (!countsAreCounts(content)) return undefined;
  const signal = signalMessage(number);
  if (!signal) return fixed[number]?.bits(content);
  const tracked = content.tracked.find((entry) => entry.constellation === signal.constellation);
  if (!tracked || tracked.satellites === 0 || tracked.signals === 0) return [];
  return shares(tracked.satellites, Math.floor(mostSignalCells / tracked.signals)).map((count) =>
    signalMessageBits(signal.kind, count, tracked.signals, count * tracked.signals),
  );
}

/** The masks have room for 64 satellites and 32 signals. */
function countsAreCounts({ tracked, biases = 4 }: StreamContent) {
  const isCount = (value: number, most: number) => Number.isInteger(value) && value >= 0 && value <= most;
  return (
    isCount(biases, 4) &&
    tracked.every((entry) => isCount(entry.satellites, 64) && isCount(entry.signals, 32))
  );
}

function satellitesOf({ tracked }: StreamContent, constellation: Constellation) {
  return tracked.find((entry) => entry.constellation === constellation)?.satellites ?? 0;
}

/** Deals satellites to messages, each filled before the next begins. */
function shares(count: number, most: number): readonly number[] {
  return Array.from({ length: Math.ceil(count / most) }, (_, index) => Math.min(most, count - index * most));
}

function isKind(kind: number): kind is SignalMessage['kind'] {
  return kind >= 1 && kind <= 7;
}
