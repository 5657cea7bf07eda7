/** The rhythm of something that repeats: its usual interval, and the gaps where it stayed away. */
import type { Seconds } from '../../quantities/brands.ts';
import { seconds } from '../../quantities/brands.ts';

/** A time without a message that was due. */
export interface Gap {
  /** GPS seconds of the capture's clock at which the last one before it came. */
  readonly from: number;
  readonly duration: Seconds;
  /** Byte of the message that ended it. */
  readonly offset: number;
}

export interface Rhythm {
  /** `interval` milliseconds have passed since the last one, which came at `from` seconds of the capture's clock. */
  readonly beat: (interval: number, from: number, offset: number) => void;
  /** The interval seen most often; absent before a second one has come. */
  readonly interval: () => Seconds | undefined;
  /**
   * Intervals longer than one and a half times the usual one, at most a thousand; one that makes up a twentieth of
   * all is a second rhythm, not a gap.
   */
  readonly gaps: () => readonly Gap[];
}

export function rhythm(): Rhythm {
  const counts = new Map<number, number>();
  const candidates: Gap[] = [];
  let usual: number | undefined;
  let beats = 0;
  const isLong = (interval: number) => usual !== undefined && interval > 1.5 * usual;
  return {
    beat(interval, from, offset) {
      beats += 1;
      const count = (counts.get(interval) ?? 0) + 1;
      if (count > 1 || counts.size < mostIntervals) counts.set(interval, count);
      if (usual === undefined || count > (counts.get(usual) ?? 0)) usual = interval;
      if ((isLong(interval) || beats <= settling) && candidates.length < mostGaps) {
        candidates.push({ from, duration: seconds(interval / 1000), offset });
      }
    },
    interval: () => (usual === undefined ? undefined : seconds(usual / 1000)),
    gaps: () =>
      candidates.filter((gap) => {
        const interval = Math.round(gap.duration * 1000);
        const isRhythm = beats >= settling && (counts.get(interval) ?? 1) > beats / 20;
        return isLong(interval) && !isRhythm;
      }),
  };
}

const mostIntervals = 1000;
const mostGaps = 1000;
/** So many beats are needed before the usual interval can be trusted to be the usual one. */
const settling = 20;
