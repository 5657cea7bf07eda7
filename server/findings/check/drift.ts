/** Checks that pass and still show that the base has moved between them, by more than two occupations differ by. */
import { normalHalfWidth, circularRadius } from '../../quantities/statistics.ts';
import { showLength } from '../../quantities/show.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import { LONG_TAILS } from '../../derive/checks/verdict.ts';
import { excessOf } from '../../derive/trust/drift.ts';
import { dayFacts, trustOf } from '../../derive/trust/trust.ts';
import type { Movement } from '../../derive/trust/movement.ts';
import { numberOf } from '../../slips/situation.ts';
import { kind, type Subject } from '../finding.ts';
import { residualPlace } from './residuals.ts';

interface Found {
  readonly movement: Movement;
  /** How many times what one comparison stays within must be exceeded among so many. */
  readonly widened: { readonly horizontal: number; readonly up: number };
  readonly place: ReturnType<typeof residualPlace>;
}

export const checkDrift = kind<Found>({
  code: 'check/drift',
  find: (subject) => drifts(subject),
  tell: ({ movement: { from, to, horizontal, up, budget }, widened }) => {
    const limit = (of: 'horizontal' | 'up') => (numberOf(budget[of]) ?? Infinity) * widened[of];
    const parts = [
      moved(numberOf(horizontal), limit('horizontal'), 'horizontally'),
      moved(numberOf(up), limit('up'), 'in height'),
    ].filter((part) => part !== null);
    const base = to.setup?.setup.name ?? 'The base';
    return {
      severity: 'warning',
      headline: `${base} moved ${parts.map(({ size }) => size).join(' and ')} between ${from.check.name} and ${to.check.name}.`,
      effect: `Neither fails, but occupations of one mark agree within ${parts.map(({ chance }) => chance).join(' and ')}. Points between are not bracketed.`,
      action: 'Look at the tripod and its plummet.',
      rests: [{ message: 'The earlier check.', place: residualPlace(from) }],
      ...(to.setup ? { follows: [`moved/${to.setup.setup.name}`] } : {}),
    };
  },
});

function moved(size: number | null, limit: number, direction: string) {
  if (size === null || Math.abs(size) <= limit) return null;
  return { size: `${showLength(Math.abs(size))} ${direction}`, chance: showLength(limit) };
}

/** For each check the farthest movement that ends in it and that chance does not allow among all tests of the day. */
function drifts({ session, derivation }: Subject): Found[] {
  if (derivation.checks.length < 2) return [];
  const { each, frame } = dayFacts(session, derivation);
  const { value: confidence } = frame.confidence;
  const widened = {
    horizontal: (LONG_TAILS * circularRadius(each)) / circularRadius(confidence),
    up: (LONG_TAILS * normalHalfWidth(each)) / normalHalfWidth(confidence),
  };
  const worst = new Map<CheckValues, Movement>();
  for (const { drifts: own } of trustOf(session, derivation).rovers)
    for (const { by } of own) {
      if (!('movement' in by)) continue;
      const { to } = by.movement;
      const known = worst.get(to);
      const excess = (movement: Movement) => Math.max(...Object.values(excessOf(movement, each, frame)));
      if (!known || excess(by.movement) > excess(known)) worst.set(to, by.movement);
    }
  return [...worst.values()].map((movement) => ({ movement, widened, place: residualPlace(movement.to) }));
}
