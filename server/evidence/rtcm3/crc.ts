/** The 24 bit cyclic redundancy check of RTCM 3 frames, CRC-24Q: polynomial 0x1864CFB, start 0 (RTCM 10403.3 §4). */

/** The checksum of `bytes` from `start` up to, not including, `end`. */
export function crc24q(bytes: Uint8Array, start = 0, end = bytes.length): number {
  let crc = 0;
  for (let at = start; at < end; at += 1) crc = after(crc, bytes[at] ?? 0);
  return crc;
}

/**
 * Checksums of any stretches of some bytes, each byte looked at once. The check is linear: what stands before a stretch
 * comes out of the sum over both as it would be behind as many zeros.
 */
export function runningCrc() {
  let bytes = new Uint8Array(0);
  let sums = new Int32Array(1);
  let summed = 0;

  const upTo = (end: number): number => {
    for (; summed < end; summed += 1) sums[summed + 1] = after(sums[summed] ?? 0, bytes[summed] ?? 0);
    return sums[end] ?? 0;
  };
  return {
    begin(next: Uint8Array<ArrayBuffer>): void {
      bytes = next;
      if (sums.length <= next.length) sums = new Int32Array(2 * next.length + 1);
      summed = 0;
    },
    /** The checksum from `start` up to, not including, `end`; stretches are at most a frame long. */
    of: (start: number, end: number): number => upTo(end) ^ behindZeros(sums[start] ?? 0, end - start),
  };
}

const after = (crc: number, byte: number): number =>
  ((crc << 8) & 0xffffff) ^ (table[(crc >>> 16) ^ byte] ?? 0);

/** What a sum becomes behind so many zeros, put together from what each of its bits becomes. */
function behindZeros(crc: number, count: number): number {
  const bits = bitsBehind(count);
  let sum = 0;
  for (let rest = crc, bit = 0; rest !== 0; rest >>>= 1, bit += 1) if (rest & 1) sum ^= bits[bit] ?? 0;
  return sum;
}

function bitsBehind(count: number): Int32Array {
  const known = zeros[count];
  if (known) return known;
  const bits = Int32Array.from({ length: 24 }, (_, bit) => {
    let crc = 1 << bit;
    for (let zero = 0; zero < count; zero += 1) crc = after(crc, 0);
    return crc;
  });
  zeros[count] = bits;
  return bits;
}

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte << 16;
  for (let bit = 0; bit < 8; bit += 1) crc = crc & 0x800000 ? (crc << 1) ^ 0x1864cfb : crc << 1;
  return crc & 0xffffff;
});
/** By the count of zeros; frames have at most 1026 bytes before their checksum. */
const zeros: (Int32Array | undefined)[] = [];
