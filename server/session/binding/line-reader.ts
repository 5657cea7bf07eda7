/** Takes the items of one line one after the other; what nobody takes is left over and remarked on. */
import type { Entry, Item, Line, Name, Place, Span, Sum, Text, Word } from '../../../grammar/tree.ts';
import { nearest } from '../../quantities/near.ts';
import type { Remark } from '../remark.ts';

export class LineReader {
  readonly place: Place;
  private index = 0;
  /** Where text in double quotes was looked for in vain, and whether the line needs it. */
  private noText: { readonly index: number; readonly needed: boolean } | null = null;

  constructor(
    private readonly path: string,
    readonly entry: Entry,
    readonly line: Line,
    readonly remarks: Remark[],
  ) {
    this.place = this.at(line);
  }

  at({ start, end }: Span): Place {
    return { path: this.path, entry: this.entry, start, end };
  }

  /** What was typed there. */
  typed({ start, end }: Span): string {
    return this.entry.text.slice(start, end);
  }

  peek(ahead = 0): Item | undefined {
    return this.line.items[this.index + ahead];
  }

  next(): Item | undefined {
    return this.line.items[this.index++];
  }

  /** Takes the next item if it is one of these words. */
  word<Wanted extends string>(...words: readonly Wanted[]): Wanted | undefined {
    const item = this.peek();
    if (item?.kind !== 'word') return undefined;
    const found = words.find((word) => word === item.word);
    if (found !== undefined) this.index++;
    return found;
  }

  anyWord(): Word | undefined {
    const item = this.peek();
    return item?.kind === 'word' ? this.taken(item) : undefined;
  }

  name(): Name | undefined {
    const item = this.peek();
    return item?.kind === 'name' ? this.taken(item) : undefined;
  }

  text(): Text | undefined {
    const item = this.peek();
    if (item?.kind === 'text') return this.taken(item);
    this.noText = { index: this.index, needed: false };
    return undefined;
  }

  /** Text was looked for in vain, and the line is not complete without; `finish` says so, once it sees what is left. */
  needsText(): void {
    if (this.noText) this.noText = { ...this.noText, needed: true };
  }

  /** A name, or a quoted one. */
  nameOrText(): { readonly name: string; readonly place: Place } | undefined {
    const item = this.peek();
    if (item?.kind === 'name') return { name: this.taken(item).name, place: this.at(item) };
    if (item?.kind === 'text') return { name: this.taken(item).text, place: this.at(item) };
    return undefined;
  }

  sum(): Sum | undefined {
    const item = this.peek();
    return item?.kind === 'sum' ? this.taken(item) : undefined;
  }

  comma(): boolean {
    const found = this.peek()?.kind === 'comma';
    if (found) this.index++;
    return found;
  }

  remark(remark: Remark): void {
    this.remarks.push(remark);
  }

  /** Remarks on what is left; `words` are those that could have stood there. */
  finish(words: readonly string[] = []): void {
    while (this.peek()?.kind === 'comma') this.index++;
    const first = this.peek();
    const last = this.line.items[this.line.items.length - 1];
    const near = first?.kind === 'word' ? nearest(first.word, words) : [];
    const unquoted = near.length > 0 ? [] : this.unquoted(words);
    const [from, to] = [unquoted[0], unquoted[unquoted.length - 1]];
    const misplaced = this.line.items.slice(this.index).some(({ kind }) => kind === 'text');
    this.index = this.line.items.length;
    if (this.noText?.needed && !from && !misplaced) this.missing('text in double quotes');
    if (!first || !last) return;
    const span = { start: first.start, end: last.end };
    const remark: Remark = { about: 'leftover', place: this.at(span), typed: this.typed(span), near };
    this.remark(from && to ? { ...remark, text: this.at({ start: from.start, end: to.end }) } : remark);
  }

  missing(expects: string): void {
    this.remark({ about: 'missing-value', place: this.place, word: this.line.word?.word ?? '', expects });
  }

  /** What stands without quotes where text was looked for: from a word on, up to what is no part of it. */
  private unquoted(words: readonly string[]): readonly Item[] {
    if (this.noText?.index !== this.index) return [];
    const rest = this.line.items.slice(this.index);
    if (rest[0]?.kind !== 'word' && rest[0]?.kind !== 'name') return [];
    const end = rest.findIndex(
      (item) =>
        item.kind === 'date' || item.kind === 'text' || (item.kind === 'word' && words.includes(item.word)),
    );
    // The text stands behind it, where it is not looked for.
    if (rest[end]?.kind === 'text') return [];
    return end === -1 ? rest : rest.slice(0, end);
  }

  private taken<Wanted extends Item>(item: Wanted): Wanted {
    this.index++;
    return item;
  }
}
