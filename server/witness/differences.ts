/**
 * Differences of carrier phase between neighbouring epochs, each freed of what geometry and the satellite's clock
 * account for, so that what is left is the antenna's own movement and the receiver's clock.
 *
 * Source: F. van Graas and A. Soloviev (2004), Precise velocity estimation using a stand-alone GPS receiver, NAVIGATION
 * 51 (4); orbit and clock as in sight.ts, with one record of ephemerides for both ends of a pair.
 */
import type { Ephemeris } from '../evidence/rinex/ephemeris.ts';
import { HALF_1, HALF_2, LOST_1, LOST_2, type RawObservations } from '../evidence/rinex/raw-observations.ts';
import { troposphere } from './delays.ts';
import { SPEED_OF_LIGHT } from './orbit.ts';
import { secondRatio, secondWavelength, WAVELENGTH_1 } from './signals.ts';
import { see, sightOf, type Place } from './sight.ts';
import type { Sky } from './spp.ts';

export interface Differences {
  /** Pair `i` joins epochs `i` and `i + 1`; its rows are `starts[i]` up to `starts[i + 1]`. */
  readonly starts: Uint32Array;
  /** Satellites tracked at both ends, with those that lost lock or whose frequencies disagree. */
  readonly tracked: Uint8Array;
  readonly lost: Uint8Array;
  readonly satellites: Uint8Array;
  /** In metres: first frequency, change of its ionospheric delay, and free of the ionosphere; NaN without a second frequency. */
  readonly first: Float64Array;
  readonly ionosphere: Float64Array;
  readonly free: Float64Array;
  /** Line of sight at the second end, and sine of the elevation. */
  readonly east: Float32Array;
  readonly north: Float32Array;
  readonly up: Float32Array;
}

/** 15 degrees. */
const LOWEST = Math.sin(0.2618);
/** A jump of the difference of both phases: no ionosphere changes so much in half a minute, and one cycle of L1 is 190 mm. */
const JUMP = 0.15;

interface End {
  record: Ephemeris | null;
  /** Row in the observations, and the epoch it is of. */
  row: number;
  epoch: number;
  model: number;
}

export function differences(sky: Sky, place: Place): Differences {
  const { raw } = sky;
  const { times, starts } = raw;
  const into = roomFor(raw);
  const last: End[] = Array.from({ length: 128 }, () => ({ record: null, row: 0, epoch: -2, model: 0 }));
  let count = 0;
  for (let epoch = 0; epoch < times.length; epoch += 1) {
    const t = times[epoch] ?? 0;
    for (let row = starts[epoch] ?? 0; row < (starts[epoch + 1] ?? 0); row += 1) {
      const satellite = raw.satellites[row] ?? 0;
      const end = last[satellite];
      const record = sky.book.at(satellite, t);
      const code = raw.code1[row] ?? Number.NaN;
      if (!end || !record || Number.isNaN(raw.phase1[row] ?? Number.NaN) || !(code > -2e7 && code < 9e7))
        continue;
      const before = end.epoch === epoch - 1 && raw.broken[epoch] === 0 && end.record ? end : null;
      // Both ends by one record: a new one jumps by decimetres.
      const model = modelled(before?.record ?? record, t, code, place);
      if (before && sight.up > LOWEST) {
        const pair = epoch - 1;
        into.tracked[pair] = (into.tracked[pair] ?? 0) + 1;
        if (add(into, count, raw, before.row, row, model - before.model)) count += 1;
        else into.lost[pair] = (into.lost[pair] ?? 0) + 1;
      }
      end.model = before && before.record !== record ? modelled(record, t, code, place) : model;
      end.record = record;
      end.row = row;
      end.epoch = epoch;
    }
    if (epoch > 0) into.starts[epoch] = count;
  }
  return into;
}

const sight = sightOf();
function modelled(record: Ephemeris, t: number, code: number, place: Place): number {
  see(record, t, code, place, sight);
  if (sight.up < 0.05) return sight.range;
  return (
    sight.range - SPEED_OF_LIGHT * sight.clock + troposphere(place.latitude, place.height, sight.elevation)
  );
}

/** False where lock was lost, a half cycle was settled between, or the frequencies jump against each other. */
function add(into: Differences, at: number, raw: RawObservations, one: number, other: number, moved: number) {
  const satellite = raw.satellites[other] ?? 0;
  const flags = raw.flags[other] ?? 0;
  const changed = flags ^ (raw.flags[one] ?? 0);
  if (flags & LOST_1 || changed & HALF_1) return false;
  const first = ((raw.phase1[other] ?? 0) - (raw.phase1[one] ?? 0)) * WAVELENGTH_1;
  const second =
    flags & LOST_2 || changed & HALF_2
      ? Number.NaN
      : ((raw.phase2[other] ?? Number.NaN) - (raw.phase2[one] ?? Number.NaN)) *
        secondWavelength(raw, satellite);
  if (Math.abs(first - second) > JUMP) return false;
  const γ = secondRatio(raw, satellite);
  into.satellites[at] = satellite;
  into.first[at] = first - moved;
  into.ionosphere[at] = (first - second) / (γ - 1);
  into.free[at] = (γ * first - second) / (γ - 1) - moved;
  into.east[at] = sight.east;
  into.north[at] = sight.north;
  into.up[at] = sight.up;
  return true;
}

function roomFor({ times, satellites }: RawObservations): Differences {
  const rows = satellites.length;
  return {
    starts: new Uint32Array(Math.max(1, times.length)),
    tracked: new Uint8Array(times.length),
    lost: new Uint8Array(times.length),
    satellites: new Uint8Array(rows),
    first: new Float64Array(rows),
    ionosphere: new Float64Array(rows),
    free: new Float64Array(rows),
    east: new Float32Array(rows),
    north: new Float32Array(rows),
    up: new Float32Array(rows),
  };
}
