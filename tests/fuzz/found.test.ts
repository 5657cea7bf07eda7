/** What fuzzing has found before, each with its day and its cause, so that it stays mended. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { lineReader } from '../../server/evidence/lines.ts';
import { extractColumns, extractRows } from '../../server/evidence/register-extract.ts';
import { inspect } from '../../server/inspect.ts';
import { marksFile, registerMark } from '../../server/record/marks-file.ts';
import { NO_FILES } from '../../server/session/files.ts';
import { growth } from '../growth.ts';
import { textAfter } from '../pages.ts';

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
  it('taking out the second of two details that say the same took its comment out as well', () => {
    const inspection = inspected('job "x"\n  datum ETRS89\n  datum ETRS89 # as on the sheet\n');
    const [fix] = inspection.findings.flatMap(({ code, fixes }) => (code === 'syntax/repeated' ? fixes : []));
    expect(fix && textAfter(inspection, fix)).toBe('job "x"\n  datum ETRS89\n  # as on the sheet\n');
  });
});
