/** Reading takes time in proportion to the text: four times the text, about four times the time, whatever it consists of. */
import { describe, expect, it } from 'vitest';
import { growth } from '../tests/growth.ts';
import { editDocument, openDocument } from './document.ts';
import { format } from './printer.ts';

/** Four times the text at four times the time is 4; a method that compares everything with everything would need 16. */
const MOST = 8;

const repeated: readonly (readonly [string, string, number])[] = [
  ['lines of a session', 'mark PM-14 "bolt"\n  height 6.284 m orthometric   # read\n', 500],
  ['the same line', 'note "x"\n', 750],
  ['empty lines', '\n', 7500],
  ['CR line ends', '  found intact\r', 750],
  ['quotes', '"', 25000],
  ['parted quotes', ' "', 5000],
  ['curly quotes', '\u201c', 3750],
  ['number signs', '#', 5000],
  ['parted number signs', ' #', 25000],
  ['digits', '7', 25000],
  ['digits in groups', '234 ', 2500],
  ['digits after commas', '1,', 2500],
  ['digits after points', '1.', 2500],
  ['digits after dashes', '1-', 2500],
  ['digits after apostrophes', "234'", 2500],
  ['exponents', '1e3', 2500],
  ['times', '08:25:', 1875],
  ['letters', 'é', 25000],
  ['hyphenated letters', 'a-', 5000],
  ['blanks', ' ', 25000],
  ['commas', ', ', 2500],
  ['terms', '+ 1 m ', 1000],
  ['uncertainties', '± ', 2500],
  ['characters without width', '\u200b', 7500],
  ['parted characters without width', 'a\u200b', 2500],
  ['lone surrogates', '\ud800', 2500],
  ['NUL', '\u0000', 2500],
];

describe('time grows with the text, not with its square', () => {
  it.each(repeated)('for %s', (_, unit, count) => {
    for (const before of ['mark A\n  position ', 'mark ']) {
      const texts = [before + unit.repeat(count), before + unit.repeat(4 * count)] as const;
      expect(growth(texts, MOST, (text) => openDocument('', text))).toBeLessThan(MOST);
      expect(growth(texts, MOST, format)).toBeLessThan(MOST);
    }
  });

  it('for an edit that replaces everything', () => {
    const texts = [
      'mark A\n  found intact\n'.repeat(3000),
      'mark A\n  found intact\n'.repeat(12_000),
    ] as const;
    const documents = new Map(texts.map((text) => [text, openDocument('', text)]));
    const replaced = (text: string) => {
      const document = documents.get(text);
      return document && editDocument(document, 0, text.length, text.replaceAll('A', 'B'));
    };
    expect(growth(texts, MOST, replaced)).toBeLessThan(MOST);
  });
});

describe('megabytes', () => {
  it.each(['x', '7', '"', 'é-', '\u{1f4d0}', '1.5,', '(', '\u200b', 'mark A "x"\n'])(
    'of %j are answered',
    (unit) => {
      const text = unit.repeat(Math.ceil(4_000_000 / unit.length));
      const { entries } = openDocument('', text);
      expect(entries.reduce((length, entry) => length + entry.text.length, 0)).toBe(text.length);
    },
  );
});
