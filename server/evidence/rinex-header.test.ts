import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRinexHeader } from './rinex-header.ts';

const line = (content: string, label: string) => `${content.padEnd(60).slice(0, 60)}${label.padEnd(20)}\n`;
const read = (...lines: readonly string[]) => readRinexHeader(new TextEncoder().encode(lines.join('')));
const end = line('', 'END OF HEADER');

// Column formats: RINEX 2.11, table A1; 3.05, table A2; 4.00, table A2.
const body = [
  line('PM-14', 'MARKER NAME'),
  line('0014', 'MARKER NUMBER'),
  line('2207                RECEIVER X          1.02', 'REC # / TYPE / VERS'),
  line('0413                CHOKE_RING_A1   NONE', 'ANT # / TYPE'),
  line('  4755148.0140  -721182.9940  4175211.4130', 'APPROX POSITION XYZ'),
  line('        1.5330        0.0010       -0.0020', 'ANTENNA: DELTA H/E/N'),
  line('     1.000', 'INTERVAL'),
  line('  2026     5    19     7    50    0.0000000     GPS', 'TIME OF FIRST OBS'),
];

describe('the header of an observation file', () => {
  it.each([
    ['     2.11           OBSERVATION DATA    M (MIXED)', 2.11],
    ['     3.05           OBSERVATION DATA    M: MIXED', 3.05],
    ['     4.00           OBSERVATION DATA    M: MIXED', 4],
  ])('%s', (first, version) => {
    expect(read(line(first, 'RINEX VERSION / TYPE'), ...body, end)).toEqual({
      version,
      markerName: 'PM-14',
      markerNumber: '0014',
      receiver: { serial: '2207', type: 'RECEIVER X', firmware: '1.02' },
      antenna: { serial: '0413', type: 'CHOKE_RING_A1   NONE' },
      approximatePosition: { x: 4755148.014, y: -721182.994, z: 4175211.413 },
      antennaDelta: { height: 1.533, east: 0.001, north: -0.002 },
      interval: 1,
      firstObservation: { time: Date.UTC(2026, 4, 19, 7, 50) / 1000, scale: 'GPS' },
      problems: [],
    });
  });

  const head = line('     3.05           OBSERVATION DATA    M', 'RINEX VERSION / TYPE');

  it('may follow the two lines of a compression', () => {
    const compressed = line('3.0                 COMPACT RINEX FORMAT', 'CRINEX VERS   / TYPE');
    const program = line('PROGRAM', 'CRINEX PROG / DATE');
    expect(read(compressed, program, head, ...body, end)).toMatchObject({ version: 3.05, problems: [] });
  });

  it('stops at its end, whatever the observations look like', () => {
    const facts = read(head, line('A', 'MARKER NAME'), end, line('B', 'MARKER NAME'));
    expect(facts.markerName).toBe('A');
    expect(facts.problems).toEqual([]);
  });

  it('tells, with the line, what cannot be read, and leaves it out', () => {
    const facts = read(
      head,
      line('        1,5330        0.0010       -0.0020', 'ANTENNA: DELTA H/E/N'),
      line('        0.0000        0.0000        0.0000', 'APPROX POSITION XYZ'),
      line('  2026    13    19     7    50    0.0000000     GPS', 'TIME OF FIRST OBS'),
      end,
    );
    expect(facts.antennaDelta).toBeUndefined();
    expect(facts.approximatePosition).toBeUndefined();
    expect(facts.firstObservation).toBeUndefined();
    expect(facts.problems.map((problem) => problem.line)).toEqual([2, 3, 4]);
  });

  it('tells a second statement that differs from the first', () => {
    const facts = read(
      head,
      line('A', 'MARKER NAME'),
      line('A', 'MARKER NAME'),
      line('B', 'MARKER NAME'),
      end,
    );
    expect(facts.markerName).toBe('A');
    expect(facts.problems).toMatchObject([{ line: 4 }]);
  });

  it.each([
    ['', /empty/],
    ['hello\n', /not a RINEX file/],
    [head, /no end/],
    [line('     3.05           NAVIGATION DATA     M', 'RINEX VERSION / TYPE') + end, /no observations/],
    [line('     1.00           OBSERVATION DATA    M', 'RINEX VERSION / TYPE') + end, /version "1.00"/],
  ])('says what a file is not: %j', (text, sentence) => {
    expect(read(text).problems[0]?.sentence).toMatch(sentence);
  });

  it('never throws, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 2000 }), fc.boolean(), (bytes, begun) => {
        const start = new TextEncoder().encode(begun ? head : '');
        expect(readRinexHeader(Uint8Array.from([...start, ...bytes])).problems.length).toBeGreaterThan(0);
      }),
    );
  });
});
