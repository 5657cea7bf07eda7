/** Numbers and words in fixed columns of a line that is still bytes. NaN stands for blank or not a number. */

/** A decimal number (Fw.d of FORTRAN) in `width` columns from `at`; columns beyond `end` are blank. */
export function decimalAt(bytes: Uint8Array, at: number, width: number, end: number): number {
  const until = Math.min(at + width, end);
  let index = at;
  while (index < until && bytes[index] === BLANK) index += 1;
  if (index >= until) return Number.NaN;
  let negative = false;
  if (bytes[index] === MINUS || bytes[index] === PLUS) {
    negative = bytes[index] === MINUS;
    index += 1;
  }
  let mantissa = 0;
  let digits = 0;
  let decimals = -1;
  for (; index < until; index += 1) {
    const sign = bytes[index] ?? BLANK;
    if (sign >= ZERO && sign <= NINE) {
      mantissa = mantissa * 10 + (sign - ZERO);
      digits += 1;
      if (decimals >= 0) decimals += 1;
    } else if (sign === POINT && decimals < 0) decimals = 0;
    else if (sign === BLANK) break;
    else return Number.NaN;
  }
  for (; index < until; index += 1) if (bytes[index] !== BLANK) return Number.NaN;
  if (digits === 0 || digits > 15) return Number.NaN;
  const value = decimals > 0 ? mantissa / (POWERS[decimals] ?? 1) : mantissa;
  return negative ? -value : value;
}

/** A whole number without sign; blanks before it count for nothing. */
export function wholeAt(bytes: Uint8Array, at: number, width: number, end: number): number {
  const value = decimalAt(bytes, at, width, end);
  return Number.isInteger(value) && value >= 0 ? value : Number.NaN;
}

/** The text in these columns, as Latin-1. */
export function textIn(bytes: Uint8Array, from: number, to: number): string {
  let text = '';
  for (let index = from; index < to; index += 1) text += String.fromCharCode(bytes[index] ?? BLANK);
  return text;
}

export const BLANK = 32;
const MINUS = 45;
const PLUS = 43;
const POINT = 46;
export const ZERO = 48;
export const NINE = 57;
/** Powers of ten are exact to 1e22, so that one division rounds once. */
const POWERS = Array.from({ length: 16 }, (_, power) => 10 ** power);
