/** The checks that a diagnosis rests on: what is left of their residuals, and the noise that they share and that they do not. */
import { isHole } from '../quantities/value.ts';
import type { CheckValues } from '../derive/check.ts';
import { unknownBending, type Bent } from './bending.ts';
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
}
export interface Row {
  readonly check: CheckValues;
  readonly axis: Axis;
}

const AXES: readonly Axis[] = ['east', 'north', 'up'];

/** Null where no check has a residual. */
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
  const noiseWith = (extra: ((check: CheckValues) => Bent) | null): Noise => {
    const noise = noiseOf(
      covariance(rows, (check) => [explainedLoss(check), ...(extra ? [extra(check)] : [])]),
    );
    if (!noise) throw new Error('every check has noise of its own');
    return noise;
  };
  return rows.length === 0 ? null : { rows, residuals, noise: noiseWith(null), noiseWith };
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
/** A float solution is good to some decimetres, code alone to metres (common practice), metres. */
const UNFIXED: Readonly<Record<string, { horizontal: number; up: number }>> = {
  float: { horizontal: 0.25, up: 0.4 },
  differential: { horizontal: 0.7, up: 1.2 },
  autonomous: { horizontal: 4, up: 8 },
};

/** The base's mark is in all checks alike, a check mark in its own, the rest in each check anew. */
function covariance(rows: readonly Row[], extra: (check: CheckValues) => readonly Bent[]): number[][] {
  return rows.map((row, index) =>
    rows.map((column, other) => {
      if (row.axis !== column.axis) return 0;
      const direction = row.axis === 'up' ? 'up' : 'horizontal';
      const { base, mark } = marksOf(row.check, direction);
      let shared = row.check.setup === column.check.setup ? base ** 2 : 0;
      if (row.check.mark === column.check.mark) shared += mark ** 2;
      if (index === other)
        shared +=
          Math.hypot(own(row.check, direction), ...extra(row.check).map((bent) => bent[direction])) ** 2;
      return shared;
    }),
  );
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
