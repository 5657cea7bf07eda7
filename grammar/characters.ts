/** The characters that stand for one another in typed notes: blanks, dashes, quotes, and marks of degrees, minutes and seconds. */

/** Space, tab, no-break and typographic spaces. */
export const BLANKS = ' \\t\\u00a0\\u1680\\u2000-\\u200a\\u202f\\u205f\\u3000';
/** Characters without width, ignored wherever they stand. */
export const INVISIBLE = /[\u00ad\u200b-\u200d\u2060-\u2064\ufeff]/;
/** Controls that reorder what a reader sees; a line that shows one thing and says another is never accepted. */
export const BIDIRECTIONAL = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/;
/** Hyphen-minus and what keyboards and word processors put in its place. */
export const DASHES = '\\-\\u2010-\\u2015\\u2212\\ufe58\\ufe63\\uff0d';
export const CURLY_QUOTES = '\u201c\u201d\u201e\u201f';
export const SECONDS_MARKS = '"\u2033\u201d\u02dd';
export const MINUTE_MARKS = "'\u2032\u2019\u00b4\u02b9";
export const DEGREE_MARKS = '\u00b0\u00ba\u02da';

export const isDigit = (character: string | undefined) =>
  character !== undefined && character >= '0' && character <= '9';
