/** Turns of phrase that several entries share: names after a word, accuracies, poles, observations. */
import type { Sum } from '../../../grammar/tree.ts';
import { given, hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { takePositionAndHeight, type Named } from '../coordinates.ts';
import type {
  Accuracy,
  Day,
  GeoidName,
  Limits,
  Observed,
  Pole,
  Quality,
  Quoted,
  Source,
  Stated,
} from '../entries.ts';
import type { LineReader } from './line-reader.ts';
import { decimalYear, isOpen, takeDate, takeMoment } from '../moments.ts';
import { bareNumber, budget, quantity, takeQuantity } from '../quantities.ts';

export function takeQuoted(reader: LineReader): Quoted | null {
  const text = reader.text();
  if (text && text.text !== '?') return { text: text.text, place: reader.at(text) };
  const item = text ?? reader.peek();
  if (item && (text || isOpen(item))) {
    if (!text) reader.next();
    reader.remark({ about: 'open-value', place: reader.at(item), word: reader.line.word?.word ?? '' });
    return null;
  }
  reader.needsText();
  return null;
}

/**
 * A name, quoted or not; a bare `?` in its place is a hole that the writer knows of.
 * @param what the name is of; the line's own word where it says enough
 */
export function takeNamed(reader: LineReader, what = reader.line.word?.word ?? ''): Named | null {
  const bare = reader.peek()?.kind === 'name';
  const named = reader.nameOrText();
  if (named && bare && named.name === '?') {
    reader.remark({ about: 'open-value', place: named.place, word: what });
    return null;
  }
  if (!named) missing(reader, 'a name');
  return named ?? null;
}

export function missing(reader: LineReader, expects: string): void {
  reader.missing(expects);
}

export function takeGeoid(reader: LineReader): GeoidName | null {
  const text = reader.text();
  if (text) return { name: text.text, file: true, place: reader.at(text) };
  const named = takeNamed(reader);
  return named ? { name: named.name, file: false, place: named.place } : null;
}

/** `8 mm horizontal, 12 mm vertical`, each with `95 %` where it is not a standard uncertainty. */
export function takeAccuracy(reader: LineReader, name: string): Accuracy {
  let horizontal: Stated | null = null;
  let vertical: Stated | null = null;
  for (let sum = reader.sum(); sum; sum = nextSum(reader)) {
    const { constant, perDistance, place } = budget(reader, sum, name);
    const direction = reader.word('horizontal', 'vertical', 'up');
    const stated = { constant, perDistance, place, confidence: takeConfidence(reader) };
    if (direction === 'horizontal') horizontal = stated;
    else if (direction) vertical = stated;
    else if (!isOpenSum(sum))
      reader.remark({
        about: 'missing-value',
        place,
        word: reader.line.word?.word ?? '',
        expects: '`horizontal` or `vertical` behind the length',
      });
  }
  return { horizontal, vertical, place: reader.place };
}

/** `95 %` behind a stated accuracy, as a fraction. */
function takeConfidence(reader: LineReader): number | null {
  const item = reader.peek();
  if (item?.kind !== 'sum' || item.terms[0]?.measure?.parts[0]?.unit?.unit !== '%') return null;
  reader.next();
  const value = quantity(reader, item, 'ratio', 'confidence');
  return isHole(value) ? null : value.value;
}

function nextSum(reader: LineReader): Sum | undefined {
  if (reader.peek()?.kind === 'comma' && reader.peek(1)?.kind === 'sum') reader.next();
  return reader.sum();
}

const isOpenSum = (sum: Sum) => sum.terms[0]?.measure?.parts[0]?.numeral.open === true;

/** `2.000 m to arp`, and `held` where no bipod steadied it. */
export function takePole(reader: LineReader): Pole {
  const length = takeQuantity(reader, 'length', 'pole');
  const to = reader.word('to') ? takeNamed(reader) : null;
  reader.comma();
  return { length, to, held: reader.word('held') !== undefined, place: reader.place };
}

export function takeSource(reader: LineReader): Source | null {
  const first = reader.peek();
  const text = takeQuoted(reader);
  const next = reader.peek();
  // Behind what is no text a date alone can be meant for one; an open text counts as one.
  const date: Maybe<Day> | null =
    next && (next === first ? next.kind === 'date' : next.kind !== 'comma')
      ? takeDate(reader, 'date of the source')
      : null;
  return text && { text: text.text, date, place: text.place };
}

/** What the controller showed, or the recording that it is to be read from. */
export function takeObserved(reader: LineReader, about: string): Observed {
  if (reader.word('from')) {
    const file = takeQuoted(reader);
    const from = reader.word('between') ? takeMoment(reader, 'start') : null;
    const to = from && reader.word('and') ? takeMoment(reader, 'end') : null;
    return { position: null, height: null, recording: file ? { file, from, to } : null, place: reader.place };
  }
  const { position, height } = takePositionAndHeight(reader, about);
  if (!position && !height) {
    const item = reader.peek();
    if (isOpen(item)) {
      reader.next();
      reader.remark({ about: 'open-value', place: reader.at(item), word: 'observed' });
    } else missing(reader, 'coordinates (… m E, … m N, height … m orthometric)');
  }
  return { position, height, recording: null, place: reader.place };
}

const SOLUTIONS = ['fixed', 'float', 'autonomous', 'differential'] as const;

/** `fixed, 60 epochs, pdop 1.5, 16 satellites`, in any order. */
export function takeQuality(reader: LineReader): Quality {
  let solution: Named | null = null;
  let epochs: Maybe<Value> | null = null;
  let pdop: Maybe<Value> | null = null;
  let satellites: Maybe<Value> | null = null;
  for (;;) {
    const at = reader.peek();
    const word = reader.word(...SOLUTIONS);
    if (word && at) solution = { name: word, place: reader.at(at) };
    else if (reader.word('pdop')) pdop = takeBare(reader, 'pdop');
    else if (at?.kind === 'sum') {
      const sum = reader.sum();
      if (!sum) break;
      const value = bareNumber(reader, sum, reader.line.word?.word ?? 'count');
      const counted = reader.word('epochs', 'epoch', 'satellites', 'satellite');
      if (counted?.startsWith('epoch')) epochs = value;
      else if (counted) satellites = value;
      else if (!isOpen(at)) {
        reader.remark({
          about: 'missing-value',
          place: reader.at(at),
          word: 'quality',
          expects: 'what the number counts (epochs, satellites)',
        });
      }
    } else break;
    reader.comma();
  }
  return { solution, epochs, pdop, satellites, place: reader.place };
}

export const takeLimits = (reader: LineReader): Limits => takeQuality(reader);

function takeBare(reader: LineReader, name: string): Maybe<Value> {
  const sum = reader.sum();
  if (sum) return bareNumber(reader, sum, name);
  missing(reader, `a number behind ${name}`);
  return hole(`${name} is missing`, reader.place);
}

/** A decimal year, or a date. */
export function takeEpoch(reader: LineReader): Maybe<Value> {
  const item = reader.peek();
  if (item?.kind === 'date') {
    reader.next();
    if (item.day === null) return hole(`there is no ${item.typed}`, reader.at(item));
    return given('epoch', decimalYear(item.day), '', 0, item.typed, reader.at(item));
  }
  return takeBare(reader, 'epoch');
}
