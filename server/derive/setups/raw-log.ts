/** What the header of a raw observation file says of antenna and place, beside what the notes say. */
import { readRinexHeader, rinexHeaderBytes, type RinexHeader } from '../../evidence/rinex-header.ts';
import { isRefusal, type Refusal } from '../../quantities/refusal.ts';
import type { Quoted } from '../../session/entries.ts';

export interface RawLogValues {
  readonly file: Quoted;
  /** Null where the file is not there, or no RINEX observation file. */
  readonly header: RinexHeader | null;
}

export function rawLogValues(file: Quoted, bytes: Uint8Array | Refusal): RawLogValues {
  if (isRefusal(bytes)) return { file, header: null };
  const header = headers.get(bytes) ?? readRinexHeader(bytes.subarray(0, rinexHeaderBytes));
  headers.set(bytes, header);
  return { file, header: header.version === undefined ? null : header };
}
const headers = new WeakMap<Uint8Array, RinexHeader>();
