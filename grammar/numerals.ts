/** What was typed as one number, rightly or wrongly: how far it reaches, its value, or how it may have been meant. */
import { tokenMatcher, type IToken, type TokenType } from 'chevrotain';
import { BLANKS, DASHES, MINUTE_MARKS } from './characters.ts';
import * as token from './tokens.ts';
import type { Slip } from './tree.ts';

export interface NumeralReading {
  /** Null for `?`, for what can be read in more than one way, and for what is no number. */
  readonly value: number | null;
  readonly slip: Pick<Slip, 'slip' | 'readings'> | null;
}

/** Beyond all that is measured, counted or set, in whatever unit; more digits than that are a slip of the hand. */
const LARGEST = 1e15;

/** Reads what `numeralLength` found; digits packed by dashes, slashes or points have neither value nor slip. */
export function readNumeral(typed: string): NumeralReading {
  if (plain.test(typed)) {
    const value = Number(typed);
    return value <= LARGEST ? { value, slip: null } : hole('too-large', []);
  }
  if (groupedByPoints.test(typed)) return hole('grouped-digits', [typed.replaceAll('.', '')]);
  if (typed === '?' || packed.test(typed)) return { value: null, slip: null };
  if (/[eE]/.test(typed)) return hole('exponent', withoutExponent(typed));
  if (/^\d+\.$/.test(typed)) return hole('bare-point', [typed.slice(0, -1)]);
  if (typed.startsWith('.') && plain.test(`0${typed}`)) return hole('bare-point', [`0${typed}`]);
  return groupedOrParted(typed.replace(blanks, ' ').replace(minuteMarks, "'"));
}

/**
 * How many tokens from the one `ahead` belong to one number as its writer saw it, 0 where none starts.
 * Digits that touch are one number, whatever stands between them; so are `1 234.5`, `1'234.5`, `1,5` and `1e3`.
 */
export function numeralLength(look: (ahead: number) => IToken, ahead: number): number {
  const first = look(ahead);
  if (tokenMatcher(first, token.Question)) return 1;
  if (!isDigits(first)) return 0;
  let next = ahead + 1;
  let grouping: Grouping | null = /^\d{1,3}$/.test(first.image) ? 'either' : null;
  for (;;) {
    const exponent = exponentLength(look, next);
    if (exponent > 0) return next + exponent - ahead;
    const group: Grouping | null = grouping && groupAt(look, next, grouping);
    if (group) next += group === 'blank' ? 1 : 2;
    else if (isDigits(look(next)) && adjoins(look(next - 1), look(next))) next += 1;
    else if (joins(look, next, token.Comma)) next += 2;
    else return next - ahead;
    grouping = look(next - 1).image.length === 3 ? group : null;
  }
}

/** The next token starts where this one ends. */
export const adjoins = (before: IToken, next: IToken) => endOf(before) === next.startOffset;

/** The offset behind a token's last character. */
export const endOf = (typed: IToken) => typed.startOffset + typed.image.length;

/** What parts the groups of three digits. */
type Grouping = 'either' | 'blank' | 'mark';

function groupAt(look: (ahead: number) => IToken, at: number, allowed: Grouping): Grouping | null {
  if (allowed !== 'mark' && isGroup(look(at)) && !adjoins(look(at - 1), look(at))) return 'blank';
  if (allowed === 'blank' || !isMarkedGroup(look, at)) return null;
  // `9'123"` is minutes and seconds, `1'234'` two minutes, and what stands behind degrees are minutes.
  const behind = look(at + 2);
  const isAngle =
    tokenMatcher(look(at - 2), token.DegreeMark) ||
    tokenMatcher(behind, token.SecondsMark) ||
    (tokenMatcher(behind, token.MinuteMark) && !isMarkedGroup(look, at + 2));
  return isAngle ? null : 'mark';
}

const isMarkedGroup = (look: (ahead: number) => IToken, at: number) =>
  joins(look, at, token.MinuteMark) && isGroup(look(at + 1));
const isGroup = (typed: IToken) => tokenMatcher(typed, token.Number) && /^\d{3}(?:\.\d*)?$/.test(typed.image);
const isDigits = (typed: IToken) => tokenMatcher(typed, token.Number) || tokenMatcher(typed, token.Packed);

/** A token of this type stands between digits without a blank on either side. */
function joins(look: (ahead: number) => IToken, at: number, type: TokenType): boolean {
  const joint = look(at);
  const digits = look(at + 1);
  return (
    tokenMatcher(joint, type) && isDigits(digits) && adjoins(look(at - 1), joint) && adjoins(joint, digits)
  );
}

function exponentLength(look: (ahead: number) => IToken, at: number): number {
  const letter = look(at);
  if (!adjoins(look(at - 1), letter) || !/^[eE](?:\d|$)/.test(letter.image)) return 0;
  if (letter.image.length > 1) return 1;
  const sign = look(at + 1);
  const power = look(at + 2);
  const isSign = tokenMatcher(sign, token.Plus) || tokenMatcher(sign, token.Minus);
  return isSign && isDigits(power) && adjoins(letter, sign) && adjoins(sign, power) ? 3 : 0;
}

const plain = /^\d+(?:\.\d+)?$/;
const packed = /^\d{1,4}([-/.])\d{1,4}\1\d{1,4}(?:\.\d+)?$/;
const groupedByPoints = /^\d{1,3}(?:\.\d{3}){2,}$/;
const blanks = new RegExp(`[${BLANKS}]+`, 'g');
const dashes = new RegExp(`[${DASHES}]`, 'g');
const minuteMarks = new RegExp(`[${MINUTE_MARKS}]`, 'g');

const hole = (slip: Slip['slip'], readings: readonly string[]): NumeralReading => ({
  value: null,
  slip: { slip, readings },
});

/** `1e3` is 1000 and `2.5e-3` is 0.0025: the point moved by as many places. */
function withoutExponent(typed: string): string[] {
  const found = /^(\d+)(?:\.(\d+))?[eE]([-+]?\d{1,2})(\p{L}*)$/u.exec(typed.replace(dashes, '-'));
  if (!found) return [];
  const [, whole = '', fraction = '', power = '', unit = ''] = found;
  const places = Number(power);
  const digits = '0'.repeat(Math.max(0, -places)) + whole + fraction + '0'.repeat(Math.max(0, places));
  const point = Math.max(0, -places) + whole.length + places;
  const left = digits.slice(0, point).replace(/^0+(?=\d)/, '');
  const right = digits.slice(point, digits.length - Math.min(Math.max(0, places), fraction.length));
  return [(right === '' ? left : `${left}.${right}`) + (unit && ` ${unit}`)];
}

/** `1,284` may be 1.284 or 1284 or two numbers; `1,234.5`, `1 234.5` and `1'234.5` can only be grouped digits. */
function groupedOrParted(typed: string): NumeralReading {
  const pieces = typed.split(',');
  const [whole = '', behind = ''] = pieces;
  const decimal = pieces.length === 2 && /^\d+$/.test(behind) && (/^\d+$/.test(whole) || isGrouped(whole));
  const grouped = isGrouped(typed);
  const listed = pieces.length > 1 && pieces.every((piece) => plain.test(piece));
  const ambiguous = decimal || (listed && !grouped);
  const readings = [
    ...(decimal ? [`${whole.replace(/\D/g, '')}.${behind}`] : []),
    ...(grouped ? [typed.replace(/[ ',]/g, '')] : []),
    ...(listed && ambiguous ? [pieces.join(', ')] : []),
  ];
  if (ambiguous) return hole('decimal-comma', readings);
  return hole(grouped ? 'grouped-digits' : 'broken-number', readings);
}

/** Groups of three behind one to three digits, parted by the same sign throughout. */
function isGrouped(typed: string): boolean {
  const [head = '', ...groups] = typed.split(/[ ',]/);
  const [sign = '', ...signs] = typed.replace(/[\d.]/g, '');
  const last = groups.pop();
  if (last === undefined) return /^\d{1,3}(?:\.\d{3})+$/.test(typed);
  const same = signs.every((other) => other === sign);
  return (
    same &&
    /^\d{1,3}$/.test(head) &&
    groups.every((group) => /^\d{3}$/.test(group)) &&
    /^\d{3}(?:\.\d+)?$/.test(last)
  );
}
