/** After most edits a session is the one before with an entry or two read anew: its other lists and tables stay the same ones. */
import type { Document } from '../../grammar/document.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { bind } from './binding/bind.ts';
import { foundInEach } from './each.ts';
import type { Bound } from './entries.ts';
import type { Files } from './files.ts';
import type { Remark } from './remark.ts';
import type { Session } from './session.ts';
import { unknownNames, type Names } from './binding/unknown-names.ts';

/** A session, and what must stay true for it to be patched. */
export interface Gathered {
  readonly session: Session;
  /** What is known by name; the same object as long as no name comes or goes. */
  readonly names: Names;
  /** The files that it asked for, each with its document, or with why it cannot be read. */
  readonly asked: ReadonlyMap<string, Document | string>;
  /** `mark PM-07`: names that stand for several entries. */
  readonly repeatedNames: ReadonlySet<string>;
  /** What is odd about entries beside one another, and not about how one of them is written. */
  readonly amongEntries: readonly Remark[];
}

/** More changed entries than an edit changes as a rule are gathered anew. */
const FEW = 8;

/** Null where an entry has come or gone, or says something else than the same kind of thing under the same name. */
export function patched(before: Gathered, document: Document, files: Files): Gathered | null {
  const { session } = before;
  const changed = changedEntries(session.document, document);
  if (!changed) return null;
  for (const [path, answer] of before.asked) {
    const now = files.document(path);
    if ((isRefusal(now) ? now.refused : now) !== answer) return null;
  }
  let patch: Session = { ...session, document, documents: withDocument(session, document) };
  for (const index of changed) {
    const [old, entry] = [session.entries[index], document.entries[index]];
    const next = entry && withEntry(patch, old, bind(document.path, entry), before);
    if (!next) return null;
    patch = next;
  }
  const remarks = remarksOf(patch.entries, before.amongEntries, before.names);
  return { ...before, session: { ...patch, remarks } };
}

/** Where the two differ; null where not one for one, or in too many places. */
function changedEntries(before: Document, now: Document): number[] | null {
  if (before.entries.length !== now.entries.length) return null;
  const changed: number[] = [];
  for (let index = 0; index < now.entries.length; index += 1) {
    if (before.entries[index] === now.entries[index]) continue;
    if (changed.length === FEW) return null;
    changed.push(index);
  }
  return changed;
}

const withDocument = ({ documents }: Session, document: Document) =>
  new Map([...documents].map(([path, known]) => [path, path === document.path ? document : known]));

/** Entries of which a session keeps a list, and those that it keeps by name. */
const LISTS = {
  stream: 'streams',
  check: 'checks',
  event: 'events',
  points: 'points',
  point: 'singlePoints',
  hazard: 'hazards',
  note: 'notes',
  correction: 'corrections',
  review: 'reviews',
} as const satisfies Partial<Record<Bound['kind'], keyof Session>>;
const TABLES = {
  mark: 'marks',
  antenna: 'antennas',
  rover: 'rovers',
  surface: 'surfaces',
  ground: 'grounds',
  setup: 'setups',
  radio: 'radios',
} as const satisfies Partial<Record<Bound['kind'], keyof Session>>;

type Listed = keyof typeof LISTS;
const isListed = (kind: Bound['kind']): kind is Listed => kind in LISTS;
const isTabled = (kind: Bound['kind']): kind is keyof typeof TABLES => kind in TABLES;

function withEntry(
  session: Session,
  old: Bound | undefined,
  now: Bound,
  { repeatedNames }: Gathered,
): Session | null {
  if (!old || old.kind !== now.kind || nameOf(old) !== nameOf(now)) return null;
  const name = nameOf(old);
  if (name === '' || (name !== null && repeatedNames.has(`${old.kind} ${name}`))) return null;
  const entries = replaced(session.entries, old, now);
  if (isTabled(old.kind) && name !== null) {
    const field = TABLES[old.kind];
    const table: ReadonlyMap<string, Bound> = session[field];
    if (table.get(name) !== old) return null;
    return { ...session, entries, [field]: new Map(table).set(name, now) };
  }
  if (isListed(old.kind)) {
    const field = LISTS[old.kind];
    return { ...session, entries, [field]: replaced(session[field] as readonly Bound[], old, now) };
  }
  return old.kind === 'unknown' ? { ...session, entries } : null;
}

const nameOf = (entry: Bound): string | null => ('name' in entry ? entry.name : null);

const replaced = (list: readonly Bound[], old: Bound, now: Bound) => list.with(list.indexOf(old), now);

/** What is odd about how the entries are written, beside one another, and about the names that they use. */
export function remarksOf(
  entries: readonly Bound[],
  amongEntries: readonly Remark[],
  names: Names,
): readonly Remark[] {
  return [...writtenOddly(entries), ...amongEntries, ...unknownNames(entries, names)];
}
const writtenOddly = foundInEach(({ remarks }: Bound) => remarks);

/** The entries of each kind, in the order of the text. */
export function listsOf(entries: readonly Bound[]) {
  const lists: { [Kind in Listed]: Extract<Bound, { kind: Kind }>[] } = {
    stream: [],
    check: [],
    event: [],
    points: [],
    point: [],
    hazard: [],
    note: [],
    correction: [],
    review: [],
  };
  for (const entry of entries) if (isListed(entry.kind)) (lists[entry.kind] as Bound[]).push(entry);
  return lists;
}

/** The list as it was before where it holds the same things, so that nothing that rests on it is found anew. */
export function sameList<Thing>(before: readonly Thing[] | undefined, now: readonly Thing[]) {
  return before?.length === now.length && now.every((thing, index) => thing === before[index]) ? before : now;
}

/** The same of a table, in the same order. */
export function sameTable<Thing>(
  before: ReadonlyMap<string, Thing> | undefined,
  now: ReadonlyMap<string, Thing>,
): ReadonlyMap<string, Thing> {
  if (before?.size !== now.size) return now;
  const others = before.entries();
  for (const [name, thing] of now) {
    const other = others.next().value;
    if (other?.[0] !== name || other[1] !== thing) return now;
  }
  return before;
}
