/**
 * Text on its way to a file, gathered as bytes. A million rows have tens of millions of digits, so that each is put
 * straight in its place and no string is made of them.
 */
export class FileText {
  private bytes = new Uint8Array(1 << 16);
  private filled = 0;

  get length(): number {
    return this.filled;
  }

  /** What has been gathered, good until the next text comes; it is gathered anew from then on. */
  taken(): Uint8Array {
    const taken = this.bytes.subarray(0, this.filled);
    this.filled = 0;
    return taken;
  }

  text(text: string): void {
    this.makeRoom(3 * text.length);
    if (text.length > SHORT || !this.asPlain(text))
      this.filled += encoder.encodeInto(text, this.bytes.subarray(this.filled)).written;
  }

  /** A piece of a text that has been turned to bytes before. */
  encoded(encoded: Uint8Array, from: number, to: number): void {
    const length = to - from;
    this.makeRoom(length);
    const { bytes, filled } = this;
    if (length > SHORT) bytes.set(encoded.subarray(from, to), filled);
    else for (let at = 0; at < length; at++) bytes[filled + at] = encoded[from + at] ?? 0;
    this.filled = filled + length;
  }

  /** One character of ASCII. */
  sign(code: number): void {
    this.makeRoom(1);
    this.bytes[this.filled++] = code;
  }

  /** With a fixed count of decimals; nothing where there is no number. */
  fixed(value: number, decimals: number, decimalSign: '.' | ',' = '.'): void {
    if (Number.isNaN(value)) return;
    const unit = POWERS[decimals] ?? 10 ** decimals;
    const scaled = Math.round(Math.abs(value) * unit);
    if (scaled >= Number.MAX_SAFE_INTEGER)
      return this.text(value.toFixed(decimals).replace('.', decimalSign));
    this.makeRoom(LONGEST_NUMBER);
    const { bytes } = this;
    let at = this.filled;
    if (value < 0 && scaled > 0) bytes[at++] = MINUS;
    const whole = Math.floor(scaled / unit);
    at = putDigits(bytes, at, whole, countOfDigits(whole));
    if (decimals > 0) {
      bytes[at++] = decimalSign === ',' ? COMMA : POINT;
      at = putDigits(bytes, at, scaled - whole * unit, decimals);
    }
    this.filled = at;
  }

  /** A whole number that is not negative, with zeros before it up to so many digits. */
  digits(value: number, count: number): void {
    this.makeRoom(LONGEST_NUMBER);
    this.filled = putDigits(this.bytes, this.filled, value, count);
  }

  private asPlain(text: string): boolean {
    const { bytes, filled } = this;
    for (let at = 0; at < text.length; at++) {
      const code = text.charCodeAt(at);
      if (code > 127) return false;
      bytes[filled + at] = code;
    }
    this.filled = filled + text.length;
    return true;
  }

  private makeRoom(count: number): void {
    if (this.filled + count <= this.bytes.length) return;
    const larger = new Uint8Array(2 * (this.filled + count));
    larger.set(this.bytes.subarray(0, this.filled));
    this.bytes = larger;
  }
}

const encoder = new TextEncoder();
/** Up to here a loop is quicker than calling out of it. */
const SHORT = 48;
/** Sixteen digits, twelve zeros among them at most, with two signs. */
const LONGEST_NUMBER = 32;
/** What fits into 32 bits, in which whole numbers are divided quickly. */
const MOST_DIGITS = 9;
const MOST = 1e9;
const ZERO = 48;
const MINUS = 45;
const POINT = 46;
const COMMA = 44;
const POWERS = Array.from({ length: 13 }, (_, decimals) => 10 ** decimals);

function countOfDigits(whole: number): number {
  let count = 1;
  for (let limit = 10; whole >= limit; limit *= 10) count++;
  return count;
}

/** Gives back the place behind them. */
function putDigits(bytes: Uint8Array, start: number, value: number, count: number): number {
  if (count > MOST_DIGITS) {
    const high = Math.floor(value / MOST);
    const middle = putDigits(bytes, start, high, count - MOST_DIGITS);
    return putDigits(bytes, middle, value - high * MOST, MOST_DIGITS);
  }
  let rest = value | 0;
  for (let at = start + count - 1; at >= start; at--) {
    const higher = (rest / 10) | 0;
    bytes[at] = ZERO + rest - higher * 10;
    rest = higher;
  }
  return start + count;
}
