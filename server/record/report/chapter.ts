/** One session's part of a report: its anchors, its links to lines and derivations, its figures and tables. */
import type { Place } from '../../../grammar/tree.ts';
import { listValues } from '../../derive/listing.ts';
import type { Inspection } from '../../inspect.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { whereIs, type Where } from '../../session/where.ts';
import type { Canvas } from '../drawings/canvas.ts';
import { element, type Child, type Markup } from '../drawings/markup.ts';

export interface Chapter {
  readonly inspection: Inspection;
  /** Before every anchor of this session. */
  readonly prefix: string;
  /** Computed values with a story of their own, in order, and the anchor of each. */
  readonly stories: ReadonlyMap<Value, string>;
  /** The same, by the mark, setup or check that each is told for first. */
  readonly storyGroups: ReadonlyMap<string, readonly Value[]>;
}

/** Lines beyond this are not printed; a report is for reading. */
export const MOST_LINES = 4000;

export function chapterOf(inspection: Inspection, number: number): Chapter {
  const prefix = `s${number}`;
  const stories = new Map<Value, string>();
  const storyGroups = new Map<string, Value[]>();
  const visit = (value: Value, group: string) => {
    if (value.origin !== 'computed' || stories.has(value)) return;
    stories.set(value, `${prefix}-d${stories.size + 1}`);
    const told = storyGroups.get(group) ?? [];
    storyGroups.set(group, told);
    told.push(value);
    for (const input of Object.values(value.inputs)) visit(input, group);
  };
  for (const { id, value } of listValues(inspection.derivation))
    if (!isHole(value)) visit(value, id.split('/').slice(0, 2).map(decodeURIComponent).join(' '));
  return { inspection, prefix, stories, storyGroups };
}

/** The anchor of a line of the session, where the report prints it. */
export const lineAnchor = ({ prefix }: Chapter, line: number) => `${prefix}-L${line}`;

function lineHref(chapter: Chapter, where: Where): string | null {
  const own = where.path === chapter.inspection.session.document.path;
  return own && where.line <= MOST_LINES ? `#${lineAnchor(chapter, where.line)}` : null;
}

/** `line 12`, leading there; another file's line is named only. */
export function lineLink(chapter: Chapter, place: Place): Markup {
  const where = whereIs(chapter.inspection.session, place);
  const href = lineHref(chapter, where);
  const own = where.path === chapter.inspection.session.document.path;
  const text = own ? `line ${where.line}` : `line ${where.line} of ${where.path}`;
  return href ? element('a', { href }, text) : element('span', {}, text);
}

/** A number that leads to its derivation, or why it is missing. */
export function shown(chapter: Chapter, value: Maybe<Value>, show: (value: Value) => string): Markup {
  if (isHole(value)) return element('span', { class: 'quiet' }, `not known: ${value.hole}`);
  const anchor = chapter.stories.get(value);
  const text = show(value);
  return anchor
    ? element('a', { href: `#${anchor}`, class: 'number' }, text)
    : element('span', { class: 'number' }, text);
}

/** A drawing laid out twice, for a desk and for a phone; the page shows the one that fits. */
export function figure(chapter: Chapter, draw: (canvas: Canvas) => Markup, caption: Child = null): Markup {
  const link = (where: Where) => lineHref(chapter, where) ?? `#${chapter.prefix}`;
  return element(
    'figure',
    {},
    element('div', { class: 'desk' }, draw({ width: DESK, link })),
    element('div', { class: 'phone' }, draw({ width: PHONE, link })),
    caption === null ? null : element('figcaption', {}, caption),
  );
}
const DESK = 680;
const PHONE = 328;

export interface TableColumn {
  readonly head: string;
  readonly right?: boolean;
}

/** A table whose first column names the row; `stacked` ones become lists on a phone. */
export function table(
  columns: readonly TableColumn[],
  rows: readonly (readonly Child[])[],
  { stacked = false, caption = null as Child }: { stacked?: boolean; caption?: Child } = {},
): Markup {
  const side = (index: number) => (columns[index]?.right ? 'right' : null);
  return element(
    'table',
    { class: stacked ? 'stack' : null },
    caption === null ? null : element('caption', {}, caption),
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        ...columns.map(({ head }, index) => element('th', { scope: 'col', class: side(index) }, head)),
      ),
    ),
    element(
      'tbody',
      {},
      ...rows.map((cells) =>
        element(
          'tr',
          {},
          ...cells.map((cell, index) =>
            index === 0
              ? element('th', { scope: 'row' }, cell)
              : element(
                  'td',
                  { class: side(index), 'data-label': stacked ? (columns[index]?.head ?? null) : null },
                  cell,
                ),
          ),
        ),
      ),
    ),
  );
}

export const facts = (pairs: readonly (readonly [string, Child] | null)[]): Markup | null => {
  const known = pairs.filter((pair) => pair !== null);
  if (known.length === 0) return null;
  return element(
    'dl',
    { class: 'facts' },
    ...known.flatMap(([name, value]) => [element('dt', {}, name), element('dd', {}, value)]),
  );
};

export const section = (heading: string, ...children: Child[]): Markup =>
  element('section', {}, element('h2', {}, heading), ...children);

/** Children between which a word or a comma stands. */
export const joined = (children: readonly Child[], between: string): Child[] =>
  children.flatMap((child, index) => (index === 0 ? [child] : [between, child]));
