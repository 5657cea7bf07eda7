/** Finds RTCM 3 frames in a stream of bytes, through whatever else lies between them. */
import { runningCrc } from './crc.ts';

/** A frame whose checksum is right. */
export interface Frame {
  /** The byte of the stream at which it begins. */
  readonly offset: number;
  readonly payload: Uint8Array;
  /** Bytes with preamble and checksum. */
  readonly length: number;
}

/** Bytes that belong to no frame. */
export interface Stray {
  readonly offset: number;
  readonly length: number;
  /** Whether it begins as a frame does, right behind a good one or at the very start: probably a damaged frame. */
  readonly damaged: boolean;
}

export interface FrameReader {
  readonly push: (chunk: Uint8Array) => void;
  /** Nothing more follows: what was taken for the start of a frame is searched again. */
  readonly finish: () => void;
}

/**
 * Frames are D3, six zero bits, ten bits of length, payload, CRC-24Q (RTCM 10403.3 §4). Where the checksum is wrong
 * the search goes on one byte later, so that a false preamble hides no message. Checksums are differences of a running
 * one, so that bytes that look like the start of frames everywhere take no longer. Holds at most one frame and a chunk.
 */
export function frameReader(
  takeFrame: (frame: Frame) => void,
  takeStray: (stray: Stray) => void,
): FrameReader {
  let held = new Uint8Array(0);
  let heldOffset = 0;
  const crc = runningCrc();
  let strayFrom: number | undefined;
  let strayDamaged = false;

  const endStray = (until: number) => {
    if (strayFrom !== undefined) {
      takeStray({ offset: strayFrom, length: until - strayFrom, damaged: strayDamaged });
    }
    strayFrom = undefined;
  };
  const skip = (offset: number, looksLikeFrame: boolean) => {
    if (strayFrom !== undefined) return;
    strayFrom = offset;
    strayDamaged = looksLikeFrame;
  };

  const search = (last: boolean) => {
    let at = 0;
    crc.begin(held);
    while (at < held.length) {
      if (held[at] !== preamble) {
        skip(heldOffset + at, false);
        const next = held.indexOf(preamble, at);
        at = next === -1 ? held.length : next;
        continue;
      }
      const length = frameLength(held, at);
      if (length !== undefined && at + length > held.length && !last) break;
      if (
        length !== undefined &&
        at + length <= held.length &&
        crc.of(at, at + length - 3) === statedCrc(held, at + length)
      ) {
        endStray(heldOffset + at);
        const payload = held.slice(at + 3, at + length - 3);
        takeFrame({ offset: heldOffset + at, payload, length });
        at += length;
        continue;
      }
      if (length === undefined && held.length - at < 3 && !last) break;
      skip(heldOffset + at, length !== undefined);
      at += 1;
    }
    heldOffset += at;
    held = held.slice(at);
  };

  return {
    push(chunk) {
      held = held.length === 0 ? chunk.slice() : joined(held, chunk);
      search(false);
    },
    finish() {
      search(true);
      endStray(heldOffset);
    },
  };
}

const preamble = 0xd3;

/** The whole length that a header claims, at most 1029; undefined where three bytes do not begin a frame. */
function frameLength(bytes: Uint8Array, at: number): number | undefined {
  const high = bytes[at + 1];
  const low = bytes[at + 2];
  if (high === undefined || low === undefined || high > 0b11) return undefined;
  return ((high << 8) | low) + 6;
}

const statedCrc = (bytes: Uint8Array, end: number): number =>
  ((bytes[end - 3] ?? 0) << 16) | ((bytes[end - 2] ?? 0) << 8) | (bytes[end - 1] ?? 0);

function joined(first: Uint8Array, second: Uint8Array): Uint8Array<ArrayBuffer> {
  const both = new Uint8Array(first.length + second.length);
  both.set(first);
  both.set(second, first.length);
  return both;
}
