/** The line that a finding is about, with carets under the stretch it means. */
import type { Where } from '../session/where.ts';
import { columns, harmless } from './terminal-text.ts';

export interface Excerpt {
  readonly line: string;
  readonly carets: string;
}

/** A line longer than `width` columns is cut around the stretch. */
export function excerpt(text: string, where: Where, width: number): Excerpt {
  const whole = lineOf(text, where.line);
  const start = Math.min(where.column - 1, whole.length);
  const end = where.endLine > where.line ? whole.length : Math.min(where.endColumn - 1, whole.length);
  const from = columns(whole.slice(0, end)) <= width ? 0 : Math.max(0, start - Math.floor(width / 3));
  const head = from > 0 ? '… ' : '';
  const shown = cut(whole.slice(from), width - head.length);
  const before = head + harmless(whole.slice(from, start));
  const under = columns(harmless(shown.slice(start - from, end - from)));
  return {
    line: head + harmless(shown) + (from + shown.length < whole.length ? '…' : ''),
    carets: ' '.repeat(columns(before)) + '^'.repeat(Math.max(1, under)),
  };
}

function lineOf(text: string, line: number): string {
  let start = 0;
  for (let number = 1; number < line; number++) {
    const end = endOf(text, start);
    start = text.startsWith('\r\n', end) ? end + 2 : end + 1;
  }
  const whole = text.slice(start, endOf(text, start));
  return whole.startsWith('\ufeff') ? ` ${whole.slice(1)}` : whole;
}

function endOf(text: string, start: number): number {
  let at = start;
  while (at < text.length && text[at] !== '\n' && text[at] !== '\r') at++;
  return at;
}

function cut(text: string, width: number): string {
  let taken = 0;
  let end = 0;
  for (const character of text) {
    taken += columns(character);
    if (taken > width) break;
    end += character.length;
  }
  return text.slice(0, end);
}
