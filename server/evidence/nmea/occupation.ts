/** What an NMEA log says of one span of time: means, ranges, and a thinned track to draw. */
import type { Geographic, Topocentric } from '../../quantities/brands.ts';
import { metres } from '../../quantities/brands.ts';
import { dayNumberOfIso, modulo, secondsOfDay } from '../civil-time.ts';
import { clipped } from '../problems.ts';
import type { FixQuality, Gathered, NmeaEpoch } from './epoch.ts';
import { epochOf, qualities } from './epoch.ts';
import type { NmeaMean, RunningMean } from './running-mean.ts';
import { degreesInMetres, runningMean } from './running-mean.ts';

/** A span of UTC: seconds after midnight of `date`, or of any day where no date is given. */
export interface TimeWindow {
  readonly from: number;
  readonly until: number;
  /** YYYY-MM-DD. */
  readonly date?: string;
}

export interface NmeaRange {
  readonly least: number;
  readonly mean: number;
  readonly most: number;
}

export interface OccupationFacts {
  /** The first and last position inside the window. */
  readonly begin?: number;
  readonly end?: number;
  readonly epochs: number;
  /** Best first. */
  readonly means: readonly NmeaMean[];
  /** Share of the epochs in the window that are fixed. */
  readonly fixedShare: number;
  readonly satellites?: NmeaRange;
  readonly hdop?: NmeaRange;
  readonly age?: NmeaRange;
  readonly separation?: NmeaRange;
  /** Standard uncertainty of the last digit printed, the coarsest in the window: a digit's width over √12. */
  readonly rounding?: Topocentric;
  /** At most two thousand epochs, evenly thinned. */
  readonly track: readonly NmeaEpoch[];
}

export interface Occupation {
  readonly add: (gathered: Gathered, dated: boolean) => void;
  /** The date has become known: what was counted from a midnight is counted from 1970. */
  readonly shift: (by: number) => void;
  readonly problems: () => readonly string[];
  readonly facts: () => OccupationFacts;
}

export function occupation(window: TimeWindow | undefined): Occupation {
  const date = window?.date === undefined ? undefined : dayNumberOfIso(window.date);
  const means = new Map<FixQuality, RunningMean>();
  const ranges = { satellites: range(), hdop: range(), age: range(), separation: range() };
  const coarsest = { minute: 0, altitude: 0, separation: 0 };
  let begin: number | undefined;
  let end: number | undefined;
  let epochs = 0;
  let outside = 0;
  let track: NmeaEpoch[] = [];
  let stride = 1;

  const isInside = (time: number, dated: boolean) => {
    if (!window) return true;
    const asked = window.until - window.from;
    const length = asked < 0 ? asked + secondsOfDay : asked;
    const into = time - window.from;
    if (date !== undefined && dated) return within(into - date * secondsOfDay, length);
    return length >= secondsOfDay || within(modulo(into, secondsOfDay), length);
  };
  return {
    add(gathered: Gathered, dated: boolean) {
      const epoch = epochOf(gathered);
      if (!epoch) return;
      if (!isInside(epoch.time, dated)) {
        outside += 1;
        return;
      }
      begin ??= epoch.time;
      end = epoch.time;
      const mean = means.get(epoch.quality) ?? runningMean(epoch);
      means.set(epoch.quality, mean);
      mean.add(epoch);
      for (const key of ['satellites', 'hdop', 'age', 'separation'] as const) ranges[key].add(epoch[key]);
      coarsest.minute = Math.max(coarsest.minute, gathered.minuteDigit ?? 0);
      coarsest.altitude = Math.max(coarsest.altitude, gathered.altitudeDigit ?? 0);
      coarsest.separation = Math.max(coarsest.separation, gathered.separationDigit ?? 0);
      if (epochs % stride === 0) track.push(epoch);
      epochs += 1;
      if (track.length > longestTrack) {
        track = track.filter((_, index) => index % 2 === 0);
        stride *= 2;
      }
    },
    shift(by: number) {
      if (begin !== undefined) begin += by;
      if (end !== undefined) end += by;
      track = track.map((epoch) => ({ ...epoch, time: epoch.time + by }));
    },
    problems() {
      const found: string[] = [];
      if (window?.date !== undefined && date === undefined)
        found.push(`"${clipped(window.date)}" is not a date.`);
      if (epochs === 0 && outside > 0)
        found.push(`All ${outside} positions of this log lie outside the time asked for.`);
      if (window && begin !== undefined && end !== undefined && end - begin > secondsOfDay) {
        found.push('The log covers more than one day, and the time asked for has no date.');
      }
      return found;
    },
    facts() {
      const all = qualities.flatMap((quality) => means.get(quality)?.result(quality) ?? []);
      const here = all[0]?.position;
      const fixed = all.find((mean) => mean.quality === 'fixed')?.epochs ?? 0;
      return {
        ...(begin === undefined ? {} : { begin }),
        ...(end === undefined ? {} : { end }),
        epochs,
        means: all,
        fixedShare: epochs === 0 ? 0 : fixed / epochs,
        ...ranges.satellites.as('satellites'),
        ...ranges.hdop.as('hdop'),
        ...ranges.age.as('age'),
        ...ranges.separation.as('separation'),
        ...(here ? { rounding: roundingAt(here, coarsest) } : {}),
        track,
      };
    },
  };
}

const within = (value: number, length: number) => value >= 0 && value <= length;

const longestTrack = 2000;

function roundingAt(
  at: Geographic,
  coarsest: { minute: number; altitude: number; separation: number },
): Topocentric {
  const metresOf = degreesInMetres(at);
  const widthToDeviation = 1 / Math.sqrt(12);
  return {
    east: metres((coarsest.minute / 60) * metresOf.east * widthToDeviation),
    north: metres((coarsest.minute / 60) * metresOf.north * widthToDeviation),
    up: metres(Math.hypot(coarsest.altitude, coarsest.separation) * widthToDeviation),
  };
}

function range() {
  let count = 0;
  let sum = 0;
  let least = Infinity;
  let most = -Infinity;
  return {
    add(value: number | undefined) {
      if (value === undefined) return;
      count += 1;
      sum += value;
      least = Math.min(least, value);
      most = Math.max(most, value);
    },
    as<Key extends string>(key: Key): Partial<Record<Key, NmeaRange>> {
      const found: Partial<Record<Key, NmeaRange>> = {};
      if (count > 0) found[key] = { least, mean: sum / count, most };
      return found;
    },
  };
}
