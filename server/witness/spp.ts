/**
 * The position from the pseudoranges of one epoch: no memory of other epochs, nothing taken from the notes.
 *
 * Source: P. J. G. Teunissen and O. Montenbruck (eds, 2017), Springer Handbook of Global Navigation Satellite Systems,
 * chapter 21.1, single point positioning; single-frequency codes with the broadcast ionosphere and group delay
 * (IS-GPS-200, 20.3.3.3.3.2; Galileo OS SIS ICD, BGD), two frequencies with the ionosphere eliminated.
 */
import type { Ephemeris, Klobuchar } from '../evidence/rinex/ephemeris.ts';
import { isGalileo, type RawObservations } from '../evidence/rinex/raw-observations.ts';
import { ionosphereL1, troposphere } from './delays.ts';
import type { EphemerisBook } from './ephemerides.ts';
import { fitOf, robustFit } from './normal-equations.ts';
import { SPEED_OF_LIGHT } from './orbit.ts';
import { placeAt } from './place.ts';
import { secondRatio } from './signals.ts';
import { see, sightOf, type Place } from './sight.ts';

export interface Fix {
  readonly place: Place;
  readonly satellites: number;
  readonly gps: number;
  readonly galileo: number;
  readonly dual: boolean;
  /** Of the receiver, in seconds. */
  readonly clock: number;
  readonly rejected: number;
}

/** 10 degrees. */
const MASK = 0.1745;
const MOST = 128;
const design = new Float64Array(5 * MOST);
const observed = new Float64Array(MOST);
const sigmas = new Float64Array(MOST);
const sight = sightOf();
const fit4 = fitOf(4, MOST);
const fit5 = fitOf(5, MOST);

export interface Sky {
  readonly raw: RawObservations;
  readonly book: EphemerisBook;
  readonly ionosphere: Klobuchar | null;
}

/** From anywhere, the earth's centre included; null where fewer than five satellites agree. */
export function fixOf(sky: Sky, epoch: number, start: Place | null, dual: boolean): Fix | null {
  let place = start ?? placeAt(0, 0, 0);
  let cold = start === null;
  for (let round = 0; round < 12; round += 1) {
    const rows = equations(sky, epoch, place, dual, cold);
    const mixed = rows.gps > 0 && rows.galileo > 0;
    const fit = mixed ? fit5 : fit4;
    const least = mixed ? 6 : 5;
    const limit = cold ? 1e12 : 4;
    if (!robustFit(fit, rows.count, compact(rows.count, mixed), observed, sigmas, limit, least)) return null;
    const [dx = 0, dy = 0, dz = 0, clock = 0] = fit.solution;
    place = placeAt(place.x + dx, place.y + dy, place.z + dz);
    const moved = Math.hypot(dx, dy, dz);
    if (!Number.isFinite(moved)) return null;
    if (!cold && moved < 1e-4) {
      const { gps, galileo } = rows;
      const { count, rejected } = fit;
      // A place far from the ground means that the satellites do not agree.
      if (Math.abs(place.height) > 20_000) return null;
      return { place, satellites: count, gps, galileo, dual, clock: clock / SPEED_OF_LIGHT, rejected };
    }
    if (moved < 1000) cold = false;
  }
  return null;
}

/** Drops the fifth unknown, the offset of Galileo's clocks, where only one system is seen. */
function compact(count: number, mixed: boolean) {
  if (mixed) return design;
  for (let row = 0; row < count; row += 1)
    for (let i = 0; i < 4; i += 1) narrow[4 * row + i] = design[5 * row + i] ?? 0;
  return narrow;
}
const narrow = new Float64Array(4 * MOST);

function equations(sky: Sky, epoch: number, place: Place, dual: boolean, cold: boolean) {
  const { raw, book, ionosphere } = sky;
  const t = raw.times[epoch] ?? 0;
  let count = 0;
  let galileo = 0;
  for (let row = raw.starts[epoch] ?? 0; row < (raw.starts[epoch + 1] ?? 0) && count < MOST; row += 1) {
    const satellite = raw.satellites[row] ?? 0;
    const record = book.at(satellite, t);
    const p1 = raw.code1[row] ?? Number.NaN;
    const p2 = raw.code2[row] ?? Number.NaN;
    if (!record || !isRange(p1) || (dual && !isRange(p2))) continue;
    const γ = secondRatio(raw, satellite);
    const code = dual ? (γ * p1 - p2) / (γ - 1) : p1;
    see(record, t, p1, place, sight);
    if (!cold && sight.elevation < MASK) continue;
    const clock = sight.clock - groupDelay(record, raw, dual);
    let model = sight.range - SPEED_OF_LIGHT * clock;
    if (!cold) {
      model += troposphere(place.latitude, place.height, sight.elevation);
      if (!dual && ionosphere)
        model += ionosphereL1(ionosphere, place.latitude, place.longitude, sight.elevation, sight.azimuth, t);
    }
    const other = isGalileo(satellite);
    design.set([-sight.ex, -sight.ey, -sight.ez, 1, other ? 1 : 0], 5 * count);
    observed[count] = code - model;
    sigmas[count] = cold ? 100 : (dual ? 2 : 1.5) / Math.max(0.1, Math.sin(sight.elevation));
    count += 1;
    if (other) galileo += 1;
  }
  return { count, galileo, gps: count - galileo };
}

/** Between 15 000 and 60 000 km with a receiver's clock that is off by a tenth of a second at most. */
const isRange = (code: number) => code > -2e7 && code < 9e7;

/** What the record's clock is off for the codes that are used. */
function groupDelay(record: Ephemeris, { second }: RawObservations, dual: boolean): number {
  const { message, groupDelay: first, groupDelayE5b } = record;
  if (message === 'INAV' && (!dual || second.E === 'E5a'))
    return dual ? groupDelayE5b - first : groupDelayE5b;
  if (message === 'FNAV' && dual && second.E === 'E5b') return first - groupDelayE5b;
  return dual ? 0 : first;
}
