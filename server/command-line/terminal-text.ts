/** Text for a terminal: wrapped at words, measured in columns, and free of characters that would steer the terminal. */

/** Lines of at most `width` columns, each behind the same indent; a longer word has a line to itself. */
export function wrapped(text: string, width: number, indent = ''): string {
  const lines: string[] = [];
  let line = '';
  let taken = 0;
  for (const word of harmless(text).split(/\s+/u)) {
    const more = columns(word);
    if (line !== '' && taken + 1 + more <= width - indent.length) {
      line += ` ${word}`;
      taken += 1 + more;
      continue;
    }
    if (line !== '') lines.push(line);
    line = word;
    taken = more;
  }
  return [...lines, line].map((part) => indent + part).join('\n');
}

/** Control characters as their pictures, a tab as a blank, and what turns the direction of writing as a replacement sign. */
export const harmless = (text: string) =>
  text.replace(/[\p{Cc}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu, (steering) => {
    if (steering === '\t') return ' ';
    return steering < ' ' ? String.fromCharCode(0x2400 + steering.charCodeAt(0)) : '\ufffd';
  });

/** Columns that a text takes: none for marks that combine, two for the wide letters of East Asia and pictures. */
export function columns(text: string): number {
  if (PLAIN.test(text)) return text.length;
  let count = 0;
  for (const character of text) count += NO_COLUMN.test(character) ? 0 : TWO_COLUMNS.test(character) ? 2 : 1;
  return count;
}
const PLAIN = /^[ -~\u00a0-\u02ff]*$/;
const NO_COLUMN = /^[\p{M}\u200b-\u200d\u2060\ufeff]$/u;
const TWO_COLUMNS =
  /^[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}]$/u;

/** `1 error`, `2 errors`. */
export const counted = (count: number, thing: string) => `${count} ${thing}${count === 1 ? '' : 's'}`;
