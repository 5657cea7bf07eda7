/** From the parser's own tree to plain data; no other file sees the parser's tree. */
import { tokenMatcher, type CstNode, type IToken } from 'chevrotain';
import { attempted, isFault } from './fault.ts';
import { isBidirectional, isBlank, plainHyphens } from './characters.ts';
import { endOf, readNumeral } from './numerals.ts';
import { parseLine } from './parser.ts';
import * as token from './tokens.ts';
import type {
  Entry,
  IsoDate,
  Item,
  Junk,
  Line,
  Measure,
  Name,
  Numeral,
  Part,
  Slip,
  Span,
  Sum,
  Term,
  Text,
  Time,
  UnitMark,
  Word,
} from './tree.ts';
import { fullSpan, unseenRuns, visibleOf, type Visible } from './visible.ts';
import { detailWord } from './vocabulary.ts';

/**
 * Reads the text of one entry; never fails.
 * @param headed the first line opens the entry; otherwise all its lines are details of nothing
 * @param opensFile the text stands at the very start of a file, where a byte order mark is no slip
 */
export function readEntry(text: string, headed: boolean, opensFile: boolean): Entry {
  const entry = attempted(() => read(text, headed, opensFile));
  return isFault(entry) ? unreadEntry(text, entry.fault) : entry;
}

export const unreadEntry = (text: string, fault: string): Entry => ({
  text,
  header: NO_HEADER,
  details: [],
  slips: [],
  fault,
});

function read(text: string, headed: boolean, opensFile: boolean): Entry {
  const visible = visibleOf(text);
  const slips: Slip[] = [];
  const lines: Line[] = [];
  for (const tokens of linesOf(token.tokenize(visible.text))) {
    const line = lowerLine(tokens, { text: visible.text, slips });
    if (line.word !== null || line.items.length > 0) lines.push(line);
  }
  const header = (headed ? lines.shift() : undefined) ?? NO_HEADER;
  const entry: Entry = { text, header, details: lines, slips };
  return visible.origin ? inFullText(entry, visible, opensFile) : entry;
}

const NO_HEADER: Line = { start: 0, end: 0, word: null, items: [], comment: null, indented: false };

/** The visible text that is read, and where slips are noted. */
interface Reading {
  readonly text: string;
  readonly slips: Slip[];
}

/** The same tree with every span counted in the text that still has its unseen characters, each run of them a slip. */
function inFullText({ text, header, details, slips }: Entry, visible: Visible, opensFile: boolean): Entry {
  const moved = (value: unknown): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    if (Array.isArray(value)) return value.map(moved);
    const copy = Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, moved(inner)]));
    return 'start' in value && 'end' in value ? { ...copy, ...fullSpan(value as Span, visible) } : copy;
  };
  return {
    text,
    header: moved(header) as Line,
    details: moved(details) as Line[],
    slips: [...unseenSlips(text, opensFile), ...(moved(slips) as Slip[])],
  };
}

function unseenSlips(text: string, opensFile: boolean): Slip[] {
  const from = opensFile && text.startsWith('\ufeff') ? 1 : 0;
  return unseenRuns(text, from).map(({ start, end }) => {
    const typed = text.slice(start, end);
    const slip = isBidirectional(typed) ? 'bidirectional-control' : 'invisible-character';
    return { slip, typed, readings: [''], start, end };
  });
}

/** The tokens of each line that has any. */
function linesOf(tokens: readonly IToken[]): IToken[][] {
  const lines: IToken[][] = [];
  let line: IToken[] = [];
  for (const next of tokens) {
    if (!tokenMatcher(next, token.LineEnd)) line.push(next);
    else if (line.length > 0) {
      lines.push(line);
      line = [];
    }
  }
  if (line.length > 0) lines.push(line);
  return lines;
}

function lowerLine(tokens: IToken[], reading: Reading): Line {
  const last = tokens[tokens.length - 1];
  const comment = last && tokenMatcher(last, token.Comment) ? tokens.pop() : undefined;
  const opening = tokens[0] ?? comment;
  const closing = tokens[tokens.length - 1];
  const start = opening?.startOffset ?? 0;
  const node = tokens.length > 0 ? parseLine(tokens) : null;
  const first = node ? tokenAt(node, 'first') : undefined;
  // The cells of a row are data of a file, where digits and commas follow other rules.
  const isRow = first !== undefined && detailWord(first.image)?.word === 'row';
  const inside: Reading = isRow ? { text: reading.text, slips: [] } : reading;
  const items = node ? lowerItems(node, inside) : tokens.map(junk);
  if (isRow) for (const slip of inside.slips) if (slip.slip === 'unclosed-text') reading.slips.push(slip);
  const before = start === 0 ? '\n' : reading.text[start - 1];
  return {
    start,
    end: closing ? endOf(closing) : start,
    word: first ? word(first, reading) : null,
    items,
    comment: comment ? span(comment) : null,
    indented: before !== '\n' && before !== '\r',
  };
}

function lowerItems(line: CstNode, reading: Reading): Item[] {
  return (line.children.item ?? []).map((item) => {
    if (!('children' in item)) return lowerToken(item, reading);
    return item.name === 'sum' ? lowerSum(item, reading) : lowerName(item);
  });
}

function lowerToken(typed: IToken, reading: Reading): Item {
  switch (typed.tokenType) {
    case token.Word:
      return word(typed, reading);
    case token.Text:
      return lowerText(typed, reading);
    case token.Comma:
      return { kind: 'comma', start: typed.startOffset, end: endOf(typed) };
    case token.Slash:
      return { kind: 'slash', start: typed.startOffset, end: endOf(typed) };
    case token.Time:
      return lowerTime(typed);
    case token.IsoDate:
      return lowerDate(typed);
    default:
      return junk(typed);
  }
}

function lowerName(node: CstNode): Name {
  const parts = tokensAt(node, 'NamePart');
  const start = parts[0]?.startOffset ?? 0;
  const last = parts[parts.length - 1];
  return {
    kind: 'name',
    name: parts.map((part) => part.image).join(''),
    start,
    end: last ? endOf(last) : start,
  };
}

/** Curly quotes are read as straight ones; a text that its line does not close is taken to the line's end. */
function lowerText(typed: IToken, reading: Reading): Text {
  const { image } = typed;
  const { closed } = token.textEnd(image, 0);
  if (!closed)
    reading.slips.push({ slip: 'unclosed-text', typed: image, readings: closings(image), ...span(typed) });
  const inner = image.slice(1, closed ? -1 : undefined);
  const text = inner.includes('"') ? inner.replaceAll('""', '"') : inner;
  return { kind: 'text', text, start: typed.startOffset, end: endOf(typed) };
}

/** The text closed before what looks like a comment, or at the line's end. */
function closings(image: string): string[] {
  const atEnd = `${image.trimEnd()}"`;
  for (let at = image.indexOf('#'); at > 0; at = image.indexOf('#', at + 1)) {
    if (!isBlank(image[at - 1])) continue;
    const body = image.slice(0, at).trimEnd();
    return [`${body}"${image.slice(body.length)}`, atEnd];
  }
  return [atEnd];
}

/** Fractions of a second may follow; no clock shows 24:00. */
function lowerTime(typed: IToken): Time {
  const { image } = typed;
  const utc = image.endsWith('Z');
  const [hours = 0, minutes = 0, seconds = 0] = (utc ? image.slice(0, -1) : image).split(':').map(Number);
  const shown = hours < 24 && minutes < 60 && seconds < 60;
  return {
    kind: 'time',
    seconds: shown ? hours * 3600 + minutes * 60 + seconds : null,
    utc,
    typed: image,
    start: typed.startOffset,
    end: endOf(typed),
  };
}

function lowerDate(typed: IToken): IsoDate {
  const { image } = typed;
  return { kind: 'date', day: dayOf(image), typed: image, start: typed.startOffset, end: endOf(typed) };
}

/** Days from 1970-01-01, or null where the calendar has no such day. */
export function dayOf(iso: string): number | null {
  const milliseconds = Date.parse(`${iso}T00:00:00Z`);
  if (!Number.isFinite(milliseconds)) return null;
  return new Date(milliseconds).toISOString().slice(0, 10) === iso ? milliseconds / 86_400_000 : null;
}

function lowerSum(node: CstNode, reading: Reading): Sum {
  const signs = tokensAt(node, 'sign');
  const nodes = nodesAt(node, 'term');
  // The sign of a first term is part of its number; between terms it adds or subtracts.
  const own = signs.length === nodes.length ? signs[0] : undefined;
  const terms = nodes.map((term, index) => {
    if (index === 0) return lowerTerm(term, 1, own, reading);
    const sign = signs[own ? index : index - 1];
    return lowerTerm(term, sign && isMinus(sign, reading) ? -1 : 1, undefined, reading);
  });
  return { kind: 'sum', terms, start: terms[0]?.start ?? 0, end: terms[terms.length - 1]?.end ?? 0 };
}

function lowerTerm(node: CstNode, sign: 1 | -1, own: IToken | undefined, reading: Reading): Term {
  const measureNode = nodeAt(node, 'measure');
  const uncertaintyNode = nodeAt(node, 'uncertainty');
  const label = tokenAt(node, 'Text');
  const measure = measureNode ? lowerMeasure(measureNode, own, reading) : null;
  const uncertainty = uncertaintyNode ? lowerMeasure(uncertaintyNode, undefined, reading) : null;
  const text = label ? lowerText(label, reading) : null;
  const start = measure?.start ?? tokenAt(node, 'PlusMinus')?.startOffset ?? 0;
  const end = text?.end ?? uncertainty?.end ?? measure?.end ?? start;
  return { sign, measure, uncertainty, label: text, start, end };
}

function isMinus(sign: IToken, reading: Reading): boolean {
  if (sign.tokenType !== token.Minus) return false;
  if (sign.image !== '-') reading.slips.push(lookAlike(sign, '-'));
  return true;
}

function lowerMeasure(node: CstNode, sign: IToken | undefined, reading: Reading): Measure {
  const parts = nodesAt(node, 'part').map((part) => lowerPart(part, reading));
  const start = sign?.startOffset ?? parts[0]?.start ?? 0;
  const end = parts[parts.length - 1]?.end ?? start;
  return { sign: sign ? (isMinus(sign, reading) ? '-' : '+') : null, parts, start, end };
}

function lowerPart(node: CstNode, reading: Reading): Part {
  const numeral = lowerNumeral(tokensAt(node, 'numeral'), reading);
  const typed = tokenAt(node, 'unit');
  if (!typed) return { numeral, unit: null, start: numeral.start, end: numeral.end };
  const celsius = tokenAt(node, 'celsius');
  const end = endOf(celsius ?? typed);
  const unit: UnitMark = { unit: celsius ? '°C' : unitOf(typed), start: typed.startOffset, end };
  return { numeral, unit, start: numeral.start, end };
}

function unitOf(typed: IToken): string {
  switch (typed.tokenType) {
    case token.DegreeMark:
      return '°';
    case token.MinuteMark:
      return "'";
    case token.SecondsMark:
      return '"';
    default:
      return typed.image;
  }
}

function lowerNumeral(tokens: readonly IToken[], reading: Reading): Numeral {
  const first = tokens[0];
  const last = tokens[tokens.length - 1];
  const start = first?.startOffset ?? 0;
  const end = last ? endOf(last) : start;
  const typed = tokens.length === 1 && first ? first.image : reading.text.slice(start, end);
  const { value, slip } = readNumeral(typed);
  if (slip) reading.slips.push({ ...slip, typed, start, end });
  return { typed, value, open: typed === '?', start, end };
}

/** Words whose hyphens a word processor has changed are read as if it had not. */
function word(typed: IToken, reading: Reading): Word {
  const plain = plainHyphens(typed.image);
  if (plain !== typed.image) reading.slips.push(lookAlike(typed, plain));
  return { kind: 'word', word: plain, start: typed.startOffset, end: endOf(typed) };
}

const lookAlike = (typed: IToken, meant: string): Slip => ({
  slip: 'look-alike',
  typed: typed.image,
  readings: [meant],
  ...span(typed),
});
const junk = (typed: IToken): Junk => ({ kind: 'junk', text: typed.image, ...span(typed) });
const span = (typed: IToken): Span => ({ start: typed.startOffset, end: endOf(typed) });

// The parser files tokens and nodes under keys of their own; none holds both.
const nodesAt = (node: CstNode, key: string) => (node.children[key] ?? []) as CstNode[];
const tokensAt = (node: CstNode, key: string) => (node.children[key] ?? []) as IToken[];
const nodeAt = (node: CstNode, key: string) => node.children[key]?.[0] as CstNode | undefined;
const tokenAt = (node: CstNode, key: string) => node.children[key]?.[0] as IToken | undefined;
