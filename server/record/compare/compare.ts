/** What changed in results between two versions of a session; blanks, comments and line ends change nothing. */
import { listValues, type Listed } from '../../derive/listing.ts';
import { countsInWords, pointCounts } from '../../derive/repair/points-counts.ts';
import { trustOf } from '../../derive/trust/trust.ts';
import type { Finding } from '../../findings/finding.ts';
import type { Inspection } from '../../inspect.ts';
import { showAngle, showLength, showNumber } from '../../quantities/show.ts';
import { isHole, type Maybe, type Unit, type Value } from '../../quantities/value.ts';
import { largestShift, type PointsShift } from './points.ts';
import { thingChanges, type ThingChange } from './things.ts';
import { verdictOf } from '../verdict.ts';

export interface Comparison {
  /** Whether one of the two says nothing at all, as of a file that was added or deleted. */
  readonly session: 'new' | 'gone' | null;
  /** `2 marks, 1 setup, 3 checks; 1 error`, of a session that is new or gone. */
  readonly holds: string;
  readonly things: readonly ThingChange[];
  /** Those of the things that are new, gone or renamed as well. */
  readonly values: readonly ValueChange[];
  /** Null where the verdict reads the same. */
  readonly verdict: { readonly before: string; readonly after: string } | null;
  /** Sets of points of which another number stands in some class. */
  readonly points: readonly PointsChange[];
  /** The point that came to lie farthest from where it was, as measured or as repaired; null where none moved. */
  readonly largestShift: PointsShift | null;
  readonly gone: readonly FindingChange[];
  readonly come: readonly FindingChange[];
}

export interface ValueChange {
  readonly id: string;
  /** Null where the value is missing in that version, or is not listed in it at all. */
  readonly before: string | null;
  readonly after: string | null;
  /** By how much, where both are there. */
  readonly moved: string | null;
}

export interface PointsChange {
  readonly name: string;
  /** `212 bracketed, 3 not closed`; null where the version has no such set. */
  readonly before: string | null;
  readonly after: string | null;
}

export interface FindingChange {
  readonly code: string;
  readonly severity: string;
  readonly message: string;
}

/** Moves below this are the computer's own: a hundredth of a millimetre, and what that is in degrees. */
const SMALLEST: Readonly<Record<Unit, number>> = {
  ...{ m: 5e-6, '°': 5e-11, '': 5e-11, s: 5e-4, W: 5e-4 },
  ...{ B: 0.5, 'B/s': 0.5, 'bit/s': 0.5, Hz: 0.5, dB: 0.05, dBm: 0.05 },
};

export function compareInspections(before: Inspection, after: Inspection): Comparison {
  const then = verdictOf(before).sentence ?? '';
  const now = verdictOf(after).sentence ?? '';
  const session = isEmpty(after) ? 'gone' : 'new';
  return {
    session: isEmpty(before) === isEmpty(after) ? null : session,
    holds: holdings(session === 'gone' ? before : after),
    things: thingChanges(before, after, isSameValue),
    values: valueChanges(listValues(before.derivation), listValues(after.derivation)),
    verdict: then === now ? null : { before: then, after: now },
    points: pointsChanges(before, after),
    largestShift: largestShift(before, after),
    gone: findingsOnlyIn(before.findings, after.findings),
    come: findingsOnlyIn(after.findings, before.findings),
  };
}

export const isSame = ({ session, things, values, verdict, points, largestShift, gone, come }: Comparison) =>
  session === null &&
  verdict === null &&
  largestShift === null &&
  [things, values, points, gone, come].every((changes) => changes.length === 0);

/** Whether a text is blank, or comments alone. */
const isEmpty = ({ session }: Inspection) => !/^[^\S\r\n]*[^\s#]/m.test(session.document.text);

function holdings({ derivation, findings }: Inspection): string {
  const counts = (pairs: readonly (readonly [number, string])[]) =>
    pairs
      .filter(([count]) => count > 0)
      .map(([count, name]) => `${count} ${name}${count === 1 ? '' : 's'}`)
      .join(', ');
  const found = (severity: Finding['severity']) =>
    findings.filter((finding) => finding.severity === severity).length;
  return [
    counts([
      [derivation.marks.size, 'mark'],
      [derivation.setups.size, 'setup'],
      [derivation.checks.length, 'check'],
    ]),
    counts([
      [found('error'), 'error'],
      [found('warning'), 'warning'],
    ]),
  ]
    .filter((text) => text !== '')
    .join('; ');
}

function pointsChanges(before: Inspection, after: Inspection): PointsChange[] {
  const then = pointsByClass(before);
  const now = pointsByClass(after);
  return [...new Set([...now.keys(), ...then.keys()])].flatMap((name) => {
    const change = { name, before: then.get(name) ?? null, after: now.get(name) ?? null };
    return change.before === change.after ? [] : [change];
  });
}

/** What stands of each set of points, in words. */
function pointsByClass({ session, derivation }: Inspection): Map<string, string> {
  if (derivation.points.length === 0) return new Map();
  const trust = trustOf(session, derivation);
  return new Map(
    derivation.points.map((set) => [set.name, countsInWords(pointCounts(set, session, derivation, trust))]),
  );
}

function valueChanges(before: readonly Listed[], after: readonly Listed[]): ValueChange[] {
  const then = new Map(before.map(({ id, value }) => [id, value]));
  const now = new Map(after.map(({ id, value }) => [id, value]));
  const ids = [...now.keys(), ...[...then.keys()].filter((id) => !now.has(id))];
  return ids.flatMap((id) => {
    const change = valueChange(id, known(then.get(id)), known(now.get(id)));
    return change ? [change] : [];
  });
}

const isSameValue = (before: Listed, after: Listed) =>
  valueChange(after.id, known(before.value), known(after.value)) === null;

const known = (value: Maybe<Value> | undefined): Value | null =>
  value === undefined || isHole(value) ? null : value;

function valueChange(id: string, before: Value | null, after: Value | null): ValueChange | null {
  if (!before && !after) return null;
  if (!before || !after)
    return { id, before: before && shown(id, before), after: after && shown(id, after), moved: null };
  const difference = after.value - before.value;
  if (Math.abs(difference) < (isChance(id) ? SMALLEST_CHANCE : SMALLEST[after.unit])) return null;
  return {
    id,
    before: shown(id, before),
    after: shown(id, after),
    moved: isChance(id) ? null : movedBy(difference, after),
  };
}

/** The probability of a residual, which nobody reads beyond its third digit. */
const isChance = (id: string) => /^check\/[^/]*\/chance\//.test(id);
const SMALLEST_CHANCE = 5e-4;

function shown(id: string, value: Value): string {
  if (isChance(id)) return showNumber(value.value, 3);
  if (value.unit === '°' && id.endsWith('latitude')) return showAngle(value.value, 'N');
  if (value.unit === '°' && id.endsWith('longitude')) return showAngle(value.value, 'E');
  if (value.unit === '°') return `${showNumber(value.value, 7)}°`;
  return value.unit === '' ? showNumber(value.value, 9) : `${showNumber(value.value, 4)} ${value.unit}`;
}

/** Angles are told as the distance that they are on the ground, as far as that can be said in one number. */
function movedBy(difference: number, { unit }: Value): string {
  const sign = difference > 0 ? '+' : '';
  if (unit === 'm') return sign + showLength(difference);
  if (unit === '°') return `${sign}${showNumber(difference * 3600, 5)}″`;
  return sign + showNumber(difference, 9);
}

/** A finding is the same one where its code and its sentence are; where it stands does not matter. */
function findingsOnlyIn(these: readonly Finding[], those: readonly Finding[]): FindingChange[] {
  const left = new Map<string, number>();
  const key = ({ code, severity, message }: Finding) => JSON.stringify([code, severity, message]);
  for (const finding of those) left.set(key(finding), (left.get(key(finding)) ?? 0) + 1);
  return these.flatMap((finding) => {
    const count = left.get(key(finding)) ?? 0;
    left.set(key(finding), count - 1);
    const { code, severity, message } = finding;
    return count > 0 ? [] : [{ code, severity, message }];
  });
}
