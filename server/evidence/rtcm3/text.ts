/** Message 1029: a text that the base sends to people (RTCM 10403.3, table 3.5-31). */
import { bitReader } from './bits.ts';
import type { Malformed } from './message.ts';

export interface StationText {
  readonly kind: 'text';
  readonly number: 1029;
  readonly station: number;
  readonly modifiedJulianDay: number;
  readonly utcSeconds: number;
  readonly text: string;
}

export function stationText(payload: Uint8Array): StationText | Malformed {
  const field = bitReader(payload);
  field.skip(12);
  const station = field.unsigned(12);
  const modifiedJulianDay = field.unsigned(16);
  const utcSeconds = field.unsigned(17);
  field.skip(7);
  const length = field.unsigned(8);
  if (Number.isNaN(length) || payload.length < 9 + length) {
    return { kind: 'malformed', number: 1029, sentence: 'A 1029 ends before its text does; it is not read.' };
  }
  const text = new TextDecoder('utf-8').decode(payload.subarray(9, 9 + length));
  return { kind: 'text', number: 1029, station, modifiedJulianDay, utcSeconds, text };
}
