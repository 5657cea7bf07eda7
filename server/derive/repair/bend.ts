/**
 * What a shift leaves behind: a base that broadcasts a wrong position also bends the vectors that are measured from it.
 *
 * The satellites are some 20 000 to 26 000 km away, and the vector is solved from directions as the wrong base would see
 * them: an error δ of the base turns and stretches a vector of length D by about δ/ρ, some 0.03 ppm of D for each metre.
 * A height error stretches the vector and so shows horizontally; a horizontal error tilts it and so shows in height.
 * The numbers are the 95 % levels over simulated satellites above 12° at drawn places and times, solved with the true and
 * with the wrong base, rounded up; nothing of it is taken off, since it depends on the satellites of the hour.
 */
import { toRadians } from '../../geodesy/angles.ts';
import { assumed, type Assumed } from '../../quantities/value.ts';

/** Metres of bending for each metre of base error and each metre of distance. */
const PER_METRE = {
  horizontalByUp: 0.037e-6,
  horizontalByHorizontal: 0.016e-6,
  upByUp: 0.017e-6,
  upByHorizontal: 0.056e-6,
};

/** Beyond this, processing the raw observations again with the right base is worth its while. */
export const BEND_WORTH_PROCESSING = 0.005;

/** Sizes of a base's error, in metres. */
export interface ErrorSize {
  readonly horizontal: number;
  readonly up: number;
}

/** What the bending stays within in 95 % of cases: a radius, and a half-width up. It is added to other bounds, not in squares (JCGM 100:2008, F.2.4.5). */
export function bendBound(error: ErrorSize, distance: number): ErrorSize {
  return {
    horizontal:
      distance * (PER_METRE.horizontalByUp * error.up + PER_METRE.horizontalByHorizontal * error.horizontal),
    up: distance * (PER_METRE.upByUp * error.up + PER_METRE.upByHorizontal * error.horizontal),
  };
}

const because = 'the 95 % level of simulated satellites over drawn places and times';
export const BEND_ASSUMPTIONS: readonly Assumed[] = [
  assumed(
    'bending, horizontal, by each metre of height error',
    0.037,
    '',
    0,
    `${because}, in ppm of the distance`,
  ),
  assumed(
    'bending, up, by each metre of horizontal error',
    0.056,
    '',
    0,
    `${because}, in ppm of the distance`,
  ),
];

/** How much the geoid may rise or fall along a shift where no model tells it: 10″, a usual deflection of the vertical (common practice). */
export const GEOID_SLOPE = assumed(
  'slope of the geoid',
  Math.tan(toRadians(10 / 3600)),
  '',
  0,
  'no model tells how the geoid runs, so 10″ (common practice)',
);
