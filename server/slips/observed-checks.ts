/** The checks that a diagnosis rests on: what is left of their residuals, and the noise that they share and that they do not. */
import { isHole } from '../quantities/value.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import { UNFIXED } from '../derive/checks/quality.ts';
import { leftOfBending, unknownBending, type Bent } from './bending.ts';
import { noiseOf, type Noise } from './likelihood.ts';
import { numberOf } from './situation.ts';
import type { Shift } from './slip.ts';

export type Axis = 'east' | 'north' | 'up';

export interface Evidence {
  readonly rows: readonly Row[];
  /** Observed minus known, less what a keyed difference explains; metres, in the order of the rows. */
  readonly residuals: readonly number[];
  readonly noise: Noise;
  /** The same with something more in each check: what large errors of the base do to its vectors. */
  readonly noiseWith: (extra: (check: CheckValues) => Bent) => Noise;
  /** The same with what an error of the base of this size, in metres, leaves when its bending has been followed up. */
  readonly noiseAfter: (size: number) => Noise;
  /** What the checks show at most, and the largest standard deviation of a component; null without such a component. */
  readonly most: Readonly<
    Record<'horizontal' | 'up', { readonly shown: number; readonly sigma: number } | null>
  >;
}
export interface Row {
  readonly check: CheckValues;
  readonly axis: Axis;
}

const AXES: readonly Axis[] = ['east', 'north', 'up'];

/** Null where no check has a residual, or where the noise is too uneven to compare anything with it. */
export function evidenceOf(checks: readonly CheckValues[]): Evidence | null {
  const rows: Row[] = [];
  const residuals: number[] = [];
  for (const check of checks)
    for (const axis of AXES) {
      const residual = numberOf(check.residual[axis]);
      if (residual === null || !Number.isFinite(residual)) continue;
      rows.push({ check, axis });
      residuals.push(residual - (numberOf(check.explained[axis]) ?? 0));
    }
  if (rows.length === 0) return null;
  const covariance = covarianceOf(rows);
  const noise = noiseOf(covariance(null));
  if (!noise) return null;
  const noiseOfAll = (extra: (check: CheckValues) => Bent): Noise => noiseOf(covariance(extra)) ?? noise;
  const known = new Map<number, Noise>();
  const noiseAfter = (size: number): Noise => {
    const noise = known.get(size) ?? noiseOfAll(leftOfBending(size));
    known.set(size, noise);
    return noise;
  };
  const sigmas = covariance(null).map((line, index) => Math.sqrt(line[index] ?? NaN));
  const most = (wanted: 'horizontal' | 'up') => {
    const own = [...rows.keys()].filter((index) => (rows[index]?.axis === 'up') === (wanted === 'up'));
    if (own.length === 0) return null;
    const largest = (of: readonly number[]) => Math.max(...own.map((index) => Math.abs(of[index] ?? 0)));
    return { shown: largest(residuals), sigma: largest(sigmas) };
  };
  return {
    rows,
    residuals,
    noise,
    noiseWith: noiseOfAll,
    noiseAfter,
    most: { horizontal: most('horizontal'), up: most('up') },
  };
}

/** A vector at each check, in the order of the rows. */
export const inRows = (rows: readonly Row[], shift: (check: CheckValues) => Shift | null): number[] => {
  const known = new Map<CheckValues, Shift | null>();
  return rows.map(({ check, axis }) => {
    if (!known.has(check)) known.set(check, shift(check));
    return known.get(check)?.[axis] ?? 0;
  });
};

function explainedLoss(check: CheckValues): Bent {
  const parts = AXES.map((axis) => numberOf(check.explained[axis]) ?? 0);
  return unknownBending(Math.hypot(...parts))(check);
}

/** Marks without a stated uncertainty are taken to be good to this (common practice), metres. */
const MARK = { horizontal: 0.01, up: 0.015 };
/**
 * The base's mark is in all checks alike, a check mark in its own, the rest in each check anew; only that rest is
 * another one with something more in each check.
 */
function covarianceOf(rows: readonly Row[]): (extra: ((check: CheckValues) => Bent) | null) => number[][] {
  const direction = ({ axis }: Row) => (axis === 'up' ? 'up' : 'horizontal');
  const shared = rows.map((row) => {
    const { base, mark } = marksOf(row.check, direction(row));
    return rows.map((column) => {
      if (row.axis !== column.axis) return 0;
      const common = row.check.setup === column.check.setup ? base ** 2 : 0;
      return row.check.mark === column.check.mark ? common + mark ** 2 : common;
    });
  });
  const owns = rows.map((row) => [own(row.check, direction(row)), explainedLoss(row.check)[direction(row)]]);
  return (extra) =>
    shared.map((line, index) => {
      const row = rows[index] as Row;
      const more = extra ? [extra(row.check)[direction(row)]] : [];
      return line.with(index, (line[index] ?? 0) + Math.hypot(...(owns[index] ?? []), ...more) ** 2);
    });
}

function own({ quality, occupation }: CheckValues, direction: 'horizontal' | 'up'): number {
  const usual = occupation
    ? direction === 'up'
      ? occupation.up.value
      : occupation.axis.value
    : { horizontal: 0.01, up: 0.02 }[direction];
  const unfixed = UNFIXED[quality?.solution?.name ?? 'fixed']?.[direction] ?? 0;
  // A residual is printed to the millimetre.
  return Math.hypot(usual, unfixed, 0.0005);
}

/** What is stated of marks relative to one another counts in full at the check, where both are of one source. */
function marksOf({ mark, setup }: CheckValues, direction: 'horizontal' | 'up') {
  const base = setup?.mark ?? null;
  const stated = (one: typeof base) =>
    (direction === 'up' ? one?.sigmaVertical : one?.sigmaHorizontal) ?? MARK[direction];
  const relative = mark?.mark.relative?.[direction === 'up' ? 'vertical' : 'horizontal'];
  const oneSource = base?.mark.source && base.mark.source.text === mark?.mark.source?.text;
  if (relative && oneSource && !isHole(relative.constant) && relative.confidence === null)
    return { base: 0, mark: Math.abs(relative.constant.value) };
  return { base: stated(base), mark: stated(mark) };
}
