/** A session: the entries of one file and what it brings in from others, by name and in order of time. */
import type { Document } from '../../grammar/document.ts';
import { keptWith } from '../../grammar/kept-with.ts';
import type { Place } from '../../grammar/tree.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { isHole, type Maybe } from '../quantities/value.ts';
import { bind } from './binding/bind.ts';
import type {
  Antenna,
  Bound,
  Check,
  Correction,
  Event,
  Ground,
  Hazard,
  Job,
  LocalSurface,
  Mark,
  Note,
  Point,
  Points,
  Radio,
  Review,
  Rover,
  Setup,
  Stream,
} from './entries.ts';
import { resolvePath, type Files } from './files.ts';
import type { Moment } from './moments.ts';
import { listsOf, patched, remarksOf, sameList, sameTable, type Gathered } from './patched.ts';
import type { NamedKind, Remark } from './remark.ts';
import type { Names } from './binding/unknown-names.ts';

export interface Session {
  readonly document: Document;
  readonly entries: readonly Bound[];
  readonly job: Job | null;
  readonly marks: ReadonlyMap<string, Mark>;
  readonly antennas: ReadonlyMap<string, Antenna>;
  readonly rovers: ReadonlyMap<string, Rover>;
  readonly surfaces: ReadonlyMap<string, LocalSurface>;
  readonly grounds: ReadonlyMap<string, Ground>;
  readonly setups: ReadonlyMap<string, Setup>;
  readonly radios: ReadonlyMap<string, Radio>;
  readonly streams: readonly Stream[];
  readonly checks: readonly Check[];
  readonly events: readonly Event[];
  readonly points: readonly Points[];
  readonly singlePoints: readonly Point[];
  readonly hazards: readonly Hazard[];
  readonly notes: readonly Note[];
  readonly corrections: readonly Correction[];
  readonly reviews: readonly Review[];
  /** The job of each file that took part, by path: a mark's coordinates are in its own file's grid. */
  readonly jobs: ReadonlyMap<string, Job | null>;
  /** Every file that took part, the session's own first. */
  readonly documents: ReadonlyMap<string, Document>;
  /** What is odd about how this file is written; remarks of other files stay with them. */
  readonly remarks: readonly Remark[];
  /** The other files that take part, in the order in which they are used. */
  readonly used: readonly UsedFile[];
}

/** Another file that takes part. */
export interface UsedFile {
  readonly path: string;
  readonly document: Document;
  /** Where the session asks for it, or for the file that does. */
  readonly place: Place;
  /** Its entries with anything odd about how they are written. */
  readonly odd: readonly Bound[];
}

/** Puts a session together; entries that have not changed are not read again, and lists of them stay the same lists. */
export function sessionOf(document: Document, files: Files): Session {
  const before = latest.get(files);
  const known = before?.session.document.path === document.path ? before : null;
  const gathered = (known && patched(known, document, files)) ?? gatheredFrom(document, files, known);
  latest.set(files, gathered);
  return gathered.session;
}
const latest = keptWith<Files, Gathered>();

function gatheredFrom(document: Document, files: Files, before: Gathered | null): Gathered {
  const gathering = new Gathering(files);
  gathering.addFile(document, null);
  return gathering.gathered(document, before);
}

type Shared = Mark | Antenna | Rover | LocalSurface | Ground;

/** Files that use files: nobody keeps marks so far away, and whoever would exhaust the program does. */
const DEEPEST = 100;

class Gathering {
  private readonly tables = {
    mark: new Map<string, Mark>(),
    antenna: new Map<string, Antenna>(),
    rover: new Map<string, Rover>(),
    surface: new Map<string, LocalSurface>(),
    ground: new Map<string, Ground>(),
    setup: new Map<string, Setup>(),
    radio: new Map<string, Radio>(),
  };
  private readonly checkNames = new Map<string, Check>();
  private readonly pointNames = new Map<string, Point>();
  private readonly jobs = new Map<string, Job | null>();
  private readonly documents = new Map<string, Document>();
  private readonly asked = new Map<string, Document | string>();
  private readonly repeatedNames = new Set<string>();
  private readonly own: Bound[] = [];
  private readonly used: UsedFile[] = [];
  /** How many files have been used to come to the one that is being added. */
  private deep = 0;
  private readonly remarks: Remark[] = [];

  constructor(private readonly files: Files) {}

  /** @param usedAt where the file was asked for; null for the session's own file */
  addFile(document: Document, usedAt: Place | null): void {
    if (this.documents.has(document.path)) return;
    this.documents.set(document.path, document);
    this.jobs.set(document.path, null);
    const odd: Bound[] = [];
    for (const entry of document.entries) {
      const bound = bind(document.path, entry);
      if (!usedAt) this.own.push(bound);
      else if (bound.remarks.length > 0) odd.push(bound);
      this.add(bound, document.path, usedAt);
    }
    if (usedAt) this.used.push({ path: document.path, document, place: usedAt, odd });
  }

  private add(bound: Bound, path: string, usedAt: Place | null): void {
    switch (bound.kind) {
      case 'job':
        if (this.jobs.get(path) === null) this.jobs.set(path, bound);
        else if (!usedAt) this.repeated(bound, this.jobs.get(path)?.place);
        return;
      case 'use':
        return this.follow(bound.path?.text, bound.path?.place, path, usedAt);
      case 'mark':
        return this.named('mark', this.tables.mark, bound, usedAt);
      case 'antenna':
        return this.named('antenna', this.tables.antenna, bound, usedAt);
      case 'rover':
        return this.named('rover', this.tables.rover, bound, usedAt);
      case 'surface':
        return this.named('surface', this.tables.surface, bound, usedAt);
      case 'ground':
        return this.named('ground', this.tables.ground, bound, usedAt);
      default:
        if (!usedAt) this.addOwn(bound);
    }
  }

  /** Entries that no other file can bring in. */
  private addOwn(bound: Bound): void {
    if (bound.kind === 'setup') this.named('setup', this.tables.setup, bound, null);
    else if (bound.kind === 'radio') this.named('radio', this.tables.radio, bound, null);
    else if (bound.kind === 'check') this.named('check', this.checkNames, bound, null);
    else if (bound.kind === 'point') this.named('point', this.pointNames, bound, null);
  }

  private named<Thing extends Shared | Setup | Radio | Check | Point>(
    kind: NamedKind,
    names: Map<string, Thing>,
    thing: Thing,
    usedAt: Place | null,
  ): void {
    if (thing.name === '') return;
    const first = names.get(thing.name);
    if (!first) {
      names.set(thing.name, thing);
      return;
    }
    this.repeatedNames.add(`${kind} ${thing.name}`);
    if (first.entry !== thing.entry && first.place.path !== thing.place.path && sameText(first, thing))
      return;
    const place = usedAt ?? thing.place;
    this.remarks.push({ about: 'duplicate-name', place, kind, name: thing.name, first: first.place });
  }

  private repeated(bound: Job, first: Place | undefined): void {
    if (first) this.remarks.push({ about: 'repeated', place: bound.place, word: 'job', first, same: false });
  }

  private follow(typed: string | undefined, at: Place | undefined, path: string, usedAt: Place | null): void {
    if (typed === undefined || !at) return;
    const place = usedAt ?? at;
    const target = resolvePath(path, typed);
    if (this.documents.has(target)) return;
    const document = this.files.document(target);
    this.asked.set(target, isRefusal(document) ? document.refused : document);
    if (isRefusal(document)) {
      this.remarks.push({ about: 'unreadable-file', place, path: typed, because: document.refused });
      return;
    }
    if (this.deep === DEEPEST) {
      const because = `it is used by a file that is used by a file, and so on, ${DEEPEST} files deep`;
      this.remarks.push({ about: 'unreadable-file', place, path: typed, because });
      return;
    }
    this.deep += 1;
    this.addFile(document, place);
    this.deep -= 1;
  }

  gathered(document: Document, before: Gathered | null): Gathered {
    const { mark, antenna, rover, surface, ground, setup, radio } = this.tables;
    const known = before?.session;
    const lists = listsOf(this.own);
    const names: Names = {
      mark,
      antenna,
      rover,
      surface,
      ground,
      setup,
      radio,
      check: this.checkNames,
      point: this.pointNames,
    };
    const session = {
      document,
      entries: this.own,
      job: this.jobs.get(document.path) ?? null,
      marks: sameTable(known?.marks, mark),
      antennas: sameTable(known?.antennas, antenna),
      rovers: sameTable(known?.rovers, rover),
      surfaces: sameTable(known?.surfaces, surface),
      grounds: sameTable(known?.grounds, ground),
      setups: sameTable(known?.setups, setup),
      radios: sameTable(known?.radios, radio),
      streams: sameList(known?.streams, lists.stream),
      checks: sameList(known?.checks, lists.check),
      events: sameList(known?.events, lists.event),
      points: sameList(known?.points, lists.points),
      singlePoints: sameList(known?.singlePoints, lists.point),
      hazards: sameList(known?.hazards, lists.hazard),
      notes: sameList(known?.notes, lists.note),
      corrections: sameList(known?.corrections, lists.correction),
      reviews: sameList(known?.reviews, lists.review),
      jobs: sameTable(known?.jobs, this.jobs),
      documents: this.documents,
      remarks: remarksOf(this.own, this.remarks, names),
      used: this.used,
    };
    return {
      session,
      names,
      asked: this.asked,
      repeatedNames: this.repeatedNames,
      amongEntries: this.remarks,
    };
  }
}

const sameText = (one: { entry: { text: string } }, other: { entry: { text: string } }) =>
  one.entry.text.trim().replace(/\s+/g, ' ') === other.entry.text.trim().replace(/\s+/g, ' ');

/**
 * Seconds since 1970-01-01 UTC (without leap seconds); the job's day and clock stand in where none was typed. A time of
 * UTC without a date is one of the local day, as in a points file, whatever the day is in UTC.
 */
export function instantOf(moment: Maybe<Moment> | null, job: Job | null): number | null {
  if (!moment || isHole(moment)) return null;
  const jobDay = job?.date && !isHole(job.date) ? job.date.day : 0;
  const offset = job?.clock && !isHole(job.clock) ? job.clock.seconds : 0;
  const local = moment.seconds + (moment.utc ? offset : 0);
  if (moment.day !== null) return moment.day * DAY + local - offset;
  return jobDay * DAY + (moment.utc ? ((local % DAY) + DAY) % DAY : local) - offset;
}
/**
 * The same of something that belongs to a base: a time without a date that falls before the base stood is of the next day
 * where the base stood then, as in a points file. One that still stands is taken to do so for half a day.
 */
export function instantWithin(
  moment: Maybe<Moment> | null,
  job: Job | null,
  stood: readonly { readonly from: number | null; readonly until: number | null }[],
): number | null {
  const instant = instantOf(moment, job);
  if (instant === null || !moment || isHole(moment) || moment.day !== null) return instant;
  const within = (at: number) =>
    stood.some(({ from, until }) => {
      if (from === null || !Number.isFinite(from)) return false;
      const end = until === null || !Number.isFinite(until) ? from + DAY / 2 : until;
      return from <= at && at <= end;
    });
  return !within(instant) && within(instant + DAY) ? instant + DAY : instant;
}
const DAY = 86_400;
