/** Lines of a used file that cannot be read as they are written, where the session needs what they would have said. */
import type { Place } from '../../../grammar/tree.ts';
import { allOf } from '../../quantities/show.ts';
import type { Bound, Mark } from '../../session/entries.ts';
import type { Session, UsedFile } from '../../session/session.ts';
import { lineInWords, whereIs } from '../../session/where.ts';
import { kind, type Reported, type Subject } from '../finding.ts';
import { nameOf, unreadBy } from '../unread.ts';
import { short } from '../words.ts';
import { remarksAbout } from './remarks.ts';
import { WRITTEN_WRONG } from './written-wrong.ts';

interface Spoilt {
  /** Of the session's own file: where it asks for the other one. */
  readonly place: Place;
  readonly file: UsedFile;
  /** What is wrong there: first with what a base stands on, then in the order of that text. */
  readonly errors: readonly Reported[];
  /** The marks and the gear that it is about. */
  readonly names: readonly string[];
}

export const syntaxUsedFile = kind<Spoilt>({
  code: 'syntax/used-file',
  find: (subject) => subject.session.used.flatMap((file) => spoiltIn(file, subject)),
  tell: ({ file, errors, names }, { session }) => {
    const [first] = errors;
    const line = first ? whereIs(session, first.place).line : 1;
    const where = `line ${line}${errors.length > 1 ? ' first' : ''}`;
    return {
      severity: 'error',
      headline: `${errors.length === 1 ? '1 error' : `${errors.length} errors`} in ${short(nameOfFile(file))} (${where}) ${errors.length === 1 ? 'spoils' : 'spoil'} ${fewOf(names)}.`,
      effect: 'What these lines would say is missing here.',
      action: first ? `Mend ${lineInWords(session, first.place)}.` : '',
      rests: errors.slice(0, MOST_SHOWN).map(({ headline, place }) => ({ message: headline, place })),
      causes: errors.flatMap(({ code, place, causes = [] }) => [...causes, ...unreadBy(code, place)]),
    };
  },
});

/** More of them are counted in the headline, and are told in the file itself. */
const MOST_SHOWN = 20;

function spoiltIn(file: UsedFile, subject: Subject): Spoilt[] {
  if (file.odd.length === 0) return [];
  const needed = neededOf(subject);
  const names = new Set<string>();
  const hurting = file.odd.filter((bound) => {
    const own = needed(bound, file);
    for (const name of own) names.add(name);
    return own.length > 0;
  });
  if (hurting.length === 0) return [];
  const remarks = hurting.flatMap((bound) => bound.remarks);
  const session = { ...subject.session, document: file.document, remarks };
  const errors = inOrder(
    WRITTEN_WRONG.flatMap((written) => written.report({ ...subject, session })).filter(
      ({ severity }) => severity === 'error',
    ),
    session,
  );
  return errors.length === 0 ? [] : [{ place: file.place, file, errors, names: [...names] }];
}

function inOrder(errors: readonly Reported[], session: Session): Reported[] {
  const below = [...session.setups.values()].flatMap(({ on, with: antenna }) => [
    on && session.marks.get(on.name)?.entry,
    antenna && session.antennas.get(antenna.name)?.entry,
  ]);
  const bases = new Set(below);
  return errors
    .map((error) => ({
      error,
      later: bases.has(error.place.entry) ? 0 : 1,
      at: whereIs(session, error.place),
    }))
    .sort(
      (one, other) =>
        one.later - other.later || one.at.line - other.at.line || one.at.column - other.at.column,
    )
    .map(({ error }) => error);
}

/** For an entry of a used file the names by which the session misses what it says; none where it does not need it. */
function neededOf(subject: Subject): (bound: Bound, file: UsedFile) => string[] {
  const { session } = subject;
  const unknown = new Set(remarksAbout(subject, 'unknown-name').map(({ name }) => name));
  const asked = new Set(
    session.entries
      .flatMap((entry) => {
        if (entry.kind === 'setup')
          return [entry.on, entry.with, ...entry.keyed.map(({ antennaType }) => antennaType)];
        if (entry.kind === 'check') return [entry.on, entry.by];
        return entry.kind === 'point' || entry.kind === 'points' ? [entry.by] : [];
      })
      .flatMap((named) => (named ? [named.name] : [])),
  );
  const isMarkOf =
    ({ path }: UsedFile) =>
    (mark: Mark) =>
      mark.place.path === path && asked.has(mark.name);
  return (bound, file) => {
    switch (bound.kind) {
      case 'mark':
        return session.marks.get(bound.name) === bound && asked.has(bound.name) ? [bound.name] : [];
      case 'antenna':
        return session.antennas.get(bound.name) === bound && asked.has(bound.name) ? [bound.name] : [];
      case 'rover':
        return session.rovers.get(bound.name) === bound && asked.has(bound.name) ? [bound.name] : [];
      case 'surface':
      case 'ground':
      case 'job':
        return [...session.marks.values()].filter(isMarkOf(file)).map(({ name }) => name);
      default:
        // What opens an entry may be misspelt, and its name is then one that nothing answers to.
        return unknown.has(nameOf(bound.entry)) ? [nameOf(bound.entry)] : [];
    }
  };
}

const nameOfFile = ({ path }: UsedFile) => path.slice(path.lastIndexOf('/') + 1);

const fewOf = (names: readonly string[]) =>
  names.length <= MOST_NAMED
    ? allOf(names.map(short))
    : `${names.slice(0, MOST_NAMED).map(short).join(', ')} and ${names.length - MOST_NAMED} more`;
const MOST_NAMED = 2;
