/** Which marks, setups, checks, streams and radios only one of two versions has, and which only have another name. */
import type { CheckValues } from '../../derive/checks/check.ts';
import { listValues, type Listed } from '../../derive/listing.ts';
import type { Inspection } from '../../inspect.ts';
import { isHole } from '../../quantities/value.ts';

export interface ThingChange {
  /** The first word of its ids: `mark`, `setup`, `check`, `stream`, `link`. */
  readonly kind: string;
  readonly name: string;
  readonly is: 'new' | 'gone' | 'renamed';
  /** What it was called; null where it is not only renamed. */
  readonly was: string | null;
  /** What came of a check; null of anything else. */
  readonly verdict: CheckValues['verdict'] | null;
  /** What its ids begin with, in the version that has it; both, where it is renamed. */
  readonly prefixes: readonly string[];
}

interface Thing {
  readonly kind: string;
  readonly name: string;
  readonly prefix: string;
  readonly values: readonly Listed[];
}

/** Whether two values of one id show as the same. */
type IsSame = (before: Listed, after: Listed) => boolean;

export function thingChanges(before: Inspection, after: Inspection, isSame: IsSame): ThingChange[] {
  const then = thingsOf(before);
  const now = thingsOf(after);
  const gone = [...then.values()].filter(({ prefix }) => !now.has(prefix));
  const come = [...now.values()].filter(({ prefix }) => !then.has(prefix));
  const renamed = new Map<Thing, Thing>();
  for (const thing of come) {
    const old = gone.find((one) => ![...renamed.values()].includes(one) && isRenamed(one, thing, isSame));
    if (old) renamed.set(thing, old);
  }
  const old = new Set(renamed.values());
  return [
    ...come.map((thing) => change(thing, renamed.get(thing) ?? null, 'new', after)),
    ...gone.filter((thing) => !old.has(thing)).map((thing) => change(thing, null, 'gone', before)),
  ];
}

function change(
  thing: Thing,
  old: Thing | null,
  is: 'new' | 'gone',
  { derivation }: Inspection,
): ThingChange {
  const { kind, name, prefix } = thing;
  const check = kind === 'check' ? derivation.checks.find((values) => values.check.name === name) : undefined;
  return {
    kind,
    name,
    is: old ? 'renamed' : is,
    was: old?.name ?? null,
    verdict: check?.verdict ?? null,
    prefixes: old ? [prefix, old.prefix] : [prefix],
  };
}

function thingsOf({ derivation }: Inspection): Map<string, Thing> {
  const groups = new Map<string, Listed[]>();
  for (const listed of listValues(derivation)) {
    const prefix = listed.id.split('/', 2).join('/');
    const group = groups.get(prefix);
    if (group) group.push(listed);
    else groups.set(prefix, [listed]);
  }
  return new Map(
    [...groups].map(([prefix, values]) => {
      const [kind = '', name = ''] = prefix.split('/');
      return [prefix, { kind, name: decodeURIComponent(name), prefix, values }];
    }),
  );
}

/** All that is known of the one is known of the other, and shows the same. */
function isRenamed(old: Thing, thing: Thing, isSame: IsSame): boolean {
  if (old.kind !== thing.kind || old.values.length !== thing.values.length) return false;
  const part = ({ prefix }: Thing, { id }: Listed) => id.slice(prefix.length);
  return (
    thing.values.some(({ value }) => !isHole(value)) &&
    thing.values.every((value, index) => {
      const other = old.values[index];
      return other !== undefined && part(old, other) === part(thing, value) && isSame(other, value);
    })
  );
}
