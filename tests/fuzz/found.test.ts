/** What fuzzing has found before, each with its day and its cause, so that it stays mended. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { lineReader } from '../../server/evidence/lines.ts';
import { nmeaReader } from '../../server/evidence/nmea/log.ts';
import { extractColumns, extractRows } from '../../server/evidence/register-extract.ts';
import { inspect } from '../../server/inspect.ts';
import { marksFile, registerMark } from '../../server/record/notes/marks-file.ts';
import { canonicalEntry } from '../../server/session/canonical.ts';
import { NO_FILES } from '../../server/session/files.ts';
import { sessionDrawings } from '../../server/record/drawings/session-drawings.ts';
import { growth } from '../growth.ts';
import { textAfter } from '../pages.ts';
import { sentence } from '../recordings.ts';

const inspected = (text: string) => inspect(openDocument('day.trib', text), NO_FILES);

describe('2026-11-26', () => {
  it('a cell of a register extract that goes on over a line said further lines of the marks file', () => {
    const columns = extractColumns('name, east m, north m, height m orthometric');
    if (typeof columns === 'string') throw new Error(columns);
    const rows = new TextEncoder().encode('PM-14,1.5,2.5,"6.284\n  height 9 m orthometric"\n');
    const { marks, problems } = extractRows(rows, columns, ',', '.', 0);
    const text = marksFile(marks.map(registerMark), { title: 'x', grid: null, source: null, date: null });
    expect(text).toContain('\n  height      ?\n');
    expect(text).not.toContain('9 m');
    expect(problems.map(({ sentence }) => sentence)).toEqual([
      expect.stringMatching(/^The height "6\.284\n .* is no number; it is left open \(\?\)\.$/),
    ]);
  });

  it('readings of one time were each compared with each in every unit, in time that grew with their square', () => {
    const readings = (count: number) =>
      `setup B on M at 07:50\n${Array.from({ length: count }, (_, at) => `  measured 1.${at} m to foot, at 07:52\n`).join('')}`;
    expect(growth([readings(500), readings(2000)], 8, (text) => inspected(text).findings)).toBeLessThan(8);
  });

  it('lines that end with CR alone were looked through to the end of the file for an LF, each of them', () => {
    const read = (text: string) => {
      const lines: string[] = [];
      const reader = lineReader('latin1', (line) => lines.push(line));
      reader.push(new TextEncoder().encode(text));
      reader.finish();
      return lines;
    };
    expect(read('a\rb\r\nc\n\rd\r')).toEqual(['a', 'b', 'c', '', 'd']);
    expect(growth(['x\r'.repeat(20_000), 'x\r'.repeat(80_000)], 8, read)).toBeLessThan(8);
  });

  it('files that use files, thousands deep, exhausted the stack', () => {
    const document = (path: string) => openDocument(path, `use "f${Number(path.slice(1)) + 1}"\n`);
    const { session, findings } = inspect(document('f0'), { document, bytes: NO_FILES.bytes });
    expect(session.documents.size).toBe(101);
    expect(findings.map(({ code }) => code)).toContain('syntax/unreadable-file');
  });

  it('surfaces described by one another, a thousand in a row, took time that grew with their cube', () => {
    const surfaces = (count: number) =>
      Array.from(
        { length: count },
        (_, at) =>
          `surface S${at + 1}\n  offset 0.1 m above S${at}\nmark M${at}\n  height 1 m above S${count}\n`,
      ).join('');
    const looked = (text: string) => inspected(text).derivation.marks;
    expect(growth([surfaces(100), surfaces(400)], 8, looked)).toBeLessThan(8);
  });
});

describe('2026-11-27', () => {
  it('a year with an exponent was the year 2000, and a fix offered to write it', () => {
    const { findings } = inspected('job "x"\n  date 0e300-05-19\n');
    expect(findings.map(({ code }) => code)).toContain('syntax/date-format');
    expect(findings.flatMap(({ fixes }) => fixes)).toEqual([]);
    const short = inspected('job "x"\n  date 26-05-19\n').findings.flatMap(({ fixes }) => fixes);
    expect(short.map(({ title }) => title)).toContain('Write 2026-05-19');
  });

  it('blanks between the groups of a number counted as what it means, so that formatting broke a seal', () => {
    const meant = (text: string) => openDocument('day.trib', text).entries.map(canonicalEntry);
    const [wide, narrow] = ['1    360', '1 360'].map((digits) =>
      meant(`mark A\n  height ${digits} m orthometric\n`),
    );
    expect(wide).toEqual(narrow);
    expect(JSON.stringify(narrow)).toContain('1 360');
  });

  it('taking out the second of two details that say the same took its comment out as well', () => {
    const inspection = inspected('job "x"\n  datum ETRS89\n  datum ETRS89 # as on the sheet\n');
    const [fix] = inspection.findings.flatMap(({ code, fixes }) => (code === 'syntax/repeated' ? fixes : []));
    expect(fix && textAfter(inspection, fix)).toBe('job "x"\n  datum ETRS89\n  # as on the sheet\n');
  });

  const PLACE = '4109.3943328,N,00836.8026894,W';
  const fixed = (second: number, rest = '16,0.7,5.281,M,54.830,M,1.2,0012') =>
    sentence(`GNGGA,07250${second}.00,${PLACE},4,${rest}`);
  const logged = (...sentences: readonly string[]) => {
    const reader = nmeaReader({});
    reader.push(new TextEncoder().encode(sentences.join('')));
    return reader.finish();
  };

  it('a fixed position without a height made the scatter of all of them upwards a number that is none', () => {
    const { means } = logged(fixed(0), fixed(1, '16,0.7,5.281,M,,,1.2,0012'), fixed(2));
    expect(means[0]).toMatchObject({ epochs: 3, spread: { east: 0, north: 0 } });
    expect(means[0]?.spread).not.toHaveProperty('up');
  });

  it('a sentence that had lost four characters, and whose checksum was right all the same, was taken at its word', () => {
    // "7,5." is gone, and the exclusive or of the four is 0: a dilution of 0.281, corrections 12 s old.
    const torn = fixed(0).replace('0.7,5.281', '0.281');
    const facts = logged(torn, fixed(1), fixed(2));
    expect(facts.failedChecksums).toBe(0);
    expect(facts.epochs).toBe(2);
    expect([facts.hdop?.least, facts.age?.most]).toEqual([0.7, 1.2]);
    expect(facts.means[0]?.height).toBeCloseTo(5.281 + 54.83, 9);
    expect(facts.problems).toEqual([
      { sentence: 'This GGA has 13 fields instead of 14; it is not used.', line: 1 },
    ]);
  });

  it.each([
    ['16,0.7,M,5.281,M,54.830,M,1.2,0012', '"M", which cannot stand where it does'],
    ['0.7,5.281,M,54.830,M,1.2,0012,', '"0.7", which cannot stand where it does'],
    ['-16,0.7,5.281,M,54.830,M,1.2,0012', '"-16", which cannot stand where it does'],
    ['16,-0.7,5.281,M,54.830,M,1.2,0012', '"-0.7", which cannot stand where it does'],
    ['16,0.7,5.281,,54.830,M,1.2,0012,', '"" where the unit of a height should be'],
    ['16,0.7,5.2.81,M,54.830,M,1.2,0012', '"5.2.81", which cannot stand where it does'],
    ['16,0.7,5.281,M,54.830,M,M,1.2,0012', '"M", which cannot stand where it does'],
  ])('fields that had moved were read in the place of others: %s', (rest, said) => {
    const facts = logged(fixed(0, rest), fixed(1));
    expect(facts.epochs).toBe(1);
    expect(facts.problems).toEqual([{ sentence: `This GGA has ${said}; it is not used.`, line: 1 }]);
  });

  it('a quality that every object inherits was one', () => {
    expect(
      logged(sentence(`GNGGA,072500.00,${PLACE},constructor,16,0.7,5.281,M,54.830,M,1.2,0012`)).epochs,
    ).toBe(0);
  });

  it('an angle that had lost a figure was another angle', () => {
    const facts = logged(
      sentence('GNGGA,072500.00,4109.3943328,N,0036.8026894,W,4,16,0.7,5.281,M,54.830,M,1.2,0012'),
    );
    expect(facts.epochs).toBe(0);
    expect(facts.problems).toHaveLength(1);
  });

  it('deviations were read from a sentence of which a field was doubled', () => {
    const stated = (rest: string) =>
      logged(fixed(0), sentence(`GNGST,072500.00,${rest}`)).track[0]?.deviations;
    expect(stated('1.0,0.9,0.8,45.0,0.01,0.02,0.03')).toEqual({ east: 0.02, north: 0.01, up: 0.03 });
    expect(stated('1.0,0.9,0.8,45.0,45.0,0.01,0.02,0.03')).toBeUndefined();
    expect(stated('1.0,0.9,0.8,45.0,0.01,-0.02,0.03')).toBeUndefined();
  });
});

describe('2026-11-27, the second', () => {
  it('a date with a full stop behind it was no date, and was to be written as what stood there', () => {
    const { findings } = inspected('review "L. Brandt" 2026-05-21.');
    expect(findings.map(({ code }) => code)).toContain('syntax/leftover');
    expect(findings.map(({ code }) => code)).not.toContain('syntax/date-format');
  });

  it('a file without a name was told of in a sentence without a beginning', () => {
    const [finding] = inspected('use ""\n').findings;
    expect(finding?.message).toMatch(/: a file without a name[.]/);
  });
});

describe('2026-12-01', () => {
  const day = readFileSync('samples/breakwater.trib', 'utf8');

  it('an extension of 110 digits ended the command, the folder’s answer and the language server', () => {
    const { findings } = inspected(day.replace('extension   250 mm', `extension   ${'9'.repeat(110)} mm`));
    const codes = findings.map(({ code }) => code);
    expect(codes).toContain('syntax/broken-number');
    expect(codes).not.toContain('program/fault');
  });

  it.each(['9026', '0206', '0001', '3026'])(
    'a base that stands until the year %s stands without an end',
    (year) => {
      const inspection = inspected(day.replace('until 15:40', `until ${year}-05-19 15:40`));
      expect(inspection.findings.map(({ code }) => code)).toContain('syntax/impossible-time');
      expect(
        sessionDrawings(inspection, 680)
          .drawings.map(({ svg }) => svg)
          .join('').length,
      ).toBeLessThan(200_000);
    },
  );

  it('a base that stands for 36 years is told, and drawn with as many ticks as fit', () => {
    const inspection = inspected(day.replace('until 15:40', 'until 2062-05-19 15:40'));
    // 13149 days: 36 years, nine of them leap years (2028 to 2060).
    const told = inspection.findings.find(({ code }) => code === 'time/order');
    expect(told?.message).toContain('13149 days');
    const drawn = sessionDrawings(inspection, 680).drawings.find(({ name }) => name === 'day');
    expect(drawn?.svg.length).toBeLessThan(100_000);
  });

  it('a line of a hundred thousand characters that nobody sees gave as many findings, each with the whole line in it', () => {
    const { findings } = inspected(`note "${'a\u200b'.repeat(100_000)}"\n`);
    const unseen = findings.filter(({ code }) => code === 'syntax/invisible-character');
    expect(unseen).toHaveLength(20);
    expect(unseen.at(-1)?.message).toContain('99980 more of these are on this line.');
  });
});
