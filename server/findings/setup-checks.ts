/** The checks of a setup that can prove something, in order of time, and whether the setup is over. */
import { isHole } from '../quantities/value.ts';
import type { CheckValues } from '../derive/check.ts';
import type { SetupValues } from '../derive/setup.ts';
import type { Subject } from './finding.ts';

/** On a known mark other than the base's own. */
export const checksOnMarks = (setup: SetupValues, { derivation }: Subject): CheckValues[] =>
  derivation.checks
    .filter(
      (check) =>
        check.setup === setup && check.mark && check.mark !== setup.mark && !isHole(check.mark.located),
    )
    .sort((one, other) => (one.instant ?? 0) - (other.instant ?? 0));

/** Setups that are over, on marks that are known: before that nothing is missing yet, and without it nothing can be. */
export const provableSetups = ({ derivation }: Subject): SetupValues[] =>
  [...derivation.setups.values()].filter(
    ({ setup, mark }) => setup.until !== null && mark !== null && !isHole(mark.located),
  );
