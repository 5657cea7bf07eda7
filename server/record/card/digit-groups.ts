/** A number's digits in groups of three, so that two of them can be compared group by group. */

import { LENGTH_UNITS } from '../../../grammar/units.ts';

const LENGTH = new RegExp(`^([−-]?\\d[\\d.]*) (?:${LENGTH_UNITS.map(({ unit }) => unit).join('|')})$`);

export const isLength = (text: string) => LENGTH.test(text);

/** As a receiver wants a length: the number alone. */
export const withoutUnit = (text: string) => LENGTH.exec(text)?.[1] ?? text;

/** The groups together are the text; what is neither a length nor an angle is one group. */
export function digitGroups(text: string): string[] {
  if (!isLength(text) && !/^\d[\d.]*°.*[NSEW]$/.test(text)) return [text];
  const number = /^([^\d]*)([\d°'"]*?)(\d+)(?:(\.)(\d+))?(\D*)$/.exec(text);
  if (!number) return [text];
  const [, sign = '', before = '', whole = '', point = '', decimals = '', behind = ''] = number;
  const wholes = whole.length > 4 ? threesFromEnd(whole) : [whole];
  const fractions = decimals.match(/\d{1,3}/g) ?? [];
  const groups = [...wholes, ...fractions.slice(1)];
  const last = wholes.length - 1;
  groups[0] = sign + before + (groups[0] ?? '');
  groups[last] = (groups[last] ?? '') + point + (fractions[0] ?? '');
  groups[groups.length - 1] = (groups.at(-1) ?? '') + behind;
  return groups;
}

function threesFromEnd(digits: string): string[] {
  const first = digits.length % 3;
  return [...(first > 0 ? [digits.slice(0, first)] : []), ...(digits.slice(first).match(/\d{3}/g) ?? [])];
}
