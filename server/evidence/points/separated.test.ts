import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { separatedReader } from './separated.ts';

function read(text: string, separator = ',', chunk = 5) {
  const rows: (readonly string[])[] = [];
  const lines: number[] = [];
  const problems: string[] = [];
  const reader = separatedReader(
    separator,
    ({ line, cells }) => {
      rows.push(cells);
      lines.push(line);
    },
    (sentence, line) => problems.push(`${line}: ${sentence}`),
  );
  const bytes = new TextEncoder().encode(text);
  for (let from = 0; from < bytes.length; from += chunk) reader.push(bytes.subarray(from, from + chunk));
  reader.finish();
  return { rows, lines, problems };
}

describe('separated values', () => {
  it('are read as an independent reader reads them, for any quoting, separator and cut', () => {
    const cell = fc.string({
      unit: fc.constantFrom('a', 'é', '"', ',', ';', '\t', '\n', ' ', '1'),
      maxLength: 6,
    });
    fc.assert(
      fc.property(
        fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 6 }),
        fc.constantFrom(',', ';', '\t'),
        fc.integer({ min: 1, max: 40 }),
        (table, separator, chunk) => {
          const quoted = (text: string) =>
            /[",;\t\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
          const text = table.map((row) => row.map(quoted).join(separator)).join('\r\n');
          const theirs = parse(text, {
            delimiter: separator,
            relax_column_count: true,
            record_delimiter: '\r\n',
          });
          const notBlank = (row: readonly string[]) => row.some((one) => one.trim() !== '');
          expect(read(text, separator, chunk).rows.filter(notBlank)).toEqual(theirs.filter(notBlank));
        },
      ),
    );
  });

  it('keep the line on which a row begins', () => {
    expect(read('a,b\n\n"c\nd",e\nf,g\n').lines).toEqual([1, 3, 5]);
  });

  it('take a quote inside an unquoted cell for a character', () => {
    expect(read('5\'2",8" pipe,"x ""y"""\n').rows).toEqual([['5\'2"', '8" pipe', 'x "y"']]);
  });

  it('let no open quote swallow the file', () => {
    const text = `a,"b\n${'c,d\n'.repeat(150)}`;
    const { rows, problems } = read(text, ',', 64);
    expect(problems).toEqual(['1: A quote that opens here is not closed; lines 1 to 100 are not read.']);
    expect(rows).toHaveLength(51);
    expect(read('a,"b\n').problems).toEqual([
      '1: A quote that opens here is never closed; the rest of the file is not read.',
    ]);
  });
});
