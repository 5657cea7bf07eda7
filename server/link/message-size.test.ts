import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bits } from '../quantities/brands.ts';
import type { Constellation } from './message-size.ts';
import {
  frameBytes,
  messagePurpose,
  messageSizes,
  messageTitle,
  sendingBytes,
  signalMessage,
  signalMessageNumber,
} from './message-size.ts';

const nothing = { tracked: [] };
const payload = (number: number, content: Parameters<typeof messageSizes>[1]) =>
  messageSizes(number, content)?.map((size) => size.payload);

// Source of every size below, unless a line says otherwise: RTCM 10403.3, message tables.
describe('sizes of messages', () => {
  it.each([
    [1005, 152],
    [1006, 168],
    [1019, 488],
    [1020, 360],
    [1042, 511],
    [1044, 485],
    [1045, 496],
    [1046, 504],
  ])('%i has %i bits whatever is tracked', (number, size) => {
    expect(payload(number, nothing)).toEqual([size]);
  });

  it.each([1, 7, 12, 31])('legacy observations of %i satellites', (n) => {
    const content = {
      tracked: [
        { constellation: 'GPS', satellites: n, signals: 2 },
        { constellation: 'GLONASS', satellites: n, signals: 2 },
      ] as const,
    };
    expect(payload(1004, content)).toEqual([64 + 125 * n]);
    expect(payload(1012, content)).toEqual([61 + 130 * n]);
  });

  it('counts the characters of descriptions', () => {
    const content = {
      tracked: [],
      antennaDescriptor: 20,
      antennaSerial: 5,
      receiverDescriptor: 11,
      receiverFirmware: 4,
      receiverSerial: 7,
      text: 30,
      announced: 3,
      biases: 2,
    };
    expect(payload(1007, content)).toEqual([40 + 8 * 20]);
    expect(payload(1008, content)).toEqual([48 + 8 * 25]);
    expect(payload(1033, content)).toEqual([72 + 8 * 47]);
    expect(payload(1029, content)).toEqual([72 + 8 * 30]);
    expect(payload(1013, content)).toEqual([70 + 29 * 3]);
    expect(payload(1230, content)).toEqual([32 + 16 * 2]);
  });

  it('8 satellites on 2 signals take 144 bytes in an MSM4 and 226 in an MSM7', () => {
    const content = { tracked: [{ constellation: 'GPS', satellites: 8, signals: 2 }] as const };
    expect(messageSizes(1074, content)?.map((size) => size.frame)).toEqual([144]);
    expect(messageSizes(1077, content)?.map((size) => size.frame)).toEqual([226]);
  });

  it.each([
    [4, 18, 48],
    [5, 36, 63],
    [6, 18, 65],
    [7, 36, 80],
  ] as const)('MSM%i of any constellation: 169 + cells + %i a satellite + %i a cell', (kind, a, b) => {
    const constellations: readonly Constellation[] = [
      'GPS',
      'GLONASS',
      'Galileo',
      'SBAS',
      'QZSS',
      'BeiDou',
      'NavIC',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...constellations),
        fc.integer({ min: 1, max: 64 }),
        fc.integer({ min: 1, max: 32 }),
        (constellation, satellites, signals) => {
          fc.pre(satellites * signals <= 64);
          const number = signalMessageNumber({ constellation, kind });
          const cells = satellites * signals;
          expect(payload(number, { tracked: [{ constellation, satellites, signals }] })).toEqual([
            169 + cells + satellites * a + cells * b,
          ]);
        },
      ),
    );
  });

  it('splits more than 64 cells into messages of whole satellites', () => {
    const sizes = payload(1127, { tracked: [{ constellation: 'BeiDou', satellites: 20, signals: 4 }] });
    const bitsOf = (satellites: number) => 169 + satellites * 4 + satellites * 36 + satellites * 4 * 80;
    expect(sizes).toEqual([bitsOf(16), bitsOf(4)]);
  });

  it('never makes a frame that the ten bits of its length cannot say', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 64 }), fc.integer({ min: 1, max: 32 }), (satellites, signals) => {
        const sizes = messageSizes(1077, { tracked: [{ constellation: 'GPS', satellites, signals }] }) ?? [];
        expect(sizes.length).toBeGreaterThan(0);
        for (const size of sizes) expect(size.frame).toBeLessThanOrEqual(1023 + 6);
      }),
    );
  });

  it('sends nothing for a constellation that is not tracked, and knows no size for an unknown number', () => {
    expect(messageSizes(1087, { tracked: [{ constellation: 'GPS', satellites: 9, signals: 2 }] })).toEqual(
      [],
    );
    expect(messageSizes(1234, nothing)).toBeUndefined();
    expect(messageSizes(1078, nothing)).toBeUndefined();
    expect(
      messageSizes(1077, { tracked: [{ constellation: 'GPS', satellites: -3, signals: 2 }] }),
    ).toBeUndefined();
    expect(
      messageSizes(1077, { tracked: [{ constellation: 'GPS', satellites: 9, signals: 1e9 }] }),
    ).toBeUndefined();
    expect(messageSizes(1029, { tracked: [], text: Number.NaN })).toBeUndefined();
  });

  it('fills up to whole bytes and adds six for the frame', () => {
    expect(frameBytes(bits(152))).toBe(25); // the standard's 1005 example is 25 bytes long
    expect(frameBytes(bits(153))).toBe(26);
    expect(sendingBytes(messageSizes(1006, nothing) ?? [])).toBe(27);
  });

  it('names messages', () => {
    expect(signalMessage(1137)).toEqual({ constellation: 'NavIC', kind: 7 });
    expect(signalMessage(1070)).toBeUndefined();
    expect(signalMessage(1141)).toBeUndefined();
    expect(messagePurpose(1124)).toBe('observations');
    expect(messagePurpose(1006)).toBe('position');
    expect(messagePurpose(4072)).toBeUndefined();
    expect(messageTitle(1095)).toBe('Galileo observations, MSM5');
  });
});
