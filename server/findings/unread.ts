/** What a line would have said that cannot be read as it is written: keys by which what is missing for it hangs under it. */
import { keptWith } from '../../grammar/kept-with.ts';
import type { Entry, Line, Place } from '../../grammar/tree.ts';
import { DETAILS, detailWord, ENTRIES, entryWord } from '../../grammar/vocabulary.ts';
import { nearest } from '../quantities/near.ts';
import type { Subject } from './finding.ts';

/** An entry of this word and name, or one of any name, whose own line cannot be read or is missing. */
export const unreadEntry = (word: string, name?: string): string[] => [
  name === undefined ? `unread/${word}` : `unread/${word}/${bounded(name)}`,
  `missing/${word}`,
];

/** The line that opens an entry of this word, with its name, is missing. */
export const missingEntry = (word: string) => `missing/${word}`;

/** A detail of the entry of this name that cannot be read. */
export const unreadDetail = (name: string, word: string) => `unread/detail/${bounded(name)}/${word}`;

/** A key holds no text of any length: what stands in a name's place may be a whole note, in each finding about it. */
const bounded = (name: string) =>
  name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME)}…${name.length}` : name;
const LONGEST_NAME = 100;

export type KeyedPart = 'position' | 'height' | 'antenna-height' | 'antenna-type';

/** A line of what was keyed that cannot be read, and says this part or may have said it. */
export const unreadKeyed = (name: string, part: KeyedPart) => [
  unreadDetail(name, 'keyed'),
  `${unreadDetail(name, 'keyed')}/${part}`,
];

/** Everything that keeps a check from proving anything: its own lines, its mark, and the lines of that. */
export function unreadChecks({ session }: Subject): string[] {
  return [
    ...unreadEntry('check'),
    ...session.checks.flatMap(({ name, on }) => [
      unreadDetail(name, 'observed'),
      ...(on
        ? [
            ...unreadEntry('mark', on.name),
            unreadDetail(on.name, 'position'),
            unreadDetail(on.name, 'height'),
          ]
        : []),
    ]),
  ];
}

/** Details of the entry that a place lies in, for entries without a name of their own. */
export const unreadIn = ({ entry }: { readonly entry: Entry }, ...words: readonly string[]) =>
  words.map((word) => unreadDetail(nameOf(entry), word));

/** Topics of findings that are about how a line is written. */
const ABOUT_WRITING =
  /^(?:syntax|angle)\/|^(?:unit\/missing|unit\/slip|number\/decimal-comma|height\/no-surface|mark\/unknown)$/;

/** What a finding about a line's writing keeps from being read. */
export function unreadBy(code: string, place: Place): string[] {
  if (!ABOUT_WRITING.test(code)) return [];
  const { entry } = place;
  const detail = lineAt(entry.details, place.start);
  if (detail)
    return meant(detail, 'detail').flatMap((word) => {
      const parts = word === 'keyed' ? keyedParts(detail, entry) : [];
      const key = unreadDetail(nameOf(entry), word);
      return parts.length === 0 ? [key] : parts.map((part) => `${key}/${part}`);
    });
  return meant(entry.header, 'entry').flatMap((word) => [
    `unread/${word}`,
    `unread/${word}/${bounded(nameOf(entry))}`,
  ]);
}

/** What a line of what was keyed speaks of; nothing where its first word is none of these, so that it may have been any. */
function keyedParts({ word, start, end }: Line, { text }: Entry): string[] {
  const behind = text.slice(word?.end ?? start, end);
  if (!/^\s*(?:position|height|antenna-height|antenna-type)\b/.test(behind)) return [];
  return [...behind.matchAll(/(?<![\w-])(?:position|height|antenna-height|antenna-type)(?![\w-])/g)].map(
    ([part]) => part,
  );
}

/** Lines stand in the order of the text. */
export function lineAt(lines: readonly Line[], offset: number): Line | undefined {
  let [low, high] = [0, lines.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((lines[middle]?.start ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  const line = lines[low];
  return line && line.start <= offset && offset <= line.end ? line : undefined;
}

/** The line's word, or those it may have meant. */
export function meant({ word }: Line, sort: 'entry' | 'detail'): string[] {
  if (!word) return [];
  const known = sort === 'entry' ? entryWord(word.word) : detailWord(word.word);
  if (known) return [known.word];
  return nearest(
    word.word,
    (sort === 'entry' ? ENTRIES : DETAILS).map((other) => other.word),
  );
}

/** As it was typed behind the first word, which need not be one that a name stands behind. */
export function nameOf(entry: Entry): string {
  const known = names.get(entry);
  if (known !== undefined) return known;
  const name = typedName(entry);
  names.set(entry, name);
  return name;
}
const names = keptWith<Entry, string>();

function typedName({ header, text }: Entry): string {
  const behind = text.slice(header.word?.end ?? header.start, header.end);
  const [, quoted, bare = ''] = /^\s*(?:"((?:[^"]|"")*)"|([^\s,"]+))/u.exec(behind) ?? [];
  return quoted?.replaceAll('""', '"') ?? bare;
}
