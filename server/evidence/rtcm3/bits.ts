/** Reads fields of any number of bits, most significant first, from a message. */

export interface BitReader {
  /** The next `count` bits (at most 53) as an unsigned number; NaN beyond the end. */
  readonly unsigned: (count: number) => number;
  /** The next `count` bits as a number in two's complement; NaN beyond the end. */
  readonly signed: (count: number) => number;
  readonly skip: (count: number) => void;
  readonly left: () => number;
}

export function bitReader(message: Uint8Array): BitReader {
  const total = message.length * 8;
  let at = 0;
  const unsigned = (count: number) => {
    if (at + count > total) {
      at = total;
      return Number.NaN;
    }
    let value = 0;
    let missing = count;
    // Multiplication, not shifting: a coordinate has 38 bits.
    while (missing > 0) {
      const free = 8 - (at % 8);
      const taken = Math.min(free, missing);
      const part = ((message[at >> 3] ?? 0) >> (free - taken)) & ((1 << taken) - 1);
      value = value * 2 ** taken + part;
      at += taken;
      missing -= taken;
    }
    return value;
  };
  return {
    unsigned,
    signed(count) {
      const value = unsigned(count);
      return value >= 2 ** (count - 1) ? value - 2 ** count : value;
    },
    skip(count) {
      at = Math.min(total, at + count);
    },
    left: () => total - at,
  };
}
