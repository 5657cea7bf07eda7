/** Truth-side prediction: how far apart two slips would lie over all checks of a day, by solving it twice without noise. */
import { geoidModel } from './geoid.ts';
import type { Observation, Scene, SceneMark } from './day.ts';
import { liveSilently, pairPrecision } from './day.ts';
import type { Planted } from './planted.ts';
import type { EastNorthUp, Geodetic } from './world.ts';
import { DEGREE, distance, localFrame, subtract, toGeocentric, toLocal } from './world.ts';

/** Observed less published at one check. */
export interface CheckResidual {
  readonly name: string;
  readonly minutes: number;
  readonly mark: SceneMark;
  readonly status: Observation['status'];
  readonly residual: EastNorthUp;
}

/** The residuals of the checks among the observations, from the numbers that the notes would show. */
export function checkResiduals(scene: Scene, observations: readonly Observation[]): readonly CheckResidual[] {
  return observations.flatMap(({ occupation, status, shown }) => {
    const { mark, name, minutes } = occupation;
    if (mark === undefined) return [];
    const { place, orthometric, separation } = mark.published;
    const known = { ...place, height: orthometric + separation };
    const { ellipsoid } = scene.grid;
    const difference = subtract(
      toGeocentric(readPlace(scene, shown), ellipsoid),
      toGeocentric(known, ellipsoid),
    );
    return [{ name, minutes, mark, status, residual: toLocal(difference, localFrame(known)) }];
  });
}

/** The place that a reader of the notes takes the shown numbers for: grid and levelled height, or geographic and ellipsoidal. */
export function readPlace(scene: Scene, shown: Observation['shown']): Geodetic {
  if (scene.form === 'geographic') return shown.geodetic;
  const place = scene.grid.inverse(shown.grid);
  return { ...place, height: shown.height + geoidModel(scene.geoid)(place) };
}

/**
 * The distance between two slips over all checks, in standard deviations of the checks' joint noise; undefined stands
 * for no slip. Infinite where one of them leaves checks without a solution.
 */
export function slipDistance(scene: Scene, first: Planted | undefined, second: Planted | undefined): number {
  const [one, other] = [predictedVectors(scene, first), predictedVectors(scene, second)];
  if (one.length !== other.length) return Infinity;
  return vectorDistance(scene, one, other);
}

/** The predicted residuals of a planted day; compute once and compare many with `vectorDistance`. */
export function predictedVectors(scene: Scene, planted: Planted | undefined): readonly CheckResidual[] {
  return checkResiduals(scene, liveSilently(scene, planted));
}

/** The same distance between predictions that are already there; both must have the same checks. */
export function vectorDistance(
  scene: Scene,
  one: readonly CheckResidual[],
  other: readonly CheckResidual[],
): number {
  const flat = (checks: readonly CheckResidual[]): readonly number[] =>
    checks.flatMap(({ residual }) => [residual.east, residual.north, residual.up]);
  const second = flat(other);
  const difference = flat(one).map((value, index) => value - (second[index] ?? 0));
  return Math.sqrt(squaredLength(residualCovariance(scene, one), difference));
}

/**
 * The joint covariance of check residuals, rows and columns east, north, up of each check in turn; metres squared.
 * Base mark, tape and centring are common to all; a check mark is common to its own checks.
 */
export function residualCovariance(
  scene: Scene,
  checks: readonly CheckResidual[],
): readonly (readonly number[])[] {
  const { noise } = scene;
  const base = {
    horizontal: noise.markHorizontal ** 2 + noise.plummet ** 2,
    up:
      noise.markVertical ** 2 +
      noise.tapeReading ** 2 / 2 +
      noise.tapeCommon ** 2 +
      noise.extension ** 2 +
      noise.phaseCentre ** 2,
  };
  const own = checks.map(({ mark, status }) => {
    const metres = distance(
      toGeocentric(mark.truth, scene.grid.ellipsoid),
      toGeocentric(scene.base.mark, scene.grid.ellipsoid),
    );
    const pair =
      status === 'fixed'
        ? pairPrecision(noise, metres)
        : { horizontal: noise.floatHorizontal, up: noise.floatUp };
    const lean = scene.roverPole * DEGREE * noise.poleTilt;
    return { horizontal: pair.horizontal ** 2 + lean ** 2, up: pair.up ** 2 };
  });
  return checks.flatMap((row, rowIndex) =>
    AXES.map((axis) =>
      checks.flatMap((column, columnIndex) =>
        AXES.map((otherAxis) => {
          if (axis !== otherAxis) return 0;
          const level = axis === 'up' ? 'up' : 'horizontal';
          const mark = level === 'up' ? noise.markVertical : noise.markHorizontal;
          return (
            base[level] +
            (row.mark === column.mark ? mark ** 2 : 0) +
            (rowIndex === columnIndex ? (own[rowIndex]?.[level] ?? 0) : 0)
          );
        }),
      ),
    ),
  );
}

const AXES = ['east', 'north', 'up'] as const;

/** The squared length of a vector in units of its covariance, by Cholesky's factor and forward substitution. */
export function squaredLength(covariance: readonly (readonly number[])[], vector: readonly number[]): number {
  const factor: number[][] = [];
  const whitened: number[] = [];
  covariance.forEach((row, at) => {
    const built: number[] = [];
    for (let column = 0; column <= at; column++) {
      const above = factor[column] ?? built;
      let value = row[column] ?? 0;
      for (let k = 0; k < column; k++) value -= (built[k] ?? 0) * (above[k] ?? 0);
      built.push(column === at ? Math.sqrt(value) : value / (above[column] ?? 1));
    }
    factor.push(built);
    const rest = whitened.reduce((sum, value, k) => sum - value * (built[k] ?? 0), vector[at] ?? 0);
    whitened.push(rest / (built[at] ?? 1));
  });
  return whitened.reduce((sum, value) => sum + value ** 2, 0);
}
