import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bitsPerSecond, bytes, hertz, seconds } from '../quantities/brands.ts';
import { airRateLink } from './air-rate.ts';
import type { ScheduledMessage } from './load.ts';
import { fittingRates, staggered, streamLoad } from './load.ts';
import { loraLink } from './lora.ts';
import type { Constellation } from './message-size.ts';
import { messagePurpose, messageSizes, sendingBytes } from './message-size.ts';

const radio = loraLink({ spreading: 7, bandwidth: hertz(250_000), coding: 6 });
const sky: readonly (readonly [Constellation, number, number])[] = [
  ['GPS', 1077, 12],
  ['GLONASS', 1087, 8],
  ['Galileo', 1097, 10],
  ['BeiDou', 1127, 13],
];
const tracked = sky.map(([constellation, , satellites]) => ({ constellation, satellites, signals: 2 }));
const message = (number: number, every: number): ScheduledMessage => ({
  number,
  size: sendingBytes(messageSizes(number, { tracked }) ?? []),
  every: seconds(every),
});
const observations = (restEvery: number) =>
  sky.map(([, number], index) => message(number, index === 0 ? 1 : restEvery));
const isObservation = (number: number) => messagePurpose(number) === 'observations';

describe('43 satellites on two signals in MSM7 over SF7, 250 kHz, 4/6 (common practice)', () => {
  it('do not fit at 1 Hz: about 110 % of the airtime', () => {
    const load = streamLoad(observations(1), radio);
    expect(load?.averageAirtime).toBeGreaterThan(1.07);
    expect(load?.averageAirtime).toBeLessThan(1.13);
    expect(load?.ages.every((age) => age.oldest === undefined)).toBe(true);
  });

  it('fit with GPS at 1 Hz and the rest at 0.5 Hz: about 70 %, the fullest second 1.1 s', () => {
    const load = streamLoad(observations(2), radio);
    expect(load?.averageAirtime).toBeGreaterThan(0.67);
    expect(load?.averageAirtime).toBeLessThan(0.73);
    expect(load?.fullest.airtime).toBeGreaterThan(1.05);
    expect(load?.fullest.airtime).toBeLessThan(1.15);
  });

  it('fit in every second once the constellations are staggered over odd and even seconds', () => {
    const load = streamLoad(staggered(observations(2)), radio);
    expect(load?.fullest.airtime).toBeLessThan(1);
    expect(load?.averageAirtime).toBeLessThan(0.75);
  });

  it('are advised to go down to those very rates', () => {
    const fitting = fittingRates(observations(1), isObservation, radio, {
      average: 0.9,
      fullest: seconds(1),
    });
    expect(fitting?.map((entry) => [entry.number, entry.every])).toEqual([
      [1077, 1],
      [1087, 2],
      [1097, 2],
      [1127, 2],
    ]);
  });
});

describe('load', () => {
  it('counts bytes over the common period, second by second', () => {
    const load = streamLoad(
      [
        { number: 1077, size: bytes(100), every: seconds(1) },
        { number: 1006, size: bytes(50), every: seconds(5), offset: seconds(2) },
      ],
      airRateLink({ rate: bitsPerSecond(8000) }),
    );
    expect(load?.seconds.map((second) => second.bytes)).toEqual([100, 100, 150, 100, 100]);
    expect(load?.averageBytesPerSecond).toBe(110);
    expect(load?.averageAirtime).toBeCloseTo(0.11, 12);
    expect(load?.fullest.second).toBe(2);
    expect(load?.fullest.messages.map((part) => [part.number, part.airtime])).toEqual([
      [1077, 0.1],
      [1006, 0.05],
    ]);
  });

  it('is as old as the time between sendings plus the way through the air', () => {
    const load = streamLoad(
      [{ number: 1077, size: bytes(500), every: seconds(1) }],
      airRateLink({ rate: bitsPerSecond(8000) }),
    );
    expect(load?.ages[0]?.oldest).toBeCloseTo(1.5, 9);
  });

  it('gets older where a burst must wait for the one before it', () => {
    const load = streamLoad(
      [
        { number: 1077, size: bytes(300), every: seconds(1) },
        { number: 1087, size: bytes(1000), every: seconds(4) },
      ],
      airRateLink({ rate: bitsPerSecond(8000) }),
    );
    // The burst of second 0 takes 1.3 s, so that of second 1 arrives at 1.6 s, and the message of second 0 is 1.6 s old.
    expect(load?.ages[0]?.oldest).toBeCloseTo(1.6, 9);
    // In second 0 the long message comes last: 1.3 s after the next start, four seconds on.
    expect(load?.ages[1]?.oldest).toBeCloseTo(5.3, 9);
  });

  it('handles several sendings a second, and odd rates without an endless schedule', () => {
    const link = airRateLink({ rate: bitsPerSecond(9600) });
    const quick = streamLoad([{ number: 1077, size: bytes(60), every: seconds(0.2) }], link);
    expect(quick?.seconds.map((second) => second.bytes)).toEqual([300]);
    const odd = streamLoad(
      [7, 11, 13, 17, 19].map((every) => ({ number: 1006, size: bytes(27), every: seconds(every) })),
      link,
    );
    expect(odd?.seconds.length).toBe(3600);
  });

  it('leaves out what cannot be scheduled', () => {
    const link = airRateLink({ rate: bitsPerSecond(9600) });
    for (const every of [0, -1, 0.001, Number.NaN, Infinity]) {
      expect(streamLoad([{ number: 1, size: bytes(10), every: seconds(every) }], link)).toBeUndefined();
      expect(staggered([{ number: 1, size: bytes(10), every: seconds(every) }])).toHaveLength(1);
    }
  });

  it('staggering never changes what is sent, and never makes the fullest second fuller in bytes', () => {
    const anyMessage = fc.record({
      number: fc.integer({ min: 1001, max: 1230 }),
      size: fc.integer({ min: 10, max: 900 }).map(bytes),
      every: fc.constantFrom(1, 2, 5, 10, 30).map(seconds),
    });
    const link = airRateLink({ rate: bitsPerSecond(9600) });
    fc.assert(
      fc.property(fc.array(anyMessage, { minLength: 1, maxLength: 8 }), (messages) => {
        const before = streamLoad(messages, link);
        const after = streamLoad(staggered(messages), link);
        expect(after?.averageBytesPerSecond).toBe(before?.averageBytesPerSecond);
        expect(after?.fullest.airtime).toBeLessThanOrEqual((before?.fullest.airtime ?? 0) + 1e-9);
      }),
    );
  });

  it('finds no rates where even one in ten seconds is too much', () => {
    const link = airRateLink({ rate: bitsPerSecond(300) });
    expect(
      fittingRates(observations(1), isObservation, link, { average: 0.9, fullest: seconds(1) }),
    ).toBeUndefined();
  });
});
