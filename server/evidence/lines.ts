/** Cuts a stream of bytes into lines, whatever their ends, without ever holding more than one long line. */

export interface LineReader {
  readonly push: (chunk: Uint8Array) => void;
  /** Hands over a last line that has no end. */
  readonly finish: () => void;
}

/**
 * Calls `take` with each line and its number, from 1. Lines end with CR LF, LF or CR. A line longer than `longest`
 * characters is cut there and the rest of it dropped; `take` is told. A byte order mark at the start is skipped.
 */
export const lineReader = (
  encoding: 'utf-8' | 'latin1',
  take: (line: string, number: number, cut: boolean) => void,
  longest?: number,
): LineReader =>
  lineFinder(encoding, (text, from, to, number, cut) => take(text.slice(from, to), number, cut), longest);

/** The same for those who read a line where it stands: from one place of a longer text up to another. */
export function lineFinder(
  encoding: 'utf-8' | 'latin1',
  take: (text: string, from: number, to: number, number: number, cut: boolean) => void,
  longest = 65_536,
): LineReader {
  const decoder = new TextDecoder(encoding);
  let held = '';
  let number = 0;
  let afterReturn = false;

  const endLine = (text: string, from: number, to: number) => {
    number += 1;
    const cut = to - from > longest;
    take(text, from, cut ? from + longest : to, number, cut);
  };
  const feed = (text: string) => {
    let from = afterReturn && text.charCodeAt(0) === lineFeed ? 1 : 0;
    if (text.length > 0) afterReturn = false;
    let nextFeed = indexFrom(text, '\n', from);
    let nextReturn = indexFrom(text, '\r', from);
    while (from < text.length) {
      if (nextFeed < from) nextFeed = indexFrom(text, '\n', from);
      if (nextReturn < from) nextReturn = indexFrom(text, '\r', from);
      const end = Math.min(nextFeed, nextReturn);
      if (end === text.length) break;
      if (held === '') endLine(text, from, end);
      else {
        const whole = held + text.slice(from, end);
        held = '';
        endLine(whole, 0, whole.length);
      }
      from = end + 1;
      if (end === nextReturn) {
        if (from === text.length) afterReturn = true;
        else if (text.charCodeAt(from) === lineFeed) from += 1;
      }
    }
    // One character more than the longest is kept, so that the end of the line knows that it was cut.
    if (held.length <= longest) held += text.slice(from, from + longest + 1 - held.length);
  };
  return {
    push: (chunk) => feed(decoder.decode(chunk, { stream: true })),
    finish() {
      feed(decoder.decode());
      if (held.length > 0) endLine(held, 0, held.length);
      held = '';
    },
  };
}

const lineFeed = 10;

/** The text's own length where there is none. */
function indexFrom(text: string, sign: string, from: number): number {
  const found = text.indexOf(sign, from);
  return found === -1 ? text.length : found;
}
