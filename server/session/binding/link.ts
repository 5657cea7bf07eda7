/** Reads `radio` and `stream`. */
import { hole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Source } from './bind.ts';
import type { Radio, Stream, StreamMessage, Tracked } from '../entries.ts';
import type { LineReader } from './line-reader.ts';
import { isOpen } from '../moments.ts';
import { missing, takeNamed, takeQuoted } from './phrases.ts';
import { bareNumber, takeQuantity } from '../quantities.ts';

export function bindRadio({ header, details, entry, place, remarks }: Source): Radio {
  const name = takeNamed(header)?.name ?? '';
  header.finish();
  return {
    entry,
    place,
    remarks,
    kind: 'radio',
    name,
    carrier: details.one('carrier', (line) => takeQuantity(line, 'frequency', 'carrier')),
    channel: details.one('channel', (line) => takeQuantity(line, 'frequency', 'channel spacing')),
    rate: details.one('rate', (line) => takeQuantity(line, 'bit-rate', 'air rate')),
    spreading: details.one('spreading', takeNamed),
    bandwidth: details.one('bandwidth', (line) => takeQuantity(line, 'frequency', 'bandwidth')),
    coding: details.one('coding', takeNamed),
    power: details.one('power', (line) => takeQuantity(line, 'power', 'power')),
    aerial: details.one('aerial', (line) => takeQuantity(line, 'length', 'height of the aerial')),
    clearance: details.one('clearance', (line) => takeQuantity(line, 'length', 'clearance')),
    licence: details.one('licence', takeQuoted),
  };
}

export function bindStream({ header, details, entry, place, remarks }: Source): Stream {
  const from = header.word('from') ? takeNamed(header) : null;
  header.finish(['from']);
  const tracked = details.one('tracked', takeTracked);
  return {
    entry,
    place,
    remarks,
    kind: 'stream',
    from,
    messages: details.all('message', takeMessage, ['every', 'after']),
    tracked: tracked?.systems ?? [],
    signals: tracked?.signals ?? null,
  };
}

/** `1077 every 1 s`, `1087 every 2 s after 1 s`. */
function takeMessage(reader: LineReader): StreamMessage {
  const number = takeNamed(reader) ?? { name: '', place: reader.place };
  if (number.name !== '' && !/^\d{4}$/.test(number.name))
    reader.remark({
      about: 'value-range',
      place: number.place,
      word: 'message',
      typed: number.name,
      allowed: 'a message number of four digits (1077)',
    });
  if (reader.word('every')) {
    const every = takeQuantity(reader, 'time', `interval of ${number.name}`);
    const after = reader.word('after') ? takeQuantity(reader, 'time', `delay of ${number.name}`) : null;
    return { number, every, after, place: reader.place };
  }
  missing(reader, 'how often it is sent (every 1 s)');
  return {
    number,
    every: hole(`the interval of ${number.name} is missing`, reader.place),
    after: null,
    place: reader.place,
  };
}

/** `GPS 10, GLONASS 7, 2 signals`. */
function takeTracked(reader: LineReader): { systems: Tracked[]; signals: Maybe<Value> | null } {
  const systems: Tracked[] = [];
  let signals: Maybe<Value> | null = null;
  for (;;) {
    const word = reader.anyWord();
    const sum = reader.sum();
    if (word && sum) {
      const satellites = bareNumber(reader, sum, `satellites of ${word.word}`);
      systems.push({ system: word.word, satellites, place: reader.at({ start: word.start, end: sum.end }) });
    } else if (sum) {
      const value = bareNumber(reader, sum, 'signals');
      if (reader.word('signals', 'signal')) signals = value;
      // `tracked ?`: not known yet, and said to be so.
      else if (!isOpen(sum)) missing(reader, '`signals` behind the number, or a system before it (GPS 10)');
    } else if (word) missing(reader, `how many satellites of ${word.word} are tracked`);
    else if (!reader.comma()) break;
  }
  return { systems, signals };
}
