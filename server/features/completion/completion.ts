/** What may stand where the cursor is: words, units, names with what they stand for, coordinate systems, times. */
import { entryAt } from '../../../grammar/document.ts';
import { wordEnd } from '../../../grammar/characters.ts';
import type { Item, Line, Term } from '../../../grammar/tree.ts';
import { UNITS } from '../../../grammar/units.ts';
import { DETAILS, detailWord, ENTRIES, entryWord } from '../../../grammar/vocabulary.ts';
import type { Inspection } from '../../inspect.ts';
import { cursorAt, linesOf, type Cursor } from '../cursor.ts';
import { NO_FILES, type Files } from '../../session/files.ts';
import { offsetsOf } from '../../session/where.ts';
import type { NameUse } from '../names.ts';
import { expectedBehind, valuesBehind } from './expected.ts';
import { offeredColumns } from './offered-columns.ts';
import { offeredNames } from './offered-names.ts';
import { offeredSystems, systemStart } from './offered-systems.ts';
import { offeredTimes, type Now } from './offered-times.ts';
import { offeredTransformations } from './offered-transformations.ts';
import { spotAfter, type Spot } from './spot.ts';

export interface Offer {
  readonly kind: 'entry' | 'detail' | 'word' | 'value' | 'unit' | 'name' | 'system' | 'time';
  readonly label: string;
  /** A few words beside the label. */
  readonly beside: string;
  readonly says?: string;
  /** What is put in the place of the characters from `start` to the cursor. */
  readonly text: string;
  readonly start: number;
  /** The cursor, where it is not said; behind a `?` that goes with what is put in. */
  readonly end?: number;
  /** What the client is to compare with what was typed, where it is not the label. */
  readonly matches?: string;
  /** The thing that a name stands for, so that more can be said of it when somebody looks at the offer. */
  readonly means?: Pick<NameUse, 'kind' | 'name' | 'of'>;
}

/** What stands before the cursor in its line. */
export interface Before {
  readonly cursor: Cursor;
  /** The line's first word. */
  readonly word: string;
  /** Whole items before the one being typed, the nearest last. */
  readonly items: readonly Item[];
  readonly spot: Spot;
  /** The word that a name, a time or a value follows: the nearest one before the cursor. */
  readonly leading: string;
  readonly typed: string;
  /** Where what is being typed starts in the text. */
  readonly start: number;
  readonly offset: number;
}

/** @param now what a clock shows; where there is none, no time is offered as the present one */
export function completionAt(
  inspection: Inspection,
  offset: number,
  files: Files = NO_FILES,
  now: Now | null = null,
): Offer[] {
  const question = questionAt(inspection.session.document.text, offset);
  if (question === null) return offersAt(inspection, offset, files, now);
  // A question is answered as if nothing stood there yet; the answer takes its place.
  return offersAt(inspection, question, files, now).map((offer) => ({
    ...offer,
    end: question + 1,
    ...(offset > question ? { matches: `?${offer.matches ?? offer.label}` } : {}),
  }));
}

/** Where the lone `?` stands that the cursor touches. */
function questionAt(text: string, offset: number): number | null {
  const at = [offset - 1, offset].find((place) => text[place] === '?');
  if (at === undefined) return null;
  const apart = (letter: string | undefined) => letter === undefined || /[\s,]/.test(letter);
  return apart(text[at - 1]) && apart(text[at + 1]) ? at : null;
}

function offersAt(inspection: Inspection, offset: number, files: Files, now: Now | null): Offer[] {
  const { document } = inspection.session;
  const lineStart = startOfLine(document.text, offset);
  const head = document.text.slice(lineStart, offset);
  const inside = isInsideText(head);
  if (inside && !/^\s*(grid|datum|columns)\s/.test(head)) return [];
  if (/^\s*[^\s"#]*$/.test(head)) return firstWords(inspection, head, offset);
  const before = whatIsBefore(inspection, head, lineStart, offset);
  if (before?.word === 'columns') return offeredColumns(before, inspection, files);
  return before ? behindFirstWord(before, inspection, now) : [];
}

/** In the first column an entry may open; anywhere else a detail of the entry above goes on. */
function firstWords(inspection: Inspection, head: string, offset: number): Offer[] {
  const typed = head.trimStart();
  const start = offset - typed.length;
  const indented = typed.length < head.length;
  const { entries, starts } = inspection.session.document;
  const entry = entries[entryAt(starts, Math.max(0, offset - head.length - 1))];
  const spec = entry?.header.word ? entryWord(entry.header.word.word) : undefined;
  const present = new Set(entry?.details.map(({ word }) => word?.word));
  const details = DETAILS.filter(
    ({ word, repeatable }) => spec?.details.includes(word) && (repeatable || !present.has(word)),
  ).map((detail): Offer => {
    const text = (indented ? '' : '  ') + padded(detail.word);
    const { says, example } = detail;
    return { kind: 'detail', label: detail.word, beside: says, says: `${says}\n\n${example}`, text, start };
  });
  const wanted = ENTRIES.filter(({ word }) => word !== 'job' || !hasJobElsewhere(inspection, offset));
  const opening = wanted.map(({ word, says, example }): Offer => {
    return {
      kind: 'entry',
      label: word,
      beside: says,
      says: `${says}\n\n${example}`,
      text: `${word} `,
      start,
    };
  });
  return indented ? details : [...dayOrder(opening, spec?.word), ...details];
}

/** What the day brings next comes first: more of what stands above, then what follows it. */
function dayOrder(opening: readonly Offer[], above: string | undefined): Offer[] {
  const at = opening.findIndex(({ label }) => label === above);
  return at < 0 ? [...opening] : [...opening.slice(at), ...opening.slice(0, at)];
}

/** A file has one job: once it stands, no second one is offered. */
function hasJobElsewhere({ session }: Inspection, offset: number): boolean {
  const job = session.job && offsetsOf(session, session.job.place);
  return job !== null && !(job.start <= offset && offset <= job.end);
}

/** A detail's value starts in a column of its own. */
const VALUE_COLUMN = 12;
const padded = (word: string) => `${word} `.padEnd(VALUE_COLUMN);

function whatIsBefore(
  { session }: Inspection,
  head: string,
  lineStart: number,
  offset: number,
): Before | null {
  // What the entry's tree says of the line; a blank behind its last item is no longer part of it.
  const cursor = cursorAt(session, lineStart + (head.trimEnd().length || head.length));
  const line = cursor && (cursor.line ?? lineWith(cursor, lineStart));
  if (!cursor || !line?.word) return null;
  const typed = /[^\s,"]*$/.exec(head)?.[0] ?? '';
  const start = offset - typed.length;
  const items = line.items.flatMap((item) => saidBefore(item, start - cursor.start));
  const word = detailWord(line.word.word)?.word ?? entryWord(line.word.word)?.word ?? line.word.word;
  const last = items.filter((item) => item.kind === 'word').at(-1);
  const after = last ? items.slice(items.indexOf(last) + 1) : items;
  const waiting = after.length === 0;
  const spot = spotAfter(items);
  return { cursor, word, items, spot, leading: waiting ? (last?.word ?? word) : '', typed, start, offset };
}

/** The item as far as it stands before what is being typed, which may be the unit of its last number. */
function saidBefore(item: Item, end: number): Item[] {
  if (item.end <= end) return [item];
  if (item.kind !== 'sum') return [];
  const last = item.terms.at(-1);
  const cut = last && withoutUnit(last, end);
  return cut ? [{ ...item, terms: [...item.terms.slice(0, -1), cut], end: cut.end }] : [];
}

function withoutUnit(term: Term, end: number): Term | null {
  const measure = term.uncertainty ?? term.measure;
  const part = measure?.parts.at(-1);
  if (!measure || part?.unit?.start !== end) return null;
  const bare = { ...part, unit: null, end: part.numeral.end };
  const cut = { ...measure, parts: [...measure.parts.slice(0, -1), bare], end: bare.end };
  return term.uncertainty
    ? { ...term, uncertainty: cut, end: bare.end }
    : { ...term, measure: cut, end: bare.end };
}

const lineWith = (cursor: Cursor, lineStart: number): Line | undefined =>
  linesOf(cursor.entry).findLast(({ start }) => cursor.start + start >= lineStart);

function behindFirstWord(before: Before, inspection: Inspection, now: Now | null): Offer[] {
  const { word, leading, spot } = before;
  const names = offeredNames(before, inspection);
  if (names) return names;
  if (leading === 'by') return offeredTransformations(before, inspection);
  const system = systemStart(before);
  if (system !== null) return offeredSystems(before, system, inspection);
  if (['at', 'until', 'between', 'and'].includes(leading)) return offeredTimes(before, inspection, now);
  const units = offeredUnits(before);
  if (units.length > 0) return units;
  const values = spot.atStart ? valuesBehind(word).filter(isFree(before, inspection)) : [];
  return [...values.map(offer('value', before)), ...goingOn(before)];
}

/** A radio that the notes have already is not begun a second time. */
const isFree =
  ({ word, cursor: { bound } }: Before, { session: { radios } }: Inspection) =>
  (value: { readonly word: string }) =>
    word !== 'radio' || [undefined, bound].includes(radios.get(value.word));

/** Words that may stand just here. */
const goingOn = (before: Before): Offer[] =>
  expectedBehind(before.word)
    .words.filter(({ stands }) => stands(before.spot))
    .map(offer('word', before));

const offer =
  (kind: Offer['kind'], { start }: Before) =>
  ({ word, says }: { readonly word: string; readonly says: string }): Offer => ({
    kind,
    label: word,
    beside: says,
    text: word,
    start,
  });

/** Directly behind a number, or behind the blank that follows it: the units that fit what is measured. */
function offeredUnits({ word, typed, start, offset, spot, cursor }: Before): Offer[] {
  const { last, behindNumber } = spot;
  const measures = expectedBehind(word).measures(spot);
  const fitting = UNITS.filter((unit) => measures.includes(unit.measures));
  const attached =
    /^(?:(?:\+-|\+\/-|[+\-\u2212±])?\d+(?:\.\d+)?|\d+°(?:\d+['\u2032])?\d+(?:\.\d+)?)(?=\p{L}*$)/u.exec(
      typed,
    )?.[0];
  if (attached !== undefined) {
    const fits = fitting.filter(({ unit }) => goesOn(unit, attached, word));
    return unitOffers(fits, start + attached.length, offset, true);
  }
  if (!last || !behindNumber || !isWordLike(typed)) return [];
  const gap = start - (cursor.start + last.end);
  const number = cursor.entry.text.slice(last.start, last.end);
  // Behind a blank a mark of seconds would open a text.
  const apart = fitting.filter(({ unit }) => !/['"]/.test(unit) && goesOn(unit, number, word));
  return gap <= 1 ? unitOffers(apart, start, offset, false) : [];
}

/** Of the units of an angle: minutes stand behind degrees, seconds behind minutes, and a coordinate's angle has no sign. */
function goesOn(unit: string, number: string, word: string): boolean {
  if (number.includes('°')) return unit === (/['\u2032]/.test(number) ? '"' : "'");
  if (!COORDINATES.includes(word)) return true;
  if (unit === "'" || unit === '"') return false;
  return /^\d/.test(number) || (unit !== '°' && unit !== 'gon');
}
const COORDINATES = ['position', 'keyed', 'observed', 'autonomous'];

const isWordLike = (typed: string) => typed === '' || wordEnd(typed, 0) === typed.length;

const unitOffers = (fitting: typeof UNITS, start: number, offset: number, attached: boolean): Offer[] =>
  start > offset
    ? []
    : fitting.map(({ unit, says }) => ({
        kind: 'unit',
        label: unit,
        beside: says,
        text: attached && /^\p{L}/u.test(unit) ? ` ${unit}` : unit,
        start,
        ...(attached ? { matches: unit } : {}),
      }));

function startOfLine(text: string, offset: number): number {
  const before = text.slice(0, offset);
  return Math.max(before.lastIndexOf('\n'), before.lastIndexOf('\r')) + 1;
}

/** Behind a quotation mark that opens a text, or in a comment, nothing is offered. */
function isInsideText(head: string): boolean {
  let inside = false;
  for (let at = 0; at < head.length; at++) {
    const before = head[at - 1] ?? ' ';
    if (!inside && head[at] === '#' && /\s/.test(before)) return true;
    if (head[at] === '"' && (inside || /[\s,]/.test(before))) inside = !inside;
  }
  return inside;
}
