/** A text without the characters that nobody sees, and where each of the others stood in the full text. */
import { hasUnseen, isBidirectional, isUnseen } from './characters.ts';
import type { Span } from './tree.ts';

export interface Visible {
  readonly text: string;
  /** For each character, and the end, where it stood in the full text; null where nothing was taken out. */
  readonly origin: readonly number[] | null;
}

export function visibleOf(text: string): Visible {
  if (!hasUnseen(text)) return { text, origin: null };
  const kept: string[] = [];
  const origin: number[] = [];
  for (let at = 0; at < text.length; at++) {
    const character = text[at] ?? '';
    if (isUnseen(character)) continue;
    kept.push(character);
    origin.push(at);
  }
  origin.push(text.length);
  return { text: kept.join(''), origin };
}

/** Runs of unseen characters, those that reorder text apart from those that are merely ignored. */
export function unseenRuns(text: string, from: number): Span[] {
  const runs: Span[] = [];
  for (let at = from; at < text.length; at++) {
    if (!isUnseen(text[at])) continue;
    const start = at;
    const reorders = isBidirectional(text[start] ?? '');
    while (isUnseen(text[at + 1]) && isBidirectional(text[at + 1] ?? '') === reorders) at++;
    runs.push({ start, end: at + 1 });
  }
  return runs;
}

/** A stretch of the visible text in the full one; what is unseen at its two ends stays outside. */
export function fullSpan({ start, end }: Span, { origin, text }: Visible): Span {
  if (!origin) return { start, end };
  const from = origin[start] ?? origin[text.length] ?? 0;
  return { start: from, end: end > start ? (origin[end - 1] ?? 0) + 1 : from };
}
