/** The controller works at ground scale, about the base or about the grid's origin, where its coordinates were read as grid ones. */
import { isHole } from '../quantities/value.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import { placeOf } from './grid-told.ts';
import { numberOf, type Situation } from './situation.ts';
import type { Freedom, Shift, Slip, Way } from './slip.ts';
import { shownAside } from './shown.ts';

export const roverScale: Slip = {
  name: 'rover-scale',
  code: null,
  prior: 0.03,
  look: 'the scale factor in the controller',
  ways: (situation) => {
    const { setup, derivation } = situation;
    const h = numberOf(setup.tell.ellipsoidalHeight);
    const combined = numberOf(setup.mark?.combinedScale);
    const base = setup.mark;
    if (!base || h === null) return [];
    const noted = derivation.checks.flatMap((check) =>
      check.setup === setup ? (numberOf(check.rover?.scale) ?? []) : [],
    )[0];
    const factors = [
      {
        says: 'at ground scale',
        excess: h / MEAN_RADIUS,
        spread: (0.01 * Math.abs(h)) / MEAN_RADIUS,
        weight: 1,
      },
      ...(combined === null
        ? []
        : [
            {
              says: 'at the scale that takes the grid to the ground',
              excess: 1 / combined - 1,
              spread: 1e-7,
              weight: 1,
            },
          ]),
      ...(noted === undefined || noted === 1
        ? []
        : [{ says: 'at the scale that the notes have', excess: noted - 1, spread: 1e-8, weight: 20 }]),
    ];
    const centres = [
      { says: 'about the base', east: numberOf(base.east), north: numberOf(base.north) },
      { says: 'about the origin of the grid', east: 0, north: 0 },
    ];
    return factors.flatMap(({ says, excess, spread, weight }) =>
      centres.flatMap((centre) =>
        centre.east === null || centre.north === null
          ? []
          : [
              way(
                `the controller worked ${says} ${centre.says}`,
                { east: centre.east, north: centre.north },
                excess,
                spread,
                weight,
                situation,
              ),
            ],
      ),
    );
  },
};

/** Metres. */
const MEAN_RADIUS = 6_371_000;

interface Centre {
  readonly east: number;
  readonly north: number;
}

function way(
  says: string,
  centre: Centre,
  excess: number,
  spread: number,
  weight: number,
  situation: Situation,
): Way {
  const free: Freedom = (check) => {
    const more = scaled(check, centre, excess + spread, situation);
    const less = scaled(check, centre, excess - spread, situation);
    if (!more || !less) return { east: 0, north: 0, up: 0 };
    return { east: (more.east - less.east) / 2, north: (more.north - less.north) / 2, up: 0 };
  };
  return {
    says,
    weight,
    effect: { on: 'rover', shift: (check) => scaled(check, centre, excess, situation), free: [free] },
  };
}

/** What a check shows when the controller stretches the grid about a centre. */
function scaled(check: CheckValues, centre: Centre, excess: number, { frame }: Situation): Shift | null {
  const { mark } = check;
  const east = mark ? numberOf(mark.east) : null;
  const north = mark ? numberOf(mark.north) : null;
  if (
    check.check.observed?.position?.form !== 'grid' ||
    isHole(frame.grid) ||
    east === null ||
    north === null
  )
    return null;
  const place = placeOf(
    frame.grid,
    east + (east - centre.east) * excess,
    north + (north - centre.north) * excess,
  );
  return place && shownAside(check, place);
}
