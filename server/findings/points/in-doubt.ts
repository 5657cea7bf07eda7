/** Points between a failing check and the nearest one that passed. */
import { allOf } from '../../quantities/show.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import { pointCounts } from '../../derive/repair/points-counts.ts';
import type { PointSet } from '../../derive/points/points.ts';
import { repairOf } from '../../derive/repair/repair.ts';
import type { Drift } from '../../derive/trust/drift.ts';
import { driftInWords } from '../../derive/trust/words.ts';
import { dayFacts, trustOf, type Trust } from '../../derive/trust/trust.ts';
import { residualPlace } from '../check/residuals.ts';
import { kind, type Subject } from '../finding.ts';
import { short } from '../words.ts';

interface InDoubt {
  readonly place: Place;
  readonly set: PointSet;
  readonly count: number;
  readonly total: number;
  readonly failing: readonly CheckValues[];
  /** What moved, where something did. */
  readonly drift: Drift | null;
  /** Something is known to take off. */
  readonly repairable: boolean;
}

export const pointsInDoubt = kind({
  code: 'points/in-doubt',
  find: (subject) => inDoubt(subject),
  tell: ({ set, count, total, failing, drift, repairable }, { session }) => ({
    severity: 'warning',
    headline: `${told(set, count, total)} in doubt${failing.length > 0 ? `: ${allOf(names(failing))} failed` : ''}.`,
    effect: drift && failing.length === 0 ? `${driftInWords(drift, session.job)}.` : '',
    action: repairable
      ? 'Do not use them as they are: `tribrach points` repairs them and says how good they are.'
      : '',
    untilExplained: repairable
      ? ''
      : 'Use none before the cause is known, or measure some again from a checked base.',
    rests: failing
      .slice(0, 3)
      .map((check) => ({ message: `${check.check.name} failed.`, place: residualPlace(check) })),
    follows: failing.map(({ check }) => `check/${check.name}`),
  }),
});

function inDoubt(subject: Subject): InDoubt[] {
  const { session, derivation } = subject;
  if (derivation.points.length === 0) return [];
  const trust = trustOf(session, derivation);
  const doubtful = trust.rovers.some(({ spans }) => spans.some((span) => span.class === 'in-doubt'));
  if (!doubtful) return [];
  const repair = repairOf(dayFacts(session, derivation), trust, []);
  return derivation.points.flatMap((set): InDoubt[] => {
    const counts = pointCounts(set, session, derivation, trust);
    const count = counts.classes['in-doubt'];
    if (count === 0) return [];
    const failing = failingOf(set, trust);
    const [drift = null] = trust.rovers
      .filter(({ setup }) => isOf(set, setup.setup.name))
      .flatMap(({ spans }) => spans.flatMap((span) => (span.class === 'in-doubt' ? span.drifts : [])));
    const repairable = repair.remedies.some(({ setup }) => isOf(set, setup.setup.name));
    return [{ place: set.placeOf(1), set, count, total: counts.total, failing, drift, repairable }];
  });
}

const isOf = ({ entry }: PointSet, setup: string) => entry.from === null || entry.from.name === setup;

function failingOf(set: PointSet, trust: Trust): CheckValues[] {
  const checks = trust.rovers
    .filter(({ setup }) => isOf(set, setup.setup.name))
    .filter(({ rover }) => set.entry.by === null || rover === null || rover === set.entry.by.name)
    .flatMap(({ checks: own }) => own);
  return [...new Set(checks.filter(({ verdict, weak }) => verdict === 'fails' && !weak))];
}

function names(failing: readonly CheckValues[]): string[] {
  const all = failing.map(({ check }) => check.name);
  return all.length > 3 ? [...all.slice(0, 2), `${all.length - 2} more`] : all;
}

function told(set: PointSet, count: number, total: number): string {
  if (set.kind === 'point') return `${set.name} is`;
  const of = set.kind === 'file' ? ` of ${short(set.name)}` : '';
  return `${count} of ${total} points${of} ${count === 1 ? 'is' : 'are'}`;
}
