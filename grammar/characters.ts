/** The characters that stand for one another in typed notes: blanks, dashes, quotes, marks of degrees, minutes and seconds; and those nobody sees. */

/** Space, tab, no-break and typographic spaces, as the inside of a character class. */
export const BLANKS = ' \\t\\u00a0\\u1680\\u2000-\\u200a\\u202f\\u205f\\u3000';
/** Characters without width, ignored wherever they stand. */
const INVISIBLE = '\\u00ad\\u180e\\u200b-\\u200d\\u2060-\\u2064\\u206a-\\u206f\\ufeff';
/** Controls that reorder what a reader sees; a line that shows one thing and says another is never accepted. */
const BIDIRECTIONAL = '\\u061c\\u200e\\u200f\\u202a-\\u202e\\u2066-\\u2069';
/** Hyphen-minus and what keyboards and word processors put in its place. */
export const DASHES = '\\-\\u2010-\\u2015\\u2212\\ufe58\\ufe63\\uff0d';
/** What joins the parts of a word; the last two are what a word processor makes of the first. */
const HYPHENS = '\\-\\u2010\\u2011';
export const CURLY_QUOTES = '\u201c\u201d\u201e\u201f';
export const SECONDS_MARKS = '"\u2033\u201d\u02dd';
export const MINUTE_MARKS = "'\u2032\u2019\u00b4\u02b9";
export const DEGREE_MARKS = '\u00b0\u00ba\u02da';

/** Words are letters, digits and `_` from the second character on, joined by hyphens. */
export const WORD = `\\p{L}[\\p{L}\\p{M}\\p{Nd}_]*(?:[${HYPHENS}]\\p{L}[\\p{L}\\p{M}\\p{Nd}_]*)*`;

/** What behind a letter would make its word longer. */
export const WORD_JOINS = `[\\p{L}\\p{M}\\p{Nd}_]|[${HYPHENS}]\\p{L}`;

const blank = new RegExp(`[${BLANKS}]`);
const unseen = new RegExp(`[${INVISIBLE}${BIDIRECTIONAL}]`);
const bidirectional = new RegExp(`[${BIDIRECTIONAL}]`);
const typographicHyphen = /[\u2010\u2011]/;

export const isDigit = (character: string | undefined) =>
  character !== undefined && character >= '0' && character <= '9';

export const isQuote = (character: string | undefined) =>
  character === '"' || (character !== undefined && character !== '' && CURLY_QUOTES.includes(character));

export const isBlank = (character: string | undefined) =>
  character === ' ' ||
  character === '\t' ||
  (character !== undefined && character > '\u007f' && blank.test(character));

/** Ignored with a hint, or a bidirectional control. */
export const isUnseen = (character: string | undefined) =>
  character !== undefined && character > '\u007f' && unseen.test(character);

export const hasUnseen = (text: string) => unseen.test(text);
export const isBidirectional = (character: string) => bidirectional.test(character);

export const plainHyphens = (word: string) =>
  typographicHyphen.test(word) ? word.replace(/[\u2010\u2011]/g, '-') : word;

const letter = /\p{L}/uy;
// Longest stretches are taken piece by piece: one long repetition would need a stack as long as the word.
const following = /[\p{L}\p{M}\p{Nd}_]{1,200}/uy;
const joint = new RegExp(`[${HYPHENS}]\\p{L}`, 'uy');

/** The offset behind the word that starts here, or the same offset where none does. */
export function wordEnd(text: string, start: number): number {
  let end = matchEnd(letter, text, start);
  if (end === start) return start;
  for (;;) {
    for (let next = matchEnd(following, text, end); next > end; next = matchEnd(following, text, end))
      end = next;
    const joined = matchEnd(joint, text, end);
    if (joined === end) return end;
    end = joined;
  }
}

function matchEnd(sticky: RegExp, text: string, at: number): number {
  sticky.lastIndex = at;
  return sticky.test(text) ? sticky.lastIndex : at;
}
