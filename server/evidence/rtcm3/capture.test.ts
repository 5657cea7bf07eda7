import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { captureReader } from './capture.ts';
import {
  antennaMessage,
  biasMessage,
  framed,
  joinedBytes,
  legacyMessage,
  packed,
  positionMessage,
  signalMessageBytes,
} from './encoder.test-support.ts';
import { utcSecondsOfDay } from './stream-clock.ts';

function capture(...parts: readonly Uint8Array[]) {
  const reader = captureReader();
  for (const part of parts) reader.push(part);
  return reader.finish();
}

const here = { station: 12, x: 47551480140, y: -7211829940, z: 41752114130 };
const there = { ...here, z: here.z + 2500 };
const position = (fields: Parameters<typeof positionMessage>[0]) => framed(positionMessage(fields));
const gps = (seconds: number, satellites: readonly number[] = [3, 7, 19]) =>
  framed(
    signalMessageBytes({ number: 1077, station: 12, epoch: seconds * 1000, satellites, signals: [2, 10] }),
  );

describe('a capture', () => {
  it('tells what one base broadcasts', () => {
    const facts = capture(
      position({ ...here, height: 15330 }),
      framed(antennaMessage(12, 'ABC1234     NONE', 0, 'S-17')),
      framed(biasMessage(12, true, [0, undefined, 0, undefined])),
      gps(100),
      gps(101, [3, 7]),
      framed(
        packed([
          [1019, 12],
          [3, 6],
          [0, 470],
        ]),
      ),
    );
    const [station] = facts.stations;
    expect(facts.stations).toHaveLength(1);
    expect(station?.positions[0]?.value).toEqual({
      position: { x: 4755148.014, y: -721182.994, z: 4175211.413 },
      antennaHeight: 1.533,
      frameYear: 0,
      virtual: false,
    });
    expect(station?.equipment[0]?.value).toMatchObject({
      antennaDescriptor: 'ABC1234     NONE',
      antennaSerial: 'S-17',
    });
    expect(station?.biases[0]?.value.biases).toEqual({ '1C': 0, '2C': 0 });
    expect(station?.observed).toEqual([
      {
        ...{
          constellation: 'GPS',
          numbers: [1077],
          satellites: ['G03', 'G07', 'G19'],
          signals: ['1C', '2W'],
        },
        ...{ epochs: 2, fewestSatellites: 2, mostSatellites: 3 },
      },
    ]);
    expect(facts.stationless).toMatchObject([{ number: 1019, count: 1 }]);
    expect([facts.begin, facts.end, facts.strayBytes, facts.problems]).toEqual([100, 101, 0, []]);
  });

  it('tells a base that was moved in the middle', () => {
    const facts = capture(position(here), gps(100), position(here), gps(101), position(there), gps(102));
    expect(
      facts.stations[0]?.positions.map(({ value, count, first }) => [value.position.z, count, first.time]),
    ).toEqual([
      [4175211.413, 2, undefined],
      [4175211.663, 1, 101],
    ]);
    expect(facts.problems.map((problem) => problem.sentence).join()).toMatch(
      /one after the other.*0\.2500 m/,
    );
  });

  it('tells an antenna height that was keyed anew', () => {
    const facts = capture(position({ ...here, height: 15330 }), position({ ...here, height: 12830 }));
    expect(facts.stations[0]?.positions.map((sighting) => sighting.value.antennaHeight)).toEqual([
      1.533, 1.283,
    ]);
    expect(facts.problems.map((problem) => problem.sentence).join()).toMatch(
      /the same but for the antenna height/,
    );
  });

  it('tells two bases that share a number', () => {
    const facts = capture(position(here), position(there), position(here), position(there));
    expect(facts.problems.map((problem) => problem.sentence).join()).toMatch(/in turn/);
  });

  it('keeps stations apart', () => {
    const facts = capture(position(here), position({ ...there, station: 13 }));
    expect(facts.stations.map((station) => [station.station, station.positions.length])).toEqual([
      [12, 1],
      [13, 1],
    ]);
    expect(facts.problems).toEqual([]);
  });

  it('takes a 1005 and a 1006 of one place for one position', () => {
    const facts = capture(position(here), position({ ...here, height: 15330 }), position(here));
    expect(facts.stations[0]?.positions).toMatchObject([{ count: 3, value: { antennaHeight: 1.533 } }]);
    expect(facts.problems).toEqual([]);
  });

  it('counts a 1005 once, with the height that was in force, where the height was keyed anew', () => {
    const before = position({ ...here, height: 12830 });
    const after = position({ ...here, height: 15330 });
    const facts = capture(
      ...[gps(100), position(here), before, gps(101), position(here), before],
      ...[gps(102), position(here), after, gps(103), position(here), after, gps(104), position(here)],
    );
    const seen = facts.stations[0]?.positions.map(({ value, count, first, last }) => [
      ...[value.antennaHeight, count, first.time, last.time],
    ]);
    // The 1005 of second 102 comes before its 1006: nothing has said yet that the height is another one.
    expect(seen).toEqual([
      [1.283, 5, 100, 102],
      [1.533, 4, 102, 104],
    ]);
    expect(facts.problems.map(({ sentence }) => sentence).join()).toMatch(/one after the other/);
  });

  it('finds rates and gaps, across the end of a week too', () => {
    const parts = Array.from({ length: 60 }, (_, index) => index)
      .filter((index) => index < 40 || index > 46)
      .flatMap((index) => {
        const second = (604_780 + index) % 604_800;
        return index % 10 === 0 ? [gps(second), position(here)] : [gps(second)];
      });
    const facts = capture(...parts);
    const observation = facts.stations[0]?.messages.find((message) => message.number === 1077);
    const place = facts.stations[0]?.messages.find((message) => message.number === 1005);
    expect(observation?.interval).toBe(1);
    expect(observation?.gaps).toMatchObject([{ from: 604_819, duration: 8 }]);
    expect(place?.interval).toBe(10);
    expect(facts.begin).toBe(604_780);
    expect(facts.end).toBe(604_839);
  });

  it('puts the GLONASS and BeiDou clocks beside that of GPS', () => {
    // Day 2 of the week, 10:00:00 GPS: 9:59:42 UTC, 12:59:42 in Moscow, 9:59:46 BeiDou time.
    const day = 86_400_000;
    const epoch = (hours: number, minutes: number, seconds: number) =>
      ((hours * 60 + minutes) * 60 + seconds) * 1000;
    const message = (number: number, milliseconds: number) =>
      framed(signalMessageBytes({ number, station: 12, epoch: milliseconds, satellites: [1], signals: [2] }));
    const facts = capture(
      message(1074, 2 * day + epoch(10, 0, 0)),
      framed(
        signalMessageBytes({
          ...{ number: 1084, station: 12, satellites: [1], signals: [2] },
          epoch: 2 * 2 ** 27 + epoch(12, 59, 42),
        }),
      ),
      message(1124, 2 * day + epoch(9, 59, 46)),
      framed(legacyMessage(1012, 12, epoch(12, 59, 42), [4])),
    );
    expect(facts.begin).toBe((2 * day + epoch(10, 0, 0)) / 1000);
    expect(facts.end).toBe(facts.begin);
  });

  it('is of the week of the others, when it begins with a clock that knows no day', () => {
    // Day 3, 9:59:42 UTC, in Moscow; then 10:00:01 GPS time.
    const noon = 3 * 86_400 + 10 * 3600;
    const glonass = framed(legacyMessage(1012, 12, (12 * 3600 + 59 * 60 + 42) * 1000, [4]));
    for (const second of [noon, noon + 86_400, noon - 86_400]) {
      const place = position(here);
      const facts = capture(glonass, place, ...[1, 2, 3].map((after) => gps(second + after)), place);
      expect([facts.begin, facts.end]).toEqual([second, second + 3]);
      const bytes = glonass.length + 2 * place.length + 3 * gps(1).length;
      expect(facts.averageBytesPerSecond).toBeCloseTo(bytes / 4, 9);
      expect(facts.stations[0]?.messages.flatMap(({ gaps }) => gaps)).toEqual([]);
      expect(facts.problems).toEqual([]);
    }
  });

  it('counts the parts of a split epoch as one sending', () => {
    const part = (second: number, satellites: readonly number[], more: boolean) =>
      framed(
        signalMessageBytes({
          number: 1127,
          station: 12,
          epoch: second * 1000,
          more,
          satellites,
          signals: [2, 14],
        }),
      );
    const facts = capture(
      part(10, [1, 2], true),
      part(10, [3], false),
      part(12, [1, 2], true),
      part(12, [3], false),
    );
    expect(facts.stations[0]?.messages).toMatchObject([{ number: 1127, count: 4, interval: 2, gaps: [] }]);
    expect(facts.stations[0]?.observed).toMatchObject([{ epochs: 2, mostSatellites: 3 }]);
  });

  it('counts bytes a second, and the fullest second', () => {
    const bytes = gps(0).length;
    const facts = capture(gps(10), gps(11), position(here), gps(12), gps(13));
    expect(facts.averageBytesPerSecond).toBe((4 * bytes + 25) / 4);
    expect(facts.fullestSecond).toEqual({ time: 11, bytes: bytes + 25 });
  });

  it('starts the seconds anew after a jump back', () => {
    const facts = capture(gps(1000), gps(100), gps(101), gps(101, [3, 7, 19, 22]));
    expect(facts.fullestSecond?.time).toBe(101);
  });

  it('says the time of day in UTC', () => {
    // Monday of the GPS week, 08:25:18 GPS time.
    expect(utcSecondsOfDay(86_400 + 8 * 3600 + 25 * 60 + 18, 18)).toBe(8 * 3600 + 25 * 60);
  });

  it('says so when nothing is in it, and when a clock jumps back', () => {
    expect(capture().problems).toMatchObject([{ sentence: 'The file is empty.' }]);
    expect(capture(new Uint8Array(100)).problems.at(-1)?.sentence).toMatch(/no RTCM 3 message/);
    expect(capture(gps(1000), gps(100)).problems.map((problem) => problem.sentence)).toEqual([
      'The clock of the stream jumps back by 900 s: captures may have been joined.',
    ]);
  });

  it('never throws and never yields a position from random bytes, truncated frames or wrong lengths', () => {
    const good = position({ ...here, height: 1 });
    const hostile = fc.oneof(
      fc.uint8Array({ maxLength: 300 }),
      fc.integer({ min: 0, max: good.length - 1 }).map((length) => good.subarray(0, length)),
      fc
        .integer({ min: 2, max: 40 })
        .filter((length) => length !== 21)
        .map((length) => {
          const payload = new Uint8Array(length);
          payload.set(good.subarray(3, 3 + Math.min(length, 21)));
          return framed(payload);
        }),
    );
    fc.assert(
      fc.property(fc.array(hostile, { maxLength: 12 }), (parts) => {
        // Two broken halves may make a whole again: a zero between them keeps that from happening.
        const facts = capture(...parts.map((part) => joinedBytes(part, Uint8Array.of(0))));
        expect(facts.stations.flatMap((station) => station.positions)).toEqual([]);
      }),
      { seed: 7, numRuns: 500 },
    );
  });

  it('keeps no more from a long capture than from a short one', () => {
    const epochs = (count: number) => {
      const reader = captureReader();
      for (let second = 0; second < count; second += 1) {
        reader.push(gps(second % 604_800));
        if (second % 10 === 0) reader.push(position(here));
      }
      return JSON.stringify(reader.finish()).length;
    };
    expect(epochs(20_000)).toBeLessThan(epochs(200) + 50);
  });
});
