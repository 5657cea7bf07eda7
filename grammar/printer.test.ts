/** Formatting moves blanks and nothing else, and has nothing to do the second time. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyText } from '../tests/mangled.ts';
import { hasUnseen, isBlank } from './characters.ts';
import { openDocument } from './document.ts';
import { format, formatEdits } from './printer.ts';
import { Blank, tokenize } from './tokens.ts';
import { visibleOf } from './visible.ts';

describe('format', () => {
  it.each([
    ['a detail in the first column', 'job "a"\ndate 2026-05-19\n', 'job "a"\n  date        2026-05-19\n'],
    ['an indented entry', '  mark PM-14\n\tfound\tintact', 'mark PM-14\n  found       intact'],
    [
      'values in a column of their own',
      'mark A\n height 5 m orthometric\n      epoch 2010.0\n',
      'mark A\n  height      5 m orthometric\n  epoch       2010.0\n',
    ],
    [
      'a word as long as the column',
      'mark A\n  uncertainty      8 mm horizontal',
      'mark A\n  uncertainty 8 mm horizontal',
    ],
    [
      'a longer word, which touches no other line',
      'antenna A1\n  phase-centre    92 mm  above arp\n  hook 1 mm',
      'antenna A1\n  phase-centre 92 mm above arp\n  hook        1 mm',
    ],
    ['several blanks between items', 'setup   BASE  on\tPM-14   with A1', 'setup BASE on PM-14 with A1'],
    [
      'no blank where none stood',
      'check A\n  quality fixed,60 epochs,pdop 1.5',
      'check A\n  quality     fixed,60 epochs,pdop 1.5',
    ],
    [
      'units with and without a blank',
      'mark A\n  height 5m  orthometric\n  separation 5  m',
      'mark A\n  height      5m orthometric\n  separation  5 m',
    ],
    [
      'blanks before a comma',
      'check A\n  quality fixed  , 6 epochs',
      'check A\n  quality     fixed , 6 epochs',
    ],
    ['a quote behind a digit and a blank', 'mark A\n  position 5   "x"', 'mark A\n  position    5 "x"'],
    ['typographic blanks', 'mark\u00a0A\n\u3000found\u2009intact', 'mark A\n  found       intact'],
    ['blanks at line ends', 'mark A  \n  found intact\t\n   \n', 'mark A\n  found       intact\n\n'],
    [
      'blank lines, line ends and a missing final newline',
      'mark A\r\n\n\n  found intact\r# x',
      'mark A\r\n\n\n  found       intact\r# x',
    ],
    ['a blank line between CR and LF', 'mark A\r  \n  \n', 'mark A\r  \n\n'],
    ['blanks inside text', 'note  "two  blanks,\ta tab  "  ', 'note "two  blanks,\ta tab  "'],
    ['text that is not closed', 'note  "open   \n', 'note "open   \n'],
    [
      'cells of a row',
      'points "p"\n row   101,  5.1,   A  B\n',
      'points "p"\n  row         101,  5.1,   A  B\n',
    ],
    ['a byte order mark', '\ufeff  mark  A', '\ufeffmark A'],
    [
      'a line with a character without width among its blanks not at all',
      ' mark  A \u200b\n found   \u200bintact\n found  intact',
      ' mark  A \u200b\n found   \u200bintact\n  found       intact',
    ],
    ['a line where one stands directly behind a word', ' mark\u200b   A\u200b  \n', 'mark\u200b A\u200b\n'],
    [
      'comments in the first column and indented ones',
      '# out\nmark A\n    # in\n# out\n',
      '# out\nmark A\n  # in\n# out\n',
    ],
    [
      'a comment at a line end',
      'mark A # x\n  found intact    #   y  ',
      'mark A  # x\n  found       intact    #   y  ',
    ],
    [
      'comments in one column',
      'mark A             # x\n  height 5 m       # y\n  found intact     # z\n',
      'mark A                   # x\n  height      5 m        # y\n  found       intact     # z\n',
    ],
  ])('lays out %s', (_, text, expected) => expect(format(text)).toBe(expected));

  it('says nothing about a formatted text', () => {
    expect(formatEdits(openDocument('', 'mark A\n  found       intact  # seen\n'))).toEqual([]);
  });
});

describe('formatting any text whatever', () => {
  it('leaves every token, every unseen character and every line end as typed', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const formatted = format(text);
        expect(images(formatted)).toEqual(images(text));
        const kept = neighbours(formatted);
        for (const [index, { run, before, after }] of neighbours(text).entries()) {
          expect(kept[index]).toMatchObject({ run, before });
          if (after !== ' ') expect(kept[index]).toMatchObject({ after });
        }
        expect(formatted.replace(blanks, '')).toBe(text.replace(blanks, ''));
      }),
      { numRuns: 1000 },
    );
  });

  it('leaves the tree as it is, except for the places and what was out of its column', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(meaning(format(text))).toEqual(meaning(text));
      }),
      { numRuns: 1000 },
    );
  });

  it('has nothing to do the second time', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const formatted = format(text);
        expect(format(formatted)).toBe(formatted);
      }),
      { numRuns: 1000 },
    );
  });

  it('is the edits, in order and apart from one another, each of blanks', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        let before = 0;
        for (const edit of formatEdits(openDocument('', text))) {
          expect(edit.start).toBeGreaterThanOrEqual(before);
          expect(edit.text).not.toBe(text.slice(edit.start, edit.end));
          expect(visibleOf(edit.text).text).toMatch(/^ *$/);
          before = edit.end;
        }
      }),
      { numRuns: 500 },
    );
  });
});

const blanks = new RegExp(Blank.PATTERN as RegExp, 'g');

/** Each run of unseen characters with what it stands directly behind, and directly before unless that is a blank. */
const neighbours = (text: string) =>
  [...text.replace(/^\ufeff/, '').matchAll(UNSEEN)].map(({ index, input, 0: run }) => ({
    run,
    before: bareOf(input[index - 1]),
    after: bareOf(input[index + run.length]),
  }));
const bareOf = (character = '\n') => (isBlank(character) ? ' ' : character);
const UNSEEN = /[\p{Cf}\u180e]+/gu;

const images = (text: string) => tokenize(visibleOf(text).text).map((token) => token.image);

/** A document without its places; the blanks inside a number that should have none do not count. */
function meaning(text: string): unknown {
  const bare = (value: unknown): unknown => {
    if (typeof value === 'string') return hasUnseen(value) ? value : value.replace(blanks, ' ');
    if (Array.isArray(value)) return value.map(bare);
    if (typeof value !== 'object' || value === null) return value;
    const entries = Object.entries(value).filter(
      ([name]) => !['start', 'end', 'comment', 'indented'].includes(name),
    );
    return Object.fromEntries(entries.map(([name, inner]) => [name, bare(inner)]));
  };
  return openDocument('', text).entries.map(({ header, details, slips }) => bare([header, details, slips]));
}
