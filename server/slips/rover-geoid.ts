/** The controller showed ellipsoidal heights where orthometric ones were read, or took off another geoid. */
import { EGM96 } from '../derive/heights/geoid.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { isHole } from '../quantities/value.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import { numberOf } from './situation.ts';
import type { Shift, Slip } from './slip.ts';

export const roverGeoid: Slip = {
  name: 'rover-geoid',
  code: null,
  prior: 0.05,
  look: 'the geoid model in the controller',
  ways: ({ derivation }) => [
    {
      says: 'the controller had no geoid model, and its ellipsoidal heights were read as orthometric ones',
      effect: { on: 'rover', shift: (check) => up(separationAt(check), check) },
    },
    ...(isHole(derivation.geoid) || derivation.geoid.coarse
      ? []
      : [
          {
            says: 'the controller took the separation from EGM96',
            weight: 0.3,
            effect: {
              on: 'rover' as const,
              shift: (check: CheckValues) => up(beyondGlobal(check), check),
              free: [(check: CheckValues) => up(INTERPOLATED, check) ?? NOTHING],
            },
          },
        ]),
  ],
};

const NOTHING: Shift = { east: 0, north: 0, up: 0 };
/** What controllers differ by in how they interpolate the coarse grid (common practice), metres. */
const INTERPOLATED = 0.2;

const separationAt = ({ mark }: CheckValues) => (mark ? numberOf(mark.separation) : null);

function beyondGlobal(check: CheckValues): number | null {
  const published = separationAt(check);
  const located = check.mark?.located;
  if (published === null || !located || isHole(located)) return null;
  const N = EGM96.undulation(located.latitude.value, located.longitude.value);
  return isRefusal(N) ? null : published - N;
}

/** Only heights that were read as orthometric are touched. */
function up(by: number | null, { observed }: CheckValues): Shift | null {
  const { height } = observed;
  if (by === null || isHole(height) || height.surface !== 'orthometric') return null;
  return { ...NOTHING, up: by };
}
