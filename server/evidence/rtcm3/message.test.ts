import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Constellation } from '../../link/message-size.ts';
import { messageSizes, signalMessageNumber } from '../../link/message-size.ts';
import { crc24q } from './crc.ts';
import {
  antennaMessage,
  biasMessage,
  descriptionMessage,
  framed,
  legacyMessage,
  packed,
  positionMessage,
  signalMessageBytes,
} from './encoder.test-support.ts';
import { frameReader } from './frames.ts';
import { readMessage } from './message.ts';

// Source: the example of message 1005 in RTCM 10403.
const example = Uint8Array.from(
  'D3 00 13 3E D7 D3 02 02 98 0E DE EF 34 B4 BD 62 AC 09 41 98 6F 33 36 0B 98'
    .split(' ')
    .map((byte) => Number.parseInt(byte, 16)),
);

const payloadOf = (frame: Uint8Array) => {
  const payloads: Uint8Array[] = [];
  const reader = frameReader(
    (found) => payloads.push(found.payload),
    () => undefined,
  );
  reader.push(frame);
  reader.finish();
  return payloads;
};

const station = fc.integer({ min: 0, max: 4095 });
const text = fc.string({
  unit: fc.integer({ min: 33, max: 126 }).map((code) => String.fromCharCode(code)),
  maxLength: 31,
});
/** Coordinates somewhere near the Earth's surface, in tenths of a millimetre. */
const place = fc
  .tuple(
    fc.double({ min: -1, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
    fc.integer({ min: 63_550_000_000, max: 63_850_000_000 }),
  )
  .map(([sine, longitude, radius]) => {
    const cosine = Math.sqrt(1 - sine * sine);
    return {
      x: Math.round(radius * cosine * Math.cos(longitude)) || 0,
      y: Math.round(radius * cosine * Math.sin(longitude)) || 0,
      z: Math.round(radius * sine) || 0,
    };
  });

describe('the published values', () => {
  it('CRC-24Q of the ASCII digits 1 to 9 is CDE703', () => {
    expect(crc24q(new TextEncoder().encode('123456789'))).toBe(0xcde703);
  });

  it("the standard's 1005 decodes to station 2003 and its coordinates, exactly", () => {
    const [payload = new Uint8Array()] = payloadOf(example);
    expect(readMessage(payload)).toMatchObject({
      kind: 'position',
      number: 1005,
      station: 2003,
      position: { x: 1114104.5999, y: -4850729.7108, z: 3975521.4643 },
      virtual: false,
    });
  });

  it("the tests' own encoder writes the standard's 1005, but for the indicators", () => {
    const bytes = framed(positionMessage({ station: 2003, x: 11141045999, y: -48507297108, z: 39755214643 }));
    expect(bytes.length).toBe(example.length);
    const [mine = new Uint8Array(), theirs = new Uint8Array()] = [...payloadOf(bytes), ...payloadOf(example)];
    const positionOf = (payload: Uint8Array) => {
      const message = readMessage(payload);
      return message.kind === 'position' ? message.position : undefined;
    };
    expect(positionOf(mine)).toEqual(positionOf(theirs));
  });
});

describe('random messages decode to themselves', () => {
  it('1005 and 1006', () => {
    fc.assert(
      fc.property(
        station,
        place,
        fc.option(fc.integer({ min: 0, max: 65_535 }), { nil: undefined }),
        fc.integer({ min: 0, max: 63 }),
        fc.boolean(),
        (id, { x, y, z }, height, frameYear, virtual) => {
          const fields = { station: id, x, y, z, frameYear, virtual };
          const message = readMessage(positionMessage(height === undefined ? fields : { ...fields, height }));
          expect(message).toEqual({
            kind: 'position',
            number: height === undefined ? 1005 : 1006,
            station: id,
            position: { x: x / 10_000, y: y / 10_000, z: z / 10_000 },
            frameYear,
            virtual,
            ...(height === undefined ? {} : { antennaHeight: height / 10_000 }),
          });
        },
      ),
    );
  });

  it('1007, 1008 and 1033', () => {
    fc.assert(
      fc.property(
        station,
        fc.integer({ min: 0, max: 255 }),
        fc.tuple(text, text, text, text, text),
        (id, antennaSetup, texts) => {
          const [antennaDescriptor, antennaSerial, receiverDescriptor, receiverFirmware, receiverSerial] =
            texts;
          const common = { kind: 'equipment', station: id, antennaDescriptor, antennaSetup };
          expect(readMessage(antennaMessage(id, antennaDescriptor, antennaSetup))).toEqual({
            ...common,
            number: 1007,
          });
          expect(readMessage(antennaMessage(id, antennaDescriptor, antennaSetup, antennaSerial))).toEqual({
            ...common,
            number: 1008,
            antennaSerial,
          });
          expect(readMessage(descriptionMessage(id, antennaSetup, texts))).toEqual({
            ...common,
            ...{ number: 1033, antennaSerial, receiverDescriptor, receiverFirmware, receiverSerial },
          });
        },
      ),
    );
  });

  it('1230', () => {
    const bias = fc.option(fc.integer({ min: -32_767, max: 32_767 }), { nil: undefined });
    fc.assert(
      fc.property(station, fc.boolean(), fc.tuple(bias, bias, bias, bias), (id, aligned, biases) => {
        const message = readMessage(biasMessage(id, aligned, biases));
        expect(message).toMatchObject({ kind: 'biases', station: id, aligned });
        const read = message.kind === 'biases' ? message.biases : {};
        (['1C', '1P', '2C', '2P'] as const).forEach((signal, index) => {
          const sent = biases[index];
          if (sent === undefined) expect(read[signal]).toBeUndefined();
          else expect(read[signal]).toBeCloseTo(sent / 50, 9);
        });
      }),
    );
  });

  it('a bias that is sent as not known is a hole', () => {
    const message = readMessage(biasMessage(7, true, [undefined, -32_768, undefined, 50]));
    expect(message).toMatchObject({ kind: 'biases', biases: { '2P': 1 } });
    expect(message.kind === 'biases' && '1P' in message.biases).toBe(false);
  });

  it('MSM4 to MSM7 of every constellation, split cells and all', () => {
    const constellations: readonly Constellation[] = [
      ...(['GPS', 'GLONASS', 'Galileo', 'SBAS', 'QZSS', 'BeiDou', 'NavIC'] as const),
    ];
    const places = (most: number, count: number) =>
      fc
        .uniqueArray(fc.integer({ min: 1, max: most }), { minLength: 1, maxLength: count })
        .map((all) => all.sort((one, other) => one - other));
    fc.assert(
      fc.property(
        fc.constantFrom(...constellations),
        fc.constantFrom(4, 5, 6, 7),
        station,
        fc.integer({ min: 0, max: 604_799 }),
        places(64, 16),
        places(32, 4),
        fc.array(fc.boolean(), { minLength: 64, maxLength: 64 }),
        (constellation, kind, id, seconds, satellites, signals, filled) => {
          const number = signalMessageNumber({ constellation, kind: kind as 4 | 5 | 6 | 7 });
          const cells = filled.slice(0, satellites.length * signals.length);
          const day = 86_400_000;
          const milliseconds = seconds * 1000;
          const glonass = Math.floor(milliseconds / day) * 2 ** 27 + (milliseconds % day);
          const epoch = constellation === 'GLONASS' ? glonass : milliseconds;
          const message = readMessage(
            signalMessageBytes({ number, station: id, epoch, satellites, signals, cells }),
          );
          expect(message).toMatchObject({
            ...{ kind: 'observations', number, station: id, constellation, more: false },
            cells: cells.filter((cell) => cell).length,
          });
          if (message.kind !== 'observations') return;
          expect(message.satellites.map((name) => Number(name.slice(1)))).toEqual(
            satellites.map((index) => (constellation === 'SBAS' ? index + 19 : index)),
          );
          expect(message.signals).toHaveLength(signals.length);
          expect(message.epoch.milliseconds).toBe(milliseconds);
        },
      ),
    );
  });

  it('a full MSM is as large as the size table says', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 16 }), fc.integer({ min: 1, max: 4 }), (satellites, signals) => {
        const upTo = (count: number) => Array.from({ length: count }, (_, index) => index + 1);
        const bytes = framed(
          signalMessageBytes({
            number: 1077,
            station: 1,
            epoch: 0,
            satellites: upTo(satellites),
            signals: upTo(signals),
          }),
        );
        const sizes = messageSizes(1077, { tracked: [{ constellation: 'GPS', satellites, signals }] });
        expect(sizes?.map((size) => size.frame)).toEqual([bytes.length]);
      }),
    );
  });

  it('1004 and 1012', () => {
    fc.assert(
      fc.property(
        station,
        fc.integer({ min: 0, max: 86_399_999 }),
        fc.uniqueArray(fc.integer({ min: 1, max: 24 }), { maxLength: 14 }),
        (id, epoch, satellites) => {
          for (const [number, letter] of [
            [1004, 'G'],
            [1012, 'R'],
          ] as const) {
            const message = readMessage(legacyMessage(number, id, epoch, satellites));
            expect(message).toMatchObject({
              kind: 'observations',
              number,
              station: id,
              cells: 2 * satellites.length,
            });
            if (message.kind !== 'observations') return;
            expect(message.epoch.milliseconds).toBe(epoch);
            expect(message.satellites).toEqual(satellites.map((n) => letter + String(n).padStart(2, '0')));
          }
        },
      ),
    );
  });
});

describe('what is not a message', () => {
  it('never throws, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 80 }), (bytes) => void readMessage(bytes)),
      { numRuns: 2000 },
    );
  });

  it('never throws and never reads a position where the number is known and the rest is random', () => {
    const numbers = [1001, 1004, 1005, 1006, 1007, 1008, 1012, 1013, 1029, 1033, 1077, 1087, 1107, 1230];
    fc.assert(
      fc.property(fc.constantFrom(...numbers), fc.uint8Array({ maxLength: 60 }), (number, bytes) => {
        const message = readMessage(Uint8Array.from([number >> 4, ((number & 15) << 4) | 3, ...bytes]));
        if (message.kind !== 'position') return;
        // Random coordinates that happen to lie on the Earth are a position, and nothing else is.
        const { x, y, z } = message.position;
        expect(bytes.length).toBe(number === 1005 ? 17 : 19);
        expect(Math.abs(Math.hypot(x, y, z) - 6_371_000)).toBeLessThan(75_000);
      }),
      { numRuns: 3000 },
    );
  });

  it('reads no position from a 1005 or 1006 of another length', () => {
    const good = positionMessage({
      station: 1,
      x: 47551480140,
      y: -7211829940,
      z: 41752114130,
      height: 15330,
    });
    expect(readMessage(good).kind).toBe('position');
    for (let length = 2; length <= 60; length += 1) {
      if (length === 21) continue;
      const other = new Uint8Array(length);
      other.set(good.subarray(0, Math.min(length, good.length)));
      expect(readMessage(other).kind).toBe('malformed');
    }
  });

  it('reads no position away from the Earth', () => {
    const message = readMessage(positionMessage({ station: 5, x: 0, y: 0, z: 0 }));
    expect(message).toMatchObject({ kind: 'malformed' });
    expect(message.kind === 'malformed' && message.sentence).toContain('station 5');
  });

  it('takes no more cells than a message holds', () => {
    const upTo = (count: number) => Array.from({ length: count }, (_, index) => index + 1);
    const bytes = signalMessageBytes({
      ...{ number: 1077, station: 1, epoch: 0, satellites: upTo(33), signals: upTo(2) },
      cells: upTo(66).map(() => false),
    });
    expect(readMessage(bytes).kind).toBe('malformed');
  });

  it('takes no time beyond the end of the week or of the day', () => {
    const at = (number: number, epoch: number) =>
      readMessage(signalMessageBytes({ number, station: 1, epoch, satellites: [1], signals: [2] })).kind;
    expect([at(1077, 604_799_999), at(1077, 604_800_000)]).toEqual(['observations', 'malformed']);
    expect([at(1087, 86_400_999), at(1087, 86_401_000)]).toEqual(['observations', 'malformed']);
    expect(readMessage(legacyMessage(1012, 1, 100_000_000, [1])).kind).toBe('malformed');
  });

  it('packs fields as the standard does', () => {
    expect([
      ...packed([
        [1005, 12],
        [2003, 12],
      ]),
    ]).toEqual([0x3e, 0xd7, 0xd3]);
    expect([...packed([[-1, 3]])]).toEqual([0b11100000]);
  });
});
