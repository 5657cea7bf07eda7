/** Takes the items of one line one after the other; what nobody takes is left over and remarked on. */
import type { Entry, Item, Line, Name, Place, Span, Sum, Text, Word } from '../../grammar/tree.ts';
import { nearest } from '../quantities/near.ts';
import type { Remark } from './remark.ts';

export class LineReader {
  readonly place: Place;
  private index = 0;

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
    return item?.kind === 'text' ? this.taken(item) : undefined;
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
    this.index = this.line.items.length;
    if (!first || !last) return;
    const span = { start: first.start, end: last.end };
    const near = first.kind === 'word' ? nearest(first.word, words) : [];
    this.remark({ about: 'leftover', place: this.at(span), typed: this.typed(span), near });
  }

  private taken<Wanted extends Item>(item: Wanted): Wanted {
    this.index++;
    return item;
  }
}
