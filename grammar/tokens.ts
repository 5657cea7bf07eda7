/** The tokens of a session file, in the order the lexer tries them; none is a keyword, since words get their meaning by place. */
import { createToken, Lexer, type CustomPatternMatcherFunc, type TokenType } from 'chevrotain';
import {
  BLANKS,
  CURLY_QUOTES,
  DASHES,
  DEGREE_MARKS,
  isBlank,
  isDigit,
  MINUTE_MARKS,
  SECONDS_MARKS,
  wordEnd,
} from './characters.ts';

/** Any token at all; a name is a run of these without a blank, comma or quote. */
export const Anything = createToken({ name: 'Anything', pattern: Lexer.NA });
/** What a name may consist of. */
export const NamePart = createToken({ name: 'NamePart', pattern: Lexer.NA, categories: [Anything] });

export const LineEnd = createToken({ name: 'LineEnd', pattern: /\r\n|\r|\n/, line_breaks: true });
export const Blank = createToken({
  name: 'Blank',
  pattern: new RegExp(`[${BLANKS}]+`),
  group: Lexer.SKIPPED,
  line_breaks: false,
});
/** `#` to the line's end, at the line's start or after a blank; `BM#3` is a name. */
export const Comment = createToken({
  name: 'Comment',
  pattern: matcher((text, offset) => {
    if (text[offset] !== '#') return offset;
    const before = text[offset - 1];
    const opens = before === undefined || before === '\n' || before === '\r' || isBlank(before);
    return opens ? lineEnd(text, offset) : offset;
  }),
  start_chars_hint: ['#'],
  line_breaks: false,
});
/** Double-quoted text; a straight quote inside is doubled; directly after a digit a seconds mark is no quote. */
export const Text = createToken({
  name: 'Text',
  pattern: matcher((text, offset) => (isSecondsMark(text, offset) ? offset : textEnd(text, offset).end)),
  start_chars_hint: ['"', ...CURLY_QUOTES],
  line_breaks: false,
  categories: [Anything],
});
export const Comma = createToken({ name: 'Comma', pattern: ',', categories: [Anything] });

export const IsoDate = part('IsoDate', /\d{4}-\d{2}-\d{2}(?!\d|[.-]\d)/);
export const Time = part('Time', /\d{1,2}:\d{2}(?::\d{2}(?:\.\d+)?)?Z?(?![\d:])/);
/** Numbers joined by dashes, slashes or points: a date in another order, or an angle packed into one run. */
export const Packed = part('Packed', /\d{1,4}(?:-\d{1,4}-|\/\d{1,4}\/)\d{1,4}(?!\d)(?:\.\d+)?|\d+\.\d+\.\d+/);
/** A point without digits on both sides is kept in the number, so that `.5` is never read as 5. */
export const Number = part('Number', /\d+(?:\.\d*)?|\.\d+/);
// Before words, since º and some minute marks are letters to Unicode.
export const DegreeMark = part('DegreeMark', new RegExp(`[${DEGREE_MARKS}]`));
/** One mark, or two minute marks in a row. */
export const SecondsMark = part('SecondsMark', new RegExp(`[${SECONDS_MARKS}]|[${MINUTE_MARKS}]{2}`));
export const MinuteMark = part('MinuteMark', new RegExp(`[${MINUTE_MARKS}]`));
export const Word = createToken({
  name: 'Word',
  pattern: matcher(wordEnd),
  start_chars_hint: firstCharacters(/\p{L}/u),
  line_breaks: false,
  categories: [NamePart],
});
export const PlusMinus = part('PlusMinus', new RegExp(`±|\\+/?[${DASHES}]`));
export const Plus = part('Plus', /\+/);
export const Minus = part('Minus', new RegExp(`[${DASHES}]`));
export const Percent = part('Percent', /%/);
export const Question = part('Question', /\?/);
export const Slash = part('Slash', /\//);
/** Whatever else stands in the file; never a crash, always a finding. */
export const Other = createToken({
  name: 'Other',
  pattern: matcher((text, offset) => offset + ((text.codePointAt(offset) ?? 0) > 0xffff ? 2 : 1)),
  start_chars_hint: firstCharacters(/[^\r\n]/),
  line_breaks: false,
  categories: [NamePart],
});

export const TOKENS: TokenType[] = [
  LineEnd,
  Blank,
  Comment,
  Text,
  Comma,
  IsoDate,
  Time,
  Packed,
  Number,
  DegreeMark,
  SecondsMark,
  MinuteMark,
  Word,
  PlusMinus,
  Plus,
  Minus,
  Percent,
  Question,
  Slash,
  Other,
  Anything,
  NamePart,
];

/** @param validated whether the tokens themselves are looked over, which a test does once, so that no start has to */
export const lexerOf = (validated: boolean) =>
  new Lexer(TOKENS, {
    positionTracking: 'onlyOffset',
    ensureOptimizations: true,
    skipValidations: !validated,
  });
const lexer = lexerOf(false);

/** Tokens of a text from which invisible characters have been taken out; never fails. */
export const tokenize = (text: string) => lexer.tokenize(text).tokens;

function part(name: string, pattern: RegExp): TokenType {
  return createToken({ name, pattern, categories: [NamePart], line_breaks: false });
}

/** Characters a token may start with, for the lexer's table: it tells Latin ones apart and keeps all others in coarse groups. */
function firstCharacters(first: RegExp): number[] {
  const codes: number[] = [];
  for (let code = 0; code < 256; code++) if (first.test(String.fromCharCode(code))) codes.push(code);
  for (let code = 256; code < 65536; code += 128) codes.push(code);
  codes.push(0xffff);
  return codes;
}

/** A pattern that says where the token ends; the same offset means no match. */
function matcher(end: (text: string, offset: number) => number): { exec: CustomPatternMatcherFunc } {
  return {
    exec: (text, offset) => {
      const stop = end(text, offset);
      return stop > offset ? [text.slice(offset, stop)] : null;
    },
  };
}

function lineEnd(text: string, offset: number): number {
  let end = offset;
  while (end < text.length && text[end] !== '\n' && text[end] !== '\r') end++;
  return end;
}

function isSecondsMark(text: string, offset: number): boolean {
  return isDigit(text[offset - 1]) && SECONDS_MARKS.includes(text[offset] ?? ' ');
}

/** Where the text that a quote opens here ends: behind its closing quote, or, unclosed, at the line's end. */
export function textEnd(text: string, offset: number): { readonly end: number; readonly closed: boolean } {
  const opening = text[offset] ?? ' ';
  const curly = CURLY_QUOTES.includes(opening);
  if (opening !== '"' && !curly) return { end: offset, closed: false };
  let end = offset + 1;
  for (; end < text.length; end++) {
    const character = text[end] ?? '';
    if (character === '\n' || character === '\r') break;
    if (curly && CURLY_QUOTES.includes(character)) return { end: end + 1, closed: true };
    if (character !== '"') continue;
    if (text[end + 1] !== '"') return { end: end + 1, closed: true };
    end++;
  }
  return { end: Math.min(end, text.length), closed: false };
}
