/**
 * Mean and scatter of positions that need no second look at them: Welford's recurrence (B. P. Welford, 1962,
 * Technometrics 4) on the offsets in metres from the first.
 */
import { toRadians } from '../../geodesy/angles.ts';
import { WGS84 } from '../../geodesy/ellipsoid.ts';
import { meridianRadius, primeVerticalRadius } from '../../geodesy/radii.ts';
import type { EllipsoidalHeight, Geodetic, Geographic, Topocentric } from '../../quantities/brands.ts';
import { ellipsoidalHeight, latitude, longitude, metres } from '../../quantities/brands.ts';
import { modulo } from '../civil-time.ts';
import type { FixQuality, NmeaEpoch } from './epoch.ts';

/** What the epochs of one quality say together. */
export interface NmeaMean {
  readonly quality: FixQuality;
  readonly epochs: number;
  readonly position: Geographic;
  /** Absent unless every epoch has one. */
  readonly height?: EllipsoidalHeight;
  /** Standard deviations of one epoch; absent for a single epoch, and `up` where the height is. */
  readonly spread?: Pick<Topocentric, 'east' | 'north'> & Partial<Pick<Topocentric, 'up'>>;
  /** The mean weighted by the receiver's own deviations, where it states them for every epoch. */
  readonly weighted?: Geodetic;
}

export interface RunningMean {
  readonly add: (epoch: NmeaEpoch) => void;
  readonly result: (quality: FixQuality) => NmeaMean;
}

export function runningMean(origin: NmeaEpoch): RunningMean {
  const metresOf = degreesInMetres(origin.position);
  const axes = { east: welford(), north: welford(), up: welford() };
  let epochs = 0;
  let heights = 0;
  let weighable = true;
  const positionAt = (east: number, north: number): Geographic => ({
    latitude: latitude(origin.position.latitude + north / metresOf.north),
    longitude: longitude(modulo(origin.position.longitude + east / metresOf.east + 180, 360) - 180),
  });
  const heightAt = (up: number) => ellipsoidalHeight((origin.height ?? 0) + up);
  return {
    add({ position, height, deviations }: NmeaEpoch) {
      epochs += 1;
      const turn = modulo(position.longitude - origin.position.longitude + 180, 360) - 180;
      const weights = deviations && weightsOf(deviations);
      weighable &&= weights !== undefined;
      axes.east.add(turn * metresOf.east, weights?.east);
      axes.north.add((position.latitude - origin.position.latitude) * metresOf.north, weights?.north);
      if (height === undefined) return;
      heights += 1;
      axes.up.add(height - (origin.height ?? 0), weights?.up);
    },
    result(quality: FixQuality): NmeaMean {
      const whole = heights === epochs;
      const { east, north, up } = axes;
      return {
        ...{ quality, epochs, position: positionAt(east.mean(), north.mean()) },
        ...(whole ? { height: heightAt(up.mean()) } : {}),
        ...(epochs < 2
          ? {}
          : {
              spread: {
                east: metres(east.deviation()),
                north: metres(north.deviation()),
                ...(whole ? { up: metres(up.deviation()) } : {}),
              },
            }),
        ...(whole && weighable
          ? {
              weighted: { ...positionAt(east.weighted(), north.weighted()), height: heightAt(up.weighted()) },
            }
          : {}),
      };
    },
  };
}

/** Zero deviations would weigh without bound: such an epoch cannot be weighed. */
function weightsOf({ east, north, up }: Topocentric) {
  return east > 0 && north > 0 && up > 0 ? { east: east ** -2, north: north ** -2, up: up ** -2 } : undefined;
}

function welford() {
  let count = 0;
  let mean = 0;
  let squares = 0;
  let weightSum = 0;
  let weightedMean = 0;
  return {
    add(value: number, weight: number | undefined) {
      count += 1;
      const step = value - mean;
      mean += step / count;
      squares += step * (value - mean);
      if (weight === undefined) return;
      weightSum += weight;
      weightedMean += ((value - weightedMean) * weight) / weightSum;
    },
    mean: () => mean,
    weighted: () => weightedMean,
    deviation: () => Math.sqrt(squares / (count - 1)),
  };
}

/** Metres of a degree of latitude and of longitude at a place on WGS 84. */
export function degreesInMetres(at: Geographic) {
  const cosine = Math.cos(toRadians(at.latitude));
  return {
    north: toRadians(1) * meridianRadius(WGS84, at.latitude),
    east: Math.max(1e-9, toRadians(1) * primeVerticalRadius(WGS84, at.latitude) * cosine),
  };
}
