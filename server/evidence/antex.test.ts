import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { antennaType, antexReader, isValidAt } from './antex.ts';

const line = (content: string, label: string) => `${content.padEnd(60).slice(0, 60)}${label.padEnd(20)}\n`;
const head = (kind: string) =>
  line('     1.4            M', 'ANTEX VERSION / SYST') +
  line(`${kind}                   REFERENCE_ANT   NONE`, 'PCV TYPE / REFANT') +
  line('', 'END OF HEADER');

// Layout and columns: ANTEX 1.4 (IGS, 2010).
function antenna(
  type: string,
  offsets: Readonly<Record<string, readonly [number, number, number]>>,
  rest = '',
  serial = '',
) {
  const pattern = `   NOAZI${Array.from({ length: 19 }, (_, index) => (index / 10).toFixed(2).padStart(8)).join('')}\n`;
  const offset = ([north, east, up]: readonly [number, number, number]) =>
    line([north, east, up].map((value) => value.toFixed(2).padStart(10)).join(''), 'NORTH / EAST / UP');
  const frequencies = Object.entries(offsets).map(
    ([name, values]) =>
      line(`   ${name}`, 'START OF FREQUENCY') +
      offset(values) +
      pattern.repeat(73) +
      line(`   ${name}`, 'END OF FREQUENCY'),
  );
  const errors = Object.entries(offsets).map(
    ([name]) =>
      line(`   ${name}`, 'START OF FREQ RMS') + offset([9, 9, 9]) + line(`   ${name}`, 'END OF FREQ RMS'),
  );
  return (
    line('', 'START OF ANTENNA') +
    line(type.padEnd(20) + serial.padEnd(20) + rest, 'TYPE / SERIAL NO') +
    line('ROBOT               INSTITUTE                5    12-MAR-24', 'METH / BY / # / DATE') +
    line('  2020     1     1     0     0    0.0000000', 'VALID FROM') +
    line('  2029    12    31    23    59   59.9999999', 'VALID UNTIL') +
    frequencies.join('') +
    errors.join('') +
    line('', 'END OF ANTENNA')
  );
}

function read(text: string, wanted: string, chunk = 1000) {
  const reader = antexReader(wanted);
  const bytes = new TextEncoder().encode(text);
  for (let from = 0; from < bytes.length; from += chunk) reader.push(bytes.subarray(from, from + chunk));
  return reader.finish();
}

const file =
  head('A') +
  antenna('BLOCK X', { G01: [1, 2, 3] }, 'G032      1990-103A ', 'G01') +
  antenna('CHOKE_RING_A1   NONE', { G01: [0.12, -0.34, 92.05], G02: [0.5, 0.25, 118.4], R01: [0, 0, 91] }) +
  antenna('CHOKE_RING_A1   DOME', { G01: [0.1, -0.3, 95] }) +
  antenna('CHOKE_RING_A1   NONE', { G01: [0.2, -0.4, 92.2] }, '', '0413') +
  antenna('PLATE_B2        NONE', { G01: [0, 0, 60] });

describe('an ANTEX file', () => {
  it('gives the offsets by frequency in metres, patterns and their errors passed over', () => {
    const facts = read(file, 'choke_ring_a1 none');
    expect(facts).toMatchObject({
      version: 1.4,
      calibration: 'absolute',
      types: 3,
      nearTypes: [],
      problems: [],
    });
    expect(facts.found.map((one) => one.serial)).toEqual(['', '0413']);
    const [type] = facts.found;
    expect(type).toMatchObject({
      type: 'CHOKE_RING_A1   NONE',
      method: 'ROBOT',
      agency: 'INSTITUTE',
      date: '12-MAR-24',
      validFrom: Date.UTC(2020, 0, 1) / 1000,
    });
    expect(type?.offsets.map((offset) => offset.frequency)).toEqual(['G01', 'G02', 'R01']);
    const [first] = type?.offsets ?? [];
    expect(first?.north).toBeCloseTo(0.00012, 12);
    expect(first?.east).toBeCloseTo(-0.00034, 12);
    expect(first?.up).toBeCloseTo(0.09205, 12);
  });

  it('knows when a calibration holds', () => {
    const [type] = read(file, 'CHOKE_RING_A1').found;
    expect(type && isValidAt(type, Date.UTC(2026, 4, 19) / 1000)).toBe(true);
    expect(type && isValidAt(type, Date.UTC(2019, 4, 19) / 1000)).toBe(false);
    expect(type && isValidAt(type, Date.UTC(2031, 4, 19) / 1000)).toBe(false);
  });

  it('tells relative calibrations, and what they refer to', () => {
    expect(read(head('R'), 'X')).toMatchObject({
      calibration: 'relative',
      referenceAntenna: 'REFERENCE_ANT   NONE',
    });
    expect(read(head('Q'), 'X').problems).toMatchObject([{ line: 2 }]);
  });

  it('suggests other radomes, then near names', () => {
    expect(read(file, 'CHOKE_RING_A1 SNOW')).toMatchObject({
      found: [],
      nearTypes: ['CHOKE_RING_A1   DOME', 'CHOKE_RING_A1   NONE'],
    });
    expect(read(file, 'CHOKE-RING_A1').nearTypes).toEqual(['CHOKE_RING_A1   NONE', 'CHOKE_RING_A1   DOME']);
    expect(read(file, 'SOMETHING ELSE').nearTypes).toEqual([]);
  });

  it('takes no satellite for a receiver antenna', () => {
    expect(read(file, 'BLOCK X').found).toEqual([]);
  });

  it('writes a type in twenty characters, however the words were spaced', () => {
    expect(antennaType('Choke_Ring_A1 none')).toBe('CHOKE_RING_A1   NONE');
    expect(antennaType('CHOKE_RING_A1   DOME')).toBe('CHOKE_RING_A1   DOME');
    expect(antennaType('PLATE_B2')).toBe('PLATE_B2        NONE');
    expect(antennaType('TWO WORDS_NAME  DOME')).toBe('TWO WORDS_NAME  DOME');
  });

  it('uses no calibration that is cut short, and reads the same in any chunks', () => {
    const whole = head('A') + antenna('PLATE_B2        NONE', { G01: [0, 0, 60] });
    const facts = read(whole.slice(0, -90), 'PLATE_B2');
    expect(facts.found).toEqual([]);
    expect(facts.problems).toHaveLength(1);
    expect(read(file, 'CHOKE_RING_A1', 13)).toEqual(read(file, 'CHOKE_RING_A1', 100_000));
  });

  it('never throws, whatever the bytes', () => {
    const anyLine = fc
      .tuple(
        fc.string({ maxLength: 70 }),
        fc.constantFrom(
          'TYPE / SERIAL NO',
          'START OF FREQUENCY',
          'NORTH / EAST / UP',
          'VALID FROM',
          'END OF ANTENNA',
          '',
        ),
      )
      .map(([content, label]) => line(content, label));
    fc.assert(
      fc.property(fc.array(anyLine, { maxLength: 30 }), (lines) => {
        expect(read(lines.join(''), 'A').found.length).toBeLessThanOrEqual(30);
      }),
    );
    expect(read('hello', 'A').problems).toMatchObject([{ line: 1 }]);
  });
});
