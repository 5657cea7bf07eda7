import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { framed, joinedBytes } from './encoder.test-support.ts';
import type { Stray } from './frames.ts';
import { frameReader } from './frames.ts';

function read(bytes: Uint8Array, cuts: readonly number[] = []) {
  const frames: { offset: number; payload: readonly number[] }[] = [];
  const strays: Stray[] = [];
  const reader = frameReader(
    ({ offset, payload }) => frames.push({ offset, payload: [...payload] }),
    (stray) => strays.push(stray),
  );
  const ends = [...cuts.map((cut) => cut % (bytes.length + 1)), bytes.length].sort(
    (one, other) => one - other,
  );
  let from = 0;
  for (const end of ends) {
    reader.push(bytes.subarray(from, end));
    from = end;
  }
  reader.finish();
  return { frames, strays };
}

const payload = fc.uint8Array({ minLength: 0, maxLength: 200 });
/** Garbage that cannot begin a frame by itself. */
const garbage = fc
  .array(fc.integer({ min: 0, max: 0xd2 }), { maxLength: 40 })
  .map((bytes) => Uint8Array.from(bytes));

describe('frames', () => {
  it('are found through garbage, however the stream is cut into chunks', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(garbage, payload), { maxLength: 6 }),
        garbage,
        fc.array(fc.nat(), { maxLength: 10 }),
        (parts, tail, cuts) => {
          const bytes = joinedBytes(...parts.flatMap(([before, inside]) => [before, framed(inside)]), tail);
          const { frames, strays } = read(bytes, cuts);
          expect(frames.map((frame) => frame.payload)).toEqual(parts.map(([, inside]) => [...inside]));
          const straying = strays.reduce((sum, stray) => sum + stray.length, 0);
          expect(straying).toBe(tail.length + parts.reduce((sum, [before]) => sum + before.length, 0));
        },
      ),
    );
  });

  it('are found behind a false preamble that claims more than follows', () => {
    const inside = framed(Uint8Array.of(1, 2, 3));
    const bytes = joinedBytes(Uint8Array.of(0xd3, 0x03, 0xff), inside);
    expect(read(bytes).frames).toEqual([{ offset: 3, payload: [1, 2, 3] }]);
    expect(read(bytes, [1, 2, 4, 7]).frames).toEqual([{ offset: 3, payload: [1, 2, 3] }]);
  });

  it('with any one bit wrong are no frames, and the next one is found', () => {
    const first = framed(Uint8Array.of(9, 8, 7, 6, 5));
    const second = framed(Uint8Array.of(1, 2, 3));
    for (let bit = 0; bit < first.length * 8; bit += 1) {
      const broken = first.slice();
      broken[bit >> 3] = (broken[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      const { frames } = read(joinedBytes(broken, second));
      expect(frames).toEqual([{ offset: first.length, payload: [1, 2, 3] }]);
    }
  });

  it('cut short are strays that look damaged', () => {
    const whole = framed(Uint8Array.of(9, 8, 7, 6, 5));
    for (let length = 3; length < whole.length; length += 1) {
      const { frames, strays } = read(joinedBytes(whole, whole.subarray(0, length)));
      expect(frames).toHaveLength(1);
      expect(strays).toEqual([{ offset: whole.length, length, damaged: true }]);
    }
  });

  it('are not conjured from random bytes, and every byte is accounted for', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 3000 }), fc.array(fc.nat(), { maxLength: 5 }), (bytes, cuts) => {
        const { frames, strays } = read(bytes, cuts);
        expect(frames).toEqual([]);
        expect(strays.reduce((sum, stray) => sum + stray.length, 0)).toBe(bytes.length);
      }),
      // A fixed seed: one false frame in 2^24 candidates is chance, not a fault.
      { seed: 1, numRuns: 300 },
    );
  });
});
