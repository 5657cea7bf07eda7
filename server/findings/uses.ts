/** Which marks the day rests on: those that a setup stands on or a check was made on. */
import { allOf } from '../quantities/show.ts';
import type { Entry, Place } from '../../grammar/tree.ts';
import { detailWord } from '../../grammar/vocabulary.ts';
import type { MarkValues } from '../derive/marks/mark.ts';
import { remembered } from '../derive/remembered.ts';
import type { Check, Setup } from '../session/entries.ts';
import type { Session } from '../session/session.ts';
import type { Subject } from './finding.ts';

export interface UsedMark {
  readonly values: MarkValues;
  /** In the order of the text, the setups first. */
  readonly users: readonly (Setup | Check)[];
}

/** Of these marks those that are in use. */
export function usedAmong(marks: readonly MarkValues[], { session }: Subject): UsedMark[] {
  if (marks.length === 0) return [];
  const users = usersByMark(session.setups, session.checks);
  return marks.flatMap((values) => {
    const own = users.get(values.mark.name);
    return own ? [{ values, users: own }] : [];
  });
}

const usersByMark = remembered((setups: Session['setups'], checks: Session['checks']) => {
  const users = new Map<string, (Setup | Check)[]>();
  for (const user of [...setups.values(), ...checks]) {
    if (!user.on) continue;
    const own = users.get(user.on.name);
    if (own) own.push(user);
    else users.set(user.on.name, [user]);
  }
  return users;
});

/** `BASE stands on it`, `OPEN and 2 other checks were made on it`. */
export function saidOfUse({ users }: UsedMark): string {
  const setups = users.filter(({ kind }) => kind === 'setup').map(({ name }) => name);
  const checks = users.filter(({ kind }) => kind === 'check').map(({ name }) => name);
  const parts: string[] = [];
  if (setups.length > 0) parts.push(`${allOf(setups)} ${setups.length === 1 ? 'stands' : 'stand'} on it`);
  const [first, ...others] = checks;
  if (first !== undefined)
    parts.push(
      others.length === 0
        ? `${first} was made on it`
        : `${first} and ${others.length} more ${others.length === 1 ? 'check' : 'checks'} were made on it`,
    );
  return parts.join(' and ');
}

/** The mark itself where it stands in the session's own file, else where the session first names it. */
export function placeOfUse({ values, users }: UsedMark, { session }: Subject, inMark: Place): Place {
  const own = values.mark.place.path === session.document.path;
  return own ? inMark : (users[0]?.on?.place ?? inMark);
}

/** Where an entry says its name. */
export function nameIn({ entry, place }: { readonly entry: Entry; readonly place: Place }): Place {
  const [name] = entry.header.items;
  return name ? { ...place, start: name.start, end: name.end } : place;
}

/** The entry has a line for it, whatever the line says; what is wrong with it is said there. */
export const hasDetail = ({ entry }: { readonly entry: Entry }, word: string) =>
  entry.details.some((line) => line.word !== null && detailWord(line.word.word)?.word === word);
