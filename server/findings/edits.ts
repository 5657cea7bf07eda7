/** What fixes put into a text and take out of it: whole lines, what stands before a word, lines added below, names. */
import type { Entry, Place } from '../../grammar/tree.ts';
import type { Edit } from './finding.ts';

/** From the first character of the line that a place starts in, to the place. */
export function marginBefore(place: Place): Place {
  return { ...place, start: lineStart(place), end: place.start };
}

/** The line that a place starts in, with its line end. */
export function wholeLine(place: Place): Place {
  const { text } = place.entry;
  let end = place.start;
  while (end < text.length && text[end] !== '\n' && text[end] !== '\r') end++;
  if (text[end] === '\r' && text[end + 1] === '\n') end++;
  return { ...place, start: lineStart(place), end: Math.min(end + 1, text.length) };
}

/** A detail below the last line of an entry, with its value where the formatter puts it. */
export function addedDetail(path: string, entry: Entry, word: string, value: string): Edit {
  const last = entry.details[entry.details.length - 1] ?? entry.header;
  const at = last.comment?.end ?? last.end;
  const line = `  ${word.padEnd(11)} ${value}`;
  return { place: { path, entry, start: at, end: at }, text: lineEndIn(entry) + line };
}

/** A new entry below the one that a place lies in, which may be the last of a file that ends without a line end. */
export function addedEntry(place: Place, lines: readonly string[]): Edit {
  const { text } = place.entry;
  const lineEnd = lineEndIn(place.entry);
  const opening = /[\r\n]$/.test(text) ? '' : lineEnd;
  const added = lines.map((line) => line + lineEnd).join('');
  return { place: { ...place, start: text.length, end: text.length }, text: opening + added };
}

const lineEndIn = ({ text }: Entry) => /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';

function lineStart({ entry: { text }, start }: Place): number {
  let at = start;
  while (at > 0 && text[at - 1] !== '\n' && text[at - 1] !== '\r') at--;
  return at;
}

/** A name as it is typed: quoted where a blank, a comma or a quote is part of it. */
export const asName = (name: string) =>
  /[\s,"]/u.test(name) || name === '' ? `"${name.replaceAll('"', '""')}"` : name;
