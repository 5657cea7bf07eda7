/** What a correction stream asks of its link: on average, in the fullest second, and in age of corrections. */
import type { Bytes, Seconds } from '../quantities/brands.ts';
import { bytes, seconds } from '../quantities/brands.ts';
import type { Link } from './link.ts';
import { arrivalInBurst, burstAirtime } from './link.ts';

/** One message of the stream, with its rate. */
export interface ScheduledMessage {
  readonly number: number;
  /** Bytes of one whole sending, frames included. */
  readonly size: Bytes;
  readonly every: Seconds;
  /** How long after the common start it is first sent; 0 where not stated. */
  readonly offset?: Seconds;
}

export interface MessageLoad {
  readonly number: number;
  readonly bytes: Bytes;
  /** Its share of the burst's time on the air. */
  readonly airtime: Seconds;
}

export interface SecondLoad {
  /** Counted from the common start. */
  readonly second: number;
  readonly bytes: Bytes;
  readonly airtime: Seconds;
  readonly messages: readonly MessageLoad[];
}

export interface MessageAge {
  readonly number: number;
  /** The oldest that this message gets at the rover before the next one has arrived whole; absent where it grows without end. */
  readonly oldest?: Seconds;
}

export interface StreamLoad {
  readonly averageBytesPerSecond: number;
  /** Share of the time that the transmitter is on the air, on average; above 1 the stream does not fit. */
  readonly averageAirtime: number;
  readonly fullest: SecondLoad;
  /** Second by second over one period of the schedule, at most an hour. */
  readonly seconds: readonly SecondLoad[];
  readonly ages: readonly MessageAge[];
}

/**
 * The load of a stream. Messages due at the same instant go out as one burst, in the order given; a burst waits until
 * the one before it is through. Rates are taken to the millisecond. Messages without a size or without a finite rate
 * of 50 ms or slower are left out; undefined where none remains.
 */
export function streamLoad(messages: readonly ScheduledMessage[], link: Link): StreamLoad | undefined {
  const due = messages.filter(isSendable).map(inMilliseconds);
  if (due.length === 0) return undefined;
  const period = commonPeriod(due.map((message) => message.every));
  const bursts = burstsWithin(due, 0, period);
  const bySecond = secondBySecond(bursts, Math.ceil(period / 1000), link);
  const fullest = bySecond.reduce((most, second) => (second.airtime > most.airtime ? second : most));
  const averageAirtime =
    (bursts.reduce((sum, burst) => sum + burstAirtime(link, burst.size), 0) * 1000) / period;
  return {
    averageBytesPerSecond: due.reduce((sum, message) => sum + message.size / (message.every / 1000), 0),
    averageAirtime,
    fullest,
    seconds: bySecond,
    ages: agesOf(due, period, link, averageAirtime),
  };
}

/**
 * The same messages with offsets of whole seconds that level the seconds out: largest first, each into the emptiest
 * seconds. Messages of one second or faster stay where they are.
 */
export function staggered(messages: readonly ScheduledMessage[]): readonly ScheduledMessage[] {
  const period = Math.ceil(
    commonPeriod(messages.filter(isSendable).map((message) => inMilliseconds(message).every)) / 1000,
  );
  const filled = new Float64Array(Math.max(period, 1));
  const offsets = new Map<ScheduledMessage, number>();
  const movable = (message: ScheduledMessage) =>
    isSendable(message) && message.every >= 2 && Number.isInteger(message.every);
  for (const message of [...messages].sort((first, second) => second.size - first.size)) {
    if (!movable(message)) continue;
    const offset = emptiestOffset(filled, message.every);
    for (let second = offset; second < filled.length; second += message.every) {
      filled[second] = (filled[second] ?? 0) + message.size;
    }
    offsets.set(message, offset);
  }
  return messages.map((message) => {
    const offset = offsets.get(message);
    return offset === undefined ? message : { ...message, offset: seconds(offset) };
  });
}

/** What a stream is allowed to take of its link. */
export interface LoadLimits {
  /** Largest share of the time on the air, on average. */
  readonly average: number;
  /** Longest time on the air in any second. */
  readonly fullest: Seconds;
}

/**
 * The highest rates that fit, for the messages that `isObservation` picks: all every second, then the first of them
 * every second and the rest more slowly, then all more slowly, never faster than asked; staggered. Undefined where
 * even one in ten seconds is too much.
 */
export function fittingRates(
  messages: readonly ScheduledMessage[],
  isObservation: (number: number) => boolean,
  link: Link,
  limits: LoadLimits,
): readonly ScheduledMessage[] | undefined {
  const first = messages.find((message) => isObservation(message.number));
  for (const [firstEvery, restEvery] of rateLadder) {
    const slowed = messages.map((message) => {
      if (!isObservation(message.number)) return message;
      const slowest = message === first ? firstEvery : restEvery;
      return { ...message, every: seconds(Math.max(message.every, slowest)), offset: seconds(0) };
    });
    const candidate = staggered(slowed);
    const load = streamLoad(candidate, link);
    if (load && load.averageAirtime <= limits.average && load.fullest.airtime <= limits.fullest)
      return candidate;
  }
  return undefined;
}

/** Seconds between the first constellation's observations, and between the others'. */
const rateLadder = [
  [1, 1],
  [1, 2],
  [2, 2],
  [1, 5],
  [2, 5],
  [5, 5],
  [5, 10],
  [10, 10],
] as const;

const longestPeriod = 3_600_000;
const fastest = 0.05;

interface Due {
  readonly number: number;
  readonly size: number;
  /** In milliseconds. */
  readonly every: number;
  readonly offset: number;
}

interface Burst {
  readonly at: number;
  readonly size: Bytes;
  readonly messages: readonly Due[];
}

function isSendable({ size, every, offset = seconds(0) }: ScheduledMessage) {
  return (
    size > 0 && Number.isFinite(size) && every >= fastest && Number.isFinite(every) && Number.isFinite(offset)
  );
}

function inMilliseconds({ number, size, every, offset = seconds(0) }: ScheduledMessage): Due {
  const period = Math.round(every * 1000);
  const shift = Math.round(offset * 1000) % period;
  return { number, size, every: period, offset: shift < 0 ? shift + period : shift };
}

/** The least common multiple of the rates, in whole seconds, and an hour where it is longer. */
function commonPeriod(periods: readonly number[]): number {
  let common = 1000;
  for (const period of periods) {
    common = (common / greatestDivisor(common, period)) * period;
    if (common > longestPeriod) return longestPeriod;
  }
  return common;
}

function greatestDivisor(first: number, second: number): number {
  return second === 0 ? first : greatestDivisor(second, first % second);
}

function burstsWithin(due: readonly Due[], from: number, until: number): readonly Burst[] {
  const byTime = new Map<number, Due[]>();
  for (const message of due) {
    const skipped = Math.ceil(Math.max(0, from - message.offset) / message.every);
    for (let at = message.offset + skipped * message.every; at < until; at += message.every) {
      const together = byTime.get(at);
      if (together) together.push(message);
      else byTime.set(at, [message]);
    }
  }
  return [...byTime]
    .sort(([first], [second]) => first - second)
    .map(([at, together]) => ({
      at,
      size: bytes(together.reduce((sum, message) => sum + message.size, 0)),
      messages: together,
    }));
}

function secondBySecond(bursts: readonly Burst[], count: number, link: Link): readonly SecondLoad[] {
  const loads = Array.from({ length: count }, (_, second) => ({
    second,
    bytes: 0,
    airtime: 0,
    messages: [] as MessageLoad[],
  }));
  for (const burst of bursts) {
    const load = loads[Math.floor(burst.at / 1000)];
    if (!load) continue;
    const airtime = burstAirtime(link, burst.size);
    load.bytes += burst.size;
    load.airtime += airtime;
    for (const message of burst.messages) {
      load.messages.push({
        number: message.number,
        bytes: bytes(message.size),
        airtime: seconds((airtime * message.size) / burst.size),
      });
    }
  }
  return loads.map((load) => ({ ...load, bytes: bytes(load.bytes), airtime: seconds(load.airtime) }));
}

/** Follows the queue over three periods: the ages of the first are those of a start with nothing waiting. */
function agesOf(
  due: readonly Due[],
  period: number,
  link: Link,
  averageAirtime: number,
): readonly MessageAge[] {
  if (averageAirtime > 1) return due.map(({ number }) => ({ number }));
  const oldest = new Map<Due, number>();
  const sentBefore = new Map<Due, number>();
  let free = 0;
  for (const burst of burstsWithin(due, 0, 3 * period)) {
    const start = Math.max(free, burst.at);
    let part = 0;
    for (const message of burst.messages) {
      part += message.size;
      const arrival = start + 1000 * arrivalInBurst(link, burst.size, bytes(part));
      const before = sentBefore.get(message);
      if (before !== undefined) oldest.set(message, Math.max(oldest.get(message) ?? 0, arrival - before));
      sentBefore.set(message, burst.at);
    }
    free = start + 1000 * burstAirtime(link, burst.size);
  }
  return due.map((message) => {
    const age = oldest.get(message);
    return age === undefined
      ? { number: message.number }
      : { number: message.number, oldest: seconds(age / 1000) };
  });
}

/** The offset whose fullest second is emptiest; among equals the one with least in all its seconds, then the earliest. */
function emptiestOffset(filled: Float64Array, every: number): number {
  let best = 0;
  let bestPeak = Infinity;
  let bestSum = Infinity;
  for (let offset = 0; offset < Math.min(every, filled.length); offset += 1) {
    let peak = 0;
    let sum = 0;
    for (let second = offset; second < filled.length; second += every) {
      peak = Math.max(peak, filled[second] ?? 0);
      sum += filled[second] ?? 0;
    }
    if (peak < bestPeak || (peak === bestPeak && sum < bestSum))
      [best, bestPeak, bestSum] = [offset, peak, sum];
  }
  return best;
}
