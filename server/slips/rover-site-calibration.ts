/** The controller works with the site calibration of another job: shifted, turned and stretched. */
import { topocentricBetween } from '../geodesy/topocentric.ts';
import { geocentricOf } from '../geodesy/geocentric.ts';
import { ellipsoidalHeight, latitude as asLatitude, longitude as asLongitude } from '../quantities/brands.ts';
import { isHole } from '../quantities/value.ts';
import type { CheckValues } from '../derive/check.ts';
import type { Situation } from './situation.ts';
import type { Freedom, Shift, Slip } from './slip.ts';

export const roverSiteCalibration: Slip = {
  name: 'rover-site-calibration',
  code: null,
  prior: 0.03,
  look: 'whether a site calibration is set in the controller',
  ways: (situation) => {
    const noted = situation.derivation.checks.some(
      ({ setup, rover }) => setup === situation.setup && rover?.siteCalibration?.name === 'none',
    );
    return [
      {
        says: 'the controller worked with the site calibration of another job',
        weight: noted ? 0.3 : 1,
        effect: { on: 'rover', shift: () => NOTHING, free: freedoms(situation) },
      },
    ];
  },
};

const NOTHING: Shift = { east: 0, north: 0, up: 0 };
/** Calibrations shift by decimetres, turn by some arc-seconds and stretch by tens of ppm (common practice). */
const SHIFTED = 0.2;
const TURNED = 2e-5;
const STRETCHED = 2e-5;

function freedoms(situation: Situation): Freedom[] {
  const turned: Freedom = (check) => {
    const { east, north } = fromBase(check, situation);
    return { east: -north * TURNED, north: east * TURNED, up: 0 };
  };
  const stretched: Freedom = (check) => {
    const { east, north } = fromBase(check, situation);
    return { east: east * STRETCHED, north: north * STRETCHED, up: 0 };
  };
  return [
    () => ({ ...NOTHING, east: SHIFTED }),
    () => ({ ...NOTHING, north: SHIFTED }),
    () => ({ ...NOTHING, up: SHIFTED }),
    turned,
    stretched,
  ];
}

function fromBase({ mark }: CheckValues, { setup }: Situation): Shift {
  const [from, to] = [setup.mark?.located, mark?.located];
  if (!from || isHole(from) || !to || isHole(to)) return NOTHING;
  const at = ({ latitude, longitude }: typeof from) => ({
    latitude: asLatitude(latitude.value),
    longitude: asLongitude(longitude.value),
  });
  const { ellipsoid } = from.system.datum;
  const point = (located: typeof from) =>
    geocentricOf(ellipsoid, { ...at(located), height: ellipsoidalHeight(0) });
  return topocentricBetween(at(from), point(from), point(to));
}
