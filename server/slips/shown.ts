/** What a check would show of an error: the residual that comes out, carried through the same conversions as an observation. */
import { geocentricOf, geodeticOf } from '../geodesy/geocentric.ts';
import { topocentricBetween } from '../geodesy/topocentric.ts';
import {
  ellipsoidalHeight,
  latitude as asLatitude,
  longitude as asLongitude,
  metres,
  type Geocentric,
} from '../quantities/brands.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { isHole } from '../quantities/value.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import type { GeoidModel } from '../derive/heights/geoid.ts';
import type { Located } from '../derive/positions/locate.ts';
import { numberOf } from './situation.ts';
import type { Place, Shift } from './slip.ts';

/** Where the grid of the geoid does not reach the shown place: what each metre of geoid there would take off, in the mark's horizon. */
interface Shown extends Shift {
  readonly beyondGeoid: Shift | null;
}

/** The residual when the whole of what the rover shows is moved by a geocentric vector; null without a known mark. */
export function shownShifted(check: CheckValues, by: Geocentric, geoid: GeoidModel | null): Shown | null {
  const known = knownPlace(check);
  if (!known) return null;
  const { located, level } = known;
  const { ellipsoid } = located.system.datum;
  const here = geocentricOf(ellipsoid, { ...brand(placeIn(located)), height: ellipsoidalHeight(level) });
  const there = geodeticOf(ellipsoid, {
    x: metres(here.x + by.x),
    y: metres(here.y + by.y),
    z: metres(here.z + by.z),
  });
  const rise = geoidRise(check, placeIn(located), there, geoid);
  const up = there.height - level - (rise ?? 0);
  const shown = { ...horizontal(located, there, level, up), up };
  if (rise !== null) return { ...shown, beyondGeoid: null };
  const lower = horizontal(located, there, level, up - 1);
  return {
    ...shown,
    beyondGeoid: { east: lower.east - shown.east, north: lower.north - shown.north, up: -1 },
  };
}

/** The residual when the controller shows another place and the right height. */
export function shownAside(check: CheckValues, place: Place): Shift | null {
  const known = knownPlace(check);
  return known && { ...horizontal(known.located, place, known.level, 0), up: 0 };
}

/** A controller takes the geoid off where it believes to be, which is not where the mark is; null where it reaches only one of them. */
function geoidRise(
  { observed }: CheckValues,
  here: Place,
  there: Place,
  geoid: GeoidModel | null,
): number | null {
  if (!geoid || isHole(observed.height) || observed.height.surface !== 'orthometric') return 0;
  const [known, shown] = [here, there].map(({ latitude, longitude }) =>
    geoid.undulation(latitude, longitude),
  );
  if (known === undefined || isRefusal(known)) return 0;
  return shown === undefined || isRefusal(shown) ? null : shown - known;
}

/** As residuals of checks are formed: in the horizon of the mark, both points at the height of mark and observation. */
function horizontal(located: Located, there: Place, level: number, up: number) {
  const { ellipsoid } = located.system.datum;
  const at = (place: Place, height: number) =>
    geocentricOf(ellipsoid, { ...brand(place), height: ellipsoidalHeight(height) });
  const here = placeIn(located);
  const { east, north } = topocentricBetween(brand(here), at(here, level), at(there, level + up));
  return { east, north };
}

function knownPlace({ mark }: CheckValues): { located: Located; level: number } | null {
  if (!mark || isHole(mark.located)) return null;
  const level = numberOf(mark.ellipsoidalHeight) ?? numberOf(mark.orthometricHeight) ?? 0;
  return { located: mark.located, level };
}

const placeIn = ({ latitude, longitude }: Located): Place => ({
  latitude: latitude.value,
  longitude: longitude.value,
});
const brand = ({ latitude, longitude }: Place) => ({
  latitude: asLatitude(latitude),
  longitude: asLongitude(longitude),
});
