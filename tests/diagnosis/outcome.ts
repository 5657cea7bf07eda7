/** What leaves the program and what somebody relies on: the numbers to key, the points, and what the day is worth. */
import type { Inspection } from '../../server/inspect.ts';
import { isHole, type Maybe, type Value } from '../../server/quantities/value.ts';
import { sessionRepair } from '../../server/record/points/repair.ts';
import { decides } from '../../server/derive/checks/together.ts';

/** By name; a number differs from another when it lies farther off than its own uncertainty at 95 %. */
export type Outcome = ReadonlyMap<string, Result>;
type Result = { readonly word: string } | { readonly number: number; readonly within: number };

export function outcomeOf({ session, derivation }: Inspection): Outcome {
  const found = new Map<string, Result>();
  for (const { setup, tell } of derivation.setups.values())
    for (const [part, value] of Object.entries(tell))
      if (isValueOrHole(value)) found.set(`tell ${setup.name} ${part}`, ofValue(value));
  const repair = sessionRepair(session, derivation);
  found.set('day', { word: repair.trust.day });
  for (const { check, verdict, ...rest } of derivation.checks) {
    const counts = verdict === 'passes' && decides({ check, verdict, ...rest });
    found.set(`check ${check.name}`, {
      word: `${verdict ?? 'no verdict'}, ${counts ? 'counts' : 'does not'}`,
    });
  }
  for (const { by, setup, rover, from, size, reference } of repair.repair.remedies)
    for (const axis of ['east', 'north', 'up'] as const)
      found.set(`shift ${setup.setup.name} ${rover ?? 'all'} ${by} ${String(from)} ${axis}`, {
        number: size[axis],
        // What the points stand on is no better known than this.
        within: Math.max(ROUNDED, 1.96 * ((axis === 'up' ? reference.up : reference.axis) ?? 0)),
      });
  for (const set of derivation.points) {
    const repaired = repair.repairer(set);
    const facts = set.read((row) => {
      const point = repaired(row);
      const name = `point ${row.name ?? String(row.line)}`;
      found.set(`${name} class`, { word: point.fate.asRepaired });
      const of = (number: number, within: number | null) => ({ number, within: within ?? 0.05 });
      found.set(`${name} first`, of(point.first, point.horizontal));
      found.set(`${name} second`, of(point.second, point.horizontal));
      found.set(`${name} third`, of(point.third, point.up));
    });
    if ('refused' in facts) found.set(`points ${set.name}`, { word: facts.refused });
  }
  return found;
}

/** The names of what differs; what neither has is the same, and a shift that is not made is one of nothing. */
export function differing(before: Outcome, after: Outcome): string[] {
  return [...new Set([...before.keys(), ...after.keys()])].filter((name) => {
    const [found, changed] = [before.get(name), after.get(name)];
    const one = found ?? unmade(name, changed);
    const other = changed ?? unmade(name, found);
    if (!one || !other || 'word' in one || 'word' in other)
      return !(one && other && 'word' in one && 'word' in other && one.word === other.word);
    if (Number.isNaN(one.number) && Number.isNaN(other.number)) return false;
    return !(Math.abs(one.number - other.number) <= one.within);
  });
}

const unmade = (name: string, made: Result | undefined): Result | undefined =>
  made && 'number' in made && name.startsWith('shift ') ? { number: 0, within: made.within } : undefined;

const METRES_IN_A_DEGREE = 111_320;
/** What a receiver's display rounds away, metres. */
const ROUNDED = 0.002;

function ofValue(value: Maybe<Value>): Result {
  if (isHole(value)) return { word: 'missing' };
  const rounded = value.unit === '°' ? ROUNDED / METRES_IN_A_DEGREE : ROUNDED;
  return { number: value.value, within: Math.max(rounded, 1.96 * (value.sigma ?? 0)) };
}

const isValueOrHole = (thing: unknown): thing is Maybe<Value> =>
  isHole(thing) || (typeof thing === 'object' && thing !== null && 'origin' in thing);
