/**
 * Delays in the atmosphere, in metres.
 *
 * Source: ionosphere IS-GPS-200, 20.3.3.5.2.5 (Klobuchar), for L1; troposphere Saastamoinen (1972) with a standard
 * atmosphere (ICAO; 50 % humidity) and the mapping function of RTCA DO-229, A.4.2.4.
 */
import type { Klobuchar } from '../evidence/rinex/ephemeris.ts';
import { SPEED_OF_LIGHT } from './orbit.ts';

/** Latitude and longitude of the receiver, elevation and azimuth in radians; `t` in seconds of GPS time. */
export function ionosphereL1(
  { alpha, beta }: Klobuchar,
  latitude: number,
  longitude: number,
  elevation: number,
  azimuth: number,
  t: number,
): number {
  // In semicircles, as the document has it.
  const E = elevation / Math.PI;
  const ψ = 0.0137 / (E + 0.11) - 0.022;
  const φi = Math.max(-0.416, Math.min(0.416, latitude / Math.PI + ψ * Math.cos(azimuth)));
  const λi = longitude / Math.PI + (ψ * Math.sin(azimuth)) / Math.cos(φi * Math.PI);
  const φm = φi + 0.064 * Math.cos((λi - 1.617) * Math.PI);
  const time = 43_200 * λi + t;
  const local = time - Math.floor(time / 86_400) * 86_400;
  const F = 1 + 16 * (0.53 - E) ** 3;
  const series = (c: readonly number[]) =>
    (c[0] ?? 0) + φm * ((c[1] ?? 0) + φm * ((c[2] ?? 0) + φm * (c[3] ?? 0)));
  const amplitude = Math.max(0, series(alpha));
  const period = Math.max(72_000, series(beta));
  const x = (2 * Math.PI * (local - 50_400)) / period;
  const day = Math.abs(x) < 1.57 ? amplitude * (1 - (x * x) / 2 + (x * x * x * x) / 24) : 0;
  return SPEED_OF_LIGHT * F * (5e-9 + day);
}

/** `height` above the ellipsoid; the geoid's height changes the delay by centimetres, which do not matter here. */
export function troposphere(latitude: number, height: number, elevation: number): number {
  return (zenithTroposphere(latitude, height) * 1.001) / Math.sqrt(0.002001 + Math.sin(elevation) ** 2);
}

export function zenithTroposphere(latitude: number, height: number): number {
  const h = Math.max(0, Math.min(9000, height));
  const pressure = 1013.25 * (1 - 2.2557e-5 * h) ** 5.2568;
  const kelvin = 288.15 - 6.5e-3 * h;
  const vapour = 6.108 * 0.5 * Math.exp((17.15 * kelvin - 4684) / (kelvin - 38.45));
  const dry = (0.0022768 * pressure) / (1 - 0.00266 * Math.cos(2 * latitude) - 0.00028e-3 * h);
  return dry + 0.002277 * (1255 / kelvin + 0.05) * vapour;
}
