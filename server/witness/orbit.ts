/**
 * Position and clock of a satellite from its broadcast record, earth-centred and earth-fixed at the time asked for.
 *
 * Source: IS-GPS-200, table 20-IV (user algorithm for ephemeris determination) and 20.3.3.3.3.1 (clock with the
 * relativistic term); Galileo OS SIS ICD, sections on ephemeris and on the clock correction, which have the same form.
 */
import type { Ephemeris } from '../evidence/rinex/ephemeris.ts';

export const SPEED_OF_LIGHT = 299_792_458;
/** Rotation of the earth, rad/s (WGS 84 and GTRF). */
export const ΩE = 7.2921151467e-5;
/** Gravitational constant times mass of the earth, m³/s²: IS-GPS-200; Galileo OS SIS ICD. */
const MU_GPS = 3.986005e14;
const MU_GALILEO = 3.986004418e14;

/** Overwritten by each call, since a day has a million of them. */
export interface SatelliteState {
  x: number;
  y: number;
  z: number;
  /** Of the satellite's clock, in seconds, with the relativistic term, without group delay. */
  clock: number;
}
export const satelliteState = (): SatelliteState => ({ x: 0, y: 0, z: 0, clock: 0 });

export function orbit(record: Ephemeris, t: number, into: SatelliteState): void {
  const μ = record.message === 'LNAV' ? MU_GPS : MU_GALILEO;
  const tk = t - record.time;
  const { e, rootA } = record;
  const A = rootA * rootA;
  const M = record.M0 + (Math.sqrt(μ / (A * A * A)) + record.Δn) * tk;
  const E = eccentricAnomaly(M, e);
  const sinE = Math.sin(E);
  const cosE = Math.cos(E);
  const φ = Math.atan2(Math.sqrt(1 - e * e) * sinE, cosE - e) + record.ω;
  const sin2φ = Math.sin(2 * φ);
  const cos2φ = Math.cos(2 * φ);
  const u = φ + record.Cus * sin2φ + record.Cuc * cos2φ;
  const r = A * (1 - e * cosE) + record.Crs * sin2φ + record.Crc * cos2φ;
  const i = record.i0 + record.idot * tk + record.Cis * sin2φ + record.Cic * cos2φ;
  const Ω = record.Ω0 + (record.Ωdot - ΩE) * tk - ΩE * record.secondOfWeek;
  const x = r * Math.cos(u);
  const y = r * Math.sin(u);
  const cosΩ = Math.cos(Ω);
  const sinΩ = Math.sin(Ω);
  const cosi = Math.cos(i);
  into.x = x * cosΩ - y * cosi * sinΩ;
  into.y = x * sinΩ + y * cosi * cosΩ;
  into.z = y * Math.sin(i);
  // F e √A sin E with F = -2√μ/c².
  const relativity = ((-2 * Math.sqrt(μ)) / (SPEED_OF_LIGHT * SPEED_OF_LIGHT)) * e * rootA * sinE;
  into.clock = clockPolynomial(record, t) + relativity;
}

export function clockPolynomial({ clock: [a0, a1, a2], clockTime }: Ephemeris, t: number): number {
  const dt = t - clockTime;
  return a0 + dt * (a1 + dt * a2);
}

/** Kepler's equation by Newton's method; e is below 0.25 (two Galileo satellites have 0.16), so that it converges from M. */
function eccentricAnomaly(M: number, e: number): number {
  let E = M;
  for (let round = 0; round < 10; round += 1) {
    const step = (E - e * Math.sin(E) - M) / (1 - e * Math.cos(E));
    E -= step;
    if (Math.abs(step) < 1e-13) break;
  }
  return E;
}
