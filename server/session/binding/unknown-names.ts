/** Names that nothing answers to, with what they may have meant. */
import { datumNamed } from '../../geodesy/registry/registry.ts';
import { nearest } from '../../quantities/near.ts';
import type { Named } from '../coordinates.ts';
import { foundInEach } from '../each.ts';
import type { Bound } from '../entries.ts';
import type { NamedKind, Remark } from '../remark.ts';

/** What names can stand for, by kind. */
export type Names = Readonly<Partial<Record<NamedKind, ReadonlyMap<string, unknown>>>>;

/** Near names are looked for this often: each search looks at every name, and nobody reads more of them. */
const SUGGESTED = 100;

/** @param names what is known by name; the same object as long as no name comes or goes */
export function unknownNames(entries: readonly Bound[], names: Names): Remark[] {
  const unknown = unknownIn(entries, names).toSorted((one, other) => one.rank - other.rank);
  return unknown.map(({ kind, named: { name, place } }, index) => {
    const near = index < SUGGESTED ? nearest(name, names[kind]?.keys() ?? []) : [];
    return { about: 'unknown-name', place, kind, name, near };
  });
}

interface Use {
  readonly kind: NamedKind;
  readonly named: Named;
  /** Where several entries use an unknown name, it is told at the first of the lowest rank. */
  readonly rank: number;
}

const unknownIn = foundInEach((entry: Bound, names: Names): Use[] => {
  const unknown: Use[] = [];
  const rank = RANKS.indexOf(entry.kind);
  const look = (kind: NamedKind, named: Named | null | undefined) => {
    if (named && !names[kind]?.has(named.name)) unknown.push({ kind, named, rank });
  };
  const lookSystem = (named: Named | null | undefined) => {
    if (named && names.ground && names.ground.size > 0 && !isSystem(named.name)) look('ground', named);
  };
  switch (entry.kind) {
    case 'job':
      lookSystem(entry.grid);
      break;
    case 'mark':
      lookSystem(entry.position?.system);
      break;
    case 'setup':
      for (const { position } of entry.keyed) lookSystem(position?.system);
      look('mark', entry.on);
      look('antenna', entry.with);
      for (const keyed of entry.keyed) look('antenna', keyed.antennaType);
      break;
    case 'check':
      lookSystem(entry.observed?.position?.system);
      look('mark', entry.on);
      look('rover', entry.by);
      look('setup', entry.from);
      break;
    case 'point':
      lookSystem(entry.observed?.position?.system);
      look('rover', entry.by);
      look('setup', entry.from);
      break;
    case 'points':
      look('rover', entry.by);
      look('setup', entry.from);
      break;
    case 'stream':
      look('setup', entry.from);
      break;
    case 'event':
    case 'correction':
      look('setup', entry.on);
  }
  return unknown.length > 0 ? unknown : NONE;
});
const NONE: Use[] = [];
const RANKS: readonly Bound['kind'][] = [
  'job',
  'mark',
  'setup',
  'check',
  'point',
  'points',
  'stream',
  'event',
  'correction',
];

/** A code, a definition, or a datum of the register, where a ground grid's name may stand, too. */
const isSystem = (name: string) =>
  /^\s*(EPSG\b|\d+\s*$|\+)|[[(]/i.test(name) || datumNamed(name) !== undefined;
