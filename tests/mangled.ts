/** Session texts nobody meant to write: pieces of the language in any order, over the whole of Unicode. */
import fc from 'fast-check';
import { DETAILS, ENTRIES } from '../grammar/vocabulary.ts';

const shapes = [...ENTRIES, ...DETAILS];

const letters = [
  ...'?,#"\'/%+-±.:;()[]\\=',
  ...'\u2212\u2013\u2014\u2010\u2011\u00b0\u00ba\u02da\u2032\u2033\u2019\u201c\u201d\u201e\u201f\u00b4',
  ' ',
  '  ',
  '\t',
  '\u00a0',
  '\u2009',
  '\n',
  '\r',
  '\r\n',
  '\n  ',
  '\ufeff',
  '\u200b',
  '\u200d',
  '\u00ad',
  '\u202e',
  '\u2066',
  '\u0000',
  '\u0007',
  '\u0085',
  '\u2028',
  '\uffff',
  '\ud800',
  '\udc00',
  '\u{1f4d0}',
  '\u{10ffff}',
  '\u0301',
  '\u00e9',
  '\u0663',
  '\uff11',
  '5.',
  '.5',
  '1e3',
  '1e-3',
  '1,5',
  '1 234.5',
  "1'234.5",
  '1,234,567.8',
  '9999',
  '0',
  '41-09-08.18N',
  '19.5.2026',
  '2026-05-19',
  '07:52',
  '24:00',
  '08:25:30.5Z',
  '12',
  '101',
  '1.284 m',
  '5 ft 2 in',
  '5\'2"',
  'm',
  'ft',
  'in',
  'W',
  'N',
  'E',
  '"nail"',
  '"a""b"',
  '"open',
  '\u201ccurly\u201d',
  ' # remark',
  '#',
  'EPSG:3763',
  'PM-14',
  'keyed\u2011',
  'BM#3',
];

const piece = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...letters) },
  { weight: 3, arbitrary: fc.constantFrom(...shapes.map((shape) => shape.word)) },
  { weight: 2, arbitrary: fc.constantFrom(...shapes.map((shape) => shape.example)) },
  { weight: 2, arbitrary: fc.constantFrom('\n', '\r\n', '\r', '\n  ', '\n\n') },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 6 }) },
  // Code units on their own, lone surrogates among them.
  {
    weight: 1,
    arbitrary: fc
      .array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 4 })
      .map((codes) => String.fromCharCode(...codes)),
  },
);

/** A piece of text to type into a session. */
export const mangledPiece = fc.array(piece, { maxLength: 4 }).map((pieces) => pieces.join(''));

/** A whole file. */
export const mangledText = fc
  .tuple(fc.boolean(), fc.array(piece, { maxLength: 60 }))
  .map(([marked, pieces]) => (marked ? '\ufeff' : '') + pieces.join(''));

/** A file whose lines are well-formed, in any order and with any line ends. */
export const wellFormedText = fc
  .array(
    fc.tuple(
      fc.constantFrom('', '  ', '\t', '    '),
      fc.constantFrom(...shapes.map((shape) => shape.example)),
      fc.constantFrom('', '', ' ', '  # as typed', '\t# as typed'),
      fc.constantFrom('\n', '\n', '\r\n', '\r', '\n\n'),
    ),
    { maxLength: 25 },
  )
  .map((lines) => lines.map((line) => line.join('')).join(''));

/** Any text at all. */
export const anyText = fc.oneof(mangledText, wellFormedText, fc.string({ unit: 'binary', maxLength: 200 }));
