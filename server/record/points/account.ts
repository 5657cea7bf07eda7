/** The account of a repair, in Markdown: what was read, what was taken off and why, what was not, and what it all rests on. */
import type { Derivation } from '../../derive/derivation.ts';
import { daySentence } from '../verdict.ts';
import { saidOf, type PointSet, type Repeated } from '../../derive/points/points.ts';
import { BEND_ASSUMPTIONS, GEOID_SLOPE } from '../../derive/repair/bend.ts';
import { controllersGeoid } from '../../derive/repair/row.ts';
import { type Remedy, type Repair, type RepairedCheck } from '../../derive/repair/repair.ts';
import { POWER } from '../../derive/trust/movement.ts';
import { EPOCHS_LIMIT, PDOP_LIMIT, SATELLITES_LIMIT, shortfallsOf } from '../../derive/checks/quality.ts';
import type { Trust } from '../../derive/trust/trust.ts';
import { doubtInWords, driftInWords, timeInWords } from '../../derive/trust/words.ts';
import { toRadians } from '../../geodesy/angles.ts';
import { leavesOf } from '../../quantities/computed.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import { showLength, showNumber, showValue } from '../../quantities/show.ts';
import { isHole, type Assumed } from '../../quantities/value.ts';
import type { Session } from '../../session/session.ts';
import { problemsOf, type Tally } from './tally.ts';

export interface AccountOf {
  readonly session: Session;
  readonly derivation: Derivation;
  readonly trust: Trust;
  readonly repair: Repair;
  readonly tallies: readonly Tally[];
  /** Files that were written beside the account, each with what it was made from. */
  readonly files: readonly { readonly name: string; readonly from: string }[];
  /** Formats that could not be written, and why. */
  readonly refusals: readonly string[];
  /** Corrections from which no repair follows, as sentences. */
  readonly unclear: readonly string[];
  /** Digests of what was read, by name. */
  readonly digests: ReadonlyMap<string, string>;
}

export function pointsAccount(of: AccountOf): string {
  const parts = [
    ['Points and their repair', opening(of)],
    ['What the day is worth', verdict(of)],
    ['What was taken off', remedies(of)],
    ['Checks as repaired', checks(of)],
    ...of.tallies.map((tally) => [`Points of ${titleOf(tally.set)}`, points(tally, of)] as const),
    ['How good the points are', uncertainty(of)],
    ['What this rests on', assumptions(of)],
    ['Files', files(of)],
  ] as const;
  return parts
    .filter(([, lines]) => lines.length > 0)
    .map(([title, lines], index) => `${index === 0 ? '#' : '##'} ${escaped(title)}\n\n${lines.join('\n')}\n`)
    .join('\n');
}

function opening({ session, tallies, digests }: AccountOf): string[] {
  const repaired = tallies.reduce((sum, tally) => sum + tally.repaired, 0);
  const total = tallies.reduce((sum, tally) => sum + tally.total, 0);
  const title = session.job?.title ? ` (${escaped(session.job.title)})` : '';
  return [
    `${repaired} of ${total} points of ${escaped(session.document.path)}${title} were repaired. What was read has not been touched.`,
    '',
    ...[...digests].map(([name, digest]) => `- read: ${escaped(name)}, SHA-256 ${digest}`),
  ];
}

function verdict({ trust, session, derivation }: AccountOf): string[] {
  const events = trust.events.map((doubt) => {
    const at = timeInWords(doubt.setup ? instantOfEvent(doubt) : null, session.job);
    return `- ${escaped(doubt.event.what)}${at ? ` at ${at}` : ''}: ${escaped(doubtInWords(doubt, session.job))}`;
  });
  const drifts = trust.rovers.flatMap(({ drifts: found }) =>
    found.map(
      (drift) => `- movement: ${escaped(driftInWords(drift, session.job))}, more than chance allows.`,
    ),
  );
  const weak = trust.rovers.flatMap(({ checks: all }) =>
    all.flatMap(({ check, quality }) =>
      shortfallsOf(quality, session.job?.limits ?? null).map(
        ({ sentence }) => `- weak: ${escaped(check.name)} is ${escaped(sentence)}.`,
      ),
    ),
  );
  return [
    escaped(daySentence(trust, session.job, derivation.points)),
    '',
    'These words speak of the base and of the settings of that rover, never of a point itself.',
    '',
    ...events,
    ...drifts,
    ...new Set(weak),
  ];
}

const instantOfEvent = ({ after, before }: Trust['events'][number]) => after?.from ?? before?.until ?? null;

function remedies({ repair, session, unclear }: AccountOf): string[] {
  const notUsed = unclear.map((sentence) => `- ${escaped(sentence)}.`);
  if (repair.remedies.length === 0) {
    const reasons = [...new Set(repair.refusals.map(({ because }) => because))];
    return ['Nothing.', '', ...reasons.map((reason) => `- ${escaped(reason)}`), ...notUsed];
  }
  return [
    'The error of the broadcast antenna position is taken off each point in geocentric space; what is taken off is given in the horizon of the base.',
    '',
    ...repair.remedies.map((remedy) => remedyLine(remedy, session)),
    ...[...new Set(repair.refusals.filter(({ agrees }) => !agrees).map(({ because }) => because))].map(
      (because) => `- not taken off: ${escaped(because)}`,
    ),
    ...notUsed,
  ];
}

function remedyLine({ setup, rover, from, until, reason, size, by }: Remedy, { job }: Session): string {
  const span = [
    from === null ? null : `from ${timeInWords(from, job) ?? ''}`,
    until === null ? null : `until ${timeInWords(until, job) ?? ''}`,
  ].filter((words) => words !== null);
  const who = rover === null ? setup.setup.name : `${setup.setup.name}, ${rover}`;
  const marks = {
    keyed: 'what was keyed',
    slip: 'a slip that a correction confirms',
    event: 'failing checks',
  }[by];
  return `- ${escaped(who)}${span.length > 0 ? `, ${span.join(' ')}` : ''}, by ${marks}: ${escaped(reason)} Exactly ${vector(size)}.`;
}

const vector = ({ east, north, up }: Remedy['size']) =>
  `${showNumber(east, 4)} m east, ${showNumber(north, 4)} m north, ${showNumber(up, 4)} m up`;

function checks({ repair }: AccountOf): string[] {
  if (repair.remedies.length === 0) return [];
  const row = ({ check, east, north, up, verdict: found, ownError }: RepairedCheck) =>
    `| ${escaped(check.check.name)} | ${check.verdict} | ${millimetres(east)} | ${millimetres(north)} | ${millimetres(up)} | ${found}${ownError ? ' (its own error was taken off)' : ''} |`;
  return [
    '| check | as measured | east, mm | north, mm | up, mm | as repaired |',
    '| --- | --- | ---: | ---: | ---: | --- |',
    ...repair.checks.map(row),
  ];
}

const millimetres = (length: number | null) => (length === null ? '?' : showNumber(length * 1000, 1));

function points(tally: Tally, { session, derivation }: AccountOf): string[] {
  const { set, facts, labels, reasons, withoutTime, bent, largestBend, repeated, manyNames } = tally;
  if (isRefusal(facts)) return [`Cannot be read: ${escaped(facts.refused)}.`];
  const said = saidOf(set);
  const spoken = [
    `base ${said.from?.name ?? 'not named'}`,
    `rover ${said.by?.name ?? 'not named'}`,
    `state ${said.state?.name ?? 'not said'}`,
  ];
  return [
    `${escaped(spoken.join(', '))}.`,
    '',
    '| class | points |',
    '| --- | ---: |',
    ...[...labels].map(([label, count]) => `| ${escaped(label)} | ${count} |`),
    '',
    ...[...reasons].map(([reason, count]) => `- ${count}: ${escaped(reason)}`),
    ...(withoutTime > 0
      ? [`- ${withoutTime} without a time: these have the worst class that they could have.`]
      : []),
    ...(bent > 0
      ? [
          `- ${bent} ${bent === 1 ? 'is' : 'are'} bent by up to ${showLength(largestBend)}: process the raw observations again with the right base.`,
        ]
      : []),
    ...repeated.slice(0, MOST_LISTED).map((pair) => repeatedLine(pair, set, derivation)),
    ...(repeated.length > MOST_LISTED ? [`- ${repeated.length - MOST_LISTED} more repeated points.`] : []),
    ...clashesOf(tally),
    ...(manyNames ? ['- Repeated points were looked for among the first 100 000 different names only.'] : []),
    ...set.problems.map(({ sentence }) => `- problem: ${escaped(sentence)}`),
    ...problemsOf(tally).map(
      ({ sentence, line }) =>
        `- problem: ${escaped(set.path ?? session.document.path)}${line === undefined ? '' : set.kind === 'rows' ? `, row ${line}` : `:${line}`}: ${escaped(sentence)}`,
    ),
  ];
}
/** Names that stand for several places. */
const clashesOf = ({ clashes: { count, worst } }: Tally) =>
  worst
    ? [
        `- ${count} ${count === 1 ? 'point has' : 'points have'} the name of another place: ${escaped(worst.name)} (rows ${worst.lines.join(' and ')}) ${showLength(worst.apart)} apart.`,
      ]
    : [];
const MOST_LISTED = 20;

/** Differences of one point measured twice, as measured. */
function repeatedLine({ name, first, second }: Repeated, set: PointSet, { frame }: Derivation): string {
  const [a, b, c] = [second.first - first.first, second.second - first.second, second.third - first.third];
  const radius =
    frame.geographic && !isHole(frame.geographic) ? frame.geographic.datum.ellipsoid.semiMajor : 6_378_137;
  const [east, north] =
    set.form === 'geographic'
      ? [toRadians(b) * radius * Math.cos(toRadians(first.first)), toRadians(a) * radius]
      : [a, b];
  const minutes = Math.round((second.time - first.time) / 60);
  const sizes =
    set.form === 'geocentric'
      ? `${showLength(Math.hypot(a, b, c))} apart`
      : `${showLength(Math.hypot(east, north))} apart horizontally${Number.isNaN(c) ? '' : `, ${showLength(c)} up`}`;
  return `- repeated: ${escaped(name)} was measured again ${Math.abs(minutes)} minutes ${minutes < 0 ? 'before' : 'later'} (rows ${first.line} and ${second.line}): ${sizes}.`;
}

function uncertainty({ derivation, tallies }: AccountOf): string[] {
  if (tallies.every(({ total }) => total === 0)) return [];
  const level = `${Math.round(derivation.frame.confidence.value * 1000) / 10} %`;
  return [
    `Uncertainties are what a point stays within at ${level}: a radius horizontally, and a half-width up.`,
    '',
    '- Horizontally U = k · √(u² + u_m²) + b, up the same: u is what one occupation spreads (receivers over the distance, centring, pole, taped height), u_m the stated uncertainty of the mark that the points stand on, k the radius of a circular or the half-width of a normal distribution, and b the bending below (JCGM 100:2008, 5.1.2 and F.2.4.5).',
    '- A wrong base also bends the vectors that are measured from it, by about 0.03 ppm of the distance for each metre of its error. This is not taken off; b is what it stays within in 95 % of simulated cases: 0.037 ppm horizontally for each metre of height error, 0.056 ppm up for each metre of horizontal error, and about 0.016 ppm in the other direction.',
    '- Where the uncertainty of the mark is not stated, where a point is in doubt as it stands, or where a known error stays in it, none is given.',
  ];
}

function assumptions({ session, trust, derivation, repair, tallies }: AccountOf): string[] {
  const used = new Map<string, Assumed>();
  const add = (value: Assumed) => used.set(`${value.name} ${value.value}`, value);
  for (const { checks: all, smallest } of trust.rovers) {
    if (smallest) add(POWER);
    for (const { occupation, quality } of all) {
      for (const value of occupation ? [occupation.axis, occupation.up] : [])
        for (const leaf of leavesOf(value)) if (leaf.origin === 'assumed' && isDefault(leaf)) add(leaf);
      const limits = derivation.frame.job?.limits;
      if (quality && !limits?.pdop) add(PDOP_LIMIT);
      if (quality && !limits?.satellites) add(SATELLITES_LIMIT);
      if (quality && !limits?.epochs) add(EPOCHS_LIMIT);
    }
  }
  if (derivation.frame.confidence.origin === 'assumed') add(derivation.frame.confidence);
  if (repair.remedies.length > 0) BEND_ASSUMPTIONS.forEach(add);
  const rover = ({ set }: Tally) => session.rovers.get(saidOf(set).by?.name ?? '') ?? null;
  const withoutGeoid = tallies.some((tally) => controllersGeoid(rover(tally), derivation) === null);
  if (repair.remedies.length > 0 && withoutGeoid) add(GEOID_SLOPE);
  for (const { set } of tallies) set.assumptions.forEach(add);
  const rovers = [
    ...new Set(tallies.map(({ set }) => saidOf(set).by?.name).filter((name) => name !== undefined)),
  ];
  return [
    ...[...used.values()].map(
      (value) =>
        `- ${escaped(value.name)} ${value.unit === '' ? String(Number(value.value.toPrecision(4))) : showValue(value)}: ${escaped(value.because)}`,
    ),
    ...(rovers.length > 0
      ? [
          `- ${escaped(rovers.join(', '))}: no site calibration and no ground scale where the notes name none, and the geoid model of the job where they name no other.`,
        ]
      : []),
  ];
}

/** A computed level that stands in as an input is no default of ours. */
const isDefault = ({ because }: Assumed) => because.includes('common practice');

function files({ files: written, refusals, tallies }: AccountOf): string[] {
  if (written.length === 0 && refusals.length === 0) return [];
  const sets = tallies.some(({ set }) => set.form !== null);
  return [
    ...written.map(({ name, from }) => `- ${escaped(name)}: ${escaped(from)}`),
    ...refusals.map((refusal) => `- not written: ${escaped(refusal)}`),
    '',
    ...(sets
      ? [
          'In tables and features a repaired point has the state `corrected`; read again with that state it is refused, since repaired twice it would be wrong. The shift is what was added to the coordinates: in a grid along its axes, else in the horizon of the point. A text that a spreadsheet would run as a formula has an apostrophe before it, which goes away when the table is read here again.',
        ]
      : []),
  ];
}

const titleOf = (set: PointSet) =>
  set.kind === 'file' ? set.name : set.kind === 'rows' ? 'the rows of the session' : `point ${set.name}`;

/** What stands in notes and files must not become markup. */
const escaped = (text: string) =>
  text.replace(/[\r\n]+/g, ' ').replace(/[\\`*_[\]<>|#&]/g, (sign) => `\\${sign}`);
