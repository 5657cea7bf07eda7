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
export function lineReader(
  encoding: 'utf-8' | 'latin1',
  take: (line: string, number: number, cut: boolean) => void,
  longest = 65_536,
): LineReader {
  const decoder = new TextDecoder(encoding);
  let held = '';
  let number = 0;
  let afterReturn = false;

  const endLine = (text: string) => {
    number += 1;
    take(text.length > longest ? text.slice(0, longest) : text, number, text.length > longest);
  };
  const feed = (text: string) => {
    let from = afterReturn && text.charCodeAt(0) === lineFeed ? 1 : 0;
    if (text.length > 0) afterReturn = false;
    for (;;) {
      const end = lineEnd(text, from);
      if (end === -1) break;
      endLine(held + text.slice(from, end));
      held = '';
      from = end + 1;
      if (text.charCodeAt(end) === carriageReturn) {
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
      if (held.length > 0) endLine(held);
      held = '';
    },
  };
}

const lineFeed = 10;
const carriageReturn = 13;

function lineEnd(text: string, from: number): number {
  const feed = text.indexOf('\n', from);
  const limit = feed === -1 ? text.length : feed;
  for (let at = from; at < limit; at += 1) if (text.charCodeAt(at) === carriageReturn) return at;
  return feed;
}
