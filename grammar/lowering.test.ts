/** Each letter of the language, settled by example. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyText } from '../tests/mangled.ts';
import { openDocument } from './document.ts';
import { dayOf } from './lowering.ts';
import { parseLine } from './parser.ts';
import { Comment, LineEnd, tokenize } from './tokens.ts';
import type { IToken } from 'chevrotain';
import type { Entry, Item, Measure, Sum, Term } from './tree.ts';
import { visibleOf } from './visible.ts';

/** The entry that a detail line makes under a mark, whose own line is sound. */
function read(line: string): {
  entry: Entry;
  items: string[];
  slips: (readonly [string, string, ...string[]])[];
} {
  const entry = openDocument('', `mark A\n  ${line}\n`).entries[0];
  if (!entry) throw new Error('no entry');
  const items = (entry.details[0]?.items ?? []).map(told);
  return {
    entry,
    items,
    slips: entry.slips.map(({ slip, typed, readings }) => [slip, typed, ...readings] as const),
  };
}

/** An item in one short line: its kind and what it says. */
function told(item: Item): string {
  switch (item.kind) {
    case 'sum':
      return toldSum(item);
    case 'text':
      return `text ${item.text}`;
    case 'name':
      return `name ${item.name}`;
    case 'word':
      return item.word;
    case 'junk':
      return `junk ${item.text}`;
    case 'time':
      return `time ${item.seconds}${item.utc ? ' UTC' : ''}`;
    case 'date':
      return `day ${item.day}`;
    default:
      return item.kind;
  }
}

function toldSum(sum: Sum): string {
  const term = ({ sign, measure, uncertainty, label }: Term, index: number) =>
    [
      index === 0 ? '' : sign === 1 ? 'plus' : 'minus',
      measure ? toldMeasure(measure) : '',
      uncertainty ? `± ${toldMeasure(uncertainty)}` : '',
      label ? `"${label.text}"` : '',
    ]
      .filter((piece) => piece !== '')
      .join(' ');
  return sum.terms.map(term).join(' ');
}

const toldMeasure = ({ sign, parts }: Measure) =>
  (sign ?? '') +
  parts
    .map(
      ({ numeral, unit }) =>
        `${numeral.value ?? (numeral.open ? '?' : 'hole')}${unit ? ` ${unit.unit}` : ''}`,
    )
    .join(' ');

describe('blanks and characters that nobody sees', () => {
  it.each([' ', '\t', '   ', '\u00a0', '\u2009', '\u202f', '\u3000', '\u2003 \t'])(
    'takes %j for a blank',
    (blank) => {
      expect(read(`height${blank}5${blank}m${blank}orthometric`).items).toEqual(['5 m', 'orthometric']);
    },
  );

  it('ignores invisible characters, with a slip for each run of them', () => {
    const { entry, items, slips } = read('hei\u200bght 5\u00ad\u200b.2 m\ufeff');
    expect(items).toEqual(['5.2 m']);
    expect(entry.details[0]?.word?.word).toBe('height');
    expect(slips).toEqual([
      ['invisible-character', '\u200b', ''],
      ['invisible-character', '\u00ad\u200b', ''],
      ['invisible-character', '\ufeff', ''],
    ]);
  });

  it('tells bidirectional controls apart from characters that are merely invisible', () => {
    expect(read('found \u202e\u200bintact\u2066').slips.map(([slip]) => slip)).toEqual([
      'bidirectional-control',
      'invisible-character',
      'bidirectional-control',
    ]);
    expect(read('found intact # \u202e').slips).toHaveLength(1);
  });

  it('counts every place in the text that still has them', () => {
    const text =
      '\ufeffmark A\u200b "na\u200bil" # se\u200ben\n  \u200bhei\u200bght\u200b 1,\u200b5 m \u2212\u200b 2\u200b mm "o\n';
    const entry = openDocument('', text).entries[0];
    const at = (span: { start: number; end: number } | null | undefined) =>
      span && text.slice(span.start, span.end);
    expect(at(entry?.header)).toBe('mark A\u200b "na\u200bil"');
    expect(entry?.header.items.map(at)).toEqual(['A', '"na\u200bil"']);
    expect(at(entry?.header.comment)).toBe('# se\u200ben');
    const line = entry?.details[0];
    expect(at(line)).toBe('hei\u200bght\u200b 1,\u200b5 m \u2212\u200b 2\u200b mm "o');
    expect(at(line?.word)).toBe('hei\u200bght');
    const sum = line?.items[0] as Sum;
    expect(sum.terms.map(at)).toEqual(['1,\u200b5 m', '2\u200b mm "o']);
    expect(sum.terms.map((term) => at(term.measure?.parts[0]?.numeral))).toEqual(['1,\u200b5', '2']);
    expect(at(sum.terms[1]?.label)).toBe('"o');
    const found = entry?.slips.map((slip) => [slip.slip, at(slip), slip.typed]);
    expect(found?.filter(([slip]) => slip !== 'invisible-character')).toEqual([
      ['decimal-comma', '1,\u200b5', '1,5'],
      ['look-alike', '\u2212', '\u2212'],
      ['unclosed-text', '"o', '"o'],
    ]);
    const unseen = found?.filter(([slip]) => slip === 'invisible-character');
    expect(unseen).toHaveLength(text.split('\u200b').length - 1);
    expect(unseen?.every(([, typed]) => typed === '\u200b')).toBe(true);
  });

  it('reads words whose hyphens a word processor has changed', () => {
    const entry = openDocument('', 'antenna A1\n  phase\u2011centre 92 mm above arp\n').entries[0];
    expect(entry?.details[0]?.word?.word).toBe('phase-centre');
    expect(entry?.slips).toMatchObject([
      { slip: 'look-alike', typed: 'phase\u2011centre', readings: ['phase-centre'] },
    ]);
    const keyed = openDocument('', 'setup B\n  keyed antenna\u2010type A1\n').entries[0];
    expect(keyed?.details[0]?.items.map(told)).toEqual(['antenna-type', 'name A1']);
  });
});

describe('names', () => {
  it.each([
    ['PM-14', 'PM-14'],
    ['101', '101'],
    ['08:25', '08:25'],
    ['1/2', '1/2'],
    ['BM#3', 'BM#3'],
    ['2026-05-19', '2026-05-19'],
    ['UTC+01:00', 'UTC+01:00'],
    ['EPSG:3763', 'EPSG:3763'],
    ['5m', '5m'],
    ['1.5e3', '1.5e3'],
    ['height', 'height'],
    ['mark', 'mark'],
    ['\u{1f4d0}-7', '\u{1f4d0}-7'],
    ['?', '?'],
    ['(a)', '(a)'],
    ['\u2212', '\u2212'],
  ])('takes %j behind `found` whole', (typed, name) =>
    expect(read(`found ${typed}`).items).toEqual([`name ${name}`]),
  );

  it.each([
    ['found 1,5', ['name 1', 'comma', '5']],
    ['found a,b', ['name a', 'comma', 'b']],
    ['found a"b"', ['name a', 'text b']],
    ['found 101\u201cnail\u201d', ['name 101', 'text nail']],
    ['found "a b"', ['text a b']],
    ['found , x', ['comma', 'x']],
    ['found #3', []],
  ])('ends the name in `%s`', (line, items) => expect(read(line).items).toEqual(items));

  it.each(['on', 'with', 'by', 'from', 'to', 'in', 'above', 'below', 'antenna-type', 'seal', 'geoid', 'ON'])(
    'expects a name behind `%s`',
    (word) => {
      expect(read(`position 5 m ${word} 08:25, 3 mm`).items).toEqual([
        '5 m',
        word,
        'name 08:25',
        'comma',
        '3 mm',
      ]);
    },
  );

  it('takes `in` for a system where one follows, and for inches elsewhere', () => {
    expect(read('position 5 in EPSG:4258').items).toEqual(['5', 'in', 'name EPSG:4258']);
    expect(read('position 5 in').items).toEqual(['5 in']);
  });
});

describe('text', () => {
  it.each([
    ['source "a b"', ['text a b']],
    ['source "say ""x"" twice"', ['text say "x" twice']],
    ['source ""', ['text ']],
    ['source """"', ['text "']],
    ['source \u201ccurly\u201d', ['text curly']],
    ['source \u201elow\u201c \u201fother\u201d', ['text low', 'text other']],
    ['source \u201cmixed"', ['text mixed']],
    ['source "a \u201cb\u201d c"', ['text a \u201cb\u201d c']],
    ['source "back\\" x', ['text back\\', 'x']],
    ['source "a # b" # c', ['text a # b']],
    ['source "NUL \u0000 ""x"""', ['text NUL \u0000 "x"']],
    ["source 'a", ["junk '", 'a']],
  ])('reads `%s`', (line, items) => {
    const { items: found, slips } = read(line);
    expect(found).toEqual(items);
    expect(slips).toEqual([]);
  });

  it('ends at the line where nothing closes it, and says how it may be closed', () => {
    const { items, slips } = read('source "open, 5 m');
    expect(items).toEqual(['text open, 5 m']);
    expect(slips).toEqual([['unclosed-text', '"open, 5 m', '"open, 5 m"']]);
    expect(read('source "open  # why').slips).toEqual([
      ['unclosed-text', '"open  # why', '"open"  # why', '"open  # why"'],
    ]);
  });

  it('takes a quote directly behind a digit for seconds, and behind a blank for a quote', () => {
    expect(read('position 5"').items).toEqual(['5 "']);
    expect(read('position 5 "x"').items).toEqual(['5 "x"']);
  });
});

describe('comments', () => {
  it.each([
    ['height 5 m # c', '# c'],
    ['height 5 m\u00a0#c', '#c'],
    ['height 5 m#c', null],
    ['found BM#3', null],
  ])('finds in `%s` the comment %j', (line, comment) => {
    const { entry } = read(line);
    const found = entry.details[0]?.comment;
    expect(found ? entry.text.slice(found.start, found.end) : null).toBe(comment);
  });
});

describe('numbers', () => {
  it.each([
    ['5', '5'],
    ['5.20', '5.2'],
    ['007', '7'],
    ['-5', '-5'],
    ['+ 5', '+5'],
    ['0.1', '0.1'],
    ['?', '?'],
    ['? m', '? m'],
  ])('reads %j', (typed, value) => {
    expect(read(`position ${typed}`)).toMatchObject({ items: [value], slips: [] });
  });

  it('keeps the digits as typed', () => {
    const sum = read('position 5.200 m').entry.details[0]?.items[0] as Sum;
    expect(sum.terms[0]?.measure?.parts[0]?.numeral).toMatchObject({
      typed: '5.200',
      value: 5.2,
      open: false,
    });
  });

  it.each([
    ['.5', 'bare-point', ['0.5']],
    ['5.', 'bare-point', ['5']],
    ['1e3', 'exponent', ['1000']],
    ['1.5E-3', 'exponent', ['0.0015']],
    ['1.2345e+2', 'exponent', ['123.45']],
    ['12e\u22121', 'exponent', ['1.2']],
    ['1e999', 'exponent', []],
    ['1,5', 'decimal-comma', ['1.5', '1, 5']],
    ['1,284', 'decimal-comma', ['1.284', '1284', '1, 284']],
    ['1.5,2.5', 'decimal-comma', ['1.5, 2.5']],
    ['1,2,3', 'decimal-comma', ['1, 2, 3']],
    ['1.234,5', 'decimal-comma', ['1234.5', '1.234, 5']],
    ['1 234,5', 'decimal-comma', ['1234.5']],
    ['1,234.5', 'grouped-digits', ['1234.5']],
    ['1,234,567', 'grouped-digits', ['1234567']],
    ['1 234.5', 'grouped-digits', ['1234.5']],
    ['1\u202f234\u202f567', 'grouped-digits', ['1234567']],
    ["1'234.5", 'grouped-digits', ['1234.5']],
    ['1\u2019234\u2019567.25', 'grouped-digits', ['1234567.25']],
    ['1.234.567', 'grouped-digits', ['1234567']],
    ['1..5', 'broken-number', []],
    ['12345.67.89', 'broken-number', []],
    ['9'.repeat(400), 'too-large', []],
  ])('makes a hole of %j', (typed, slip, readings) => {
    const { items, slips } = read(`position ${typed} m`);
    expect(items).toEqual(['hole m']);
    expect(slips).toEqual([[slip, typed, ...readings]]);
  });

  it('reads a unit that touches an exponent', () => {
    expect(read('position 1e3mm')).toMatchObject({
      items: ['hole'],
      slips: [['exponent', '1e3mm', '1000 mm']],
    });
  });

  it.each(['41-09-08.18', '19.5.2026', '19/05/2026', '2026-5-19', '1.2.3'])(
    'makes a hole without a slip of packed %s',
    (typed) => {
      expect(read(`position ${typed}`)).toMatchObject({ items: ['hole'], slips: [] });
    },
  );

  it.each([
    ['5, 234', ['5', 'comma', '234']],
    ['12 34', ['12', '34']],
    ['41 09 08.18 N', ['41', '9', '8.18', 'N']],
    ['1234 567', ['1234', '567']],
    ['1 ,5', ['1', 'comma', '5']],
    ['5 epochs', ['5', 'epochs']],
    ['5E', ['5', 'E']],
    ['\u0665', ['junk \u0665']],
  ])('takes %j for what it is', (typed, items) =>
    expect(read(`position ${typed}`)).toMatchObject({ items, slips: [] }),
  );

  it('gives each reading of a hole as a replacement that has no slip of its own', () => {
    for (const typed of ['.5', '5.', '1e3', '1,284', '1.5,2.5', '1 234,5', "1'234.5", '1,234.5'])
      for (const reading of read(`position ${typed}`).entry.slips.flatMap((slip) => slip.readings))
        expect(read(`position ${reading}`).slips).toEqual([]);
  });
});

describe('signs and sums', () => {
  it.each([
    ['-5 m', '-5 m'],
    ['- 5 m', '-5 m'],
    ['5 m -2 mm', '5 m minus 2 mm'],
    ['5 m-2 mm', '5 m minus 2 mm'],
    ['5 m - 2 mm + 3 mm', '5 m minus 2 mm plus 3 mm'],
    [
      '1.412 m ± 1 mm "tape" - 2 mm "slope" + 300 mm "pole"',
      '1.412 m ± 1 mm "tape" minus 2 mm "slope" plus 300 mm "pole"',
    ],
    ['5 m +- 1 mm', '5 m ± 1 mm'],
    ['5 m +/- 1 mm', '5 m ± 1 mm'],
    ['5 m +/\u2212 1 mm', '5 m ± 1 mm'],
    ['± 1 mm', '± 1 mm'],
    ['35 mm + 1 ppm', '35 mm plus 1 ppm'],
  ])('reads `%s`', (typed, told) =>
    expect(read(`position ${typed}`)).toMatchObject({ items: [told], slips: [] }),
  );

  it.each(['\u2212', '\u2013', '\u2014', '\u2010', '\uff0d'])('takes %j for a minus, with a slip', (dash) => {
    expect(read(`position ${dash}5 m`)).toMatchObject({
      items: ['-5 m'],
      slips: [['look-alike', dash, '-']],
    });
    expect(read(`position 5 m ${dash} 2 mm`)).toMatchObject({
      items: ['5 m minus 2 mm'],
      slips: [['look-alike', dash, '-']],
    });
  });

  it('starts a new quantity behind a comma, a word or a letter', () => {
    expect(read('position 5 m E -2 m N, -3 m').items).toEqual(['5 m', 'E', '-2 m', 'N', 'comma', '-3 m']);
  });

  it.each(['5 m -', '5 m ± x', '- ± 1 mm', '+ - 5 m'])('loses nothing of `%s`', (typed) => {
    const { entry } = read(`position ${typed}`);
    const items = entry.details[0]?.items ?? [];
    expect(
      items
        .map((item) => entry.text.slice(item.start, item.end))
        .join('')
        .replaceAll(' ', ''),
    ).toBe(typed.replaceAll(' ', ''));
  });
});

describe('units and angles', () => {
  it.each([
    ['5m', '5 m'],
    ['5 ft 2 in', '5 ft 2 in'],
    ['5ft2in', '5'],
    ['18 °C', '18 °C'],
    ['18 °', '18 °'],
    ['95 %', '95 %'],
    ['5\'2"', '5 \' 2 "'],
    [`41°09'08.2"`, `41 ° 9 ' 8.2 "`],
    [`41 º 09 \u2032 08.2\u2033`, `41 ° 9 ' 8.2 "`],
    [`41˚09\u201908.2\u201d`, `41 ° 9 ' 8.2 "`],
    [`41°09'08.2''`, `41 ° 9 ' 8.2 "`],
    ['41.152°', '41.152 °'],
    [`8'`, `8 '`],
    [`41°9'123.4"`, `41 ° 9 ' 123.4 "`],
  ])('reads %j', (typed, told) => {
    const { items, slips } = read(`position ${typed}`);
    expect(items[0]).toBe(told);
    expect(slips).toEqual([]);
  });

  it('keeps a decimal comma inside the angle that it spoils', () => {
    const { items, slips } = read(`position 41°09'08,2"N`);
    expect(items).toEqual([`41 ° 9 ' hole "`, 'N']);
    expect(slips).toEqual([['decimal-comma', '08,2', '08.2', '08, 2']]);
  });

  it.each(['M', 'Mm', 'metres', 'FT', 'c'])('leaves `%s` a word, since no unit is spelt so', (word) => {
    expect(read(`position 5 ${word}`).items).toEqual(['5', word]);
  });
});

describe('times and dates', () => {
  it.each([
    ['7:05', 25500, false],
    ['07:05', 25500, false],
    ['08:25:30', 30330, false],
    ['08:25:30.5Z', 30330.5, true],
    ['00:00', 0, false],
    ['23:59:59', 86399, false],
    ['24:00', null, false],
    ['08:60', null, false],
    ['25:00Z', null, true],
  ])('reads %s', (typed, seconds, utc) => {
    expect(read(`position ${typed}`).items).toEqual([`time ${seconds}${utc ? ' UTC' : ''}`]);
  });

  it.each(['8:5', '08:25:3', '008:25', '08:250'])('takes no part of %s for a time', (typed) => {
    expect(read(`position ${typed}`).items.filter((item) => item.startsWith('time'))).toEqual([]);
  });

  // ISO 8601: 2024 is a leap year, 2026 is none; 1970-01-01 is day 0 by the tree's own definition.
  it.each([
    ['1970-01-01', 0],
    ['1970-02-01', 31],
    ['1969-12-31', -1],
    ['2024-02-29', 19782],
    ['2026-02-29', null],
    ['2026-13-01', null],
    ['2026-00-10', null],
  ])('counts %s', (typed, day) => {
    expect(dayOf(typed)).toBe(day);
    expect(read(`position ${typed}`).items).toEqual([`day ${day}`]);
  });

  it.each(['2026-05-19.', '2026-05-19-'])('reads the date of %s, where the rest is left over', (typed) => {
    expect(read(`position ${typed}`).items[0]).toBe(read('position 2026-05-19').items[0]);
  });

  it.each(['2026-05-191', '2026-05-19.5', '2026-05-19-1'])('takes no part of %s for a date', (typed) => {
    expect(read(`position ${typed}`).items.filter((item) => item.startsWith('day'))).toEqual([]);
  });
});

describe('any line whatever', () => {
  it('fits the shape of a line', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        let line: IToken[] = [];
        for (const token of [...tokenize(visibleOf(text).text), null]) {
          if (token && token.tokenType !== LineEnd) {
            if (token.tokenType !== Comment) line.push(token);
            continue;
          }
          expect(parseLine(line)).not.toBeNull();
          line = [];
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('is tokens and blanks, with nothing left out', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const visible = visibleOf(text).text;
        const images = tokenize(visible).map((token) => token.image);
        expect(images.join('').replace(blanks, '')).toBe(visible.replace(blanks, ''));
      }),
      { numRuns: 1000 },
    );
  });

  it('is words, items and a comment, with nothing left out', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        for (const entry of openDocument('', text).entries) {
          const covered = new Set<number>();
          const cover = (span: { start: number; end: number } | null) => {
            for (let at = span?.start ?? 0; at < (span?.end ?? 0); at++) covered.add(at);
          };
          for (const line of [entry.header, ...entry.details])
            [line.word, ...line.items, line.comment].forEach(cover);
          const lines = entry.details.length + (entry.header.end > entry.header.start ? 1 : 0);
          const spoken = tokenize(visibleOf(entry.text).text).filter(
            (token) => token.tokenType !== LineEnd && token.tokenType !== Comment,
          );
          const { origin } = visibleOf(entry.text);
          if (lines === 0) expect(spoken).toEqual([]);
          for (const token of spoken)
            for (let at = token.startOffset; at < token.startOffset + token.image.length; at++)
              // The sign between two terms stands in their sum.
              expect(covered.has(origin?.[at] ?? at)).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });
});

const blanks = /[ \t\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/g;
