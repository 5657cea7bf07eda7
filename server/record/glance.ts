/** A day at a glance, as plain rows: each base with its checks and events in order of time, and what of it is not proved. */
import { pointCounts } from '../derive/repair/points-counts.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import { trustOf, type RoverTrust, type Trust } from '../derive/trust/trust.ts';
import { isNeeded } from '../derive/trust/needed.ts';
import { TRUST_CLASSES, type Span, type TrustClass } from '../derive/trust/spans.ts';
import { eventsOf } from '../derive/trust/stretches.ts';
import { timeInWords } from '../derive/trust/words.ts';
import type { SetupValues } from '../derive/setups/setup.ts';
import type { Inspection } from '../inspect.ts';
import { showLength } from '../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../quantities/value.ts';
import { instantOf } from '../session/session.ts';

export interface Glance {
  readonly day: TrustClass;
  /** The stretch that the class of the day is about: `08:25–15:25`; empty where there is none, or several bases. */
  readonly span: string;
  readonly bases: readonly BaseRows[];
  readonly unproved: readonly Unproved[];
  readonly powers: readonly string[];
}
export interface BaseRows {
  readonly name: string;
  /** What its proved part is. */
  readonly proof: 'bracketed' | 'held';
  readonly rows: readonly GlanceRow[];
}
export interface GlanceRow {
  /** Empty where it is not known. */
  readonly time: string;
  readonly what: string;
  readonly verdict: string;
  /** Size and limit; empty where there is none. */
  readonly horizontal: readonly [size: string, limit: string];
  readonly vertical: readonly [size: string, limit: string];
  /** It lies in a stretch that is bracketed or held. */
  readonly proved: boolean;
}
/** What of the day is of a class below held. */
export interface Unproved {
  readonly class: TrustClass;
  readonly spans: readonly string[];
  /** Null where the session has no points. */
  readonly points: number | null;
}

export function glanceOf(inspection: Inspection): Glance {
  const { session, derivation } = inspection;
  const trust = trustOf(session, derivation);
  const [only, ...others] = trust.rovers;
  return {
    day: trust.day,
    span: only && others.length === 0 ? spanOfDay(only, inspection) : '',
    bases: [...derivation.setups.values()].map((setup) => ({
      name: setup.setup.name,
      proof: trust.rovers.some(
        (one) => one.setup === setup && one.spans.some((span) => span.class === 'held'),
      )
        ? 'held'
        : 'bracketed',
      rows: rowsOf(setup, trust, inspection),
    })),
    unproved: unprovedOf(trust, inspection),
    powers: trust.rovers.flatMap((one) => powerOf(one, trust)),
  };
}

const isProved = (found: TrustClass) => found === 'bracketed' || found === 'held';

function spanOfDay({ spans, day }: RoverTrust, inspection: Inspection): string {
  const own = spans.filter((span) => (isProved(day) ? isProved(span.class) : span.class === day));
  const [first] = own;
  const last = own.at(-1);
  return first && last ? between(first.from, last.until, inspection) : '';
}

function between(from: number | null, until: number | null, { session }: Inspection): string {
  const [start, end] = [from, until].map((instant) => timeInWords(instant, session.job));
  if (start && end) return `${start}–${end}`;
  return start ? `from ${start}` : end ? `until ${end}` : '';
}

interface Dated {
  readonly instant: number | null;
  readonly row: Omit<GlanceRow, 'time' | 'proved'>;
}
const NO_SIZE: readonly [string, string] = ['', ''];
const told = (what: string): Dated['row'] => ({
  what,
  verdict: '',
  horizontal: NO_SIZE,
  vertical: NO_SIZE,
});

function rowsOf(setup: SetupValues, trust: Trust, inspection: Inspection): GlanceRow[] {
  const { session, derivation } = inspection;
  const rovers = trust.rovers.filter((one) => one.setup === setup);
  const rekeyed = (rovers[0]?.stretches ?? []).filter(({ opened }) => opened.kind === 're-keyed');
  const inside: Dated[] = [
    ...derivation.checks.filter((check) => check.setup === setup).map(checkRow),
    ...eventsOf(setup, session.events).map((event) => ({
      instant: instantOf(event.at, session.job),
      row: told(event.text ? `${event.what}: ${event.text}` : event.what),
    })),
    ...rekeyed.map(({ from }) => ({ instant: from, row: told('keyed anew') })),
  ].sort((one, other) => (one.instant ?? Infinity) - (other.instant ?? Infinity) || 0);
  const rows = [
    { instant: setup.from, row: told(`set up on ${setup.setup.on?.name ?? '?'}`) },
    ...inside,
    ...(setup.until === null ? [] : [{ instant: setup.until, row: told('taken down') }]),
  ];
  return rows.map(({ instant, row }) => ({
    ...row,
    time: timeInWords(instant, session.job) ?? '',
    proved: instant !== null && rovers.length > 0 && rovers.every(({ spans }) => isWithin(instant, spans)),
  }));
}

const isWithin = (instant: number, spans: readonly Span[]) =>
  spans.some(
    ({ class: found, from, until }) =>
      isProved(found) && from !== null && until !== null && from <= instant && instant <= until,
  );

function checkRow({ check, instant, verdict, residual, tolerance, expected }: CheckValues): Dated {
  const judged = !isHole(residual.horizontal) || !isHole(residual.up);
  const row = {
    what: check.name,
    verdict: judged ? verdict : 'not compared',
    horizontal: sizeOf(residual.horizontal, tolerance.horizontal, expected.horizontal),
    vertical: sizeOf(residual.up, tolerance.up, expected.up),
  };
  return { instant, row };
}

/** Without a tolerance the limit is what a right check stays within. */
function sizeOf(
  size: Maybe<Value>,
  tolerance: Maybe<Value>,
  expected: Maybe<Value>,
): readonly [string, string] {
  if (isHole(size)) return NO_SIZE;
  const limit = isHole(tolerance) ? expected : tolerance;
  return [showLength(Math.abs(size.value)), isHole(limit) ? '' : showLength(limit.value)];
}

function unprovedOf(trust: Trust, inspection: Inspection): Unproved[] {
  const { session, derivation } = inspection;
  const counts = derivation.points.map((set) => pointCounts(set, session, derivation, trust));
  const several = trust.rovers.length > 1;
  const needed = isNeeded(derivation.points);
  return TRUST_CLASSES.filter((found) => !isProved(found)).flatMap((found): Unproved[] => {
    const spans = trust.rovers.flatMap((one) => {
      const { setup, rover, spans: own } = one;
      // Where nothing is proved it is told, whether anybody measured or not.
      const isTold = (span: Span) => found === 'in-doubt' || !isProved(one.day) || needed(one, span);
      return own
        .filter((span) => span.class === found && isTold(span))
        .map(({ from, until }) => {
          const who = several ? [setup.setup.name, rover].filter((name) => name !== null).join(' ') : '';
          return [who, between(from, until, inspection) || 'the whole day'].filter(Boolean).join(' ');
        });
    });
    const points = counts.reduce((sum, { classes }) => sum + classes[found], 0);
    if (spans.length === 0 && points === 0) return [];
    return [{ class: found, spans: [...new Set(spans)], points: counts.length === 0 ? null : points }];
  });
}

function powerOf({ setup, rover, smallest }: RoverTrust, trust: Trust): string[] {
  if (!smallest) return [];
  const who =
    trust.rovers.length > 1
      ? `The checks from ${[setup.setup.name, rover].filter((name) => name !== null).join(' with ')}`
      : 'These checks';
  return [
    `${who} would have shown a move of ${showLength(smallest.horizontal.value)} horizontally or ${showLength(smallest.up.value)} vertically (80 % power).`,
  ];
}
