/** A check beyond the tolerance, by no more than chance does somewhere in a day of so many tests. */
import { foundInEach } from '../../session/each.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import { chanceOfDay, testsOf } from '../../derive/checks/together.ts';
import type { Component } from '../../derive/checks/verdict.ts';
import { numberOf } from '../../slips/situation.ts';
import { kind, type Subject } from '../finding.ts';
import { residualPlace, saidResidual } from './residuals.ts';

export const checkMarginal = kind({
  code: 'check/marginal',
  find: ({ derivation }) => marginal(derivation.checks),
  tell: ({ check, beyond }, subject) => {
    const { name } = check.check;
    const on = check.mark?.mark.name ?? 'its mark';
    return {
      severity: isUsual(check, beyond, subject) ? 'information' : 'warning',
      message: `${name} is marginal: ${beyond.map(({ component, size, limit }) => `${saidResidual(component, size)} on ${on} (limit ${showLength(limit)})`).join(', ')}. ${worth(check, beyond, subject)} It decides nothing: occupy ${on} once more.`,
      causes: [`check/${name}`],
      follows: keysOfMarks(check),
    };
  },
});

interface Beyond {
  readonly component: Component;
  readonly size: number;
  readonly limit: number;
}

const marginal = foundInEach((check: CheckValues) => {
  if (check.verdict !== 'marginal') return [];
  const beyond = (['horizontal', 'up'] as const).flatMap((component): Beyond[] => {
    const [size, limit] = [numberOf(check.residual[component]), check.tolerance[component]];
    if (check.judged[component] !== 'marginal' || size === null || isHole(limit)) return [];
    return [{ component, size, limit: limit.value }];
  });
  return [{ check, beyond, place: residualPlace(check) }];
});

/** How often a day without mistakes shows as much; null where nobody can say. */
function rarestOf(check: CheckValues, beyond: readonly Beyond[], { derivation }: Subject): number | null {
  const tests = testsOf(derivation.checks);
  const chances = beyond.flatMap(({ component }) => chanceOfDay(check, component, tests) ?? []);
  return chances.length === 0 ? null : Math.min(...chances);
}

/** What one in twenty clean days or more would show is no reason for a warning, which people would stop reading. */
const isUsual = (check: CheckValues, beyond: readonly Beyond[], subject: Subject) =>
  (rarestOf(check, beyond, subject) ?? 0) > USUAL;
const USUAL = 0.05;

function worth(check: CheckValues, beyond: readonly Beyond[], subject: Subject): string {
  const rarest = rarestOf(check, beyond, subject);
  if (rarest === null) return 'Chance may do as much.';
  const often = rarest > 0.5 ? 'More than half of' : `One in ${String(Math.max(2, Math.round(1 / rarest)))}`;
  return `${often} such days without any mistake show as much.`;
}

const keysOfMarks = ({ setup, mark }: CheckValues): string[] =>
  [setup?.mark, mark].flatMap((known) =>
    known ? [`mark/${known.mark.name}/position`, `mark/${known.mark.name}/height`] : [],
  );
