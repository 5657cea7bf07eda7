/** The controller was told another pole height than the pole was set to. */
import { showLength } from '../quantities/show.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import { numberOf, type Situation } from './situation.ts';
import type { Slip, Way } from './slip.ts';

/** Poles lock at lengths that lie apart by such steps (common practice), metres. */
const STEPS = [
  { step: 0.2, weight: 1 },
  { step: 0.25, weight: 1 },
  { step: 0.5, weight: 1 },
  { step: 0.1, weight: 0.3 },
  { step: 0.3, weight: 0.3 },
  { step: 1, weight: 0.1 },
];

export const roverPole: Slip = {
  name: 'rover-pole',
  code: null,
  prior: 0.15,
  look: 'the length of the pole, and the one in the controller',
  ways: (situation) => rovers(situation).flatMap((rover) => [...noted(rover, situation), ...steps(rover)]),
};

/** By name; null where checks name none. */
function rovers({ setup, derivation }: Situation): (string | null)[] {
  const own = derivation.checks.filter((check) => check.setup === setup);
  return [...new Set(own.map(({ check }) => check.by?.name ?? null))];
}

/** What the notes say the controller was told, where that is not what the pole is. */
function noted(rover: string | null, { setup, derivation }: Situation): Way[] {
  const differs = (check: CheckValues): number => {
    const told = numberOf(check.check.pole?.length);
    const stood = numberOf(check.rover?.pole?.length);
    return check.check.by?.name === rover && told !== null && stood !== null ? told - stood : 0;
  };
  const own = derivation.checks.filter((check) => check.setup === setup);
  const found = own.map(differs).find((difference) => Math.abs(difference) > 0.001);
  if (found === undefined) return [];
  return [
    {
      says: `the controller had a pole ${showLength(Math.abs(found))} ${found > 0 ? 'longer' : 'shorter'} than ${rover ?? 'the rover'} has, as the notes say`,
      weight: 50,
      effect: { on: 'rover', shift: (check) => ({ east: 0, north: 0, up: -differs(check) }) },
    },
  ];
}

/** Told too long, the pole puts the ground too low. */
const steps = (rover: string | null): Way[] =>
  STEPS.flatMap(({ step, weight }) =>
    [-1, 1].map((sign): Way => ({
      says: `the controller had a pole ${showLength(step)} too ${sign > 0 ? 'long' : 'short'}`,
      weight,
      effect: {
        on: 'rover',
        shift: ({ check }) =>
          (check.by?.name ?? null) === rover ? { east: 0, north: 0, up: -sign * step } : null,
      },
    })),
  );
