import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineReader } from './lines.ts';

function lines(bytes: Uint8Array, chunk: number, longest?: number) {
  const found: { line: string; number: number; cut: boolean }[] = [];
  const reader = lineReader('utf-8', (line, number, cut) => found.push({ line, number, cut }), longest);
  for (let from = 0; from < bytes.length; from += chunk) reader.push(bytes.subarray(from, from + chunk));
  reader.finish();
  return found;
}

const encoded = (text: string) => new TextEncoder().encode(text);

describe('lines', () => {
  it('are the same however the bytes are cut, for every kind of end', () => {
    const piece = fc.constantFrom('a', 'bc', 'é', '\n', '\r', '\r\n', '');
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 40 }), fc.integer({ min: 1, max: 50 }), (pieces, chunk) => {
        const text = pieces.join('');
        const expected = text.split(/\r\n|\n|\r/);
        if (expected.at(-1) === '') expected.pop();
        expect(lines(encoded(text), chunk).map((found) => found.line)).toEqual(expected);
      }),
    );
  });

  it('are counted from 1, and a byte order mark is skipped', () => {
    expect(lines(encoded('\ufeffone\n\nthree'), 2)).toEqual([
      { line: 'one', number: 1, cut: false },
      { line: '', number: 2, cut: false },
      { line: 'three', number: 3, cut: false },
    ]);
  });

  it.each([1, 7, 1000])('too long are cut, in chunks of %i', (chunk) => {
    expect(lines(encoded(`${'x'.repeat(100)}\nshort\n${'y'.repeat(20)}\n`), chunk, 20)).toEqual([
      { line: 'x'.repeat(20), number: 1, cut: true },
      { line: 'short', number: 2, cut: false },
      { line: 'y'.repeat(20), number: 3, cut: false },
    ]);
  });
});
