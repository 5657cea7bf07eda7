/** The pole's height is not entered at all, or is taken off twice: once by the controller, once by hand or by another setting. */
import { showLength } from '../quantities/show.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import { numberOf, type Situation } from './situation.ts';
import type { Slip, Way } from './slip.ts';

export const poleLeftOut: Slip = {
  name: 'pole-left-out',
  code: null,
  prior: 0.08,
  look: 'the pole height in the controller, which may be 0',
  ways: (situation) =>
    poles(situation).map(({ rover, pole }) =>
      lifted(rover, pole, `the pole of ${showLength(pole)} was not entered in the controller`),
    ),
};

export const poleTwice: Slip = {
  name: 'pole-twice',
  code: null,
  prior: 0.04,
  look: 'whether the heights shown are those of the ground already',
  ways: (situation) =>
    poles(situation).map(({ rover, pole }) =>
      lifted(rover, -pole, `the pole of ${showLength(pole)} was taken off twice`),
    ),
};

/** Of each rover that made a check here, the pole that the notes give it. */
function poles({ setup, derivation }: Situation): { rover: string; pole: number }[] {
  const known = new Map<string, number>();
  for (const check of derivation.checks) {
    const pole = numberOf(check.rover?.pole?.length);
    const name = check.check.by?.name;
    if (check.setup === setup && name !== undefined && pole !== null && pole > 0) known.set(name, pole);
  }
  return [...known].map(([rover, pole]) => ({ rover, pole }));
}

const lifted = (rover: string, up: number, says: string): Way => ({
  says,
  effect: {
    on: 'rover',
    shift: ({ check }: CheckValues) => (check.by?.name === rover ? { east: 0, north: 0, up } : null),
  },
});
