/** The checks of each setup: all of them, and those that can prove something. */
import { keptWith } from '../../../grammar/kept-with.ts';
import { isHole } from '../../quantities/value.ts';
import type { Derivation } from '../../derive/derivation.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import { remembered } from '../../derive/remembered.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { changedPlaces, valuesOf } from '../../session/each.ts';

/** A setup with all checks made from it, in the order of the text; the same object as long as it has the same ones. */
export interface SetupDay {
  readonly setup: SetupValues;
  readonly checks: readonly CheckValues[];
}

export const setupDays = ({ setups, checks }: Derivation): readonly SetupDay[] =>
  daysOf(valuesOf(setups), checks);

const daysOf = remembered((setups: readonly SetupValues[], checks: readonly CheckValues[]) => {
  const ends = [setups[0], setups[setups.length - 1]].filter((setup) => setup !== undefined);
  const before = ends.map((setup) => kept.get(setup)).find((known) => known !== undefined);
  const days = (before && patchedDays(before, setups, checks)) ?? groupedDays(setups, checks);
  for (const setup of ends) kept.set(setup, { setups, checks, days });
  return days;
});

interface Days {
  readonly setups: readonly SetupValues[];
  readonly checks: readonly CheckValues[];
  readonly days: readonly SetupDay[];
}
/** With the first and the last setup, of which an edit leaves one as it was. */
const kept = keptWith<SetupValues, Days>();

/** After an edit most days are the ones before; null where setups or checks have come or gone. */
function patchedDays(
  before: Days,
  setups: readonly SetupValues[],
  checks: readonly CheckValues[],
): readonly SetupDay[] | null {
  const places = changedPlaces(before.setups, setups);
  const checked = changedPlaces(before.checks, checks);
  if (!places || !checked) return null;
  const touched = new Set(places);
  for (const place of checked)
    for (const [list, check] of [
      [before.setups, before.checks[place]],
      [setups, checks[place]],
    ] as const)
      if (check?.setup) touched.add(list.indexOf(check.setup));
  const days = [...before.days];
  for (const place of touched) {
    const setup = setups[place];
    if (setup) days[place] = { setup, checks: checks.filter((check) => check.setup === setup) };
  }
  return days;
}

function groupedDays(setups: readonly SetupValues[], checks: readonly CheckValues[]): readonly SetupDay[] {
  const bySetup = new Map<SetupValues | null, CheckValues[]>();
  for (const check of checks) {
    const own = bySetup.get(check.setup);
    if (own) own.push(check);
    else bySetup.set(check.setup, [check]);
  }
  return setups.map((setup) => ({ setup, checks: bySetup.get(setup) ?? [] }));
}

/** On a mark other than the base's own of which position or height is known, in order of time. */
export const checksOnMarks = ({ setup, checks }: SetupDay): CheckValues[] =>
  checks
    .filter((check) => check.mark && check.mark !== setup.mark && isKnown(check))
    .sort((one, other) => (one.instant ?? 0) - (other.instant ?? 0));

const isKnown = ({ mark, absent }: CheckValues): boolean =>
  mark !== null && (!isHole(mark.located) || (absent.includes('horizontal') && !absent.includes('up')));

/** The setup is over, on a mark that is known: before that nothing is missing yet, and without it nothing can be. */
export const isProvable = ({ setup: { setup, mark } }: SetupDay): boolean =>
  setup.until !== null && mark !== null && !isHole(mark.located);
