/** Whether the checks of a base look as if it had been moved: they agree up to a time, and from then on all are off alike. */
import type { CheckValues } from '../derive/checks/check.ts';
import { numberOf } from './situation.ts';

export interface Parted {
  /** The last that agrees. */
  readonly before: CheckValues;
  /** The first that fails. */
  readonly after: CheckValues;
}

/** A tripod that still stands has not been moved by more than this (common practice), metres. */
const FARTHEST = 2;

export function partedBy(checks: readonly CheckValues[]): Parted | null {
  const judged = checks.filter(({ verdict }) => verdict !== 'undecided');
  if (judged.some(({ instant }) => instant === null)) return null;
  const inOrder = judged.toSorted((one, other) => (one.instant ?? 0) - (other.instant ?? 0));
  const first = inOrder.findIndex(({ verdict }) => verdict === 'fails');
  const [before, after] = [inOrder[first - 1], inOrder[first]];
  if (!before || !after || before.instant === after.instant) return null;
  const failing = inOrder.slice(first);
  const alike = failing.every((one) => one.verdict === 'fails' && isAlike(one, after));
  return alike && size(leftOf(after)) <= FARTHEST ? { before, after } : null;
}

/** What the notes do not explain: east, north, up; metres. */
const leftOf = ({ residual, explained }: CheckValues): number[] =>
  (['east', 'north', 'up'] as const).map(
    (axis) => (numberOf(residual[axis]) ?? 0) - (numberOf(explained[axis]) ?? 0),
  );

const size = (vector: readonly number[]) => Math.hypot(...vector);

/** A base that was moved once takes all that is measured from it along by the same vector. */
function isAlike(one: CheckValues, other: CheckValues): boolean {
  const room = (of: 'horizontal' | 'up') =>
    Math.hypot(...[one, other].map(({ expected }) => numberOf(expected[of]) ?? Infinity));
  const [a, b] = [leftOf(one), leftOf(other)];
  const [east = 0, north = 0, up = 0] = a.map((part, index) => part - (b[index] ?? 0));
  return Math.hypot(east, north) <= room('horizontal') && Math.abs(up) <= room('up');
}
