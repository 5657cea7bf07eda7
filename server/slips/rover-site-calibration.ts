/** The controller works with the site calibration of another job: shifted, turned and stretched. */
import { vectorTo } from './bending.ts';
import type { Situation } from './situation.ts';
import type { Freedom, Shift, Slip, Way } from './slip.ts';

export const roverSiteCalibration: Slip = {
  name: 'rover-site-calibration',
  code: null,
  prior: 0.03,
  look: 'whether a site calibration is set in the controller',
  ways: (situation) => {
    const noted = situation.derivation.checks.some(
      ({ setup, rover }) => setup === situation.setup && rover?.siteCalibration?.name === 'none',
    );
    return SHIFTED.map((shifted): Way => ({
      says: 'the controller worked with the site calibration of another job',
      weight: noted ? 0.3 : 1,
      effect: { on: 'rover', shift: () => NOTHING, free: freedoms(shifted, situation) },
    }));
  },
};

const NOTHING: Shift = { east: 0, north: 0, up: 0 };
/** Calibrations shift by centimetres or decimetres, turn by some arc-seconds and stretch by tens of ppm (common practice). */
const SHIFTED = [0.05, 0.2];
const TURNED = 2e-5;
const STRETCHED = 2e-5;

function freedoms(shifted: number, { setup }: Situation): Freedom[] {
  const turned: Freedom = (check) => {
    const { east, north } = vectorTo(check, setup);
    return { east: -north * TURNED, north: east * TURNED, up: 0 };
  };
  const stretched: Freedom = (check) => {
    const { east, north } = vectorTo(check, setup);
    return { east: east * STRETCHED, north: north * STRETCHED, up: 0 };
  };
  return [
    () => ({ ...NOTHING, east: shifted }),
    () => ({ ...NOTHING, north: shifted }),
    () => ({ ...NOTHING, up: shifted }),
    turned,
    stretched,
  ];
}
