/** All findings of a session: one root a cause, what follows from it hung underneath. */
import { startOf } from '../../grammar/document.ts';
import { attempted, isFault, type Fault } from '../../grammar/fault.ts';
import type { Entry } from '../../grammar/tree.ts';
import type { Session } from '../session/session.ts';
import { CATALOGUE } from './catalogue.ts';
import type { Finding, Related, Reported, Subject } from './finding.ts';
import { PROGRAM_FAULT, programFault } from './program/fault.ts';
import { inOneText, joined, type Saying } from './saying.ts';
import { leftWhenMended } from './mending.ts';
import { settled } from './settled.ts';
import { lineAt, unreadBy } from './unread.ts';

export function findingsOf(subject: Subject, faults: readonly Fault[] = []): Finding[] {
  const reported: Reported[] = faults.map((fault) => programFault(fault, subject));
  for (const kind of CATALOGUE) {
    const found = attempted(() => kind.report(subject));
    if (isFault(found)) reported.push(programFault(found, subject));
    else for (const finding of found) reported.push(finished(finding, subject));
  }
  return inTextOrder(hungUnderRoots(fewOnEachLine(onceEach(reported)), subject), subject.session);
}

/** A finding that cannot be told to its end is told as a fault at its place. */
function finished(finding: Reported, subject: Subject): Reported {
  const told = attempted(() => withUnread(settled(finding, subject)), finding.place);
  return isFault(told) ? programFault(told, subject) : told;
}

/** Of one sort on one line: a line of a hundred thousand characters that nobody sees would bury all else. */
const MOST_ON_A_LINE = 20;

/** The last one that is told counts the others. */
function fewOnEachLine(reported: readonly Reported[]): readonly Reported[] {
  if (reported.length <= MOST_ON_A_LINE) return reported;
  const counts = new Map<object, Map<string, number>>();
  const told: Reported[] = [];
  const lastOnes: { readonly index: number; readonly count: () => number }[] = [];
  for (const finding of reported) {
    const { entry, start } = finding.place;
    const line = lineAt(entry.details, start) ?? entry;
    const ofLine = counts.get(line) ?? new Map<string, number>();
    counts.set(line, ofLine);
    const count = (ofLine.get(finding.code) ?? 0) + 1;
    ofLine.set(finding.code, count);
    if (count > MOST_ON_A_LINE) continue;
    if (count === MOST_ON_A_LINE)
      lastOnes.push({ index: told.length, count: () => ofLine.get(finding.code) ?? 0 });
    told.push(finding);
  }
  for (const { index, count } of lastOnes) {
    const [finding, more] = [told[index], count() - MOST_ON_A_LINE];
    if (finding && more > 0)
      told[index] = { ...finding, effect: joined(finding.effect, `${more} more of these are on this line.`) };
  }
  return told;
}

/** Many kinds look at the same thing and fail over it: the first of them says so. */
function onceEach(reported: readonly Reported[]): Reported[] {
  const faulty = new Set<Entry>();
  return reported.filter(({ code, place }) => {
    if (code !== PROGRAM_FAULT) return true;
    const isNew = !faulty.has(place.entry);
    faulty.add(place.entry);
    return isNew;
  });
}

/** A line that cannot be read as it is written is the cause of whatever misses what it would have said. */
function withUnread(finding: Reported): Reported {
  if (finding.severity === 'hint') return finding;
  const unread = unreadBy(finding.code, finding.place);
  return unread.length === 0 ? finding : { ...finding, causes: [...(finding.causes ?? []), ...unread] };
}

/**
 * A finding that follows from what another one causes is told under that other one, and not on its own; but only where it
 * goes away with it. A slip in writing must not hide one in what was done.
 */
function hungUnderRoots(reported: readonly Reported[], subject: Subject): Finding[] {
  const parents = parentsOf(reported);
  const left = leftWhenMended(topsOf(parents), reported, subject);
  const follows = new Map<Reported, Reported[]>();
  const roots: Reported[] = [];
  for (const finding of reported) {
    const parent = left.has(finding) ? undefined : parents.get(finding);
    if (!parent) roots.push(finding);
    else follows.set(parent, [...(follows.get(parent) ?? []), finding]);
  }
  const told = new Set<Reported>();
  const tell = (root: Reported) => {
    told.add(root);
    return withConsequences(root, consequences(root, follows, told));
  };
  // Findings that follow from one another in a circle have no root above them, and are told all the same.
  return [...roots.map(tell), ...reported.flatMap((finding) => (told.has(finding) ? [] : [tell(finding)]))];
}

/** For each finding that follows from another, the first that causes it. */
function parentsOf(reported: readonly Reported[]): ReadonlyMap<Reported, Reported> {
  const causing = new Map<string, Reported>();
  for (const finding of reported)
    for (const key of finding.causes ?? []) if (!causing.has(key)) causing.set(key, finding);
  const parents = new Map<Reported, Reported>();
  for (const finding of reported) {
    const parent = (finding.follows ?? [])
      .map((key) => causing.get(key))
      .find((found) => found !== undefined && found !== finding);
    if (parent) parents.set(finding, parent);
  }
  return parents;
}

/** The finding at the top of each one that hangs; none for those that hang in a circle. */
function topsOf(parents: ReadonlyMap<Reported, Reported>): ReadonlyMap<Reported, Reported> {
  const tops = new Map<Reported, Reported>();
  for (const finding of parents.keys()) {
    const seen = new Set<Reported>();
    let top: Reported | undefined = finding;
    while (top && parents.has(top) && !seen.has(top)) {
      seen.add(top);
      top = parents.get(top);
    }
    if (top && !parents.has(top)) tops.set(finding, top);
  }
  return tops;
}

/** What follows from a finding, and what follows from that. */
function consequences(
  root: Reported,
  follows: ReadonlyMap<Reported, readonly Reported[]>,
  seen: Set<Reported>,
): Reported[] {
  return (follows.get(root) ?? []).flatMap((finding) => {
    if (seen.has(finding)) return [];
    seen.add(finding);
    return [finding, ...consequences(finding, follows, seen)];
  });
}

function withConsequences(root: Reported, following: readonly Reported[]): Finding {
  const { code, severity, place, fixes } = root;
  const rests: Related[] = (root.rests ?? []).map((related) => ({
    code,
    headline: related.message,
    message: related.message,
    place: related.place,
  }));
  const isExplained = root.untilExplained === undefined;
  const consequent = following.map((one) => ({
    code: one.code,
    headline: one.headline,
    message: inOneText(sayingIn(one, isExplained)),
    place: one.place,
  }));
  const said = sayingIn(root, isExplained);
  const { headline, effect, action } = said;
  const message = inOneText(said);
  const related = [...rests, ...consequent];
  return { code, severity, headline, effect, action, message, place, related, fixes };
}

function sayingIn({ headline, effect, action, untilExplained }: Reported, isExplained: boolean): Saying {
  return {
    headline,
    effect,
    action: isExplained || !untilExplained ? action : joined(action, untilExplained),
  };
}

/** By place in the session's own file; what is about another file comes last. */
function inTextOrder(findings: readonly Finding[], session: Session): Finding[] {
  const offset = ({ place }: Finding) => {
    const start = place.path === session.document.path ? startOf(session.document, place) : null;
    return start === null ? Infinity : start + place.start;
  };
  return findings
    .map((finding) => ({ finding, at: offset(finding) }))
    .sort((one, other) => (one.at === other.at ? 0 : one.at - other.at))
    .map(({ finding }) => finding);
}
