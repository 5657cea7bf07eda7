/**
 * Inflates a zlib stream into a buffer of the size that is expected, and never beyond it.
 *
 * Source: RFC 1950 (zlib) and RFC 1951 (deflate). Our own, since it has to answer at once, in an editor's worker as in
 * Node, and may not make more bytes than the grid's header has been found to deserve.
 */

/** Undefined where the stream is broken, or does not give exactly `size` bytes. */
export function inflated(stream: Uint8Array, size: number): Uint8Array | undefined {
  const [method = 0, flags = 0] = stream;
  const isZlib = (method & 15) === 8 && ((method << 8) | flags) % 31 === 0 && (flags & 32) === 0;
  if (!isZlib) return undefined;
  const state: State = { stream, at: 2, held: 0, bits: 0, out: new Uint8Array(size), written: 0 };
  for (;;) {
    const last = take(state, 1);
    const kind = take(state, 2);
    const done = kind === 0 ? stored(state) : kind === 1 ? coded(state, FIXED) : kind === 2 && dynamic(state);
    if (!done) return undefined;
    if (last === 1) return state.written === size ? state.out : undefined;
  }
}

interface State {
  readonly stream: Uint8Array;
  at: number;
  held: number;
  bits: number;
  readonly out: Uint8Array;
  written: number;
}

/** Past the end, −1. */
function take(state: State, count: number): number {
  while (state.bits < count) {
    const byte = state.stream[state.at++];
    if (byte === undefined) return -1;
    state.held |= byte << state.bits;
    state.bits += 8;
  }
  const value = state.held & ((1 << count) - 1);
  state.held >>>= count;
  state.bits -= count;
  return value;
}

function stored(state: State): boolean {
  state.held = 0;
  state.bits = 0;
  const length = take(state, 16);
  const check = take(state, 16);
  const end = state.at + length;
  const fits = end <= state.stream.length && state.written + length <= state.out.length;
  if (length < 0 || (length ^ 0xffff) !== check || !fits) return false;
  state.out.set(state.stream.subarray(state.at, end), state.written);
  state.written += length;
  state.at = end;
  return true;
}

/** Canonical Huffman: how many codes of each length, and the symbols in their order. */
interface Code {
  readonly counts: Uint16Array;
  readonly symbols: Uint16Array;
}

interface Codes {
  readonly lengths: Code;
  readonly distances: Code;
}

function codeOf(lengths: readonly number[]): Code {
  const counts = new Uint16Array(16);
  for (const length of lengths) counts[length] = (counts[length] ?? 0) + 1;
  counts[0] = 0;
  const starts = new Uint16Array(17);
  for (let length = 1; length < 16; length++)
    starts[length + 1] = (starts[length] ?? 0) + (counts[length] ?? 0);
  const symbols = new Uint16Array(lengths.length);
  lengths.forEach((length, symbol) => {
    if (length === 0) return;
    const place = starts[length] ?? 0;
    symbols[place] = symbol;
    starts[length] = place + 1;
  });
  return { counts, symbols };
}

function symbolOf(state: State, { counts, symbols }: Code): number {
  let code = 0;
  let first = 0;
  let index = 0;
  for (let length = 1; length < 16; length++) {
    const bit = take(state, 1);
    if (bit < 0) return -1;
    code |= bit;
    const count = counts[length] ?? 0;
    if (code - count < first) return symbols[index + code - first] ?? -1;
    index += count;
    first = (first + count) << 1;
    code <<= 1;
  }
  return -1;
}

function coded(state: State, { lengths, distances }: Codes): boolean {
  for (;;) {
    const symbol = symbolOf(state, lengths);
    if (symbol < 0) return false;
    if (symbol === 256) return true;
    if (symbol < 256) {
      if (state.written === state.out.length) return false;
      state.out[state.written++] = symbol;
      continue;
    }
    const length = valueOf(state, LENGTH_BASES[symbol - 257], LENGTH_BITS[symbol - 257]);
    const far = symbolOf(state, distances);
    const distance = valueOf(state, DISTANCE_BASES[far], DISTANCE_BITS[far]);
    if (length < 0 || distance < 0 || distance > state.written) return false;
    if (state.written + length > state.out.length) return false;
    for (let step = 0; step < length; step++, state.written++)
      state.out[state.written] = state.out[state.written - distance] ?? 0;
  }
}

function valueOf(state: State, base: number | undefined, bits: number | undefined): number {
  if (base === undefined || bits === undefined) return -1;
  const more = take(state, bits);
  return more < 0 ? -1 : base + more;
}

function dynamic(state: State): boolean {
  const literals = take(state, 5) + 257;
  const distances = take(state, 5) + 1;
  const orders = take(state, 4) + 4;
  if (literals > 286 || distances > 30 || literals < 257 || distances < 1 || orders < 4) return false;
  const orderLengths = new Array<number>(19).fill(0);
  for (const place of ORDER.slice(0, orders)) {
    const length = take(state, 3);
    if (length < 0) return false;
    orderLengths[place] = length;
  }
  const orderCode = codeOf(orderLengths);
  const lengths: number[] = [];
  while (lengths.length < literals + distances) {
    const symbol = symbolOf(state, orderCode);
    if (symbol < 0) return false;
    if (symbol < 16) {
      lengths.push(symbol);
      continue;
    }
    const [value, base, bits] =
      symbol === 16 ? [lengths.at(-1) ?? -1, 3, 2] : symbol === 17 ? [0, 3, 3] : [0, 11, 7];
    const more = take(state, bits);
    if (value < 0 || more < 0) return false;
    for (let times = base + more; times > 0; times--) lengths.push(value);
  }
  if (lengths.length > literals + distances) return false;
  return coded(state, {
    lengths: codeOf(lengths.slice(0, literals)),
    distances: codeOf(lengths.slice(literals)),
  });
}

const ORDER = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];
const LENGTH_BASES = [
  3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195,
  227, 258,
];
const LENGTH_BITS = [0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0];
const DISTANCE_BASES = [
  1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097,
  6145, 8193, 12289, 16385, 24577,
];
const DISTANCE_BITS = [
  0, 0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7, 8, 8, 9, 9, 10, 10, 11, 11, 12, 12, 13, 13,
];

const repeated = (length: number, count: number) => new Array<number>(count).fill(length);
const FIXED: Codes = {
  lengths: codeOf([...repeated(8, 144), ...repeated(9, 112), ...repeated(7, 24), ...repeated(8, 8)]),
  distances: codeOf(repeated(5, 30)),
};
