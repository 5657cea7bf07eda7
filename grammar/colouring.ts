/** The colouring for editors, a TextMate grammar made from the vocabulary and the tokens' own patterns. */
import { BLANKS, CURLY_QUOTES, WORD, WORD_JOINS } from './characters.ts';
import * as token from './tokens.ts';
import { UNITS } from './units.ts';
import { DETAILS, ENTRIES, NAME_FOLLOWS, type Subject } from './vocabulary.ts';

type Captures = Readonly<Record<number, { readonly name: string }>>;

/** One pattern with the scope of what it finds. */
type Rule =
  | { readonly name: string; readonly match: string }
  | { readonly match: string; readonly captures: Captures }
  | {
      readonly begin: string;
      readonly beginCaptures: Captures;
      readonly end: string;
      readonly patterns: readonly Rule[];
    };

/** Scopes of what stands in a line; each ends in the language's own name. */
export const SCOPES = {
  comment: 'comment.line.number-sign.tribrach',
  text: 'string.quoted.double.tribrach',
  entry: 'keyword.control.entry.tribrach',
  detail: 'entity.name.tag.detail.tribrach',
  relation: 'keyword.operator.word.tribrach',
  name: 'entity.name.type.tribrach',
  date: 'constant.other.date.tribrach',
  time: 'constant.other.time.tribrach',
  spoilt: 'invalid.illegal.number.tribrach',
  cell: 'string.unquoted.cell.tribrach',
  number: 'constant.numeric.tribrach',
  unit: 'keyword.other.unit.tribrach',
  angle: 'keyword.other.unit.angle.tribrach',
  hemisphere: 'constant.language.hemisphere.tribrach',
  open: 'markup.changed.open.tribrach',
  sign: 'keyword.operator.arithmetic.tribrach',
  comma: 'punctuation.separator.comma.tribrach',
  word: 'variable.other.word.tribrach',
  junk: 'invalid.illegal.tribrach',
} as const;

/** The grammar as a plain object; every pattern lies within one line, and none goes over it again and again. */
export function textMateGrammar(): object {
  const comment = { name: SCOPES.comment, match: `(?:^|(?<=${BLANK}))#.*$` };
  const text = { name: SCOPES.text, match: TEXT };
  const comma = { name: SCOPES.comma, match: ',' };
  const patterns: readonly Rule[] = [
    comment,
    row([
      comment,
      text,
      comma,
      { name: SCOPES.number, match: '(?<![^,\\s])[-+]?[0-9]+(?:\\.[0-9]+)?(?![^,\\s])' },
    ]),
    ...firstWords(SCOPES.entry, ENTRIES),
    ...firstWords(SCOPES.detail, DETAILS),
    text,
    { name: SCOPES.date, match: alone(source(token.IsoDate)) },
    { name: SCOPES.time, match: alone(source(token.Time)) },
    quantity(SCOPES.spoilt, alone(SPOILT)),
    quantity(SCOPES.number, source(token.Number)),
    quantity(SCOPES.open, source(token.Question)),
    { name: SCOPES.unit, match: `${source(token.DegreeMark)}C${WORD_ENDS}|${source(token.Percent)}` },
    {
      name: SCOPES.angle,
      match: [token.DegreeMark, token.SecondsMark, token.MinuteMark].map(source).join('|'),
    },
    relation(),
    { name: SCOPES.hemisphere, match: `[NSEW]${WORD_ENDS}` },
    { name: SCOPES.word, match: onigurumaSource(WORD) },
    { name: SCOPES.sign, match: [token.PlusMinus, token.Plus, token.Minus].map(source).join('|') },
    { name: SCOPES.sign, match: source(token.Slash) },
    comma,
    { name: SCOPES.junk, match: `[^${onigurumaSource(BLANKS)}]` },
  ];
  return { scopeName: 'source.tribrach', name: 'Tribrach session', fileTypes: ['trib'], patterns };
}

const BLANK = `[${onigurumaSource(BLANKS)}]`;
const QUOTES = `"${CURLY_QUOTES}`;
const WORD_ENDS = `(?!${onigurumaSource(WORD_JOINS)})`;
const NAME = `[^${onigurumaSource(BLANKS)},${QUOTES}#][^${onigurumaSource(BLANKS)},${QUOTES}]*`;
/** Straight quotes are closed by a straight one, curly ones by either; a seconds mark stands behind a digit. */
const TEXT = `(?<![0-9])"(?>[^"]|"")*+(?:"|$)|(?:[${CURLY_QUOTES}])(?<![0-9]\u201d)(?>[^${QUOTES}]|"")*+(?:[${QUOTES}]|$)`;
/** Digits that are no number: packed, with a comma or an exponent, or with a point at one end. */
const SPOILT = [
  source(token.Packed),
  '(?>[0-9]+(?:\\.[0-9]+)*+)(?:,[0-9]+(?:\\.[0-9]+)*+)++',
  '(?>[0-9]+(?:\\.[0-9]+)?+)[eE][-+]?[0-9]+',
  '(?>[0-9]+)\\.(?![0-9])',
  '\\.[0-9]+',
].join('|');

/** A first word, with the name behind it where one stands there. */
function firstWords(
  scope: string,
  words: readonly { readonly word: string; readonly subject: Subject }[],
): Rule[] {
  const first = (wanted: boolean) =>
    words.filter(({ subject }) => (subject === 'name') === wanted).map(({ word }) => word);
  const opening = (alternatives: readonly string[]) =>
    `^(?:${BLANK}*)((?i:${alternatives.join('|')}))${WORD_ENDS}`;
  return [
    {
      match: `${opening(first(true))}(?:${BLANK}+(${NAME}))?`,
      captures: { 1: { name: scope }, 2: { name: SCOPES.name } },
    },
    { match: opening(first(false)), captures: { 1: { name: scope } } },
  ];
}

/** A word inside a line that a name follows. */
function relation(): Rule {
  return {
    match: `((?i:${[...NAME_FOLLOWS].join('|')}))${WORD_ENDS}(?:${BLANK}+(${NAME}))?`,
    captures: { 1: { name: SCOPES.relation }, 2: { name: SCOPES.name } },
  };
}

/** A number with its unit; `in` before a colon names a system. */
function quantity(scope: string, numeral: string): Rule {
  const units = UNITS.map(({ unit }) => unit).filter((unit) => /^[a-z]+$/i.test(unit));
  const system = `in${BLANK}+\\p{L}+:`;
  const unit = `${BLANK}*((?!${system})(?:${units.join('|')})${WORD_ENDS})`;
  return {
    match: `(${numeral})(?:${unit})?`,
    captures: { 1: { name: scope }, 2: { name: SCOPES.unit } },
  };
}

/** The cells of a row follow the rules of a file, where digits may touch a comma. */
function row(cells: readonly Rule[]): Rule {
  return {
    begin: `^${BLANK}*((?i:row))${WORD_ENDS}`,
    beginCaptures: { 1: { name: SCOPES.detail } },
    end: '$',
    patterns: [...cells, { name: SCOPES.cell, match: `[^,"${onigurumaSource(BLANKS)}]+` }],
  };
}

/** Not inside a run of digits: there the lexer, which goes from left to right, never starts. */
function alone(pattern: string): string {
  return `(?<![0-9.])(?:${pattern})`;
}

function source(type: { readonly PATTERN?: unknown }): string {
  if (!(type.PATTERN instanceof RegExp)) throw new Error('only a plain pattern can be shared');
  return `(?:${onigurumaSource(type.PATTERN.source)})`;
}

/** The same pattern for the other engine, to which every script's digits are digits and code points look different. */
function onigurumaSource(pattern: string): string {
  return pattern.replaceAll('\\d', '[0-9]').replace(/\\u([0-9a-f]{4})/gi, '\\x{$1}');
}
