/** Where what can be seen of a piece of text begins and ends: what `trim` takes away, without a copy. */

/** The place of the first character that is no blank; `to` where there is none. */
export function firstInk(text: string, from: number, to: number): number {
  let at = from;
  while (at < to && isBlank(text.charCodeAt(at))) at += 1;
  return at;
}

/** Behind the last character that is no blank; `from` where there is none. */
export function endOfInk(text: string, from: number, to: number): number {
  let at = to;
  while (at > from && isBlank(text.charCodeAt(at - 1))) at -= 1;
  return at;
}

/** As ECMA-262 has it: white space and line ends. */
const isBlank = (code: number) =>
  code <= 32 ? code === 32 || (code >= 9 && code <= 13) : code >= 0xa0 && OTHERS.has(code);
const OTHERS = new Set(
  [
    ...'\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u2028\u2029\u202f\u205f\u3000\ufeff',
  ].map((sign) => sign.charCodeAt(0)),
);
