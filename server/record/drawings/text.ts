/** How wide text will be, to keep labels apart where no browser can be asked. */
import { BOLD, REGULAR } from './advance-widths.ts';

/**
 * How wide a text is drawn, in pixels, whatever face a reader's machine has: drawings ask for just this width. Null where
 * it holds a character whose width is not known, which is then left as the face has it.
 */
export function drawnWidth(text: string, size: number, bold: boolean): number | null {
  const widths = bold ? BOLD_WIDTHS : REGULAR_WIDTHS;
  let sum = 0;
  for (const character of text) {
    const width = widths.get(character);
    if (width === undefined) return null;
    sum += width;
  }
  return (sum * size) / 1000;
}

const widthsOf = (table: Readonly<Record<number, string>>): ReadonlyMap<string, number> =>
  new Map(
    Object.entries(table).flatMap(([width, characters]) =>
      [...characters].map((character) => [character, Number(width)] as const),
    ),
  );
const REGULAR_WIDTHS = widthsOf(REGULAR);
const BOLD_WIDTHS = widthsOf(BOLD);

/** Width in pixels of text of a size in pixels, on the generous side of the usual sans-serif faces. */
export function textWidth(text: string, size: number): number {
  let ems = 0;
  for (const character of text) ems += emsOf(character);
  return ems * size * GENEROUS;
}

/** The text, cut with an ellipsis where it is wider than there is room. */
export function fitted(text: string, size: number, room: number): string {
  const ems = room / size / GENEROUS;
  let used = 0;
  let kept = '';
  let cut = '';
  for (const character of text.slice(0, MOST_READ).replace(/\s+/gu, ' ')) {
    used += emsOf(character);
    if (used > ems) return cut === '' ? '…' : `${cut.trimEnd()}…`;
    kept += character;
    if (used + ELLIPSIS <= ems) cut = kept;
  }
  return kept;
}

/** Each as fitted, and with its end where others look the same up to the cut: `CHECK…ER-11`. */
export function fittedApart(texts: readonly string[], size: number, room: number): string[] {
  const cut = texts.map((text) => fitted(text, size, room));
  const alike = new Map<string, Set<string>>();
  cut.forEach((short, index) => {
    alike.set(short, (alike.get(short) ?? new Set()).add(texts[index] ?? ''));
  });
  return cut.map((short, index) => {
    const text = texts[index] ?? '';
    return (alike.get(short)?.size ?? 0) > 1 ? withEnd(text, size, room) : short;
  });
}

function withEnd(text: string, size: number, room: number): string {
  let end = '';
  for (const character of [...text.slice(-24).trimEnd()].reverse()) {
    if (textWidth(character + end, size) > room / 2) break;
    end = character + end;
  }
  return fitted(text, size, room - textWidth(end, size)) + end;
}

/** The text in as many lines as it takes; a word that is too wide for any stands alone. */
export function brokenInto(text: string, room: number, size: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${word}`;
    if (lines.length > 0 && textWidth(longer, size) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** No drawing has room for more; a name may be as long as a file. */
const MOST_READ = 2000;
const GENEROUS = 1.05;
const ELLIPSIS = 1;

function emsOf(character: string): number {
  if (/^[\p{M}\u200b-\u200d\u2060\ufeff]$/u.test(character)) return 0;
  if (/^[iljtfrI.,:;'|!()[\]\s\u2009\u202f]$/.test(character)) return 0.31;
  if (/^[mwMW@%—…]$/.test(character)) return 0.92;
  if (/^[A-Z&ÄÖÜ]$/.test(character)) return 0.7;
  if (
    /^[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\uff00-\uff60\u{1f300}-\u{1faff}]$/u.test(
      character,
    )
  )
    return 1.05;
  return 0.56;
}
