/** A UTC clock that counts on across midnight, and knows the date once a sentence has told it. */
import { modulo, secondsOfDay } from '../civil-time.ts';

export interface UtcClock {
  /** Seconds since 1970 where the date is known, else since a midnight. */
  readonly now: () => number;
  readonly dated: () => boolean;
  /**
   * Sets the clock to the instant nearest to the last that has this time of day, or to the one that a date gives.
   * `shift` is what earlier times lack, once the date becomes known; `back` says that the time went back by a minute or more.
   */
  readonly set: (
    timeOfDay: number,
    day: number | undefined,
  ) => { readonly shift: number; readonly back: boolean };
}

export function utcClock(): UtcClock {
  let time: number | undefined;
  let isDated = false;
  return {
    now: () => time ?? 0,
    dated: () => isDated,
    set(timeOfDay: number, day: number | undefined) {
      const before = time;
      const counted =
        before === undefined
          ? timeOfDay
          : before + modulo(timeOfDay - before + secondsOfDay / 2, secondsOfDay) - secondsOfDay / 2;
      // A hundredth of a second must survive the sum.
      time = Math.round((day === undefined ? counted : day * secondsOfDay + timeOfDay) * 1e6) / 1e6;
      const shift = day !== undefined && !isDated ? time - Math.round(counted * 1e6) / 1e6 : 0;
      isDated ||= day !== undefined;
      return { shift, back: before !== undefined && time - shift < before - 60 };
    },
  };
}
