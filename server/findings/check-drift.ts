/** Checks that pass and still show that the base has moved between them, by more than two occupations differ by. */
import { showLength } from '../quantities/show.ts';
import type { CheckValues } from '../derive/check.ts';
import { isProof } from '../derive/trust.ts';
import { movementBetween, type Movement } from '../derive/trust-movement.ts';
import { normalHalfWidth } from '../quantities/statistics.ts';
import type { Job } from '../session/entries.ts';
import { numberOf } from '../slips/situation.ts';
import { kind, type Subject } from './finding.ts';
import { residualPlace } from './residuals.ts';

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
  const pairs = comparable(derivation.checks, session.job);
  const surely = amongMany(derivation.frame.confidence.value, 2 * pairs.length);
  const worst = new Map<CheckValues, Movement>();
  for (const [from, to] of pairs) {
    const movement = movementBetween(from, to, derivation.frame);
    if (excess(movement) <= surely) continue;
    const known = worst.get(to);
    if (!known || excess(movement) > excess(known)) worst.set(to, movement);
  }
  return [...worst.values()];
}

/** Each check that does not fail with the first and with the last one before it on the same mark, by the same rover. */
function comparable(checks: readonly CheckValues[], job: Job | null): [CheckValues, CheckValues][] {
  const before = new Map<string, CheckValues[]>();
  const pairs: [CheckValues, CheckValues][] = [];
  const usable = checks
    .filter((check) => check.verdict !== 'fails' && check.setup && check.mark && isProof(check, job))
    .sort((one, other) => (one.instant ?? 0) - (other.instant ?? 0));
  for (const check of usable) {
    const { setup, mark, keyed } = check;
    const key = [setup?.setup.name, mark?.mark.name, check.check.by?.name, keyed?.state.number].join(' \n');
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
