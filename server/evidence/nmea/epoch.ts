/** One instant of an NMEA log, put together from the sentences that carry its time. */
import type {
  EllipsoidalHeight,
  Geographic,
  Metres,
  OrthometricHeight,
  Seconds,
  Topocentric,
} from '../../quantities/brands.ts';
import {
  ellipsoidalHeight,
  latitude,
  longitude,
  metres,
  orthometricHeight,
  seconds,
} from '../../quantities/brands.ts';
import { clipped } from '../problems.ts';
import { angleIn, digitOf, misplaced, numberIn } from './sentence.ts';

export type FixQuality =
  'autonomous' | 'differential' | 'precise' | 'fixed' | 'float' | 'estimated' | 'manual' | 'simulated';

export interface NmeaEpoch {
  /** UTC seconds since 1970 where the log is dated, else since a midnight, counted on across the next. */
  readonly time: number;
  readonly position: Geographic;
  readonly quality: FixQuality;
  /** Above the receiver's geoid. */
  readonly altitude?: OrthometricHeight;
  /** The receiver's geoid above the ellipsoid, as the sentence states it. */
  readonly separation?: Metres;
  /** Altitude and separation together; a hole where either is missing. */
  readonly height?: EllipsoidalHeight;
  readonly satellites?: number;
  readonly hdop?: number;
  /** Age of the corrections. */
  readonly age?: Seconds;
  readonly station?: string;
  /** Standard deviations that the receiver itself states. */
  readonly deviations?: Topocentric;
}

/** What the sentences of one instant say, as it comes in. */
export interface Gathered {
  timeOfDay: number;
  /** Days since 1970, where a sentence of this instant told them. */
  day?: number;
  time: number;
  position?: Geographic;
  quality?: FixQuality;
  altitude?: number;
  separation?: number;
  satellites?: number;
  hdop?: number;
  age?: number;
  station?: string;
  deviations?: Topocentric;
  /** Width of the last digit: of a minute of arc, and of a metre. */
  minuteDigit?: number;
  altitudeDigit?: number;
  separationDigit?: number;
}

/** Adds a sentence to its instant; a sentence that says what is wrong where it cannot be read. */
export function gather(into: Gathered, type: string, fields: readonly string[]): string | undefined {
  if (type === 'GST') {
    const wrong = misplaced(type, fields);
    if (wrong !== undefined) return wrong;
    const [up, east, north] = [numberIn(fields[7]), numberIn(fields[6]), numberIn(fields[5])];
    if (up !== undefined && east !== undefined && north !== undefined) {
      into.deviations = { east: metres(east), north: metres(north), up: metres(up) };
    }
    return undefined;
  }
  // RMC carries a position too, but neither height nor quality: it is read for its date alone.
  if (type === 'RMC' || (type === 'GNS' && into.position)) return undefined;
  const quality = type === 'GGA' ? gradeOf(fields[5] ?? '') : bestMode(fields[5] ?? '');
  if (quality === undefined) return undefined;
  const wrong = misplaced(type, fields);
  if (wrong !== undefined) return wrong;
  const phi = angleIn(fields[1], fields[2], 'N', 'S', 90);
  const lambda = angleIn(fields[3], fields[4], 'E', 'W', 180);
  if (phi === undefined || lambda === undefined) {
    return `This ${type} has no readable position: "${clipped(fields.slice(1, 5).join(','))}".`;
  }
  into.position = { latitude: latitude(phi), longitude: longitude(lambda) };
  into.quality = quality;
  into.minuteDigit = Math.max(digitOf(fields[1]), digitOf(fields[3]));
  const separationAt = type === 'GGA' ? 10 : 9;
  assign(into, 'satellites', numberIn(fields[6]));
  assign(into, 'hdop', numberIn(fields[7]));
  assign(into, 'altitude', numberIn(fields[8]));
  assign(into, 'separation', numberIn(fields[separationAt]));
  assign(into, 'age', numberIn(fields[type === 'GGA' ? 12 : 10]));
  const station = fields[type === 'GGA' ? 13 : 11];
  if (station) into.station = clipped(station);
  if (fields[8]) into.altitudeDigit = digitOf(fields[8]);
  if (fields[separationAt]) into.separationDigit = digitOf(fields[separationAt]);
  return undefined;
}

/** The epoch that has been gathered; undefined where no sentence gave a valid position. */
export function epochOf(gathered: Gathered): NmeaEpoch | undefined {
  const { time, position, quality, altitude, separation } = gathered;
  if (!position || !quality) return undefined;
  // Filled field by field, not spread: a log has ten epochs a second.
  const epoch: { -readonly [Key in keyof NmeaEpoch]: NmeaEpoch[Key] } = { time, position, quality };
  if (altitude !== undefined) epoch.altitude = orthometricHeight(altitude);
  if (separation !== undefined) epoch.separation = metres(separation);
  if (altitude !== undefined && separation !== undefined)
    epoch.height = ellipsoidalHeight(altitude + separation);
  if (gathered.satellites !== undefined) epoch.satellites = gathered.satellites;
  if (gathered.hdop !== undefined) epoch.hdop = gathered.hdop;
  if (gathered.age !== undefined) epoch.age = seconds(gathered.age);
  if (gathered.station !== undefined) epoch.station = gathered.station;
  if (gathered.deviations) epoch.deviations = gathered.deviations;
  return epoch;
}

function assign(
  into: Gathered,
  key: 'satellites' | 'hdop' | 'altitude' | 'separation' | 'age',
  value: number | undefined,
) {
  if (value !== undefined) into[key] = value;
}

/** One figure and nothing else: two are what is left where the fields have moved. */
const gradeOf = (figure: string) => (/^[1-8]$/.test(figure) ? qualityOfGga[figure] : undefined);

/** GNS has a letter for each constellation; the best of them is what the position rests on. */
function bestMode(modes: string): FixQuality | undefined {
  const found = new Set([...modes.slice(0, 8)].map((mode) => qualityOfMode[mode]));
  return qualities.find((quality) => found.has(quality));
}

/** From best to worst. */
export const qualities: readonly FixQuality[] = [
  ...([
    'fixed',
    'float',
    'precise',
    'differential',
    'autonomous',
    'estimated',
    'manual',
    'simulated',
  ] as const),
];
const qualityOfGga: Readonly<Record<string, FixQuality>> = {
  ...{ 1: 'autonomous', 2: 'differential', 3: 'precise', 4: 'fixed', 5: 'float' },
  ...{ 6: 'estimated', 7: 'manual', 8: 'simulated' },
};
const qualityOfMode: Readonly<Record<string, FixQuality>> = {
  ...{ A: 'autonomous', D: 'differential', P: 'precise', R: 'fixed', F: 'float' },
  ...{ E: 'estimated', M: 'manual', S: 'simulated' },
};
