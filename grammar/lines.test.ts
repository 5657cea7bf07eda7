/** Lines and columns agree with those counted in the whole text, whatever ends the lines and after any edit. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDocument, lineStarts, openDocument } from './document.ts';
import { lineCount, offsetOf, positionOf } from './lines.ts';

const pieces = fc.array(
  fc.constantFrom('mark A\n', '  found intact\r\n', 'note "𝄞 tune"\r', '\n', '# é\n', 'job', ' ', '\r\n'),
  { maxLength: 12 },
);

describe('lines of a document', () => {
  it('are those of its whole text', () => {
    fc.assert(
      fc.property(pieces, (parts) => {
        const text = parts.join('');
        const document = openDocument('a.trib', text);
        const starts = lineStarts(text);
        expect(lineCount(document)).toBe(starts.length);
        for (let offset = 0; offset <= text.length; offset++) {
          const { line, column } = positionOf(document, offset);
          expect((starts[line] ?? NaN) + column).toBe(offset);
          expect(starts[line + 1] ?? Infinity).toBeGreaterThan(offset);
        }
      }),
    );
  });

  it('are found again after an edit', () => {
    fc.assert(
      fc.property(pieces, pieces, fc.nat(), fc.nat(), (parts, inserted, one, other) => {
        const document = openDocument('a.trib', parts.join(''));
        const [start = 0, end = 0] = [one, other]
          .map((at) => at % (document.text.length + 1))
          .sort((low, high) => low - high);
        const edited = editDocument(document, start, end, inserted.join(''));
        const fresh = openDocument('a.trib', edited.text);
        for (let offset = 0; offset <= edited.text.length; offset++)
          expect(positionOf(edited, offset)).toEqual(positionOf(fresh, offset));
      }),
    );
  });

  it('take a column behind the end of a line as its end, without the line break', () => {
    const document = openDocument('a.trib', 'mark A\r\n  found intact\nnote "x"');
    expect(offsetOf(document, { line: 0, column: 99 })).toBe(6);
    expect(offsetOf(document, { line: 1, column: 99 })).toBe(22);
    expect(offsetOf(document, { line: 2, column: 4 })).toBe(27);
    expect(offsetOf(document, { line: 9, column: 0 })).toBe(document.text.length);
  });

  it('count a character outside the basic plane as two', () => {
    const document = openDocument('a.trib', 'note "𝄞x"');
    expect(positionOf(document, 8)).toEqual({ line: 0, column: 8 });
    expect(document.text[offsetOf(document, { line: 0, column: 8 })]).toBe('x');
  });
});
