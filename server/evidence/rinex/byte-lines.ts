/** Cuts a stream of bytes into lines without making text of them: a long log is read several times faster so. */

export interface ByteLines {
  readonly push: (chunk: Uint8Array) => void;
  /** Hands over a last line that has no end. */
  readonly finish: () => void;
}

/** Takes one line: `bytes` from `from` up to `to`, without its end (LF or CR LF); `number` counts from 1. */
export type TakeLine = (bytes: Uint8Array, from: number, to: number, number: number) => void;

/** A line longer than `longest` is cut there and the rest of it dropped. */
export function byteLines(take: TakeLine, longest = 65_536): ByteLines {
  let held = new Uint8Array(1024);
  let holding = 0;
  let number = 0;
  const end = (bytes: Uint8Array, from: number, to: number) => {
    number += 1;
    const until = Math.min(to, from + longest);
    take(bytes, from, until > from && bytes[until - 1] === RETURN ? until - 1 : until, number);
  };
  const hold = (chunk: Uint8Array, from: number, to: number) => {
    const room = Math.min(to - from, longest + 1 - holding);
    if (room <= 0) return;
    if (holding + room > held.length) {
      const larger = new Uint8Array(Math.max(2 * held.length, holding + room));
      larger.set(held);
      held = larger;
    }
    held.set(chunk.subarray(from, from + room), holding);
    holding += room;
  };
  return {
    push(chunk) {
      let from = 0;
      for (;;) {
        const feed = chunk.indexOf(FEED, from);
        if (feed < 0) break;
        if (holding > 0) {
          hold(chunk, from, feed);
          const length = holding;
          holding = 0;
          end(held, 0, length);
        } else end(chunk, from, feed);
        from = feed + 1;
      }
      hold(chunk, from, chunk.length);
    },
    finish() {
      if (holding > 0) end(held, 0, holding);
      holding = 0;
    },
  };
}

const FEED = 10;
const RETURN = 13;
