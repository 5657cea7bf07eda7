/** The checks of a setup that can prove something, in order of time, and whether the setup is over. */
import { keptWith } from '../../grammar/kept-with.ts';
import { isHole } from '../quantities/value.ts';
import type { Derivation } from '../derive/derivation.ts';
import type { CheckValues } from '../derive/check.ts';
import type { SetupValues } from '../derive/setup.ts';
import type { Subject } from './finding.ts';

/** On a known mark other than the base's own. */
export const checksOnMarks = (setup: SetupValues, { derivation }: Subject): CheckValues[] =>
  checksFrom(setup, derivation)
    .filter((check) => check.mark && check.mark !== setup.mark && !isHole(check.mark.located))
    .sort((one, other) => (one.instant ?? 0) - (other.instant ?? 0));

/** All checks made from a setup, in the order of the text. */
export function checksFrom(setup: SetupValues, { checks }: Derivation): readonly CheckValues[] {
  let bySetup = cache.get(checks);
  if (!bySetup) {
    bySetup = groupedBySetup(checks);
    cache.set(checks, bySetup);
  }
  return bySetup.get(setup) ?? [];
}

function groupedBySetup(checks: readonly CheckValues[]): Map<SetupValues | null, CheckValues[]> {
  const groups = new Map<SetupValues | null, CheckValues[]>();
  for (const check of checks) {
    const group = groups.get(check.setup);
    if (group) group.push(check);
    else groups.set(check.setup, [check]);
  }
  return groups;
}
const cache = keptWith<Derivation['checks'], ReadonlyMap<SetupValues | null, readonly CheckValues[]>>();

/** Setups that are over, on marks that are known: before that nothing is missing yet, and without it nothing can be. */
export const provableSetups = ({ derivation }: Subject): SetupValues[] =>
  [...derivation.setups.values()].filter(
    ({ setup, mark }) => setup.until !== null && mark !== null && !isHole(mark.located),
  );
