/** From the parser's own tree to plain data; no other file sees the parser's tree. */
import { tokenMatcher, type CstElement, type CstNode, type IToken } from 'chevrotain';
import { BIDIRECTIONAL, INVISIBLE } from './characters.ts';
import { adjoins, endOf, parseLine } from './parser.ts';
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

/**
 * Reads the text of one entry; never fails.
 * @param headed the first line opens the entry; otherwise all its lines are details of nothing
 * @param opensFile the text stands at the very start of a file, where a byte order mark is no slip
 */
export function readEntry(text: string, headed: boolean, opensFile: boolean): Entry {
  const slips: Slip[] = [];
  const visible = withoutInvisible(text, opensFile, slips);
  const lines = linesOf(token.tokenize(visible.text)).map((tokens) =>
    lowerLine(tokens, visible.text, slips),
  );
  const filled = lines.filter((line) => line.word !== null || line.items.length > 0);
  const header = headed ? filled[0] : undefined;
  const tree: Entry = {
    text,
    header: header ?? { start: 0, end: 0, word: null, items: [], comment: null, indented: false },
    details: header ? filled.slice(1) : filled,
    slips,
  };
  return visible.origin ? movedBack(tree, visible.origin) : tree;
}

interface Visible {
  readonly text: string;
  /** For each character (and the end) where it stood in the full text; null where nothing was taken out. */
  readonly origin: readonly number[] | null;
}

function withoutInvisible(text: string, opensFile: boolean, slips: Slip[]): Visible {
  if (!INVISIBLE.test(text) && !BIDIRECTIONAL.test(text)) return { text, origin: null };
  let kept = '';
  const origin: number[] = [];
  for (let at = 0; at < text.length; at++) {
    const character = text[at] ?? '';
    const bidirectional = BIDIRECTIONAL.test(character);
    if (!bidirectional && !INVISIBLE.test(character)) {
      kept += character;
      origin.push(at);
      continue;
    }
    if (at === 0 && opensFile && character === '\ufeff') continue;
    const slip = bidirectional ? 'bidirectional-control' : 'invisible-character';
    // Places inside the entry are moved back to the full text together with the tree.
    slips.push({ slip, typed: character, readings: [''], start: kept.length, end: kept.length });
  }
  origin.push(text.length);
  return { text: kept, origin };
}

/** The same tree with every span counted in the text that still has its invisible characters. */
function movedBack(tree: Entry, origin: readonly number[]): Entry {
  const removed: number[] = [];
  for (let at = 0, kept = 0; at < tree.text.length; at++) {
    if (origin[kept] === at) kept++;
    else removed.push(at);
  }
  const invisible = removed.filter((at) => at > 0 || tree.text[0] !== '\ufeff');
  let next = 0;
  const move = (value: unknown): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    if (Array.isArray(value)) return value.map((element) => move(element));
    const copy: Record<string, unknown> = {};
    for (const [name, inner] of Object.entries(value)) copy[name] = move(inner);
    if ('slip' in value && (value.slip === 'bidirectional-control' || value.slip === 'invisible-character')) {
      const at = invisible[next++] ?? tree.text.length - 1;
      return { ...copy, start: at, end: at + 1 };
    }
    if ('start' in value && 'end' in value) {
      const { start, end } = value as Span;
      copy.start = origin[start] ?? tree.text.length;
      // Behind the last character, not before the next one: invisible ones between belong to neither.
      copy.end = end > start ? (origin[end - 1] ?? tree.text.length - 1) + 1 : copy.start;
    }
    return copy;
  };
  const moved = move({ header: tree.header, details: tree.details, slips: tree.slips }) as Omit<Entry, 'text'>;
  return { text: tree.text, ...moved };
}

function linesOf(tokens: readonly IToken[]): IToken[][] {
  const lines: IToken[][] = [[]];
  for (const next of tokens) {
    if (tokenMatcher(next, token.LineEnd)) lines.push([]);
    else lines[lines.length - 1]?.push(next);
  }
  return lines.filter((line) => line.length > 0);
}

function lowerLine(tokens: IToken[], text: string, slips: Slip[]): Line {
  const last = tokens[tokens.length - 1];
  const comment = last && tokenMatcher(last, token.Comment) ? last : undefined;
  const spoken = comment ? tokens.slice(0, -1) : tokens;
  const start = spoken[0]?.startOffset ?? comment?.startOffset ?? 0;
  const final = spoken[spoken.length - 1];
  const end = final ? endOf(final) : start;
  const before = text[start - 1];
  const node = spoken.length > 0 ? parseLine(spoken) : null;
  const first = node && tokenAt(node, 'first');
  const items = node ? lowerItems(node, spoken, slips) : spoken.map(junk);
  return {
    start,
    end,
    word: first ? word(first) : null,
    items,
    comment: comment ? span(comment) : null,
    indented: before !== undefined && before !== '\n' && before !== '\r',
  };
}

function lowerItems(line: CstNode, tokens: readonly IToken[], slips: Slip[]): Item[] {
  const items: Item[] = [];
  for (const node of nodesAt(line, 'item')) {
    if (node.name === 'name') items.push(lowerName(node));
    else items.push(...lowerItem(node, tokens, slips));
  }
  return joinGrouped(items, slips);
}

function lowerItem(node: CstNode, tokens: readonly IToken[], slips: Slip[]): Item[] {
  const sum = nodesAt(node, 'sum')[0];
  if (sum) return [lowerSum(sum, tokens, slips)];
  const phrase = nodesAt(node, 'phrase')[0];
  if (phrase) return lowerPhrase(phrase);
  const only = onlyToken(node);
  if (!only) return [];
  if (tokenMatcher(only, token.Text)) return [lowerText(only, slips)];
  if (tokenMatcher(only, token.Comma)) return [{ kind: 'comma', ...span(only) }];
  if (tokenMatcher(only, token.Slash)) return [{ kind: 'slash', ...span(only) }];
  if (tokenMatcher(only, token.Time)) return [lowerTime(only)];
  if (tokenMatcher(only, token.IsoDate)) return [lowerDate(only)];
  return [junk(only)];
}

function lowerPhrase(node: CstNode): Item[] {
  const first = tokenAt(node, 'Word');
  const name = nodesAt(node, 'name')[0];
  return [...(first ? [word(first)] : []), ...(name ? [lowerName(name)] : [])];
}

function lowerName(node: CstNode): Name {
  const parts = tokensAt(node, 'NamePart');
  const start = parts[0]?.startOffset ?? 0;
  const last = parts[parts.length - 1];
  return { kind: 'name', name: parts.map((part) => part.image).join(''), start, end: last ? endOf(last) : start };
}

/** Curly quotes are read as straight ones; a text that its line does not close is taken to the line's end. */
function lowerText(typed: IToken, slips: Slip[]): Text {
  const { image } = typed;
  const straight = image.startsWith('"');
  const inner = image.slice(1).replaceAll('""', '\u0000');
  const closed = straight ? inner.endsWith('"') : image.length > 1 && /["\u201c-\u201f]$/.test(inner);
  if (!closed) slips.push({ slip: 'unclosed-text', typed: image, readings: [`${image.trimEnd()}"`], ...span(typed) });
  const body = (closed ? inner.slice(0, -1) : inner).replaceAll('\u0000', straight ? '"' : '""');
  return { kind: 'text', text: body, ...span(typed) };
}

function lowerTime(typed: IToken): Time {
  const [hours = 0, minutes = 0, seconds = 0] = typed.image.replace('Z', '').split(':').map(Number);
  const shown = hours < 24 && minutes < 60 && seconds < 60;
  return {
    kind: 'time',
    seconds: shown ? hours * 3600 + minutes * 60 + seconds : null,
    utc: typed.image.endsWith('Z'),
    typed: typed.image,
    ...span(typed),
  };
}

function lowerDate(typed: IToken): IsoDate {
  return { kind: 'date', day: dayOf(typed.image), typed: typed.image, ...span(typed) };
}

/** Days from 1970-01-01, or null where the calendar has no such day. */
export function dayOf(iso: string): number | null {
  const milliseconds = Date.parse(`${iso}T00:00:00Z`);
  if (!Number.isFinite(milliseconds)) return null;
  return new Date(milliseconds).toISOString().slice(0, 10) === iso ? milliseconds / 86_400_000 : null;
}

function lowerSum(node: CstNode, tokens: readonly IToken[], slips: Slip[]): Sum {
  const terms: Term[] = [];
  const first = nodesAt(node, 'term')[0];
  const firstUnsigned = first && nodesAt(first, 'unsigned')[0];
  // The sign of a first term is part of its number; between terms it adds or subtracts.
  if (first && firstUnsigned)
    terms.push(lowerTerm(firstUnsigned, 1, nodesAt(first, 'sign')[0], tokens, slips));
  const signs = nodesAt(node, 'sign');
  nodesAt(node, 'unsigned').forEach((unsigned, index) => {
    const sign = signs[index];
    terms.push(lowerTerm(unsigned, sign && isMinus(sign, slips) ? -1 : 1, undefined, tokens, slips));
  });
  return { kind: 'sum', terms, start: terms[0]?.start ?? 0, end: terms[terms.length - 1]?.end ?? 0 };
}

function lowerTerm(
  node: CstNode,
  sign: 1 | -1,
  own: CstNode | undefined,
  tokens: readonly IToken[],
  slips: Slip[],
): Term {
  const measureNode = nodesAt(node, 'measure')[0];
  const uncertaintyNode = nodesAt(node, 'uncertainty')[0];
  const label = tokenAt(node, 'Text');
  const spread = tokenAt(node, 'PlusMinus');
  const ownSign = own ? (isMinus(own, slips) ? '-' : '+') : null;
  const measure = measureNode ? lowerMeasure(measureNode, ownSign, own, tokens, slips) : null;
  const uncertainty = uncertaintyNode ? lowerMeasure(uncertaintyNode, null, undefined, tokens, slips) : null;
  const text = label ? lowerText(label, slips) : null;
  const start = measure?.start ?? spread?.startOffset ?? 0;
  const end = text?.end ?? uncertainty?.end ?? measure?.end ?? start;
  return { sign, measure, uncertainty, label: text, start, end };
}

function isMinus(node: CstNode, slips: Slip[]): boolean {
  const minus = tokenAt(node, 'Minus');
  if (minus && minus.image !== '-')
    slips.push({ slip: 'look-alike', typed: minus.image, readings: ['-'], ...span(minus) });
  return minus !== undefined;
}

function lowerMeasure(
  node: CstNode,
  sign: '+' | '-' | null,
  signNode: CstNode | undefined,
  tokens: readonly IToken[],
  slips: Slip[],
): Measure {
  const parts = nodesAt(node, 'part').map((part) => lowerPart(part, tokens, slips));
  const signToken = signNode && onlyToken(signNode);
  const start = signToken?.startOffset ?? parts[0]?.start ?? 0;
  return { sign, parts, start, end: parts[parts.length - 1]?.end ?? start };
}

function lowerPart(node: CstNode, tokens: readonly IToken[], slips: Slip[]): Part {
  const typed = tokenAt(node, 'numeral');
  const unitToken = tokenAt(node, 'unit');
  const celsius = tokenAt(node, 'celsius');
  const numeral: Numeral = typed
    ? lowerNumeral(typed, tokens, slips)
    : { typed: '', value: null, open: false, start: 0, end: 0 };
  const unit: UnitMark | null = unitToken
    ? { unit: celsius ? '°C' : unitOf(unitToken), start: unitToken.startOffset, end: endOf(celsius ?? unitToken) }
    : null;
  return { numeral, unit, start: numeral.start, end: unit?.end ?? numeral.end };
}

function unitOf(typed: IToken): string {
  if (tokenMatcher(typed, token.DegreeMark)) return '°';
  if (tokenMatcher(typed, token.MinuteMark)) return "'";
  if (tokenMatcher(typed, token.SecondsMark)) return '"';
  return typed.image;
}

function lowerNumeral(typed: IToken, tokens: readonly IToken[], slips: Slip[]): Numeral {
  const { image } = typed;
  const hole = (open: boolean): Numeral => ({ typed: image, value: null, open, ...span(typed) });
  if (tokenMatcher(typed, token.Question)) return hole(true);
  if (tokenMatcher(typed, token.Packed)) return hole(false);
  if (tokenMatcher(typed, token.CommaNumber)) {
    slips.push(commaSlip(typed));
    return hole(false);
  }
  if (image.startsWith('.') || image.endsWith('.')) {
    const readings = [image.startsWith('.') ? `0${image}` : image.slice(0, -1)];
    slips.push({ slip: 'bare-point', typed: image, readings, ...span(typed) });
    return hole(false);
  }
  const exponent = exponentBehind(typed, tokens);
  if (exponent) {
    slips.push({ slip: 'exponent', typed: image + exponent.typed, readings: [], start: typed.startOffset, end: exponent.end });
    return hole(false);
  }
  return { typed: image, value: Number(image), open: false, ...span(typed) };
}

/** `1,284` may be 1.284 or 1284 or two numbers; `1,234.5` and `1,234,567` can only be grouped digits. */
function commaSlip(typed: IToken): Slip {
  const { image } = typed;
  const groups = image.split(',');
  const whole = groups[0] ?? '';
  const grouped = groups.slice(1).every((group) => /^\d{3}(\.\d+)?$/.test(group)) && /^\d{1,3}$/.test(whole);
  const decimal = groups.length === 2 && /^\d+$/.test(groups[1] ?? '');
  const readings = [
    ...(decimal ? [`${whole.replaceAll('.', '')}.${groups[1]}`] : []),
    ...(grouped ? [image.replaceAll(',', '')] : []),
    ...(decimal && /^\d+$/.test(whole) ? [`${whole}, ${groups[1]}`] : []),
  ];
  return { slip: decimal ? 'decimal-comma' : 'grouped-digits', typed: image, readings, ...span(typed) };
}

function exponentBehind(typed: IToken, tokens: readonly IToken[]): { typed: string; end: number } | null {
  const at = tokens.indexOf(typed);
  const letter = tokens[at + 1];
  if (!letter || !adjoins(typed, letter) || !/^[eE]\d*$/.test(letter.image)) return null;
  if (letter.image.length > 1) return { typed: letter.image, end: endOf(letter) };
  const sign = tokens[at + 2];
  const power = tokens[at + 3];
  const signed =
    sign && power && adjoins(letter, sign) && adjoins(sign, power) && /^[-+]$/.test(sign.image) && /^\d+$/.test(power.image);
  return signed ? { typed: letter.image + sign.image + power.image, end: endOf(power) } : null;
}

/** `1 234.5 m` looks like one number to the writer and like two to anyone else: one hole, and a slip. */
function joinGrouped(items: readonly Item[], slips: Slip[]): Item[] {
  const joined: Item[] = [];
  for (const item of items) {
    const before = joined[joined.length - 1];
    const merged = before?.kind === 'sum' && item.kind === 'sum' ? grouped(before, item, slips) : null;
    if (merged) joined[joined.length - 1] = merged;
    else joined.push(item);
  }
  return joined;
}

function grouped(before: Sum, item: Sum, slips: Slip[]): Sum | null {
  const head = before.terms[before.terms.length - 1]?.measure;
  const headPart = head?.parts[0];
  const tail = item.terms[0]?.measure;
  const tailPart = tail?.parts[0];
  if (!head || !headPart || head.parts.length > 1 || headPart.unit || !tail || !tailPart || tail.sign) return null;
  if (!/^\d{1,3}( \d{3})*$/.test(headPart.numeral.typed) || !/^\d{3}(\.\d+)?$/.test(tailPart.numeral.typed)) return null;
  const typed = `${headPart.numeral.typed} ${tailPart.numeral.typed}`;
  const span = { start: headPart.start, end: tailPart.numeral.end };
  const already = slips.findIndex((slip) => slip.slip === 'grouped-digits' && slip.start === span.start);
  if (already >= 0) slips.splice(already, 1);
  slips.push({ slip: 'grouped-digits', typed, readings: [typed.replaceAll(' ', '')], ...span });
  const numeral: Numeral = { typed, value: null, open: false, ...span };
  const part: Part = { numeral, unit: tailPart.unit, start: span.start, end: tailPart.end };
  const measure: Measure = { sign: head.sign, parts: [part], start: head.start, end: part.end };
  const first = before.terms[0];
  const term: Term = {
    sign: before.terms[before.terms.length - 1]?.sign ?? 1,
    measure,
    uncertainty: item.terms[0]?.uncertainty ?? null,
    label: item.terms[0]?.label ?? null,
    start: measure.start,
    end: item.terms[0]?.end ?? part.end,
  };
  const terms = [...before.terms.slice(0, -1), term, ...item.terms.slice(1)];
  return { kind: 'sum', terms, start: first?.start ?? term.start, end: item.end };
}

const junk = (typed: IToken): Junk => ({ kind: 'junk', text: typed.image, ...span(typed) });
const word = (typed: IToken): Word => ({ kind: 'word', word: typed.image, ...span(typed) });
const span = (typed: IToken): Span => ({ start: typed.startOffset, end: endOf(typed) });

const isNode = (element: CstElement): element is CstNode => 'children' in element;
const nodesAt = (node: CstNode, key: string): CstNode[] => (node.children[key] ?? []).filter(isNode);
const tokensAt = (node: CstNode, key: string): IToken[] =>
  (node.children[key] ?? []).filter((element): element is IToken => !isNode(element));
const tokenAt = (node: CstNode, key: string): IToken | undefined => tokensAt(node, key)[0];

function onlyToken(node: CstNode): IToken | undefined {
  for (const key in node.children) {
    const element = node.children[key]?.[0];
    if (element && !isNode(element)) return element;
  }
  return undefined;
}
