/** Message 1230: how the base's GLONASS phases and codes are aligned (RTCM 10403.3, table 3.5-85 and DF421 to DF426). */
import type { Metres } from '../../quantities/brands.ts';
import { metres } from '../../quantities/brands.ts';
import { bitReader } from './bits.ts';
import type { Malformed } from './message.ts';

export type BiasSignal = '1C' | '1P' | '2C' | '2P';

export interface GlonassBiases {
  readonly kind: 'biases';
  readonly number: 1230;
  readonly station: number;
  /** The observations have been aligned already, so that the biases are what was taken off. */
  readonly aligned: boolean;
  /** Code minus phase, to 0.02 m; absent where the value is sent as not known. */
  readonly biases: Readonly<Partial<Record<BiasSignal, Metres>>>;
}

export function glonassBiases(payload: Uint8Array): GlonassBiases | Malformed {
  const field = bitReader(payload);
  field.skip(12);
  const station = field.unsigned(12);
  const aligned = field.unsigned(1) === 1;
  field.skip(3);
  const mask = field.unsigned(4);
  const sent = biasSignals.filter((_, index) => mask & (0b1000 >> index));
  if (Number.isNaN(mask) || field.left() < 16 * sent.length) {
    return { kind: 'malformed', number: 1230, sentence: 'A 1230 ends before its biases do; it is not read.' };
  }
  const biases: Partial<Record<BiasSignal, Metres>> = {};
  for (const signal of sent) {
    const value = field.signed(16);
    if (value !== notKnown) biases[signal] = metres(value * 0.02);
  }
  return { kind: 'biases', number: 1230, station, aligned, biases };
}

const biasSignals: readonly BiasSignal[] = ['1C', '1P', '2C', '2P'];
const notKnown = -0x8000;
