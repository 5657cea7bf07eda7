/** Checks that pass and still show that the base has moved between them, by more than two occupations differ by. */
import { foundInEach } from '../../session/each.ts';
import { showLength } from '../../quantities/show.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import type { Frame } from '../../derive/positions/frame.ts';
import { isProof } from '../../derive/trust/trust.ts';
import { movementBetween, type Movement } from '../../derive/trust/movement.ts';
import { normalHalfWidth } from '../../quantities/statistics.ts';
import type { Job } from '../../session/entries.ts';
import { numberOf } from '../../slips/situation.ts';
import { kind, type Subject } from '../finding.ts';
import { residualPlace } from './residuals.ts';
import { setupDays, type SetupDay } from './setup-checks.ts';

export const checkDrift = kind({
  code: 'check/drift',
  find: (subject) => drifts(subject).map((movement) => ({ movement, place: residualPlace(movement.to) })),
  tell: ({ movement: { from, to, horizontal, up, budget } }) => {
    const parts = [
      moved(numberOf(horizontal), numberOf(budget.horizontal), 'to the side'),
      moved(numberOf(up), numberOf(budget.up), 'in height'),
    ].filter((part) => part !== null);
    return {
      severity: 'warning',
      message: `Between ${from.check.name} and ${to.check.name} the base moved ${parts.join(' and ')}. Both agree with the mark as such, and two occupations of one mark differ less. Look at tripod and plummet; what was measured between the two may be off by as much.`,
      rests: [{ message: 'the earlier check', place: residualPlace(from) }],
      ...(to.setup ? { follows: [`moved/${to.setup.setup.name}`] } : {}),
    };
  },
});

function moved(size: number | null, budget: number | null, direction: string): string | null {
  if (size === null || budget === null || Math.abs(size) <= budget) return null;
  return `${showLength(Math.abs(size))} ${direction}, where ${showLength(budget)} is chance`;
}

/** For each check the farthest movement that ends in it and that chance does not allow among so many comparisons. */
function drifts({ session, derivation }: Subject): Movement[] {
  const compared = comparisons(setupDays(derivation), session.job, derivation.frame);
  const surely = amongMany(derivation.frame.confidence.value, 2 * compared.length);
  const worst = new Map<CheckValues, Compared>();
  for (const one of compared) {
    if (one.excess <= surely) continue;
    const { to } = one.movement;
    if (one.excess > (worst.get(to)?.excess ?? -Infinity)) worst.set(to, one);
  }
  return [...worst.values()].map(({ movement }) => movement);
}

interface Compared {
  readonly movement: Movement;
  readonly excess: number;
}

const comparisons = foundInEach((day: SetupDay, job: Job | null, frame: Frame): Compared[] =>
  comparable(day, job).map(([from, to]) => {
    const movement = movementBetween(from, to, frame);
    return { movement, excess: excess(movement) };
  }),
);

/** Each check that does not fail with the first and with the last one before it on the same mark, by the same rover. */
function comparable({ checks }: SetupDay, job: Job | null): [CheckValues, CheckValues][] {
  const before = new Map<string, CheckValues[]>();
  const pairs: [CheckValues, CheckValues][] = [];
  const usable = checks
    .filter((check) => check.verdict !== 'fails' && check.mark && isProof(check, job))
    .sort((one, other) => (one.instant ?? 0) - (other.instant ?? 0));
  for (const check of usable) {
    const { mark, keyed } = check;
    const key = [mark?.mark.name, check.check.by?.name, keyed?.state.number].join(' \n');
    const earlier = before.get(key) ?? [];
    for (const one of new Set([earlier[0], earlier.at(-1)])) if (one) pairs.push([one, check]);
    before.set(key, [...earlier.slice(0, 1), check]);
  }
  return pairs;
}

/** How many times what one comparison stays within must be exceeded when so many are made (Šidák). */
function amongMany(confidence: number, comparisons: number): number {
  const each = confidence ** (1 / Math.max(1, comparisons));
  return normalHalfWidth(each) / normalHalfWidth(confidence);
}

function excess({ horizontal, up, budget }: Movement): number {
  const ratio = (size: number | null, limit: number | null) =>
    size === null || !limit ? 0 : Math.abs(size) / limit;
  return Math.max(
    ratio(numberOf(horizontal), numberOf(budget.horizontal)),
    ratio(numberOf(up), numberOf(budget.up)),
  );
}
