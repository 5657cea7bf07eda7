/** One clock for a whole stream, in milliseconds of GPS time, driven by the epochs in its messages. */
import { modulo, secondsOfDay } from '../civil-time.ts';
import type { EvidenceProblem } from '../problems.ts';
import type { MessageEpoch } from './observations.ts';

/** How long the stream lasted and how much it carried; empty before the first epoch. */
export interface StreamSpan {
  /** GPS seconds, counted on from the week in which the stream begins. */
  readonly begin?: number;
  readonly end?: number;
  readonly averageBytesPerSecond?: number;
  readonly fullestSecond?: { readonly time: number; readonly bytes: number };
}

export interface StreamClock {
  /** Milliseconds; undefined before the first epoch, and while the first burst has told a time without a day. */
  readonly now: () => number | undefined;
  readonly set: (epoch: MessageEpoch, offset: number) => void;
  /** Books the bytes of a message to the current second. */
  readonly spend: (length: number) => void;
  readonly span: () => StreamSpan;
}

export function streamClock(
  leapSeconds: number,
  addProblem: (problem: EvidenceProblem) => void,
): StreamClock {
  let now: number | undefined;
  let begin: number | undefined;
  let beforeClock = 0;
  let spent = 0;
  let inSecond = 0;
  let second: number | undefined;
  let fullest = { time: 0, bytes: 0 };
  let knowsDay = false;

  /** What was counted from some midnight is counted from that of its own day of the week. */
  const moveBy = (days: number) => {
    now = (now ?? 0) + days;
    begin = (begin ?? 0) + days;
    if (second !== undefined) second += days / 1000;
    fullest = { ...fullest, time: fullest.time + days / 1000 };
  };
  const closeSecond = () => {
    if (second !== undefined && inSecond > fullest.bytes) fullest = { time: second, bytes: inSecond };
    inSecond = 0;
  };
  return {
    now: () => (knowsDay || (now ?? 0) - (begin ?? 0) >= burst ? now : undefined),
    set(epoch, offset) {
      const reading = epoch.milliseconds + epoch.toGps + (epoch.followsUtc ? 1000 * leapSeconds : 0);
      const tellsDay = epoch.period > day;
      if (now === undefined) {
        now = reading;
        begin = reading;
        knowsDay = tellsDay;
        return;
      }
      if (tellsDay && !knowsDay) {
        knowsDay = true;
        moveBy(reading - forward(reading - now, day) - now);
      }
      const step = forward(reading - now, epoch.period);
      if (step < -jumpBack) {
        const back = (-step / 1000).toFixed(0);
        addProblem({
          sentence: `The clock of the stream jumps back by ${back} s: captures may have been joined.`,
          offset,
        });
      }
      now += step;
      begin = Math.min(begin ?? now, now);
    },
    spend(length) {
      if (now === undefined) {
        beforeClock += length;
        return;
      }
      spent += length;
      const current = Math.floor(now / 1000);
      // A message of the second before may come late; after a jump back the seconds begin anew.
      if (second === undefined || current > second || current < second - jumpBack / 1000) {
        closeSecond();
        second = current;
      }
      inSecond += length;
    },
    span() {
      closeSecond();
      if (now === undefined || begin === undefined) return {};
      const duration = (now - begin) / 1000;
      const span = { begin: begin / 1000, end: now / 1000, fullestSecond: fullest };
      // The last epoch lasts as long as the others: a stream of n epochs a second apart covers n seconds.
      return duration < 1
        ? span
        : { ...span, averageBytesPerSecond: (spent + beforeClock) / (Math.floor(duration) + 1) };
    },
  };
}

/** A difference of two readings of a clock that starts again after `period`; negative where it went back. */
export function forward(difference: number, period: number) {
  const wrapped = modulo(difference, period);
  return wrapped > period / 2 ? wrapped - period : wrapped;
}

/** Seconds of the UTC day at a GPS second of the capture's clock. */
export function utcSecondsOfDay(time: number, leapSeconds: number): number {
  return modulo(time - leapSeconds, secondsOfDay);
}

const day = 1000 * secondsOfDay;
/** A message that tells the day comes in the first burst; a stream without one counts from a midnight. */
const burst = 1000;

/** Messages of one burst may be out of order by the leap second assumed wrongly; more is a jump. */
const jumpBack = 30_000;
