/** Writes RTCM 3 messages for the tests, field by field from the standard's tables; nothing else may import it. */
import { signalMessage } from '../../link/message-size.ts';

/** A field: its value, and how many bits it has. */
export type Field = readonly [value: number, bits: number];

/** Packs fields, most significant bit first, and fills the last byte with zeros. */
export function packed(fields: readonly Field[]): Uint8Array {
  const digits = fields.map(([value, size]) => {
    const whole = BigInt.asUintN(size, BigInt(value));
    return whole.toString(2).padStart(size, '0');
  });
  const text = digits.join('');
  return Uint8Array.from({ length: Math.ceil(text.length / 8) }, (_, index) =>
    Number.parseInt(text.slice(index * 8, index * 8 + 8).padEnd(8, '0'), 2),
  );
}

/** Puts a payload into a frame: preamble, length, and a checksum computed bit by bit by long division. */
export function framed(payload: Uint8Array): Uint8Array {
  const head = Uint8Array.of(0xd3, payload.length >> 8, payload.length & 0xff);
  const body = Uint8Array.from([...head, ...payload]);
  let remainder = 0;
  for (const byte of [...body, 0, 0, 0]) {
    for (let bit = 7; bit >= 0; bit -= 1) {
      remainder = (remainder << 1) | ((byte >> bit) & 1);
      if (remainder & 0x1000000) remainder ^= 0x1864cfb;
    }
  }
  return Uint8Array.from([...body, remainder >> 16, (remainder >> 8) & 0xff, remainder & 0xff]);
}

export function joinedBytes(...parts: readonly Uint8Array[]): Uint8Array {
  return Uint8Array.from(parts.flatMap((part) => [...part]));
}

/** Coordinates and height in tenths of a millimetre. */
export interface PositionFields {
  readonly station: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly height?: number;
  readonly frameYear?: number;
  readonly virtual?: boolean;
}

export function positionMessage(position: PositionFields): Uint8Array {
  const { station, x, y, z, height, frameYear = 0, virtual = false } = position;
  const common: readonly Field[] = [
    [height === undefined ? 1005 : 1006, 12],
    [station, 12],
    [frameYear, 6],
    [0b110, 3],
    [virtual ? 1 : 0, 1],
    [x, 38],
    [0b10, 2],
    [y, 38],
    [0, 2],
    [z, 38],
  ];
  return packed(height === undefined ? common : [...common, [height, 16]]);
}

const textFields = (text: string): readonly Field[] => [
  [text.length, 8],
  ...[...text].map((character): Field => [character.charCodeAt(0), 8]),
];

export function antennaMessage(
  station: number,
  descriptor: string,
  setup: number,
  serial?: string,
): Uint8Array {
  return packed([
    [serial === undefined ? 1007 : 1008, 12],
    [station, 12],
    ...textFields(descriptor),
    [setup, 8],
    ...(serial === undefined ? [] : textFields(serial)),
  ]);
}

export function descriptionMessage(
  station: number,
  setup: number,
  texts: readonly [
    antenna: string,
    serial: string,
    receiver: string,
    firmware: string,
    receiverSerial: string,
  ],
): Uint8Array {
  const [antenna, ...others] = texts;
  return packed([
    [1033, 12],
    [station, 12],
    ...textFields(antenna),
    [setup, 8],
    ...others.flatMap((text) => textFields(text)),
  ]);
}

/** Biases in units of 0.02 m, in the order of the mask; undefined where the mask leaves the signal out. */
export function biasMessage(
  station: number,
  aligned: boolean,
  biases: readonly [number | undefined, number | undefined, number | undefined, number | undefined],
): Uint8Array {
  return packed([
    [1230, 12],
    [station, 12],
    [aligned ? 1 : 0, 1],
    [0, 3],
    ...biases.map((bias): Field => [bias === undefined ? 0 : 1, 1]),
    ...biases.filter((bias) => bias !== undefined).map((bias): Field => [bias, 16]),
  ]);
}

export interface SignalFields {
  readonly number: number;
  readonly station: number;
  /** The thirty bits of the epoch. */
  readonly epoch: number;
  readonly more?: boolean;
  /** Places in the masks, from 1, rising. */
  readonly satellites: readonly number[];
  readonly signals: readonly number[];
  /** One for each satellite and signal, satellite by satellite; all filled where absent. */
  readonly cells?: readonly boolean[];
}

/** A multiple signal message whose observations are all zero. */
export function signalMessageBytes(fields: SignalFields): Uint8Array {
  const { number, station, epoch, more = false, satellites, signals } = fields;
  const cells = fields.cells ?? Array.from({ length: satellites.length * signals.length }, () => true);
  const filled = cells.filter((cell) => cell).length;
  const parts = { 4: [18, 48], 5: [36, 63], 6: [18, 65], 7: [36, 80] } as const;
  const kind = signalMessage(number)?.kind;
  if (kind !== 4 && kind !== 5 && kind !== 6 && kind !== 7) throw new Error(`no encoder for ${number}`);
  const [satelliteBits, cellBits] = parts[kind];
  return packed([
    [number, 12],
    [station, 12],
    [epoch, 30],
    [more ? 1 : 0, 1],
    [0, 18],
    ...Array.from({ length: 64 }, (_, index): Field => [satellites.includes(index + 1) ? 1 : 0, 1]),
    ...Array.from({ length: 32 }, (_, index): Field => [signals.includes(index + 1) ? 1 : 0, 1]),
    ...cells.map((cell): Field => [cell ? 1 : 0, 1]),
    ...satellites.map((): Field => [0, satelliteBits]),
    ...Array.from({ length: filled }, (): Field => [0, cellBits]),
  ]);
}

/** A 1004 or 1012 whose observations are all zero. */
export function legacyMessage(
  number: 1004 | 1012,
  station: number,
  epoch: number,
  satellites: readonly number[],
): Uint8Array {
  return packed([
    [number, 12],
    [station, 12],
    [epoch, number === 1004 ? 30 : 27],
    [0, 1],
    [satellites.length, 5],
    [0, 4],
    ...satellites.flatMap((satellite): readonly Field[] => [
      [satellite, 6],
      [0, (number === 1004 ? 125 : 130) - 6],
    ]),
  ]);
}
