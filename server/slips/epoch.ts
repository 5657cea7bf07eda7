/** The coordinates are of another epoch, and the plate has carried the mark on since. */
import { carriedByPlate, PLATES, type Plate } from '../geodesy/datums/plates.ts';
import { geocentricOf } from '../geodesy/geocentric.ts';
import { topocentricBetween } from '../geodesy/topocentric.ts';
import { ellipsoidalHeight, latitude as asLatitude, longitude as asLongitude } from '../quantities/brands.ts';
import { isHole } from '../quantities/value.ts';
import type { Session } from '../session/session.ts';
import { numberOf, type Situation } from './situation.ts';
import { keyedDatum } from './told.ts';
import type { Shift, Slip, Way } from './slip.ts';

export const epoch: Slip = {
  name: 'epoch',
  code: 'position/keyed-differs',
  prior: 0.02,
  look: 'the epoch that the register states, and the one that the corrections refer to',
  ways: (situation) => {
    const { setup, right, session } = situation;
    const datum = keyedDatum(situation);
    if (!datum || !right.place) return [];
    const plates = platesUnder(datum.name, right.place);
    const stated = numberOf(setup.mark?.mark.epoch);
    const today = yearOf(session);
    return plates.flatMap(({ plate, weight }): Way[] => {
      const yearly = yearlyMotion(plate, situation);
      if (!yearly) return [];
      const known = stated !== null && today !== null ? [stated - today, today - stated] : [];
      return [
        ...known.map((years) =>
          moved(
            yearly,
            years,
            0,
            `the coordinates were keyed at another epoch, ${Math.abs(years).toFixed(1)} years away`,
            3 * weight,
          ),
        ),
        moved(
          yearly,
          0,
          YEARS_APART,
          `the coordinates were keyed at another epoch, with the plate ${plate} moving on between`,
          weight,
        ),
      ];
    });
  },
};

/** Epochs of registers and of corrections lie some years to some decades apart, either way (common practice). */
const YEARS_APART = 18;

/** What the mark moves in a year, metres. */
function yearlyMotion(plate: Plate, situation: Situation): Shift | null {
  const { right } = situation;
  const datum = keyedDatum(situation);
  if (!right.place || !datum) return null;
  const place = { latitude: asLatitude(right.place.latitude), longitude: asLongitude(right.place.longitude) };
  const here = geocentricOf(datum.ellipsoid, {
    ...place,
    height: ellipsoidalHeight(right.height ?? 0),
  });
  const { east, north, up } = topocentricBetween(place, here, carriedByPlate(plate, here, 0, 1));
  return { east, north, up };
}

function moved(yearly: Shift, years: number, spread: number, says: string, weight: number): Way {
  const times = (count: number): Shift => ({
    east: yearly.east * count,
    north: yearly.north * count,
    up: yearly.up * count,
  });
  return {
    says,
    weight,
    effect: {
      on: 'base',
      shift: times(years),
      free: spread === 0 ? [] : [() => times(spread)],
      applies: () => true,
    },
  };
}

interface Likely {
  readonly plate: Plate;
  readonly weight: number;
}

/** The plate that a datum is fixed to; under a global frame those that lie about there, and hardly any other. */
function platesUnder(
  datum: string,
  { latitude, longitude }: { latitude: number; longitude: number },
): Likely[] {
  const fixed = FIXED_TO.find(([name]) => name.test(datum));
  if (fixed) return [{ plate: fixed[1], weight: 1 }];
  return PLATES.map((plate) => {
    const [south, west, north, east] = ABOUT[plate];
    const across =
      east < west ? longitude >= west || longitude <= east : longitude >= west && longitude <= east;
    return { plate, weight: latitude >= south && latitude <= north && across ? 1 : ELSEWHERE };
  });
}
/** Boxes are rough, and plates are not boxes. */
const ELSEWHERE = 0.02;

const FIXED_TO: readonly (readonly [RegExp, Plate])[] = [
  [/^(ETRS89|ETRF)/, 'Eurasia'],
  [/^GDA/, 'Australia'],
  [/^NAD83/, 'North America'],
  [/^SIRGAS/, 'South America'],
];

/** South, west, north, east of where each plate carries land, in degrees, roughly (from memory). */
const ABOUT: Readonly<Record<Plate, readonly [number, number, number, number]>> = {
  Antarctica: [-90, -180, -60, 180],
  Arabia: [12, 34, 38, 60],
  Australia: [-50, 90, 0, 175],
  Eurasia: [20, -25, 85, 150],
  India: [0, 60, 36, 98],
  Nazca: [-45, -110, 5, -75],
  'North America': [7, 140, 85, -15],
  Nubia: [-36, -25, 38, 37],
  Pacific: [-60, 140, 55, -115],
  'South America': [-60, -85, 15, -30],
  Somalia: [-36, 28, 15, 60],
};

/** The day of the job as a year with its fraction. */
export function yearOf({ job }: Session): number | null {
  if (!job?.date || isHole(job.date)) return null;
  const start = new Date(job.date.day * 86_400_000);
  const year = start.getUTCFullYear();
  const first = Date.UTC(year, 0, 1);
  return year + (start.getTime() - first) / (Date.UTC(year + 1, 0, 1) - first);
}
