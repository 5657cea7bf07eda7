/** What is known about the place under the pointer: the word, the unit, the name, and the derivation of each value of the line. */
import type { Document } from '../../grammar/document.ts';
import { detailWord, entryWord, type DetailWord, type WordEntry } from '../../grammar/vocabulary.ts';
import type { Line, Span } from '../../grammar/tree.ts';
import { listCheck, listMark, listReach, listSetup, listStream, type Listed } from '../derive/listing.ts';
import { EXPLANATIONS } from '../findings/explanations.ts';
import type { Inspection } from '../inspect.ts';
import { explain } from '../quantities/explain.ts';
import { showAngle, showValue } from '../quantities/show.ts';
import { isHole, type Value } from '../quantities/value.ts';
import { tellPlace } from '../session/where.ts';
import { aboutItem } from './about-item.ts';
import { aboutName } from './about-name.ts';
import { comparisonOn } from './comparison.ts';
import { cursorAt, type Cursor, type Stretch } from './cursor.ts';
import { licenceReminders } from './licence-reminder.ts';
import { nameAt } from './names.ts';

export interface Hover {
  readonly at: Stretch;
  readonly blocks: readonly HoverBlock[];
}
/** `story` lines are laid out with blanks. */
export type HoverBlock =
  | { readonly kind: 'says'; readonly text: string; readonly example?: string }
  | { readonly kind: 'story'; readonly title: string; readonly lines: readonly string[] };

export function hoverAt(inspection: Inspection, offset: number): Hover | null {
  const { session } = inspection;
  const code = codeAt(session.document, offset);
  if (code) return code;
  const cursor = cursorAt(session, offset);
  if (!cursor?.line) return null;
  const { line, at } = cursor;
  const word = line.word;
  const stretch = (span: Span): Stretch => ({
    path: session.document.path,
    start: cursor.start + span.start,
    end: cursor.start + span.end,
  });
  if (word && word.start <= at && at <= word.end) {
    const blocks = [
      ...aboutWord(word.word),
      ...comparisonOn(cursor, inspection),
      ...storiesOn(cursor, inspection),
      ...reminderOn(cursor, inspection),
    ];
    return blocks.length > 0 ? { at: stretch(word), blocks } : null;
  }
  const named = nameAt(session, cursor.bound, offset);
  if (named) {
    const blocks = aboutName(named, inspection);
    if (blocks.length > 0) return { at: stretch(named.place), blocks };
  }
  if (!cursor.item) return null;
  const first = word ? (detailWord(word.word)?.word ?? entryWord(word.word)?.word ?? word.word) : '';
  const own = [
    ...comparisonOn(cursor, inspection),
    ...aboutItem(cursor.item, at, first, session),
    ...storiesOn(cursor, inspection),
  ];
  // Of what is only written down, the line's word says what it is.
  const blocks = own.length > 0 ? own : aboutWord(first);
  return blocks.length > 0 ? { at: stretch(cursor.item), blocks } : null;
}

/** The code of a finding, wherever in a comment it stands: what its page says. */
function codeAt({ path, text }: Document, offset: number): Hover | null {
  const before = /[a-z/-]*$/.exec(text.slice(Math.max(0, offset - LONGEST_CODE), offset))?.[0] ?? '';
  const after = /^[a-z/-]*/.exec(text.slice(offset, offset + LONGEST_CODE))?.[0] ?? '';
  const explained = EXPLANATIONS[before + after];
  const start = offset - before.length;
  if (!explained || !/(^|\s)#[^\n\r]*$/.test(text.slice(lineStart(text, start), start))) return null;
  const { means, hurts, remedy } = explained;
  const at = { path, start, end: offset + after.length };
  return { at, blocks: [means, hurts, remedy].map((said) => ({ kind: 'says', text: said })) };
}

const LONGEST_CODE = 60;

const lineStart = (text: string, offset: number) =>
  Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1;

/** At the head of a base's radio, once. */
function reminderOn({ bound, line }: Cursor, { derivation }: Inspection): HoverBlock[] {
  if (bound.kind !== 'radio' || line !== bound.entry.header) return [];
  const index = derivation.link.ends.bases.indexOf(bound);
  const text = licenceReminders(derivation.link)[index];
  return text === undefined ? [] : [{ kind: 'says', text }];
}

function aboutWord(typed: string): HoverBlock[] {
  const spec: WordEntry | DetailWord | undefined = entryWord(typed) ?? detailWord(typed);
  return spec ? [{ kind: 'says', text: spec.says, example: spec.example }] : [];
}

/** The stories of all values that follow from this line. */
function storiesOn({ bound, line }: Cursor, inspection: Inspection): HoverBlock[] {
  const listed = line ? listedFor(bound, inspection).filter(({ place }) => within(place, line)) : [];
  const tell = tellPlace(inspection.session);
  const values = listed.map(({ value }) => value).filter((value): value is Value => !isHole(value));
  const holes = listed.map(({ value }) => value).filter(isHole);
  const reasons = [...new Set(holes.map((missing) => missing.hole))];
  return [
    ...values.map((value): HoverBlock => ({
      kind: 'story',
      title: titleOf(value),
      lines: explain(value, tell),
    })),
    ...reasons.map((reason): HoverBlock => ({
      kind: 'says',
      text: `Not known: ${reason.replace(/[.]$/, '')}.`,
    })),
  ];
}

const within = (place: Span, line: Line) => line.start <= place.start && place.end <= line.end;

function listedFor(bound: Cursor['bound'], { derivation }: Inspection): readonly Listed[] {
  if (bound.kind === 'mark') {
    const values = derivation.marks.get(bound.name);
    return values?.mark === bound ? listMark(values) : [];
  }
  if (bound.kind === 'setup') {
    const values = derivation.setups.get(bound.name);
    return values?.setup === bound ? listSetup(values) : [];
  }
  if (bound.kind === 'stream')
    return derivation.link.streams.filter(({ stream }) => stream === bound).flatMap(listStream);
  if (bound.kind === 'radio')
    return derivation.link.reaches.filter(({ base }) => base === bound).flatMap(listReach);
  if (bound.kind !== 'check') return [];
  const values = derivation.checks.find(({ check }) => check === bound);
  return values ? listCheck(values) : [];
}

export function titleOf(value: Value): string {
  return `${value.name} = ${shown(value)}`;
}

/** Latitudes and longitudes as a receiver shows them, everything else as usual. */
export function shown(value: Value): string {
  if (value.unit !== '°' || !/latitude|longitude/.test(value.name)) return showValue(value);
  return showAngle(value.value, value.name.includes('latitude') ? 'N' : 'E');
}
