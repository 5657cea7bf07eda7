/** Messages 1005 and 1006: where the base says its antenna reference point is (RTCM 10403.3, tables 3.5-6 and 3.5-7). */
import type { Geocentric, Metres } from '../../quantities/brands.ts';
import { metres } from '../../quantities/brands.ts';
import { bitReader } from './bits.ts';
import type { Malformed } from './message.ts';

export interface StationPosition {
  readonly kind: 'position';
  readonly number: 1005 | 1006;
  readonly station: number;
  /** The antenna reference point, to 0.1 mm. */
  readonly position: Geocentric;
  /** Height of the antenna reference point above the mark; 1006 alone carries it. */
  readonly antennaHeight?: Metres;
  /** Two digits of the year in which the reference frame was realised; 0 where not stated. */
  readonly frameYear: number;
  /** The station is computed from a network and stands nowhere. */
  readonly virtual: boolean;
}

/** A position is read from a message of exactly the right length, and only where it lies on the Earth. */
export function stationPosition(number: 1005 | 1006, payload: Uint8Array): StationPosition | Malformed {
  const wanted = number === 1005 ? 19 : 21;
  if (payload.length !== wanted) {
    return {
      kind: 'malformed',
      number,
      sentence: `A ${number} has ${payload.length} bytes instead of ${wanted}; its position is not read.`,
    };
  }
  const field = bitReader(payload);
  field.skip(12);
  const station = field.unsigned(12);
  const frameYear = field.unsigned(6);
  field.skip(3);
  const virtual = field.unsigned(1) === 1;
  const x = metres(field.signed(38) / 10_000);
  field.skip(2);
  const y = metres(field.signed(38) / 10_000);
  field.skip(2);
  const z = metres(field.signed(38) / 10_000);
  const position = { x, y, z };
  if (!liesOnEarth(position)) {
    const distance = (Math.hypot(x, y, z) / 1000).toFixed(0);
    return {
      kind: 'malformed',
      number,
      sentence: `A ${number} of station ${station} gives a position ${distance} km from the Earth's centre; it is not used.`,
    };
  }
  const base: StationPosition = { kind: 'position', number, station, position, frameYear, virtual };
  return number === 1006 ? { ...base, antennaHeight: metres(field.unsigned(16) / 10_000) } : base;
}

/** Between the deepest pole and the highest summit, with room to spare for a slip worth telling. */
function liesOnEarth({ x, y, z }: Geocentric) {
  const distance = Math.hypot(x, y, z);
  return distance > 6_300_000 && distance < 6_420_000;
}
