/** Counts the messages of one number: how many, how large, how often, and when they stayed away. */
import type { Seconds } from '../../quantities/brands.ts';
import type { Frame } from './frames.ts';
import type { Message } from './message.ts';
import type { Gap, Rhythm } from './rhythm.ts';
import { rhythm } from './rhythm.ts';
import { forward } from './stream-clock.ts';

export interface MessageCount {
  readonly number: number;
  readonly count: number;
  /** Frames included. */
  readonly bytes: number;
  readonly largest: number;
  /** The usual time between two sendings, from the epochs in the stream. */
  readonly interval?: Seconds;
  readonly gaps: readonly Gap[];
}

export interface CountNotes {
  count: number;
  bytes: number;
  largest: number;
  readonly rhythm: Rhythm;
  /** The message's own clock where it has one, else the stream's; milliseconds. */
  last?: { readonly reading: number; readonly time: number };
}

/** The notes of a number, begun where there are none. */
export function countOf(counts: Map<number, CountNotes>, number: number): CountNotes {
  const known = counts.get(number);
  if (known) return known;
  const fresh: CountNotes = { count: 0, bytes: 0, largest: 0, rhythm: rhythm() };
  counts.set(number, fresh);
  return fresh;
}

/** Counts a message. A second one of the same epoch belongs to the same sending. */
export function note(notes: CountNotes, message: Message, frame: Frame, now: number | undefined) {
  notes.count += 1;
  notes.bytes += frame.length;
  notes.largest = Math.max(notes.largest, frame.length);
  if (now === undefined) return;
  const epoch = message.kind === 'observations' ? message.epoch : undefined;
  const reading = epoch?.milliseconds ?? now;
  if (notes.last) {
    const passed = epoch ? forward(reading - notes.last.reading, epoch.period) : reading - notes.last.reading;
    if (passed > 0) notes.rhythm.beat(passed, notes.last.time / 1000, frame.offset);
    if (passed === 0) return;
  }
  notes.last = { reading, time: now };
}

export function messageCount(number: number, notes: CountNotes): MessageCount {
  const { count, bytes, largest } = notes;
  const interval = notes.rhythm.interval();
  const common = { number, count, bytes, largest, gaps: notes.rhythm.gaps() };
  return interval === undefined ? common : { ...common, interval };
}
