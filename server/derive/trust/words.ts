/** Trust in words: the verdict of a session in one sentence, classes and times of day as one says them. */
import { isHole } from '../../quantities/value.ts';
import { allOf, showLength } from '../../quantities/show.ts';
import type { Job } from '../../session/entries.ts';
import type { Drift } from './drift.ts';
import type { EventDoubt, RoverTrust } from './trust.ts';
import type { Parts, Span, TrustClass } from './spans.ts';
import type { Boundary } from './stretches.ts';

export const classInWords = (found: TrustClass): string => found.replace('-', ' ');

/** An instant as the clock of the job showed it: `08:31`; with its date where that is not the job's. */
export function timeInWords(instant: number | null, job: Job | null): string | null {
  if (instant === null || !(Math.abs(instant) < NO_CALENDAR)) return null;
  const time = timeOfDay(instant, job);
  const day = Math.floor((instant + offsetOf(job)) / DAY);
  const own = job?.date && !isHole(job.date) ? job.date.day : 0;
  return day === own ? time : `${new Date(day * DAY * 1000).toISOString().slice(0, 10)} ${time}`;
}

/** The same without a date. */
export function timeOfDay(instant: number, job: Job | null): string {
  const ofDay = (((instant + offsetOf(job)) % DAY) + DAY) % DAY;
  const pad = (number: number) => String(Math.floor(number)).padStart(2, '0');
  const rest = ofDay % 60;
  return `${pad(ofDay / 3600)}:${pad((ofDay % 3600) / 60)}${rest === 0 ? '' : `:${pad(rest)}`}`;
}

const offsetOf = (job: Job | null) => (job?.clock && !isHole(job.clock) ? job.clock.seconds : 0);
const DAY = 86_400;
/** Seconds beyond which days have no dates. */
const NO_CALENDAR = 8e12;

/** What the words for a class mean, once in a sentence; the others say it themselves. */
const MEANINGS: Partial<Record<TrustClass, string>> = {
  'not-opened': 'no check that agrees before it',
  'not-closed': 'no check that agrees after it',
};

/** `08:25 to 15:25 is bracketed, held across the disturbance at 11:10; 15:25 to 15:40 is not closed (no check that agrees after it).` */
export function verdictSentence(
  rovers: readonly RoverTrust[],
  job: Job | null,
  isMeasured: (one: RoverTrust, span: Span) => boolean = () => true,
): string {
  if (rovers.length === 0) return 'These notes set up no base, so that no point can be judged.';
  const bases = new Set(rovers.map(({ setup }) => setup)).size;
  const several = new Set(rovers.map(({ rover }) => rover)).size > 1;
  const explained = new Set<TrustClass>();
  const parts = rovers.map((one) => {
    const who = [bases > 1 ? one.setup.setup.name : null, several ? one.rover : null].filter(
      (name) => name !== null,
    );
    return `${who.length > 0 ? `${who.join(', ')}: ` : ''}${roverSentence(one, job, explained, isMeasured)}`;
  });
  return `${parts.join('; ')}.`;
}

function roverSentence(
  one: RoverTrust,
  job: Job | null,
  explained: Set<TrustClass>,
  isMeasured: (one: RoverTrust, span: Span) => boolean,
): string {
  // Where nobody measured there is nothing to prove, unless a check failed there.
  const spoken = one.spans.filter((span) => !isOpen(span.class) || isMeasured(one, span));
  const runs = runsOf(spoken.length > 0 ? spoken : one.spans);
  const spans = runs.map((run) => `${runInWords(run, one, job)}${reasonOf(run, explained)}`);
  const { smallest } = one;
  const seen = smallest
    ? `; a movement of ${showLength(smallest.horizontal.value)} horizontally or ${showLength(smallest.up.value)} up would have been seen (80 % power)`
    : '';
  return spans.join('; ') + seen;
}

const isOpen = (found: TrustClass) => found !== 'bracketed' && found !== 'held' && found !== 'in-doubt';

/** Of a run whose words give no reason of their own. */
function reasonOf({ spans, class: found }: Run, explained: Set<TrustClass>): string {
  if (spans.some(({ mayBeParted }) => mayBeParted === true)) return ' (an event has no time)';
  return spans.some(({ drifts }) => drifts.length > 0) ? '' : meaningOf(found, explained);
}

function meaningOf(found: TrustClass, explained: Set<TrustClass>): string {
  const meaning = explained.has(found) ? undefined : MEANINGS[found];
  explained.add(found);
  return meaning === undefined ? '' : ` (${meaning})`;
}

interface Run {
  readonly spans: readonly Span[];
  readonly class: TrustClass;
}

/** Neighbouring spans of one class are told as one; so are bracketed and held ones. */
function runsOf(spans: readonly Span[]): Run[] {
  const proved = (found: TrustClass) => found === 'bracketed' || found === 'held';
  const runs: Run[] = [];
  for (const span of spans) {
    const last = runs.at(-1);
    const before = last?.spans.at(-1);
    const goesOn =
      last &&
      before &&
      before.drifts.length > 0 === span.drifts.length > 0 &&
      before.mayBeParted === span.mayBeParted &&
      partsOf(before) === partsOf(span) &&
      (proved(last.class) && proved(span.class)
        ? before.stretch === span.stretch || before.class === 'held'
        : last.class === span.class);
    if (!last || !goesOn) runs.push({ spans: [span], class: span.class });
    else
      runs[runs.length - 1] = {
        spans: [...last.spans, span],
        class: proved(span.class) ? 'bracketed' : span.class,
      };
  }
  return runs;
}

function runInWords({ spans, class: found }: Run, one: RoverTrust, job: Job | null): string {
  const from = timeInWords(spans[0]?.from ?? null, job);
  const until = timeInWords(spans.at(-1)?.until ?? null, job);
  const span =
    from && until
      ? `${from} to ${until}`
      : from
        ? `from ${from}`
        : until
          ? `until ${until}`
          : 'the whole day';
  const crossed = one.stretches
    .filter((_, index) => index > (spans[0]?.stretch ?? 0) && index <= (spans.at(-1)?.stretch ?? 0))
    .map(({ opened }) => boundaryInWords(opened, job));
  const proved = found === 'bracketed' || found === 'held';
  const across = proved && crossed.length > 0 ? `, held across ${allOf(crossed)}` : '';
  const [drift] = spans.flatMap(({ drifts }) => drifts);
  const moved = drift ? `, since ${driftInWords(drift, job)}` : '';
  const failing = (found === 'in-doubt' ? failed(spans) : '') || moved;
  const [only] = spans;
  const said =
    (only && found !== 'in-doubt' && partsOf(only)) || (proved ? 'bracketed' : classInWords(found));
  return `${span} is ${said}${across}${failing}`;
}

/** `bracketed in height and unchecked in position`; empty where both are worth the same. */
export function partsInWords({ horizontal, up }: Parts): string {
  return `${classInWords(up.class)} in height and ${classInWords(horizontal.class)} in position`;
}
const partsOf = ({ parts }: Span): string =>
  parts && parts.horizontal.class !== parts.up.class ? partsInWords(parts) : '';

/** `BASE moved 90 mm in height between OPEN and CLOSE`, `BASE sank 20 mm between 07:52 and 15:30`. */
export function driftInWords({ by, horizontal, up, most }: Drift, job: Job | null): string {
  if ('settled' in by) {
    const { setup, first, reading } = by.settled;
    const [from, until] = [timeInWords(first.instant, job), timeInWords(reading.instant, job)];
    const between = from && until ? `between ${from} and ${until}` : 'while it stood';
    return `${setup.setup.name} ${up < 0 ? 'sank' : 'rose'} ${showLength(Math.abs(up))} ${between}`;
  }
  const { from, to } = by.movement;
  const level = most === 'horizontal';
  return `${to.setup?.setup.name ?? 'the base'} moved ${showLength(level ? horizontal : Math.abs(up))} ${level ? 'horizontally' : 'in height'} between ${from.check.name} and ${to.check.name}`;
}

function failed(spans: readonly Span[]): string {
  const names = spans
    .flatMap(({ before, after }) => [before, after])
    .filter((check) => check?.verdict === 'fails')
    .map((check) => check?.check.name ?? '');
  const once = [...new Set(names)];
  const told = once.length > 3 ? [...once.slice(0, 2), `${once.length - 2} more`] : once;
  return told.length > 0 ? `, since ${allOf(told)} failed` : '';
}

export function boundaryInWords({ kind, at }: Boundary, job: Job | null): string {
  const time = timeInWords(at, job);
  const names = {
    setup: 'the setup',
    disturbance: 'the disturbance',
    're-level': 'the re-levelling',
    'power-loss': 'the loss of power',
    're-keyed': 'the keying',
    other: 'the event',
  };
  return `${names[kind]}${time ? ` at ${time}` : ''}`;
}

/** What an event puts in doubt, in a sentence. */
export function doubtInWords(doubt: EventDoubt, job: Job | null): string {
  const { held, before, after, movements, rover } = doubt;
  const who = rover === null ? '' : ` for ${rover}`;
  if (held) {
    const closest = movements.find(({ verdict }) => verdict === 'agrees');
    const size = closest && !isHole(closest.horizontal) ? ` to ${showLength(closest.horizontal.value)}` : '';
    const pair = closest ? `: ${closest.from.check.name} and ${closest.to.check.name} agree${size}` : '';
    return `Held${who}${pair}.`;
  }
  const moved = movements.find(({ verdict }) => verdict === 'moved');
  const because = moved
    ? ` ${moved.from.check.name} and ${moved.to.check.name} differ by more than chance allows.`
    : '';
  const told = [before, after].map((span, index) => {
    if (!span) return null;
    const [from, until] = [timeInWords(span.from, job), timeInWords(span.until, job)];
    const time = index === 0 ? `from ${from ?? 'the start'} until it` : `until ${until ?? 'the end'}`;
    return `points ${time} are ${classInWords(span.class)}`;
  });
  return `Not held${who}: ${told.filter((words) => words !== null).join(', ')}.${because}`;
}
