/** A session file as a table of entries: opened in one pass, and after an edit only the touched entries are read again. */
import { BIDIRECTIONAL, BLANKS, INVISIBLE } from './characters.ts';
import { readEntry } from './lowering.ts';
import type { Entry, Place } from './tree.ts';
import { detailWord, entryWord } from './vocabulary.ts';

export interface Document {
  readonly path: string;
  readonly text: string;
  readonly entries: readonly Entry[];
  /** Where each entry starts in the text, in UTF-16 units. */
  readonly starts: readonly number[];
}

/** Reads a whole file. */
export function openDocument(path: string, text: string): Document {
  const { entries, starts } = readRegion(text, 0, false, []);
  return { path, text, entries, starts };
}

/** The document with `inserted` in the place of the characters from `start` to `end`; untouched entries keep their identity. */
export function editDocument(document: Document, start: number, end: number, inserted: string): Document {
  const { path, entries, starts } = document;
  const text = document.text.slice(0, start) + inserted + document.text.slice(end);
  // The entry before may take over lines of the first one touched.
  const first = Math.max(0, entryAt(starts, start) - 1);
  const last = entryAt(starts, end);
  const from = starts[first] ?? 0;
  const shift = inserted.length - (end - start);
  const to = (starts[last + 1] ?? document.text.length) + shift;
  const region = readRegion(text.slice(from, to), from, first > 0, entries.slice(first, last + 1));
  const after = starts.slice(last + 1);
  return {
    path,
    text,
    entries: [...entries.slice(0, first), ...region.entries, ...entries.slice(last + 1)],
    starts: [...starts.slice(0, first), ...region.starts, ...(shift === 0 ? after : after.map((at) => at + shift))],
  };
}

/** The index of the entry that an offset of the text falls into. */
export function entryAt(starts: readonly number[], offset: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Where a place's entry starts in the document's text, or null where the entry is no longer part of it. */
export function startOf(document: Document, place: Place): number | null {
  let table = positions.get(document.entries);
  if (!table) {
    table = new Map(document.entries.map((entry, index) => [entry, index]));
    positions.set(document.entries, table);
  }
  const index = table.get(place.entry);
  return index === undefined ? null : (document.starts[index] ?? null);
}
const positions = new WeakMap<readonly Entry[], Map<Entry, number>>();

/** Offsets of all lines, to turn an offset into a line and a column; built on demand and kept with the text. */
export function lineStarts(text: string): number[] {
  const starts = [0];
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 10 || (code === 13 && text.charCodeAt(at + 1) !== 10)) starts.push(at + 1);
  }
  return starts;
}

function readRegion(text: string, offset: number, headed: boolean, known: readonly Entry[]) {
  const opens = openings(text);
  // The first chunk is what stands before the first entry; a region inside a file starts with an entry.
  if (!headed && opens[0] !== 0) opens.unshift(0);
  const preamble = !headed && !opensEntry(text, 0);
  const entries = opens.map((start, index) => {
    const chunk = text.slice(start, opens[index + 1] ?? text.length);
    const isHeaded = !(index === 0 && preamble);
    const opensFile = offset + start === 0;
    const kept = opensFile ? undefined : known.find((entry) => entry.text === chunk);
    return kept ?? readEntry(chunk, isHeaded, opensFile);
  });
  return { entries: distinct(entries), starts: opens.map((start) => start + offset) };
}

/** Two entries of the same text are two things; each needs its own identity. */
function distinct(entries: readonly Entry[]): Entry[] {
  const seen = new Set<Entry>();
  return entries.map((entry) => {
    const own = seen.has(entry) ? { ...entry } : entry;
    seen.add(own);
    return own;
  });
}

/** Offsets of the lines that open an entry. */
function openings(text: string): number[] {
  const opens: number[] = [];
  let at = 0;
  while (at < text.length) {
    if (opensEntry(text, at)) opens.push(at);
    at = nextLine(text, at);
  }
  return opens;
}

const leading = new RegExp(`[${BLANKS}]*`, 'uy');
const firstWord = /\p{L}[\p{L}\p{M}\p{Nd}_]*(?:-\p{L}[\p{L}\p{M}\p{Nd}_]*)*/uy;

/** An entry word opens one wherever it stands in the line; anything but a detail or a comment does so in the first column. */
function opensEntry(text: string, start: number): boolean {
  const line = visibleStart(text, start);
  leading.lastIndex = 0;
  const indent = leading.exec(line)?.[0].length ?? 0;
  const character = line[indent];
  if (character === undefined || character === '#') return false;
  firstWord.lastIndex = indent;
  const word = firstWord.exec(line)?.[0];
  if (word === undefined) return indent === 0;
  if (entryWord(word)) return true;
  return indent === 0 && !detailWord(word);
}

/** Enough of a line to see its first word, without the characters that have no width. */
function visibleStart(text: string, start: number): string {
  const code = text.charCodeAt(start);
  if (code > 32 && code < 128 && text.charCodeAt(start + 1) < 128) {
    const end = start + 40;
    const plain = text.slice(start, Math.min(end, nextLine(text, start)));
    if (!INVISIBLE.test(plain) && !BIDIRECTIONAL.test(plain)) return plain.replace(/[\r\n]+$/, '');
  }
  const line = text.slice(start, nextLine(text, start)).replace(/[\r\n]+$/, '');
  return [...line].filter((character) => !INVISIBLE.test(character) && !BIDIRECTIONAL.test(character)).join('');
}

function nextLine(text: string, start: number): number {
  for (let at = start; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 10) return at + 1;
    if (code === 13) return text.charCodeAt(at + 1) === 10 ? at + 2 : at + 1;
  }
  return text.length;
}
