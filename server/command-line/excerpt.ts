/** The line that a finding is about, with carets under the stretch it means. */
import { columns, harmless } from './terminal-text.ts';

export interface Excerpt {
  readonly line: string;
  readonly carets: string;
}

/** A stretch that goes on in the next line is shown as far as the first; a line longer than `width` columns is cut around it. */
export function excerpt(text: string, stretch: { start: number; end: number }, width: number): Excerpt {
  const lineStart = startOfLine(text, stretch.start);
  const line = text.slice(lineStart, endOfLine(text, stretch.start)).replace(/^\ufeff/, ' ');
  const start = stretch.start - lineStart;
  const end = Math.min(stretch.end - lineStart, line.length);
  const from = columns(line.slice(0, end)) <= width ? 0 : Math.max(0, start - Math.floor(width / 3));
  const head = from > 0 ? '… ' : '';
  const shown = firstColumns(line.slice(from), width - head.length - 1);
  const tail = from + shown.length < line.length ? '…' : '';
  const under = columns(harmless(shown.slice(start - from, Math.max(start, end) - from)));
  return {
    line: head + harmless(shown) + tail,
    carets: ' '.repeat(columns(head + harmless(line.slice(from, start)))) + '^'.repeat(Math.max(1, under)),
  };
}

/** No terminal shows more of a line than this on either side, and a line may be megabytes long. */
const REACH = 1000;

function startOfLine(text: string, offset: number): number {
  let at = offset;
  while (at > 0 && offset - at < REACH && text[at - 1] !== '\n' && text[at - 1] !== '\r') at--;
  return at;
}

function endOfLine(text: string, offset: number): number {
  let at = offset;
  while (at < text.length && at - offset < REACH && text[at] !== '\n' && text[at] !== '\r') at++;
  return at;
}

function firstColumns(text: string, width: number): string {
  let taken = 0;
  let end = 0;
  for (const character of text) {
    taken += columns(character);
    if (taken > width) break;
    end += character.length;
  }
  return text.slice(0, end);
}
