/** One broadcast record of a satellite's orbit and clock, and of the ionosphere. Angles in radians, lengths in metres, times in seconds. */
import type { Satellite } from './raw-observations.ts';

export interface Ephemeris {
  readonly satellite: Satellite;
  /** GPS LNAV; Galileo F/NAV, whose clock belongs to E1 with E5a, or I/NAV, whose clock belongs to E1 with E5b. */
  readonly message: 'LNAV' | 'FNAV' | 'INAV';
  /** Times of clock and of ephemeris, seconds since 1970 on the GPS scale; and the latter as second of its week. */
  readonly clockTime: number;
  readonly time: number;
  readonly secondOfWeek: number;
  readonly clock: readonly [a0: number, a1: number, a2: number];
  readonly rootA: number;
  readonly e: number;
  readonly M0: number;
  readonly Δn: number;
  readonly Ω0: number;
  readonly Ωdot: number;
  readonly i0: number;
  readonly idot: number;
  readonly ω: number;
  readonly Crs: number;
  readonly Crc: number;
  readonly Cus: number;
  readonly Cuc: number;
  readonly Cis: number;
  readonly Cic: number;
  /** TGD of GPS, or BGD of E1 with E5a. */
  readonly groupDelay: number;
  /** BGD of E1 with E5b, where the record has it; else 0. */
  readonly groupDelayE5b: number;
  readonly healthy: boolean;
}

/** The eight coefficients of the broadcast ionosphere (IS-GPS-200, 20.3.3.5.2.5). */
export interface Klobuchar {
  readonly alpha: readonly number[];
  readonly beta: readonly number[];
}

/** 1980-01-06, the first day of GPS week 0, in seconds since 1970. */
export const GPS_EPOCH = 315_964_800;
export const WEEK = 604_800;

/** False for numbers that no orbit has; such a record would put a satellite anywhere. */
export function isOrbit(record: Ephemeris): boolean {
  const { rootA, e, secondOfWeek, time, clockTime } = record;
  const numbers = [...record.clock, ...Object.values(record).filter((value) => typeof value === 'number')];
  return (
    numbers.every(Number.isFinite) &&
    rootA > 4000 &&
    rootA < 7000 &&
    e >= 0 &&
    e < 0.25 &&
    secondOfWeek >= 0 &&
    secondOfWeek < WEEK &&
    Math.abs(time - clockTime) < 86_400
  );
}
