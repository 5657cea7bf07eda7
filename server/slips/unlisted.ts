/** What else may have happened: nothing at all, an error of the base that no habit explains, a mark that moved, one bad check. */
import type { MarkValues } from '../derive/marks/mark.ts';
import { unknownBending } from './bending.ts';
import { inRows, type Evidence } from './observed-checks.ts';
import { fitOf, logSum } from './likelihood.ts';
import type { Shift } from './slip.ts';
import { largestOf } from '../quantities/extremes.ts';

/** Which of the four it is nobody can say before the checks are seen: each is taken to be as likely as the others. */
const SHARE = 0.25;
/** Standard deviations of each component that an unlisted error may have, metres; all equally likely. */
const SIZES = [0.02, 0.06, 0.2, 0.6, 2];
const LARGE = [10, 50, 300, 2e3, 2e4, 2e5, 2e6, 1e7];

/** The logarithm of the density of the residuals if none of the known slips was made. */
export function logOfNone({ rows, residuals, noise, noiseWith }: Evidence): number {
  const largest = largestOf(residuals.map(Math.abs));
  const sizes = [...SIZES, ...LARGE.filter((size) => size < 100 * Math.max(1, largest))];
  const checks = [...new Set(rows.map(({ check }) => check))];
  const marks = [...new Set(checks.map(({ mark }) => mark))];
  const zero = residuals.map(() => 0);
  const vector = (size: number, applies: (check: (typeof checks)[number]) => boolean) =>
    (['east', 'north', 'up'] as const).map((axis) =>
      inRows(rows, (check) => (applies(check) ? { ...NOTHING, [axis]: size } : null)),
    );
  const logs = [Math.log(SHARE) + fitOf(residuals, zero, [], noise).log];
  const add = (
    share: number,
    size: number,
    applies: (check: (typeof checks)[number]) => boolean,
    bends: boolean,
  ) => {
    const here = bends && size >= 5 ? noiseWith(unknownBending(size)) : noise;
    logs.push(Math.log(share) + fitOf(residuals, zero, vector(size, applies), here).log);
  };
  for (const size of sizes) add(SHARE / sizes.length, size, () => true, true);
  if (marks.length > 1)
    for (const size of SIZES)
      for (const mark of marks)
        add(
          (soundness(mark) * SHARE) / marks.length / SIZES.length,
          size,
          (check) => check.mark === mark,
          false,
        );
  if (checks.length > 1)
    for (const size of SIZES)
      for (const one of checks)
        add(SHARE / checks.length / SIZES.length, size, (check) => check === one, false);
  return logSum(logs);
}

/** Standard deviations of an unlisted error of heights alone, metres, the large ones more often. */
const UP_SIZES = [
  { size: 0.1, share: 0.2 },
  { size: 0.4, share: 0.3 },
  { size: 2, share: 0.5 },
];

/** The same where heights alone are wrong, by an amount that no habit explains: a tape read wrongly, a height of another day. */
export function logOfHeightAlone({ rows, residuals, noise }: Evidence): number {
  const zero = residuals.map(() => 0);
  return logSum(
    UP_SIZES.map(({ size, share }) => {
      const up = inRows(rows, () => ({ ...NOTHING, up: size }));
      return Math.log(share) + fitOf(residuals, zero, [up], noise).log;
    }),
  );
}

/** A mark that was looked at and found intact has hardly moved; what its register says may still be wrong (judgement, not measured). */
const soundness = (mark: MarkValues | null): number => (mark?.mark.found?.name === 'intact' ? 0.2 : 1);

const NOTHING: Shift = { east: 0, north: 0, up: 0 };
