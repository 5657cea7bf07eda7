/** One RTCM 3 message, read as far as a surveyor's questions go. */
import { messagePurpose } from '../../link/message-size.ts';
import type { GlonassBiases } from './biases.ts';
import { glonassBiases } from './biases.ts';
import type { Equipment } from './equipment.ts';
import { equipment } from './equipment.ts';
import type { Observations } from './observations.ts';
import { observations } from './observations.ts';
import type { StationPosition } from './station-position.ts';
import { stationPosition } from './station-position.ts';
import type { StationText } from './text.ts';
import { stationText } from './text.ts';

/** A message of a known kind that does not hold what its kind asks for. */
export interface Malformed {
  readonly kind: 'malformed';
  readonly number: number;
  readonly sentence: string;
}

/** A message that is counted only. */
export interface OtherMessage {
  readonly kind: 'other';
  readonly number: number;
  /** Absent where messages of this number do not name a station. */
  readonly station?: number;
}

export type Message =
  StationPosition | Equipment | GlonassBiases | Observations | StationText | OtherMessage | Malformed;

/** Reads a frame's payload; never throws, whatever the bytes. */
export function readMessage(payload: Uint8Array): Message {
  const [first = 0, second = 0, third = 0] = payload;
  const number = (first << 4) | (second >> 4);
  if (payload.length < 2)
    return { kind: 'malformed', number: 0, sentence: 'A message is too short to have a number.' };
  if (number === 1005 || number === 1006) return stationPosition(number, payload);
  if (number === 1007 || number === 1008 || number === 1033) return equipment(number, payload);
  if (number === 1230) return glonassBiases(payload);
  if (number === 1029) return stationText(payload);
  if (messagePurpose(number) === 'observations') return observations(number, payload);
  return number === 1013 && payload.length >= 3
    ? { kind: 'other', number, station: ((second & 0b1111) << 8) | third }
    : { kind: 'other', number };
}
