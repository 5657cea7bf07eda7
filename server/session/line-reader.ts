/** Takes the items of one line one after the other; what nobody takes is left over and remarked on. */
import type { Entry, Item, Line, Name, Place, Span, Sum, Text, Word } from '../../grammar/tree.ts';
import { nearest } from '../quantities/near.ts';
import type { Remark } from './remark.ts';

export interface LineReader {
  readonly line: Line;
  readonly entry: Entry;
  readonly place: Place;
  readonly remarks: Remark[];
  at(span: Span): Place;
  /** What was typed there. */
  typed(span: Span): string;
  peek(ahead?: number): Item | undefined;
  next(): Item | undefined;
  /** Takes the next item if it is one of these words. */
  word<Wanted extends string>(...words: readonly Wanted[]): Wanted | undefined;
  anyWord(): Word | undefined;
  name(): Name | undefined;
  text(): Text | undefined;
  /** A name, or a quoted one. */
  nameOrText(): { readonly name: string; readonly place: Place } | undefined;
  sum(): Sum | undefined;
  comma(): boolean;
  remark(remark: Remark): void;
  /** Remarks on what is left; `words` are those that could have stood there. */
  finish(words?: readonly string[]): void;
}

export function readLine(path: string, entry: Entry, line: Line, remarks: Remark[]): LineReader {
  let index = 0;
  const at = (span: Span): Place => ({ path, entry, start: span.start, end: span.end });
  const peek = (ahead = 0) => line.items[index + ahead];
  const taken = <Wanted extends Item>(item: Wanted): Wanted => {
    index++;
    return item;
  };
  const reader: LineReader = {
    line,
    entry,
    place: at(line),
    remarks,
    at,
    typed: (span) => entry.text.slice(span.start, span.end),
    peek,
    next: () => line.items[index++],
    word: (...words) => {
      const item = peek();
      if (item?.kind !== 'word') return undefined;
      const found = words.find((word) => word === item.word);
      if (found !== undefined) index++;
      return found;
    },
    anyWord: () => {
      const item = peek();
      return item?.kind === 'word' ? taken(item) : undefined;
    },
    name: () => {
      const item = peek();
      return item?.kind === 'name' ? taken(item) : undefined;
    },
    text: () => {
      const item = peek();
      return item?.kind === 'text' ? taken(item) : undefined;
    },
    nameOrText: () => {
      const item = peek();
      if (item?.kind === 'name') return { name: taken(item).name, place: at(item) };
      if (item?.kind === 'text') return { name: taken(item).text, place: at(item) };
      return undefined;
    },
    sum: () => {
      const item = peek();
      return item?.kind === 'sum' ? taken(item) : undefined;
    },
    comma: () => {
      const found = peek()?.kind === 'comma';
      if (found) index++;
      return found;
    },
    remark: (remark) => remarks.push(remark),
    finish: (words = []) => {
      while (peek()?.kind === 'comma') index++;
      const first = peek();
      const last = line.items[line.items.length - 1];
      index = line.items.length;
      if (!first || !last) return;
      const span = { start: first.start, end: last.end };
      const near = first.kind === 'word' ? nearest(first.word, words) : [];
      remarks.push({ about: 'leftover', place: at(span), typed: reader.typed(span), near });
    },
  };
  return reader;
}
