/** The 24 bit cyclic redundancy check of RTCM 3 frames, CRC-24Q: polynomial 0x1864CFB, start 0 (RTCM 10403.3 §4). */

/** The checksum of `bytes` from `start` up to, not including, `end`. */
export function crc24q(bytes: Uint8Array, start = 0, end = bytes.length): number {
  let crc = 0;
  for (let at = start; at < end; at += 1) {
    crc = ((crc << 8) & 0xffffff) ^ (table[(crc >>> 16) ^ (bytes[at] ?? 0)] ?? 0);
  }
  return crc;
}

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte << 16;
  for (let bit = 0; bit < 8; bit += 1) crc = crc & 0x800000 ? (crc << 1) ^ 0x1864cfb : crc << 1;
  return crc & 0xffffff;
});
