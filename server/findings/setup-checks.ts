/** The checks of each setup: all of them, and those that can prove something. */
import { isHole } from '../quantities/value.ts';
import type { Derivation } from '../derive/derivation.ts';
import type { CheckValues } from '../derive/check.ts';
import { interned, remembered } from '../derive/remembered.ts';
import type { SetupValues } from '../derive/setup.ts';
import { valuesOf } from '../session/each.ts';

/** A setup with all checks made from it, in the order of the text; the same object as long as it has the same ones. */
export interface SetupDay {
  readonly setup: SetupValues;
  readonly checks: readonly CheckValues[];
}

export const setupDays = ({ setups, checks }: Derivation): readonly SetupDay[] =>
  daysOf(valuesOf(setups), checks);

const daysOf = remembered((setups: readonly SetupValues[], checks: readonly CheckValues[]) => {
  const bySetup = new Map<SetupValues | null, CheckValues[]>();
  for (const check of checks) {
    const own = bySetup.get(check.setup);
    if (own) own.push(check);
    else bySetup.set(check.setup, [check]);
  }
  return setups.map((setup) => dayOf(setup, interned(bySetup.get(setup) ?? [])));
});
const dayOf = remembered((setup: SetupValues, checks: readonly CheckValues[]): SetupDay => ({
  setup,
  checks,
}));

/** On a known mark other than the base's own, in order of time. */
export const checksOnMarks = ({ setup, checks }: SetupDay): CheckValues[] =>
  checks
    .filter((check) => check.mark && check.mark !== setup.mark && !isHole(check.mark.located))
    .sort((one, other) => (one.instant ?? 0) - (other.instant ?? 0));

/** The setup is over, on a mark that is known: before that nothing is missing yet, and without it nothing can be. */
export const isProvable = ({ setup: { setup, mark } }: SetupDay): boolean =>
  setup.until !== null && mark !== null && !isHole(mark.located);
