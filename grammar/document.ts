/** A session file as a table of entries: opened in one pass, and after an edit only the touched entries are read again. */
import { keptWith } from './kept-with.ts';
import { attempted, isFault } from './fault.ts';
import { hasUnseen, isBlank, isUnseen, wordEnd } from './characters.ts';
import { readEntry, unreadEntry } from './lowering.ts';
import type { Entry, Place } from './tree.ts';
import { detailWord, entryWord } from './vocabulary.ts';

export interface Document {
  readonly path: string;
  /** The whole text, put together when somebody asks for it. */
  readonly text: string;
  /** In UTF-16 units. */
  readonly length: number;
  readonly entries: readonly Entry[];
  /** Where each entry starts in the text, in UTF-16 units. */
  readonly starts: readonly number[];
}

/** Reads a whole file; what the program should fail over is one entry that says nothing. */
export function openDocument(path: string, text: string): Document {
  const region = attempted(() => readRegion(text, 0, false, []));
  const { entries, starts } = isFault(region)
    ? { entries: [unreadEntry(text, region.fault)], starts: [0] }
    : region;
  return { path, text, length: text.length, entries, starts };
}

/** The document with `inserted` in the place of the characters from `start` to `end`; untouched entries keep their identity. */
export function editDocument(document: Document, start: number, end: number, inserted: string): Document {
  const edited = attempted(() => editedDocument(document, start, end, inserted));
  if (!isFault(edited)) return edited;
  const { path, text } = document;
  return openDocument(path, text.slice(0, start) + inserted + text.slice(end));
}

function editedDocument(document: Document, start: number, end: number, inserted: string): Document {
  const { path, entries, starts } = document;
  // The entry before may take over lines of the first one touched.
  const first = Math.max(0, entryAt(starts, start) - 1);
  const touched = entries.slice(first, entryAt(starts, end) + 1);
  const from = starts[first] ?? 0;
  const old = joined(touched);
  const text = old.slice(0, start - from) + inserted + old.slice(end - from);
  const region = readRegion(text, from, first > 0, touched);
  const behind = first + touched.length;
  const shift = inserted.length - (end - start);
  const after = starts.slice(behind);
  const edited = entries.slice(0, first).concat(region.entries, entries.slice(behind));
  let whole: string | null = null;
  return {
    path,
    get text() {
      return (whole ??= joined(edited));
    },
    length: document.length + shift,
    entries: edited,
    starts: starts.slice(0, first).concat(region.starts, shift === 0 ? after : after.map((at) => at + shift)),
  };
}

function joined(entries: readonly Entry[]): string {
  let text = '';
  for (const entry of entries) text += entry.text;
  return text;
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
export function startOf({ entries, starts }: Document, { entry }: Place): number | null {
  const index = indexOf(entries, entry);
  return index < 0 ? null : (starts[index] ?? null);
}

/** A few entries are looked for in the list; a table is made when many are asked for. */
function indexOf(entries: readonly Entry[], entry: Entry): number {
  let known = searches.get(entries);
  if (!known) searches.set(entries, (known = { count: 0, table: null }));
  known.count += 1;
  if (known.count > FEW) known.table ??= new Map(entries.map((one, index) => [one, index]));
  return known.table ? (known.table.get(entry) ?? -1) : entries.indexOf(entry);
}
const FEW = 16;
const searches = keptWith<readonly Entry[], { count: number; table: Map<Entry, number> | null }>();

/** Where each line starts, to turn an offset into a line and a column. */
export function lineStarts(text: string): number[] {
  const starts = [0];
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 10 || (code === 13 && text.charCodeAt(at + 1) !== 10)) starts.push(at + 1);
  }
  return starts;
}

/** Reads a stretch of whole entries; known ones of the same text are taken over with their identity. */
function readRegion(text: string, offset: number, headed: boolean, known: readonly Entry[]) {
  const opens = openings(text);
  // What stands before a file's first entry is a chunk of its own; a region inside a file starts with an entry.
  const hasPreamble = !headed && opens[0] !== 0;
  if (hasPreamble) opens.unshift(0);
  const kept = byText(known);
  const entries = opens.map((start, index) => {
    const chunk = text.slice(start, opens[index + 1] ?? text.length);
    return kept.get(chunk)?.pop() ?? readEntry(chunk, !(hasPreamble && index === 0), offset + start === 0);
  });
  return { entries, starts: opens.map((start) => start + offset) };
}

/** Entries by their text, the first of several last; a byte order mark means another thing elsewhere, so its entry is read anew. */
function byText(known: readonly Entry[]): Map<string, Entry[]> {
  const table = new Map<string, Entry[]>();
  for (const entry of known.toReversed()) {
    if (entry.text.startsWith('\ufeff')) continue;
    const same = table.get(entry.text);
    if (same) same.push(entry);
    else table.set(entry.text, [entry]);
  }
  return table;
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

/** An entry word opens one wherever it stands in the line; anything but a detail or a comment does so in the first column. */
export function opensEntry(text: string, start: number): boolean {
  let at = start;
  let indented = false;
  for (; isBlank(text[at]) || isUnseen(text[at]); at++) indented ||= isBlank(text[at]);
  const character = text[at];
  if (character === undefined || character === '\n' || character === '\r' || character === '#') return false;
  const word = firstWord(text, at);
  if (word === '') return !indented;
  return entryWord(word) !== undefined || (!indented && !detailWord(word));
}

/** More than the longest word of the language. */
const ENOUGH = 40;

function firstWord(text: string, start: number): string {
  let head = text.slice(start, start + ENOUGH);
  if (hasUnseen(head)) {
    head = '';
    for (let at = start; at < text.length && head.length < ENOUGH; at++) {
      if (text[at] === '\n' || text[at] === '\r') break;
      if (!isUnseen(text[at])) head += text[at];
    }
  }
  return head.slice(0, wordEnd(head, 0));
}

function nextLine(text: string, start: number): number {
  for (let at = start; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 10) return at + 1;
    if (code === 13) return text.charCodeAt(at + 1) === 10 ? at + 2 : at + 1;
  }
  return text.length;
}
