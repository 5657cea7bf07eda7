/** The tokens of a session file, in the order the lexer tries them; none is a keyword, since words get their meaning by place. */
import { createToken, Lexer, type CustomPatternMatcherFunc, type TokenType } from 'chevrotain';
import {
  BLANKS,
  CURLY_QUOTES,
  DASHES,
  DEGREE_MARKS,
  isDigit,
  MINUTE_MARKS,
  SECONDS_MARKS,
} from './characters.ts';

const blank = new RegExp(`[${BLANKS}]`, 'u');

/** Any token at all; a name is a run of these without a blank, comma or quote. */
export const Anything = createToken({ name: 'Anything', pattern: Lexer.NA });
/** What a name may consist of. */
export const NamePart = createToken({ name: 'NamePart', pattern: Lexer.NA, categories: [Anything] });

export const LineEnd = createToken({ name: 'LineEnd', pattern: /\r\n|\r|\n/, line_breaks: true });
export const Blank = createToken({ name: 'Blank', pattern: new RegExp(`[${BLANKS}]+`), group: Lexer.SKIPPED, line_breaks: false });
/** `#` to the line's end, at the line's start or after a blank; `BM#3` is a name. */
export const Comment = createToken({
  name: 'Comment',
  pattern: matcher((text, offset) => {
    if (text[offset] !== '#') return offset;
    const before = text[offset - 1];
    const opens = before === undefined || before === '\n' || before === '\r' || blank.test(before);
    return opens ? lineEnd(text, offset) : offset;
  }),
  start_chars_hint: ['#'],
  line_breaks: false,
});
/** Double-quoted text; a straight quote inside is doubled; directly after a digit the quote is a seconds mark instead. */
export const Text = createToken({
  name: 'Text',
  pattern: matcher((text, offset) => (isDigit(text[offset - 1]) ? offset : textEnd(text, offset))),
  start_chars_hint: ['"', ...CURLY_QUOTES],
  line_breaks: false,
  categories: [Anything],
});
export const Comma = createToken({ name: 'Comma', pattern: ',', categories: [Anything] });

export const IsoDate = part('IsoDate', /\d{4}-\d{2}-\d{2}(?![\d.-])/);
export const Time = part('Time', /\d{1,2}:\d{2}(?::\d{2}(?:\.\d+)?)?Z?(?![\d:])/);
/** Three numbers joined by dashes, slashes or points: a date in another order, or an angle packed into one run. */
export const Packed = part('Packed', /\d{1,4}(?:-\d{1,4}-|\/\d{1,4}\/|\.\d{1,4}\.)\d{1,4}(?:\.\d+)?/);
/** Digits grouped or parted by a comma without a blank after it. */
export const CommaNumber = part('CommaNumber', /\d+(?:\.\d+)*(?:,\d+)+(?:\.\d+)?/);
/** A point without digits on both sides is kept in the number, so that `.5` is never read as 5. */
export const Number = part('Number', /\d+(?:\.\d*)?|\.\d+/);
export const Word = part('Word', /\p{L}[\p{L}\p{M}\p{Nd}_]*(?:-\p{L}[\p{L}\p{M}\p{Nd}_]*)*/u, /\p{L}/u);
export const PlusMinus = part('PlusMinus', /±|\+\/-|\+-/);
export const Plus = part('Plus', /\+/);
export const Minus = part('Minus', new RegExp(`[${DASHES}]`));
export const DegreeMark = part('DegreeMark', new RegExp(`[${DEGREE_MARKS}]`));
/** One mark, or two minute marks in a row. */
export const SecondsMark = part('SecondsMark', new RegExp(`[${SECONDS_MARKS}]|[${MINUTE_MARKS}]{2}`));
export const MinuteMark = part('MinuteMark', new RegExp(`[${MINUTE_MARKS}]`));
export const Percent = part('Percent', /%/);
export const Question = part('Question', /\?/);
export const Slash = part('Slash', /\//);
/** Whatever else stands in the file; never a crash, always a finding. */
export const Other = part('Other', /[^\r\n]/u, /[^\r\n]/);

export const TOKENS: TokenType[] = [
  LineEnd,
  Blank,
  Comment,
  Text,
  Comma,
  IsoDate,
  Time,
  Packed,
  CommaNumber,
  Number,
  Word,
  PlusMinus,
  Plus,
  Minus,
  DegreeMark,
  SecondsMark,
  MinuteMark,
  Percent,
  Question,
  Slash,
  Other,
  Anything,
  NamePart,
];

const lexer = new Lexer(TOKENS, { positionTracking: 'onlyOffset', ensureOptimizations: true });

/** Tokens of a text from which invisible characters have been taken out; never fails. */
export const tokenize = (text: string) => lexer.tokenize(text).tokens;

function part(name: string, pattern: RegExp, first?: RegExp): TokenType {
  if (!first) return createToken({ name, pattern, categories: [NamePart], line_breaks: false });
  // The lexer drops the `u` flag of a plain pattern, so that \p{L} would mean the letters p, L and braces.
  const sticky = new RegExp(pattern.source, 'uy');
  const match = matcher((text, offset) => {
    sticky.lastIndex = offset;
    return sticky.test(text) ? sticky.lastIndex : offset;
  });
  const start_chars_hint = firstCharacters(first);
  return createToken({ name, pattern: match, categories: [NamePart], line_breaks: false, start_chars_hint });
}

/** Characters a token may start with, for the lexer's table: it tells Latin ones apart and keeps all others in coarse groups. */
function firstCharacters(first: RegExp): number[] {
  const codes: number[] = [];
  for (let code = 0; code < 256; code++) if (first.test(String.fromCharCode(code))) codes.push(code);
  for (let code = 256; code < 65536; code += 128) codes.push(code);
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

/** The end of the text that a quote at this offset opens: behind its closing quote, or at the line's end. */
function textEnd(text: string, offset: number): number {
  const opening = text[offset] ?? '';
  const curly = CURLY_QUOTES.includes(opening);
  if (opening !== '"' && !curly) return offset;
  for (let end = offset + 1; end < text.length; end++) {
    const character = text[end] ?? '';
    if (character === '\n' || character === '\r') return end;
    if (curly && CURLY_QUOTES.includes(character)) return end + 1;
    if (character !== '"') continue;
    if (text[end + 1] === '"') end++;
    else return end + 1;
  }
  return text.length;
}
