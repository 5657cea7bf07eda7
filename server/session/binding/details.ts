/** The details of one entry: each word read once, repeated ones remarked on, strangers sent where they belong. */
import type { Entry, Line, Place } from '../../../grammar/tree.ts';
import { DETAILS, detailWord, ENTRIES, entryWord, type WordEntry } from '../../../grammar/vocabulary.ts';
import { LineReader } from './line-reader.ts';
import { nearest } from '../../quantities/near.ts';
import type { Remark } from '../remark.ts';

export interface Details {
  /** The one line of a detail, or null; where it stands twice and differs, neither is used. */
  one<Read>(word: string, read: (reader: LineReader) => Read, words?: readonly string[]): Read | null;
  /** Every line of a repeatable detail. */
  all<Read>(word: string, read: (reader: LineReader) => Read, words?: readonly string[]): Read[];
}

/** Sorts an entry's lines by their words; `spec` is null for an entry that is not known. */
export function detailsOf(path: string, entry: Entry, spec: WordEntry | null, remarks: Remark[]): Details {
  const byWord = new Map<string, Line[]>();
  for (const line of entry.details) {
    const word = placed(path, entry, line, spec, remarks);
    if (!word) continue;
    const same = byWord.get(word);
    if (same) same.push(line);
    else byWord.set(word, [line]);
  }
  const read = <Read>(line: Line, how: (reader: LineReader) => Read, words: readonly string[]): Read => {
    const reader = new LineReader(path, entry, line, remarks);
    const result = how(reader);
    reader.finish(words);
    return result;
  };
  return {
    one: (word, how, words = []) => {
      const lines = byWord.get(word);
      const first = lines?.[0];
      if (!lines || !first) return null;
      if (lines.length === 1) return read(first, how, words);
      const same = lines.every((line) => saidOf(entry, line) === saidOf(entry, first));
      for (const line of lines.slice(1))
        remarks.push({
          about: 'repeated',
          place: placeOf(path, entry, line),
          word,
          first: placeOf(path, entry, first),
          same,
        });
      return same ? read(first, how, words) : null;
    },
    all: (word, how, words = []) => (byWord.get(word) ?? []).map((line) => read(line, how, words)),
  };
}

/** The word that a line counts for, or null where it belongs elsewhere or nowhere. */
function placed(
  path: string,
  entry: Entry,
  line: Line,
  spec: WordEntry | null,
  remarks: Remark[],
): string | null {
  const typed = line.word?.word ?? '';
  const known = detailWord(typed);
  if (known && known.word === typed && line.indented && spec?.details.includes(typed)) return typed;
  const { start, end } = line.word ?? line;
  const wordPlace = { path, entry, start, end };
  if (!known) {
    if (spec === null && entry.header.word) return null;
    const near = nearest(typed, spec ? spec.details : DETAILS.map(({ word }) => word));
    remarks.push({
      about: 'unknown-word',
      place: wordPlace,
      typed: typed || entry.text.slice(line.start, line.end),
      near,
      opens: false,
    });
    return null;
  }
  if (!line.indented) remarks.push({ about: 'indent', place: wordPlace, word: known.word, opens: false });
  if (typed !== known.word) remarks.push({ about: 'letter-case', place: wordPlace, typed, word: known.word });
  if (spec === null && entry.header.word) return null;
  if (spec?.details.includes(known.word)) return known.word;
  const belongs = ENTRIES.filter((other) => other.details.includes(known.word)).map(({ word }) => word);
  remarks.push({
    about: 'misplaced-detail',
    place: wordPlace,
    word: known.word,
    entry: spec?.word ?? '',
    belongs,
  });
  return null;
}

/** The vocabulary's entry for a header line, with what is odd about how its word is written. */
export function headerOf(path: string, entry: Entry, remarks: Remark[]): WordEntry | null {
  const { header } = entry;
  if (!header.word) {
    if (header.items.length > 0)
      remarks.push({
        about: 'unknown-word',
        place: placeOf(path, entry, header),
        typed: entry.text.slice(header.start, header.end),
        near: [],
        opens: true,
      });
    return null;
  }
  const { word } = header.word;
  const place = { path, entry, start: header.word.start, end: header.word.end };
  const spec = entryWord(word);
  if (!spec) {
    const near = nearest(
      word,
      ENTRIES.map((known) => known.word),
    );
    remarks.push({ about: 'unknown-word', place, typed: word, near, opens: true });
    return null;
  }
  if (header.indented) remarks.push({ about: 'indent', place, word: spec.word, opens: true });
  if (word !== spec.word) remarks.push({ about: 'letter-case', place, typed: word, word: spec.word });
  return spec;
}

export const placeOf = (path: string, entry: Entry, line: Line): Place => ({
  path,
  entry,
  start: line.start,
  end: line.end,
});

const saidOf = (entry: Entry, line: Line) => entry.text.slice(line.start, line.end).replace(/\s+/g, ' ');
