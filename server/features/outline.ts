/** The session as a tree of entries and their details, for an outline and for going to a name. */
import type { Document } from '../../grammar/document.ts';
import type { Entry, Line, Span, Sum } from '../../grammar/tree.ts';
import type { Inspection } from '../inspect.ts';
import type { Bound } from '../session/entries.ts';
import type { Session } from '../session/session.ts';
import { summaryOf } from './about-name.ts';
import { linesOf, type Stretch } from './cursor.ts';
import { checkSays } from './lenses.ts';
import { namesIn, type NameKind } from './names.ts';

export interface OutlineNode {
  readonly kind: Bound['kind'] | 'detail';
  readonly name: string;
  readonly detail: string;
  readonly whole: Stretch;
  /** What is selected when one goes there. */
  readonly heading: Stretch;
  readonly children: readonly OutlineNode[];
}

export function outlineOf(inspection: Inspection): OutlineNode[] {
  const { entries, starts, path } = inspection.session.document;
  return inspection.session.entries.flatMap((bound, index) => {
    const entry = entries[index];
    if (!entry || !hasHeader(entry)) return [];
    const start = starts[index] ?? 0;
    const at = (span: { start: number; end: number }): Stretch => ({
      path,
      start: start + span.start,
      end: start + span.end,
    });
    return [entryNode(bound, entry, at, inspection)];
  });
}

const hasHeader = ({ header }: Entry) => header.word !== null || header.items.length > 0;

function entryNode(
  bound: Bound,
  entry: Entry,
  at: (span: { start: number; end: number }) => Stretch,
  inspection: Inspection,
): OutlineNode {
  const last = entry.details.at(-1) ?? entry.header;
  return {
    kind: bound.kind,
    name: headingOf(bound, entry),
    detail: detailOf(bound, inspection),
    whole: at({ start: entry.header.start, end: Math.max(last.end, entry.header.end) }),
    heading: at(entry.header),
    children: entry.details.map((line) => detailNode(line, entry, at)),
  };
}

/** `mark PM-14`, `job North arm`: an outline's symbols are told apart by their icon alone in some editors. */
function headingOf(bound: Bound, entry: Entry): string {
  const first = entry.header.items[0];
  const named = first?.kind === 'name' ? first.name : first?.kind === 'text' ? first.text : '';
  const word = entry.header.word?.word ?? '';
  const name = bound.kind === 'stream' && bound.from ? `from ${bound.from.name}` : named;
  return `${word} ${name}`.trim();
}

function detailOf(bound: Bound, inspection: Inspection): string {
  switch (bound.kind) {
    case 'mark':
    case 'antenna':
    case 'rover':
    case 'surface':
    case 'ground':
    case 'setup':
      return summaryOf(bound.kind, bound.name, inspection)[0] ?? '';
    case 'check': {
      const values = inspection.derivation.checks.find(({ check }) => check === bound);
      return values ? checkSays(values) : '';
    }
    case 'event':
      return bound.text ?? '';
    default:
      return '';
  }
}

function detailNode(
  line: Line,
  entry: Entry,
  at: (span: { start: number; end: number }) => Stretch,
): OutlineNode {
  const word = line.word?.word ?? '';
  const rest = entry.text.slice(line.word?.end ?? line.start, line.end).trim();
  return {
    kind: 'detail',
    name: word || rest,
    detail: word ? rest : '',
    whole: at(line),
    heading: at(line),
    children: [],
  };
}

export interface NamedThing {
  readonly kind: NameKind;
  readonly name: string;
  readonly at: Stretch;
}

/** Every name that this file writes down. */
export function thingsIn(session: Session): NamedThing[] {
  const { starts, path } = session.document;
  return session.entries.flatMap((bound, index) =>
    namesIn(bound)
      .filter((use) => use.declares)
      .map(({ kind, name, place }) => {
        const start = starts[index] ?? 0;
        return { kind, name, at: { path, start: start + place.start, end: start + place.end } };
      }),
  );
}

/** A number, its quantity, the sum that it is part of, the line, the entry, the text: what a growing selection takes in. */
export function selectionsAt(document: Document, offset: number): Stretch[] {
  const { entries, starts, path, text } = document;
  const index = starts.findLastIndex((start) => start <= offset);
  const entry = entries[index];
  const whole = { path, start: 0, end: text.length };
  if (!entry) return [whole];
  const start = starts[index] ?? 0;
  const holds = (span: { start: number; end: number }) =>
    start + span.start <= offset && offset <= start + span.end;
  const spans = linesOf(entry)
    .filter(holds)
    .flatMap((line) => {
      const item = [line.word, ...line.items].filter((found) => found !== null).findLast(holds);
      const inside = item && 'kind' in item && item.kind === 'sum' ? spansIn(item).filter(holds) : [];
      return [...inside, ...(item ? [item] : []), line];
    });
  const last = entry.details.at(-1) ?? entry.header;
  const chain = [...spans, { start: 0, end: last.end }].map((span) => ({
    path,
    start: start + span.start,
    end: start + span.end,
  }));
  const held = [...chain.filter((stretch) => stretch.start <= offset && offset <= stretch.end), whole];
  return held.filter(
    ({ start: from, end }, index) => held[index + 1]?.start !== from || held[index + 1]?.end !== end,
  );
}

/** From the smallest on. */
const spansIn = ({ terms }: Sum): Span[] => {
  const measures = terms
    .flatMap(({ measure, uncertainty }) => [measure, uncertainty])
    .filter((one) => one !== null);
  return [...measures.flatMap(({ parts }) => parts.map(({ numeral }) => numeral)), ...measures, ...terms];
};

export interface Fold {
  readonly start: number;
  readonly end: number;
}

/** Each entry from its first line to its last one that says anything. */
export function foldsIn({ entries, starts }: Document): Fold[] {
  return entries.flatMap((entry, index) => {
    const start = starts[index] ?? 0;
    const last = entry.details.at(-1);
    return hasHeader(entry) && last ? [{ start: start + entry.header.start, end: start + last.end }] : [];
  });
}
