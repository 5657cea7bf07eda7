/** Where names are written down and where they are spoken of: definition, references, highlights and rename. */
import type { Item, Place } from '../../grammar/tree.ts';
import type { Height, Named, Position, Surface } from '../session/coordinates.ts';
import type { Bound, Keyed, Setup } from '../session/entries.ts';
import type { NamedKind } from '../session/remark.ts';
import type { Session } from '../session/session.ts';
import { offsetsOf } from '../session/where.ts';
import type { Stretch } from './cursor.ts';

export type NameKind = NamedKind | 'tape-point';

/** A name where it stands. */
export interface NameUse {
  readonly kind: NameKind;
  readonly name: string;
  /** The antenna of a tape point. */
  readonly of: string | null;
  readonly place: Place;
  readonly declares: boolean;
}

/** Every name that an entry writes down or speaks of; the same list as long as the entry has not changed. */
export function namesIn(bound: Bound): readonly NameUse[] {
  let uses = known.get(bound);
  if (!uses) {
    uses = [...declarations(bound), ...references(bound)];
    known.set(bound, uses);
  }
  return uses;
}
const known = new WeakMap<Bound, readonly NameUse[]>();

const DECLARING: ReadonlySet<Bound['kind']> = new Set<Bound['kind']>([
  'mark',
  'antenna',
  'rover',
  'surface',
  'ground',
  'setup',
  'check',
  'point',
  'radio',
]);

function declarations(bound: Bound): NameUse[] {
  const name = named(bound.entry.header.items[0]);
  if (!DECLARING.has(bound.kind) || !name) return [];
  const place = { ...bound.place, start: name.start, end: name.end };
  const kind = bound.kind as NamedKind;
  const own: NameUse = { kind, name: name.name, of: null, place, declares: true };
  if (bound.kind !== 'antenna') return [own];
  const points = bound.tapePoints.flatMap((point): NameUse[] => {
    const line = bound.entry.details.find(({ start }) => start === point.place.start);
    const typed = named(line?.items[0]);
    if (!typed) return [];
    const at = { ...point.place, start: typed.start, end: typed.end };
    return [{ kind: 'tape-point', name: point.name, of: bound.name, place: at, declares: true }];
  });
  return [own, ...points];
}

function named(item: Item | undefined): { name: string; start: number; end: number } | null {
  if (item?.kind === 'name') return item;
  return item?.kind === 'text' ? { name: item.text, start: item.start, end: item.end } : null;
}

function references(bound: Bound): NameUse[] {
  switch (bound.kind) {
    case 'job':
    case 'ground':
      return groundName(bound.grid);
    case 'mark':
      return [...positionName(bound.position), ...heightName(bound.height)];
    case 'surface':
      return surfaceName(bound.against);
    case 'setup':
      return inSetup(bound);
    case 'stream':
    case 'points':
      return [...use('setup', bound.from), ...(bound.kind === 'points' ? use('rover', bound.by) : [])];
    case 'check':
    case 'point':
      return [
        ...use('mark', bound.kind === 'check' ? bound.on : null),
        ...use('rover', bound.by),
        ...use('setup', bound.from),
        ...positionName(bound.observed?.position ?? null),
        ...heightName(bound.observed?.height ?? null),
      ];
    case 'event':
    case 'correction':
      return use('setup', bound.on);
    default:
      return [];
  }
}

function inSetup(setup: Setup): NameUse[] {
  const antenna = setup.with?.name ?? null;
  return [
    ...use('mark', setup.on),
    ...use('antenna', setup.with),
    ...setup.measured.flatMap(({ to }) => tapePoint(to, antenna)),
    ...positionName(setup.autonomous?.position ?? null),
    ...heightName(setup.autonomous?.height ?? null),
    ...setup.keyed.flatMap((line) => inKeyed(line, antenna)),
  ];
}

const inKeyed = (line: Keyed, antenna: string | null): NameUse[] => [
  ...positionName(line.position),
  ...heightName(line.height),
  ...tapePoint(line.antennaHeight?.to ?? null, antenna),
  ...use('antenna', line.antennaType),
];

/** Points that every antenna has, which no antenna entry describes as tape points. */
export const USUAL_POINTS: readonly string[] = ['arp', 'foot', 'hook', 'phase-centre'];

function tapePoint(to: Named | null, antenna: string | null): NameUse[] {
  if (!to || !antenna || USUAL_POINTS.includes(to.name)) return [];
  return [{ kind: 'tape-point', name: to.name, of: antenna, place: to.place, declares: false }];
}

/** Codes and definitions stand where a ground grid's name may stand. */
const groundName = (named: Named | null) => (named && !isSystem(named.name) ? use('ground', named) : []);
const isSystem = (name: string) => /^\s*(EPSG\b|\d+\s*$|\+)|[[(]/i.test(name);

const positionName = (position: Position | null) => groundName(position?.system ?? null);

const heightName = (height: Height | null) => surfaceName(height?.surface ?? null);

const surfaceName = (surface: Surface | null) =>
  surface && typeof surface === 'object' ? use('surface', surface.above) : [];

function use(kind: NameKind, to: Named | null): NameUse[] {
  return to ? [{ kind, name: to.name, of: null, place: to.place, declares: false }] : [];
}

/** The name at an offset of the session's own text. */
export function nameAt(session: Session, bound: Bound, offset: number): NameUse | null {
  const found = namesIn(bound).find(({ place }) => {
    const at = offsetsOf(session, place);
    return at !== null && at.start <= offset && offset <= at.end;
  });
  return found ?? null;
}

/** The line that writes a name down, in this file or in one that it uses. */
export function declarationOf(session: Session, { kind, name, of }: NameUse): NameUse | null {
  const entry = declaringEntry(session, kind, of ?? name);
  if (!entry) return null;
  return namesIn(entry).find((use) => use.declares && use.kind === kind && use.name === name) ?? null;
}

/** The entry that writes a name down, or the line of a tape point, as it stands; null where nothing does. */
export function writtenDown(session: Session, use: Pick<NameUse, 'kind' | 'name' | 'of'>): string | null {
  const bound = declaringEntry(session, use.kind, use.of ?? use.name);
  if (!bound) return null;
  const { text, header, details } = bound.entry;
  const point = use.kind === 'tape-point' && bound.kind === 'antenna' ? bound.tapePoints : [];
  const place = point.find(({ name }) => name === use.name)?.place;
  return place
    ? text.slice(place.start, place.end)
    : text.slice(header.start, (details.at(-1) ?? header).end);
}

function declaringEntry(session: Session, kind: NameKind, name: string): Bound | null {
  switch (kind) {
    case 'mark':
      return session.marks.get(name) ?? null;
    case 'antenna':
    case 'tape-point':
      return session.antennas.get(name) ?? null;
    case 'rover':
      return session.rovers.get(name) ?? null;
    case 'surface':
      return session.surfaces.get(name) ?? null;
    case 'ground':
      return session.grounds.get(name) ?? null;
    case 'setup':
      return session.setups.get(name) ?? null;
    case 'radio':
      return session.radios.get(name) ?? null;
    case 'check':
      return session.checks.find((check) => check.name === name) ?? null;
    case 'point':
      return session.singlePoints.find((point) => point.name === name) ?? null;
  }
}

/** Every place in the session's own file that means what this declaration writes down, itself included. */
export function usesOf(session: Session, declaration: NameUse): NameUse[] {
  return session.entries.flatMap(namesIn).filter((use) => {
    if (use.kind !== declaration.kind || use.name !== declaration.name) return false;
    const meant = use.declares ? use : declarationOf(session, use);
    return meant !== null && samePlace(meant.place, declaration.place);
  });
}

const samePlace = (one: Place, other: Place) =>
  one.path === other.path && one.entry === other.entry && one.start === other.start;

/** Where the thing under the cursor is spoken of, in all of these sessions; each place once. */
export function everywhere(
  sessions: readonly Session[],
  declaration: NameUse,
): (NameUse & { at: Stretch })[] {
  return sessions.flatMap((session) =>
    usesOf(session, declaration).flatMap((use) => {
      const at = offsetsOf(session, use.place);
      return at ? [{ ...use, at }] : [];
    }),
  );
}

/**
 * Where a name changes at every place while it is typed at one: all its places lie in the session's own file, more than
 * one, and none is in quotes, so that each stays what it is. Null otherwise; then one renames it.
 */
export function editedTogether(session: Session, use: NameUse, declaration: NameUse): Stretch[] | null {
  const { path, text } = session.document;
  if (declaration.place.path !== path) return null;
  const stretches = usesOf(session, declaration).flatMap(({ place }) => offsetsOf(session, place) ?? []);
  const plain = stretches.every(({ start, end }) => text.slice(start, end) === use.name);
  return plain && stretches.length > 1 ? stretches : null;
}

export interface Renaming {
  readonly edits: readonly { readonly at: Stretch; readonly text: string }[];
}

/** Every mention under its new name, or why it cannot be called so. */
export function rename(
  session: Session,
  sessions: readonly Session[],
  declaration: NameUse,
  wanted: string,
): Renaming | { readonly refused: string } {
  const name = unquoted(wanted.trim());
  if (name === '' || name === '?' || /[\p{Cc}\p{Cf}\u2028\u2029]/u.test(name))
    return { refused: 'A name is a word, or any text in double quotes on one line.' };
  if (declaration.kind === 'tape-point' && USUAL_POINTS.includes(name))
    return { refused: `${name} is a point that every antenna has; call this one otherwise.` };
  if (declaration.kind === 'ground' && isSystem(name))
    return { refused: `${name} would be read as a coordinate system; call this ground grid otherwise.` };
  const taken = declarationOf(session, { ...declaration, name });
  if (taken && name !== declaration.name)
    return { refused: `There is another ${declaration.kind} called ${name} already.` };
  const text = written(name);
  return { edits: everywhere(sessions, declaration).map(({ at }) => ({ at, text })) };
}

/** A name as it is typed: in double quotes where it would otherwise be read as something else. */
export function written(name: string): string {
  return /^[^\s\p{Z},"\u201c-\u201f#][^\s\p{Z},"\u201c-\u201f]*$/u.test(name)
    ? name
    : `"${name.replaceAll('"', '""')}"`;
}

function unquoted(typed: string): string {
  const inner = /^"(.*)"$/s.exec(typed)?.[1];
  return inner === undefined ? typed : inner.replaceAll('""', '"');
}
