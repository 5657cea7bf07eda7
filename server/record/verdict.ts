/** The verdict of a session in a sentence, what to do next, and whether the day is proved as far as somebody asks. */
import { pointCounts, type PointCounts } from '../derive/repair/points-counts.ts';
import type { PointSet } from '../derive/points/points.ts';
import { isNeeded } from '../derive/trust/needed.ts';
import { meets, trustOf, type RequiredProof, type Trust } from '../derive/trust/trust.ts';
import { classInWords, verdictSentence } from '../derive/trust/words.ts';
import { isFlaw, POINT_CLASSES, pointClassInWords, type PointClass } from '../derive/repair/flaws.ts';
import type { TrustClass } from '../derive/trust/spans.ts';
import { assumedForPasses } from './assumed-for-passes.ts';
import type { SetupValues } from '../derive/setups/setup.ts';
import type { Finding } from '../findings/finding.ts';
import type { Inspection } from '../inspect.ts';
import { isHole } from '../quantities/value.ts';
import type { Job } from '../session/entries.ts';
import { whereIs } from '../session/where.ts';

export interface Verdict {
  /** What the day is worth; null where no base is set up. */
  readonly day: TrustClass | null;
  /** Null where no base is set up: a file of marks has no day. */
  readonly sentence: string | null;
  /** What nobody wrote down and the checks that pass rest on; null where there is nothing. */
  readonly assumed: string | null;
  /** Null where nothing is left to do. */
  readonly next: string | null;
  /** A base has been told something, or something was measured from it; before that a day has nothing to show. */
  readonly begun: boolean;
}

export function verdictOf(inspection: Inspection): Verdict {
  const { session, derivation } = inspection;
  const trust = hasDay(inspection) ? trustOf(session, derivation) : null;
  return {
    day: trust?.day ?? null,
    sentence: trust && sentenceOf(trust, inspection),
    assumed: trust && assumedForPasses(derivation.checks, session.job),
    next: nextStep(trust, inspection),
    begun: isBegun(trust, inspection),
  };
}

/** `Proved: 08:25 to 15:25 is bracketed`, where all that was measured is; where nobody measured nothing is missing. */
function sentenceOf(trust: Trust, inspection: Inspection): string {
  const { session, derivation, findings } = inspection;
  const sentence = daySentence(trust, session.job, derivation.points);
  const wrong = findings.some(({ severity }) => severity === 'error');
  const proved = !wrong && trust.rovers.length > 0 && shortfalls(inspection, 'held').length === 0;
  return proved && isAllProved(trust, derivation.points) ? `Proved: ${sentence}` : sentence;
}

/** What a day is worth, without what nobody misses. */
export const daySentence = (trust: Trust, job: Job | null, points: readonly PointSet[]): string =>
  trust.rovers.length === 0 ? trust.verdict : verdictSentence(trust.rovers, job, isNeeded(points));

/** Points tell it by their classes; without any, each part that is needed must be proved. */
function isAllProved({ rovers }: Trust, points: readonly PointSet[]): boolean {
  if (points.length > 0) return true;
  const needed = isNeeded(points);
  return rovers.every((one) => one.spans.every((span) => meets(span.class, 'held') || !needed(one, span)));
}

/** What of a session is worth less than was asked for, as sentences; none where all of it is proved so far. */
export function shortfalls(inspection: Inspection, required: RequiredProof): string[] {
  if (!hasDay(inspection)) return [];
  const { session, derivation } = inspection;
  const trust = trustOf(session, derivation);
  const day = meets(trust.day, required) ? [] : [`the day is ${classInWords(trust.day)}`];
  const points = derivation.points.flatMap((set) =>
    pointsShort(pointCounts(set, session, derivation, trust), required),
  );
  return [...day, ...points];
}

function pointsShort({ set, classes, refused }: PointCounts, required: RequiredProof): string[] {
  if (refused !== null) return [`${set.name} cannot be read (${refused})`];
  const short = (found: PointClass) => isFlaw(found) || !meets(found, required);
  return POINT_CLASSES.filter((found) => classes[found] > 0 && short(found)).map((found) => {
    if (set.kind === 'point') return `point ${set.name} is ${pointClassInWords(found)}`;
    const many = classes[found] > 1;
    const of = set.kind === 'file' ? set.name : 'the rows';
    return `${classes[found]} point${many ? 's' : ''} of ${of} ${many ? 'are' : 'is'} ${pointClassInWords(found)}`;
  });
}

/** Questions of a day that goes on, without an answer yet. */
export const openCount = (findings: readonly Finding[]) =>
  findings.filter(({ code, severity }) => code === 'syntax/open-value' && severity === 'hint').length;

const isBegun = (trust: Trust | null, { findings, derivation }: Inspection) =>
  trust !== null &&
  !(
    trust.day === 'unchecked' &&
    findings.some(({ code }) => code === 'syntax/open-value') &&
    [...derivation.setups.values()].some(isUntold)
  );

const hasDay = ({ session, derivation }: Inspection) =>
  session.setups.size > 0 ||
  !derivation.whole ||
  session.points.length > 0 ||
  session.singlePoints.length > 0;

function nextStep(trust: Trust | null, { findings, session, derivation }: Inspection): string | null {
  const error = findings.find(({ severity }) => severity === 'error');
  if (error) return `Fix ${lineOf(error, session)} first (${error.code}), then check again.`;
  if (!trust) return null;
  const question = findings.find(({ code }) => code === 'syntax/open-value');
  // A base that cannot be told anything yet comes before its check.
  if (question && !isBegun(trust, { findings, session, derivation }))
    return `Answer ${lineOf(question, session)}.`;
  const cause = trust.day === 'in-doubt' ? causeOfFailing(findings) : null;
  if (cause) return `Fix ${lineOf(cause, session)} first (${cause.code}): it explains why the check failed.`;
  const open = [...derivation.setups.values()].some(({ setup }) => setup.until === null);
  return open ? STEPS_WHILE_OPEN[trust.day] : STEPS_AFTERWARDS[trust.day];
}

/** What the failed checks hang under; null where one of them stands for itself. */
function causeOfFailing(findings: readonly Finding[]): Finding | null {
  if (findings.some(({ code }) => code === 'check/fails')) return null;
  return findings.find(({ related }) => related.some(({ code }) => code === 'check/fails')) ?? null;
}

function lineOf({ place }: Finding, session: Inspection['session']): string {
  const { path, line } = whereIs(session, place);
  return path === session.document.path ? `line ${line}` : `line ${line} of ${path}`;
}

const isUntold = ({ tell }: SetupValues) =>
  isHole(tell.latitude) || isHole(tell.ellipsoidalHeight) || isHole(tell.antennaHeight);

const STEPS_WHILE_OPEN: Readonly<Record<TrustClass, string | null>> = {
  unchecked: 'Check a second known mark before the work begins.',
  'position-only': 'Check a mark of known height as well.',
  'height-only': 'Check a mark of known position as well.',
  'not-opened': 'Check a known mark before you measure anything else.',
  'not-closed': 'Check a known mark again before the base is taken down.',
  'in-doubt': 'Measure nothing more from this base before the cause is known.',
  held: 'Check a known mark again before the base is taken down.',
  bracketed: 'Check a known mark again before the base is taken down.',
};

const STEPS_AFTERWARDS: Readonly<Record<TrustClass, string | null>> = {
  unchecked: 'Measure some of the points again from a base that is checked on a second known mark.',
  'position-only':
    'Use no height of these points before some are measured again from a base whose height is checked.',
  'height-only':
    'Use no position of these points before some are measured again from a base whose position is checked.',
  'not-opened': 'Measure some of the first points again from a base that is checked.',
  'not-closed': 'Measure some of the last points again from a base that is checked.',
  'in-doubt': 'Use none of the points in doubt before the cause is known.',
  held: null,
  bracketed: null,
};
