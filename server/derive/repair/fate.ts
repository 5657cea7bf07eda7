/** What becomes of the points of one set at each time of the day: class, what is taken off, or why nothing is. */
import { isHole } from '../../quantities/value.ts';
import type { Rover } from '../../session/entries.ts';
import type { Session } from '../../session/session.ts';
import type { Derivation } from '../derivation.ts';
import { saidOf, type PointSet } from '../points/points.ts';
import { concerns, type NoRemedy, type Reference, type Remedy, type Repair } from './repair.ts';
import type { SetupValues } from '../setups/setup.ts';
import { carriedBy } from '../trust/drift.ts';
import { classOf, driftsAt, partsAt, type RoverTrust, type Trust } from '../trust/trust.ts';
import { driftInWords, partsInWords, timeInWords } from '../trust/words.ts';
import type { ErrorSize } from './bend.ts';
import { pointClassInWords, type PointClass } from './flaws.ts';
import { isDuring, rekeyingsOf } from './rekeyed.ts';

/** The same object for all points that share it. */
export interface Fate {
  /** As measured. */
  readonly class: PointClass;
  /** With the checks as repaired; the same where nothing is. */
  readonly asRepaired: PointClass;
  readonly setup: SetupValues | null;
  readonly rover: Rover | null;
  /** Taken off; nothing where the points stay as they are. */
  readonly remedies: readonly Remedy[];
  /** What the points stand on; null where that is their base's mark alone. */
  readonly reference: Reference | null;
  /** What the base may have moved by meanwhile, in full; metres. */
  readonly moved: ErrorSize;
  /** An error is known and is not taken off. */
  readonly refused: boolean;
  /** `not closed`, `in doubt, repaired`. */
  readonly label: string;
  /** A sentence or two. */
  readonly reason: string;
}

/** @param state what the row says of its state, where it says anything */
export type FateAt = (instant: number | null, state: string | undefined) => Fate;

/** The fates of a set; between two changes of the day they are worked out once. */
export function fatesOf(
  set: PointSet,
  session: Session,
  derivation: Derivation,
  trust: Trust,
  repair: Repair,
): FateAt {
  const circumstance = circumstanceOf(set, session, derivation, repair);
  const make = (instant: number | null, state: string | undefined) =>
    fate(set, state ?? saidOf(set).state?.name, instant, circumstance, session, trust, repair);
  const index = piecewise(changesOf(trust, repair, derivation));
  const known = new Map<string, Map<number, Fate>>();
  return (time, written) => {
    const instant = time === null ? null : circumstance.minuteOf(time);
    const state = set.unaskedState && written !== 'corrected' ? undefined : written;
    const key = state ?? '';
    const ofState = known.get(key) ?? new Map<number, Fate>();
    if (known.size < MOST_STATES) known.set(key, ofState);
    const piece = instant === null ? -1 : index(instant);
    const found = ofState.get(piece) ?? make(instant, state);
    ofState.set(piece, found);
    return found;
  };
}
const MOST_STATES = 100;

/** The class of each time of the day alone, without repair: quick enough for every keystroke. */
export function classesOf(set: PointSet, session: Session, derivation: Derivation, trust: Trust): ClassAt {
  const circumstance = circumstanceOf(set, session, derivation, {
    facts: { rovers: roverNamesOf(trust) },
  });
  const { setupAt, rover, minuteOf } = circumstance;
  const index = piecewise(changesOf(trust, null, derivation));
  const known = new Map<number, PointClass>();
  const classAt = (time: number | null) => {
    const instant = time === null ? null : minuteOf(time);
    const piece = instant === null ? -1 : index(instant);
    const setup = setupAt(instant);
    const found: PointClass =
      known.get(piece) ??
      (outsideOf(setup, instant, circumstance)
        ? 'outside-base'
        : setup && isDuring(rekeyingsOf(setup, trust), instant)
          ? 'in-doubt'
          : classOf(trust.rovers, { setup, rover, instant }));
    known.set(piece, found);
    return found;
  };
  return { classAt, setupAt: (time) => setupAt(time === null ? null : minuteOf(time)) };
}

export interface ClassAt {
  readonly classAt: (instant: number | null) => PointClass;
  readonly setupAt: (instant: number | null) => SetupValues | null;
}

const roverNamesOf = ({ rovers }: Trust) => [...new Set(rovers.map(({ rover }) => rover))];

interface Circumstance {
  /** A time within the last minute of a base is that minute: notes count in minutes. */
  readonly minuteOf: (instant: number) => number;
  /** All bases that the points may be measured from. */
  readonly bases: readonly SetupValues[];
  readonly setupAt: (instant: number | null) => SetupValues | null;
  readonly rover: string | null;
  readonly roverEntry: Rover | null;
  /** All that it may have been. */
  readonly rovers: readonly Rover[];
}

/** A base that is not named is the one that stood at the time, or the only one. */
function circumstanceOf(
  set: PointSet,
  session: Session,
  { setups }: Derivation,
  { facts }: { readonly facts: { readonly rovers: readonly (string | null)[] } },
): Circumstance {
  const { from, by } = saidOf(set);
  const all = [...setups.values()];
  const only = all.length === 1 ? (all[0] ?? null) : null;
  const sole = facts.rovers.length === 1 ? (facts.rovers[0] ?? null) : null;
  const rover = by?.name ?? sole;
  const roverEntry = rover === null ? null : (session.rovers.get(rover) ?? null);
  const own = from ? setups.get(from.name) : undefined;
  const bases = own ? [own] : from ? [] : all;
  return {
    bases,
    minuteOf: (instant) => {
      if (bases.length !== 1) return instant;
      const until = bases[0]?.until ?? null;
      return until !== null && until < instant && instant < until + MINUTE ? until : instant;
    },
    setupAt: (instant) => {
      if (from) return setups.get(from.name) ?? null;
      if (only || instant === null) return only;
      const standing = all.filter(
        (setup) =>
          (setup.from === null || setup.from <= instant) && (setup.until === null || instant <= setup.until),
      );
      return standing.length === 1 ? (standing[0] ?? null) : null;
    },
    rover,
    roverEntry,
    rovers: roverEntry ? [roverEntry] : rover === null ? [...session.rovers.values()] : [],
  };
}

const MINUTE = 60;

/** Why a time is none of the base, as a sentence; null where it is, or where nobody can say. */
function outsideOf(
  setup: SetupValues | null,
  instant: number | null,
  { bases }: Pick<Circumstance, 'bases'>,
): string | null {
  if (instant === null) return null;
  const concerned = setup ? [setup] : bases;
  if (concerned.length === 0 || concerned.some((one) => !isOutside(one, instant))) return null;
  return `${concerned.map(({ setup: one }) => one.name).join(' and ')} did not stand then.`;
}

/** Before the base began or after it ended; an end before the start is no end. */
export const isOutside = ({ from, until }: Pick<SetupValues, 'from' | 'until'>, instant: number) =>
  (from !== null && instant < from) || (until !== null && (from === null || from < until) && instant > until);

/** Times at which a fate may change. */
function changesOf(trust: Trust, repair: Repair | null, { setups }: Derivation): number[] {
  const spans = (rovers: readonly RoverTrust[]) => rovers.flatMap((one) => one.spans);
  const all = [
    ...[...setups.values()],
    ...[...setups.values()].flatMap((setup) => rekeyingsOf(setup, trust)),
    ...spans(trust.rovers),
    ...(repair ? [...repair.remedies, ...repair.refusals, ...spans(repair.asRepaired)] : []),
  ].flatMap(({ from, until }) => [from, until]);
  return [...new Set(all.filter((instant) => instant !== null))].sort((one, other) => one - other);
}

/** Numbers each piece of the time line: an odd number at a change, an even one between two. */
function piecewise(changes: readonly number[]): (instant: number) => number {
  const sorted = Float64Array.from(changes);
  return (instant) => {
    let low = 0;
    let high = sorted.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((sorted[middle] ?? Infinity) < instant) low = middle + 1;
      else high = middle;
    }
    return sorted[low] === instant ? 2 * low + 1 : 2 * low;
  };
}

function fate(
  set: PointSet,
  state: string | undefined,
  instant: number | null,
  circumstance: Circumstance,
  session: Session,
  trust: Trust,
  repair: Repair,
): Fate {
  const { setupAt, rover, roverEntry, rovers } = circumstance;
  const { job } = repair.facts;
  const setup = setupAt(instant);
  const outside = outsideOf(setup, instant, circumstance);
  const found: PointClass = outside ? 'outside-base' : classOf(trust.rovers, { setup, rover, instant });
  const asRepaired = classOf(repair.asRepaired, { setup, rover, instant });
  const drifts = driftsAt(trust.rovers, { setup, rover, instant });
  const moved = carriedBy({ drifts });
  const kept = (reason: string, refused: boolean, reference: Reference | null = null): Fate => ({
    class: found,
    asRepaired: found,
    setup,
    rover: roverEntry,
    remedies: [],
    reference,
    moved,
    refused,
    label: pointClassInWords(found),
    reason,
  });
  if (outside) {
    const at = timeInWords(instant, session.job) ?? 'that time';
    return kept(
      `${outside.replace('then', `at ${at}`)} What these points were measured from is not known.`,
      false,
    );
  }
  if (setup && isDuring(rekeyingsOf(setup, trust), instant)) {
    const at = timeInWords(instant, session.job) ?? 'that time';
    const reason = `Measured at ${at}, in the minute in which ${setup.setup.name} was keyed anew: whether with the values before or after is not known. Note the seconds of the keying.`;
    return {
      ...kept(reason, true),
      class: 'in-doubt',
      asRepaired: 'in-doubt',
      label: pointClassInWords('in-doubt'),
    };
  }
  if (state === 'corrected') return kept('Already corrected; repaired twice it would be wrong again.', true);
  if (!setup)
    return kept('Which base these points were measured from is not known, so nothing is taken off.', true);
  const active = activeAt(setup, rover, instant, repair);
  if ('because' in active) return kept(active.because, true);
  const { remedies, refusals } = active;
  const blocked = refusals.filter(({ agrees }) => !agrees).map(({ because }) => because);
  if (remedies.length === 0) {
    if (blocked.length > 0) return kept(blocked.join(' '), true);
    const [drift] = drifts;
    if (drift) return kept(`${sentence(driftInWords(drift, job))}.`, false);
    const [agreed] = refusals;
    // Checks that pass prove base and rover to be in one system, whatever a transformation is good to.
    const reference = found === 'bracketed' ? null : (agreed?.reference ?? null);
    if (found === 'in-doubt') return kept(unexplained, false, reference);
    const parts = partsAt(trust.rovers, { setup, rover, instant });
    const proved = parts ? `${sentence(partsInWords(parts))}. ` : '';
    return kept(`${proved}${agreed?.because ?? nothingKnown}`, false, reference);
  }
  const refusal = refusalOf(set, state, rovers);
  if (refusal) return kept(refusal, true);
  const reasons = remedies.map((remedy) => remedy.reason);
  return {
    class: found,
    asRepaired,
    setup,
    rover: roverEntry,
    remedies,
    reference: (remedies.find(({ by }) => by === 'event') ?? remedies[0])?.reference ?? null,
    moved,
    refused: false,
    label: `${pointClassInWords(found)}, repaired`,
    reason: [...reasons, ...blocked].join(' '),
  };
}

const sentence = (clause: string) => `${clause[0]?.toUpperCase() ?? ''}${clause.slice(1)}`;
const unexplained = 'A check failed, and nothing in these notes tells what to take off.';
const nothingKnown = 'Nothing is known that should be taken off.';

interface Active {
  readonly remedies: readonly Remedy[];
  readonly refusals: readonly NoRemedy[];
}

/** Points without a time are repaired only where the whole of the setup had one and the same error. */
function activeAt(
  setup: SetupValues,
  rover: string | null,
  instant: number | null,
  { remedies, refusals }: Repair,
): Active | { readonly because: string } {
  const at = (time: number): Active => ({
    remedies: remedies.filter((one) => concerns(one, { setup, rover, instant: time })),
    refusals: refusals.filter((one) => concerns(one, { setup, rover, instant: time })),
  });
  const unclear = remedies.some((one) => one.setup === setup && one.rover !== null && rover === null);
  if (unclear)
    return {
      because:
        'By which rover these points were measured is not known, and the error was not the same for all.',
    };
  if (instant !== null) return at(instant);
  const times = [...remedies, ...refusals]
    .filter((one) => one.setup === setup)
    .flatMap(({ from, until }) => [from, until])
    .filter((time) => time !== null)
    .flatMap((time) => [time - 0.5, time + 0.5]);
  const [first, ...others] = (times.length > 0 ? times : [0]).map(at);
  const same = (one: Active, other: Active) =>
    one.remedies.length === other.remedies.length &&
    one.remedies.every((remedy) => other.remedies.includes(remedy));
  if (first && others.every((other) => same(first, other))) return first;
  return { because: 'The points have no time, and what the base broadcast changed during the day.' };
}

/** Why these points cannot be repaired although the error is known. */
function refusalOf(set: PointSet, state: string | undefined, rovers: readonly Rover[]): string | null {
  if (state === undefined)
    return 'Whether these points are as broadcast or already corrected is not said (state), so nothing is taken off.';
  if (state !== 'as-broadcast')
    return `The state ${state} is not known; it can be as-broadcast or corrected.`;
  for (const { siteCalibration, scale } of rovers) {
    if (siteCalibration && siteCalibration.name !== 'none')
      return `The controller applied the site calibration ${siteCalibration.name}, whose parameters are not given here; without them the error cannot be taken off.`;
    if (scale && isHole(scale)) return `The ground scale of the controller is not given: ${scale.hole}.`;
  }
  if (!set.form) return 'The columns make no position.';
  if (isHole(set.system)) return `The coordinate system of these points is not known: ${set.system.hole}.`;
  if (isHole(set.height) && hasHeight(set)) return `The heights cannot be used: ${set.height.hole}.`;
  return null;
}

export const hasHeight = (set: PointSet) =>
  set.kind === 'point'
    ? set.entry.kind === 'point' &&
      set.entry.observed?.height !== null &&
      set.entry.observed?.height !== undefined
    : set.plan.columns.some((column) => column.role === 'height');
