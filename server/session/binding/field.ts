/** Reads what happens in the field: `check`, `event`, `points` and `point`. */
import { cellsOf } from '../../../grammar/cells.ts';
import type { Maybe } from '../../quantities/value.ts';
import type { Source } from './bind.ts';
import type { Named } from '../coordinates.ts';
import type { Check, Column, Event, Point, Points, Row } from '../entries.ts';
import type { LineReader } from './line-reader.ts';
import { takeMoment, type Moment } from '../moments.ts';
import {
  missing,
  takeAccuracy,
  takeNamed,
  takeObserved,
  takePole,
  takeQuality,
  takeQuoted,
} from './phrases.ts';

interface Occupation {
  on: Named | null;
  at: Maybe<Moment> | null;
  by: Named | null;
  from: Named | null;
}

/** `on MARK at TIME by ROVER from BASE`, in any order. */
function takeOccupation(reader: LineReader, name: string): Occupation {
  const occupation: Occupation = { on: null, at: null, by: null, from: null };
  for (;;) {
    if (reader.word('on')) occupation.on = takeNamed(reader, `mark of ${name}`);
    else if (reader.word('at')) occupation.at = takeMoment(reader, `time of ${name}`);
    else if (reader.word('by')) occupation.by = takeNamed(reader, `rover of ${name}`);
    else if (reader.word('from')) occupation.from = takeNamed(reader, `base of ${name}`);
    else if (!reader.comma()) return occupation;
  }
}

export function bindCheck({ header, details, entry, place, remarks }: Source): Check {
  const name = takeNamed(header)?.name ?? '';
  const { on, at, by, from } = takeOccupation(header, name);
  header.finish(['on', 'at', 'by', 'from']);
  const { pole, observed, quality, spread } = occupied(details, name);
  return {
    entry,
    place,
    remarks,
    kind: 'check',
    name,
    on,
    at,
    by,
    from: from ?? details.one('from', takeNamed),
    pole,
    observed,
    quality,
    spread,
  };
}

export function bindPoint({ header, details, entry, place, remarks }: Source): Point {
  const name = takeNamed(header)?.name ?? '';
  const description = header.text()?.text ?? null;
  const { at, by, from } = takeOccupation(header, name);
  header.finish(['at', 'by', 'from']);
  const { pole, observed, quality, spread } = occupied(details, name);
  return {
    entry,
    place,
    remarks,
    kind: 'point',
    name,
    description,
    at,
    by: by ?? details.one('by', takeNamed),
    from: from ?? details.one('from', takeNamed),
    pole,
    observed,
    quality,
    spread,
    state: details.one('state', takeNamed),
  };
}

function occupied(details: Source['details'], name: string) {
  details.all('remark', takeQuoted);
  return {
    pole: details.one('pole', takePole, ['to']),
    observed: details.one('observed', (line) => takeObserved(line, name), [
      'height',
      'in',
      'orthometric',
      'ellipsoidal',
      'above',
      'between',
      'and',
    ]),
    quality: details.one('quality', takeQuality, [
      'fixed',
      'float',
      'autonomous',
      'differential',
      'epochs',
      'pdop',
      'satellites',
    ]),
    spread: details.one('spread', (line) => takeAccuracy(line, 'spread'), ['horizontal', 'vertical']),
  };
}

export function bindEvent({ header, entry, place, remarks }: Source): Event {
  const what = takeNamed(header);
  let at: Maybe<Moment> | null = null;
  let on: Named | null = null;
  for (;;) {
    if (header.word('at')) at = takeMoment(header, 'time of the event');
    else if (header.word('on')) on = takeNamed(header);
    else if (!header.comma()) break;
  }
  const text = header.text()?.text ?? null;
  header.finish(['at', 'on']);
  if (what && !EVENT_KINDS.includes(what.name))
    header.remark({
      about: 'value-range',
      place: what.place,
      word: 'event',
      typed: what.name,
      allowed: EVENT_KINDS.join(', '),
      among: EVENT_KINDS,
    });
  return {
    entry,
    place,
    remarks,
    kind: 'event',
    what: what?.name ?? '',
    at,
    on,
    text,
  };
}

const EVENT_KINDS: readonly string[] = ['disturbance', 're-level', 'power-loss'];

export function bindPoints({ header, details, entry, place, remarks }: Source): Points {
  const text = header.text();
  const quoted = text ? { text: text.text, place: header.at(text) } : null;
  header.finish();
  const columns = details.one('columns', takeColumns);
  const rows = details.all('row', takeRow);
  const inNotes = rows.length > 0;
  return {
    entry,
    place,
    remarks,
    kind: 'points',
    file: inNotes ? null : quoted,
    title: inNotes ? (quoted?.text ?? null) : null,
    from: details.one('from', takeNamed),
    by: details.one('by', takeNamed),
    state: details.one('state', takeNamed),
    columns: columns?.columns ?? [],
    columnsPlace: columns?.place ?? null,
    rows,
    separator: details.one('separator', takeNamed),
    decimal: details.one('decimal', takeNamed),
  };
}

/** `name, east m "Easting", height m orthometric, time local`. */
function takeColumns(reader: LineReader): {
  columns: Column[];
  place: Column['place'];
} {
  const columns: Column[] = [];
  for (;;) {
    const first = reader.peek();
    if (first?.kind !== 'word') break;
    const words: string[] = [];
    let end = first.end;
    let header: string | null = null;
    for (let item = reader.peek(); item && item.kind !== 'comma'; item = reader.peek()) {
      if (item.kind === 'word') words.push(item.word);
      else if (item.kind === 'name') words.push(item.name);
      else if (item.kind === 'text') header = item.text;
      else if (item.kind === 'junk' && item.text === '°') words.push('°');
      else break;
      end = item.end;
      reader.next();
    }
    const [means = '', ...qualifiers] = words;
    columns.push({
      means,
      qualifiers,
      header,
      place: reader.at({ start: first.start, end }),
    });
    if (!reader.comma()) break;
  }
  if (columns.length === 0)
    missing(reader, 'what the columns mean (name, east m, north m, height m orthometric)');
  return { columns, place: reader.place };
}

function takeRow(reader: LineReader): Row {
  const cells = cellsOf(reader.entry.text, reader.line).map((cell) => ({
    text: cell.text,
    place: reader.at(cell),
  }));
  while (reader.next());
  return { cells, place: reader.place };
}
