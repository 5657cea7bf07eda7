/** Passes bytes on, expanded where they begin as a gzip file (RFC 1952) does. */
import { Gunzip } from 'fflate/browser';

/** More than any day's log; an archive that expands beyond it was made to fill a memory. */
export const MOST_EXPANDED = 4_000_000_000;

export interface Inflating {
  readonly push: (chunk: Uint8Array) => void;
  readonly finish: () => void;
}

export function inflating(
  take: (chunk: Uint8Array) => void,
  complain: (sentence: string) => void,
): Inflating {
  let begin: Uint8Array | null = new Uint8Array(0);
  let gunzip: Gunzip | null = null;
  let expanded = 0;
  let stopped = false;
  const guarded = (chunk: Uint8Array, last: boolean) => {
    if (stopped || !gunzip) return;
    try {
      gunzip.push(chunk, last);
    } catch {
      stopped = true;
      complain(
        last && chunk.length === 0
          ? 'The gzip file is cut short; what came before is used.'
          : 'The gzip file is damaged; what came before is used.',
      );
    }
  };
  const start = (bytes: Uint8Array) => {
    const [one, two] = bytes;
    if (one === 0x1f && two === 0x8b) {
      gunzip = new Gunzip((chunk) => {
        expanded += chunk.length;
        if (expanded > MOST_EXPANDED) {
          if (!stopped) complain('The gzip file expands to more than 4 GB; the rest is not read.');
          stopped = true;
        } else take(chunk);
      });
      guarded(bytes, false);
    } else if ((one === 0x1f && two === 0x9d) || (one === 0x50 && two === 0x4b)) {
      stopped = true;
      complain('The file is packed (.Z or .zip); unpack it, or pack it with gzip.');
    } else take(bytes);
  };
  return {
    push(chunk) {
      if (stopped || chunk.length === 0) return;
      if (!begin) {
        if (gunzip) guarded(chunk, false);
        else take(chunk);
        return;
      }
      const joined: Uint8Array = new Uint8Array(begin.length + chunk.length);
      joined.set(begin);
      joined.set(chunk, begin.length);
      begin = joined;
      if (joined.length < 2) return;
      begin = null;
      start(joined);
    },
    finish() {
      if (begin && begin.length > 0) take(begin);
      begin = null;
      guarded(new Uint8Array(0), true);
    },
  };
}
