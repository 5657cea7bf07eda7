/** A geoid grid out of the bytes of a file, in whichever of the forms known here it is. */
import type { Refusal } from '../../quantities/refusal.ts';
import type { GeoidGrid } from './geoid-grid.ts';
import { readGeotiff } from './geotiff.ts';
import { readGtx } from './gtx.ts';
import { readIsg } from './isg.ts';

/** Told from its first bytes, not from its name; what is neither TIFF nor text is tried as GTX. */
export function readGrid(bytes: Uint8Array): GeoidGrid | Refusal {
  const [first = 0, second = 0] = bytes;
  if ((first === 0x49 && second === 0x49) || (first === 0x4d && second === 0x4d)) return readGeotiff(bytes);
  return bytes.subarray(0, 16).every(isText) ? readIsg(bytes) : readGtx(bytes);
}

const isText = (byte: number) => byte === 9 || byte === 10 || byte === 13 || byte >= 32;
