/** A session: the entries of one file and what it brings in from others, by name and in order of time. */
import type { Document } from '../../grammar/document.ts';
import type { Place } from '../../grammar/tree.ts';
import { datumNamed } from '../geodesy/registry/registry.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { isHole, type Maybe } from '../quantities/value.ts';
import { bind } from './bind.ts';
import type { Named } from './coordinates.ts';
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
import { nearest } from '../quantities/near.ts';
import type { NamedKind, Remark } from './remark.ts';

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
}

/** Puts a session together; entries that have not changed are not read again. */
export function sessionOf(document: Document, files: Files): Session {
  const gathering = new Gathering(files);
  gathering.addFile(document, null);
  return gathering.session(document);
}

type Shared = Mark | Antenna | Rover | LocalSurface | Ground;

class Gathering {
  private readonly marks = new Map<string, Mark>();
  private readonly antennas = new Map<string, Antenna>();
  private readonly rovers = new Map<string, Rover>();
  private readonly surfaces = new Map<string, LocalSurface>();
  private readonly grounds = new Map<string, Ground>();
  private readonly setups = new Map<string, Setup>();
  private readonly radios = new Map<string, Radio>();
  private readonly checkNames = new Map<string, Check>();
  private readonly pointNames = new Map<string, Point>();
  private readonly jobs = new Map<string, Job | null>();
  private readonly documents = new Map<string, Document>();
  private readonly own: Bound[] = [];
  private readonly remarks: Remark[] = [];

  constructor(private readonly files: Files) {}

  /** @param usedAt where the file was asked for; null for the session's own file */
  addFile(document: Document, usedAt: Place | null): void {
    if (this.documents.has(document.path)) return;
    this.documents.set(document.path, document);
    this.jobs.set(document.path, null);
    for (const entry of document.entries) {
      const bound = bind(document.path, entry);
      if (!usedAt) this.own.push(bound);
      this.add(bound, document.path, usedAt);
    }
  }

  private add(bound: Bound, path: string, usedAt: Place | null): void {
    if (!usedAt) for (const remark of bound.remarks) this.remarks.push(remark);
    switch (bound.kind) {
      case 'job':
        if (this.jobs.get(path) === null) this.jobs.set(path, bound);
        else if (!usedAt) this.repeated(bound, this.jobs.get(path)?.place);
        return;
      case 'use':
        return this.follow(bound.path?.text, bound.path?.place, path, usedAt);
      case 'mark':
        return this.named('mark', this.marks, bound, usedAt);
      case 'antenna':
        return this.named('antenna', this.antennas, bound, usedAt);
      case 'rover':
        return this.named('rover', this.rovers, bound, usedAt);
      case 'surface':
        return this.named('surface', this.surfaces, bound, usedAt);
      case 'ground':
        return this.named('ground', this.grounds, bound, usedAt);
      default:
        if (!usedAt) this.addOwn(bound);
    }
  }

  /** Entries that no other file can bring in. */
  private addOwn(bound: Bound): void {
    if (bound.kind === 'setup') this.named('setup', this.setups, bound, null);
    else if (bound.kind === 'radio') this.named('radio', this.radios, bound, null);
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
    if (isRefusal(document)) {
      this.remarks.push({ about: 'unreadable-file', place, path: typed, because: document.refused });
      return;
    }
    this.addFile(document, place);
  }

  session(document: Document): Session {
    const ofKind = <Kind extends Bound['kind']>(kind: Kind) =>
      this.own.filter((bound): bound is Extract<Bound, { kind: Kind }> => bound.kind === kind);
    const session = {
      document,
      entries: this.own,
      job: this.jobs.get(document.path) ?? null,
      marks: this.marks,
      antennas: this.antennas,
      rovers: this.rovers,
      surfaces: this.surfaces,
      grounds: this.grounds,
      setups: this.setups,
      radios: this.radios,
      streams: ofKind('stream'),
      checks: ofKind('check'),
      events: ofKind('event'),
      points: ofKind('points'),
      singlePoints: ofKind('point'),
      hazards: ofKind('hazard'),
      notes: ofKind('note'),
      corrections: ofKind('correction'),
      reviews: ofKind('review'),
      jobs: this.jobs,
      documents: this.documents,
    };
    return { ...session, remarks: [...this.remarks, ...unknownNames(session)] };
  }
}

const sameText = (one: { entry: { text: string } }, other: { entry: { text: string } }) =>
  one.entry.text.trim().replace(/\s+/g, ' ') === other.entry.text.trim().replace(/\s+/g, ' ');

/** A code, a definition, or a datum of the register, where a ground grid's name may stand, too. */
const isSystem = (name: string) =>
  /^\s*(EPSG\b|\d+\s*$|\+)|[[(]/i.test(name) || datumNamed(name) !== undefined;

/** Near names are looked for this often: each search looks at every name, and nobody reads more of them. */
const SUGGESTED = 100;

/** Names that nothing answers to, with what they may have meant. */
function unknownNames(session: Omit<Session, 'remarks'>): Remark[] {
  const remarks: Remark[] = [];
  const look = (kind: NamedKind, names: ReadonlyMap<string, unknown>, named: Named | null) => {
    if (!named || names.has(named.name)) return;
    remarks.push({
      about: 'unknown-name',
      place: named.place,
      kind,
      name: named.name,
      near: remarks.length < SUGGESTED ? nearest(named.name, names.keys()) : [],
    });
  };
  const lookSystem = (named: Named | null | undefined) => {
    if (named && session.grounds.size > 0 && !isSystem(named.name)) look('ground', session.grounds, named);
  };
  lookSystem(session.job?.grid);
  for (const { position, place } of session.marks.values())
    if (place.path === session.document.path) lookSystem(position?.system);
  for (const setup of session.setups.values()) {
    for (const { position } of setup.keyed) lookSystem(position?.system);
    look('mark', session.marks, setup.on);
    look('antenna', session.antennas, setup.with);
    for (const keyed of setup.keyed) look('antenna', session.antennas, keyed.antennaType);
  }
  for (const check of [...session.checks, ...session.singlePoints, ...session.points]) {
    if (check.kind !== 'points') lookSystem(check.observed?.position?.system);
    if (check.kind === 'check') look('mark', session.marks, check.on);
    look('rover', session.rovers, check.by);
    look('setup', session.setups, check.from);
  }
  for (const stream of session.streams) look('setup', session.setups, stream.from);
  for (const event of session.events) look('setup', session.setups, event.on);
  for (const correction of session.corrections) look('setup', session.setups, correction.on);
  return remarks;
}

/** Seconds since 1970-01-01 UTC (without leap seconds); the job's day and clock stand in where none was typed. */
export function instantOf(moment: Maybe<Moment> | null, job: Job | null): number | null {
  if (!moment || isHole(moment)) return null;
  const jobDay = job?.date && !isHole(job.date) ? job.date.day : 0;
  const offset = job?.clock && !isHole(job.clock) ? job.clock.seconds : 0;
  return (moment.day ?? jobDay) * 86_400 + moment.seconds - (moment.utc ? 0 : offset);
}
