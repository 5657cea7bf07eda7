/** Any text at all is a table of entries, and stays the same table whether it was opened or edited into being. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyText, mangledPiece } from '../tests/mangled.ts';
import { editDocument, entryAt, lineStarts, openDocument, startOf, type Document } from './document.ts';
import type { Entry, Span } from './tree.ts';

const open = (text: string) => openDocument('day.trib', text);
const headerWords = (text: string) => open(text).entries.map((entry) => entry.header.word?.word ?? null);

describe('openDocument', () => {
  it('opens an entry at each line that starts in the first column', () => {
    const { entries, starts } = open('job "a"\n  date 2026-05-19\nmark PM-14\n  found intact\n');
    expect(entries.map((entry) => entry.text)).toEqual([
      'job "a"\n  date 2026-05-19\n',
      'mark PM-14\n  found intact\n',
    ]);
    expect(starts).toEqual([0, 26]);
    expect(entries[1]?.details[0]?.word?.word).toBe('found');
  });

  it('takes an entry word for an entry and a detail word for a detail, wherever they stand', () => {
    const text = 'mark PM-14\nposition ?\n  mark PM-09\nHEIGHT 5 m orthometric\n';
    const { entries } = open(text);
    expect(headerWords(text)).toEqual(['mark', 'mark']);
    expect(entries[0]?.details.map((line) => [line.word?.word, line.indented])).toEqual([
      ['position', false],
    ]);
    expect(entries[1]?.header.indented).toBe(true);
    expect(entries[1]?.details[0]?.word?.word).toBe('HEIGHT');
  });

  it('gives a misspelt entry in the first column its own details', () => {
    const { entries } = open('mark PM-14\nmakr PM-09\n  height 5 m orthometric\n');
    expect(entries.map((entry) => entry.details.length)).toEqual([0, 1]);
  });

  it('knows a first word behind and between characters without width', () => {
    expect(headerWords('\u200bmark A\n \u200b ma\u200brk B\n\u200b  \u200bfound intact\n')).toEqual([
      'mark',
      'mark',
    ]);
    expect(headerWords(`${'\u200b'.repeat(500)}mark A\nkeyed\u2011x 5\n`)).toEqual(['mark', 'keyed-x']);
  });

  it.each(['', '\n', '   \r\n\t', '# only\n# comments\n', '\ufeff', '\ufeff# x'])(
    'holds %j in one entry without a header',
    (text) => {
      const { entries } = open(text);
      expect(entries).toHaveLength(1);
      expect(entries[0]).toEqual({
        text,
        header: {
          start: expect.any(Number),
          end: expect.any(Number),
          word: null,
          items: [],
          comment: null,
          indented: false,
        },
        details: [],
        slips: [],
      });
    },
  );

  it('keeps what stands before the first entry apart', () => {
    const { entries } = open('  date 2026-05-19\njob "a"\n');
    expect(entries.map((entry) => [entry.header.word?.word ?? null, entry.details.length])).toEqual([
      [null, 1],
      ['job', 0],
    ]);
  });

  it('reads LF, CRLF, CR and mixes of them alike', () => {
    const lines = ['job "a"', '  date 2026-05-19', '', 'mark A "x"', '  found intact', ''];
    const shape = (text: string) =>
      open(text).entries.map((entry) =>
        [entry.header, ...entry.details].map((line) => line.items.map((item) => item.kind)),
      );
    for (const ends of [['\r\n'], ['\r'], ['\r\n', '\n', '\r']]) {
      const mixed = lines.map((line, index) => line + (ends[index % ends.length] ?? '')).join('');
      expect(shape(mixed)).toEqual(shape(lines.join('\n')));
    }
  });

  it('skips a byte order mark at the very start, and notices it anywhere else', () => {
    const marked = open('\ufeffjob "a"\nmark A\n');
    expect(marked.entries.flatMap((entry) => entry.slips)).toEqual([]);
    expect(marked.entries[0]?.header).toMatchObject({ start: 1, indented: false });
    const inside = open('job "a"\n\ufeffmark A\n').entries[1];
    expect(inside?.slips).toEqual([
      { slip: 'invisible-character', typed: '\ufeff', readings: [''], start: 0, end: 1 },
    ]);
  });
});

describe('editDocument', () => {
  const day =
    'job "a"\n  date 2026-05-19\nmark A\n  found intact\nmark B\n  found intact\nhazard "x"\nhazard "x"\nnote "end"\n';

  it('reads the touched entry again and leaves all others as they are', () => {
    const before = open(day);
    const at = day.indexOf('intact', day.indexOf('mark B'));
    const after = editDocument(before, at, at + 6, 'moved');
    expect(after.entries.map((entry, index) => entry === before.entries[index])).toEqual([
      true,
      true,
      false,
      true,
      true,
      true,
    ]);
    expect(after.entries[2]?.details[0]?.items).toMatchObject([{ kind: 'name', name: 'moved' }]);
  });

  it('keeps the first entry when the second is edited', () => {
    const before = open(day);
    const after = editDocument(before, day.indexOf('A'), day.indexOf('A') + 1, 'Z');
    expect(after.entries[0]).toBe(before.entries[0]);
  });

  it('tells entries of the same text apart', () => {
    const before = open(day);
    const after = editDocument(before, day.indexOf('note'), day.indexOf('note'), 'hazard "x"\n');
    expect(after.entries.slice(3, 5)).toEqual(before.entries.slice(3, 5));
    expect(after.entries[3]).toBe(before.entries[3]);
    expect(new Set(after.entries).size).toBe(after.entries.length);
  });

  it('notices a byte order mark that an edit has moved from the start', () => {
    const after = editDocument(open('\ufeffjob "a"\n'), 0, 0, 'note "b"\n');
    expect(after.entries[1]?.slips.map((slip) => slip.slip)).toEqual(['invisible-character']);
  });

  it('gives lines that lost their entry to the one before', () => {
    const before = open(day);
    const after = editDocument(before, day.indexOf('mark B'), day.indexOf('mark B') + 7, '');
    expect(after.entries[1]?.details).toHaveLength(2);
    expectSame(after, open(after.text));
  });
});

describe('any text whatever', () => {
  it('is given back by its entries, one after the other', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const document = open(text);
        expect(document.entries.map((entry) => entry.text).join('')).toBe(text);
        let offset = 0;
        document.entries.forEach((entry, index) => {
          expect(document.starts[index]).toBe(offset);
          expect(entryAt(document.starts, offset)).toBe(index);
          expect(startOf(document, { path: '', entry, start: 0, end: 0 })).toBe(offset);
          offset += entry.text.length;
        });
      }),
      { numRuns: 500 },
    );
  });

  it('has every span inside its entry, and items in order inside their line', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        for (const entry of open(text).entries) expectSpansInside(entry);
      }),
      { numRuns: 500 },
    );
  });

  it('is the same document after random edits as when opened, and untouched entries are the very same', () => {
    const edit = fc.tuple(fc.nat(), fc.nat({ max: 30 }), mangledPiece);
    fc.assert(
      fc.property(anyText, fc.array(edit, { minLength: 1, maxLength: 6 }), (text, edits) => {
        let document = open(text);
        for (const [at, length, inserted] of edits) {
          const start = at % (document.text.length + 1);
          const end = Math.min(document.text.length, start + length);
          const before = document;
          document = editDocument(before, start, end, inserted);
          expectSame(document, open(document.text));
          expectUntouchedKept(before, document, start, end);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('lineStarts', () => {
  it('counts LF, CRLF and CR as one line end each', () => {
    expect(lineStarts('a\nb\r\nc\rd')).toEqual([0, 2, 5, 7]);
    expect(lineStarts('')).toEqual([0]);
  });
});

function expectSame(edited: Document, opened: Document): void {
  expect(edited.text).toBe(opened.text);
  expect(edited.starts).toEqual(opened.starts);
  expect(edited.entries).toEqual(opened.entries);
  expect(new Set(edited.entries).size).toBe(edited.entries.length);
}

/** Entries at least one entry away from an edit are none of its business. */
function expectUntouchedKept(before: Document, after: Document, start: number, end: number): void {
  const first = entryAt(before.starts, start);
  const last = entryAt(before.starts, end);
  for (let index = 0; index < first - 1; index++) expect(after.entries[index]).toBe(before.entries[index]);
  for (let back = 1; back < before.entries.length - last; back++)
    expect(after.entries[after.entries.length - back]).toBe(before.entries[before.entries.length - back]);
}

function expectSpansInside(entry: Entry): void {
  const inside = (span: Span, outer: Span) => {
    expect(span.start).toBeGreaterThanOrEqual(outer.start);
    expect(span.end).toBeGreaterThanOrEqual(span.start);
    expect(span.end).toBeLessThanOrEqual(outer.end);
  };
  const whole = { start: 0, end: entry.text.length };
  const nested = (value: unknown, outer: Span): void => {
    if (typeof value !== 'object' || value === null) return;
    const span = 'start' in value && 'end' in value ? (value as Span) : outer;
    inside(span, outer);
    for (const inner of Object.values(value)) nested(inner, span);
  };
  nested(entry.slips, whole);
  let end = 0;
  for (const line of [entry.header, ...entry.details]) {
    inside(line, whole);
    if (line.comment) inside(line.comment, { start: line.end, end: entry.text.length });
    let behind = line.start;
    for (const item of line.items) {
      nested(item, line);
      expect(item.start).toBeGreaterThanOrEqual(behind);
      behind = item.end;
    }
    if (line.word || line.items.length > 0) {
      expect(line.start).toBeGreaterThanOrEqual(end);
      end = line.end;
    }
  }
}
