/** Reads `setup`: the taped readings, the gear between mark and antenna, and what the receiver was told. */
import { given, hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Source } from './bind.ts';
import { takeHeight, takePositionAndHeight, type Height, type Named, type Position } from '../coordinates.ts';
import type { Adjusted, Keyed, Measured, Setup } from '../entries.ts';
import type { LineReader } from './line-reader.ts';
import { takeDate, takeMoment, type Moment } from '../moments.ts';
import { missing, takeNamed, takeQuoted } from './phrases.ts';
import { bareSpread, takeQuantity } from '../quantities.ts';

export function bindSetup({ header, details, entry, place, remarks }: Source): Setup {
  const name = takeNamed(header)?.name ?? '';
  let on: Named | null = null;
  let antenna: Named | null = null;
  let at: Maybe<Moment> | null = null;
  let until: Maybe<Moment> | null = null;
  for (;;) {
    if (header.word('on')) on = takeNamed(header, `mark of ${name}`);
    else if (header.word('with')) antenna = takeNamed(header, `antenna of ${name}`);
    else if (header.word('at')) at = takeMoment(header, `start of ${name}`);
    else if (header.word('until')) until = takeMoment(header, `end of ${name}`);
    else if (!header.comma()) break;
  }
  header.finish(['on', 'with', 'at', 'until']);
  const adjusted: Adjusted[] = [];
  details.all('photo', takeQuoted);
  details.all('remark', takeQuoted);
  return {
    entry,
    place,
    remarks,
    kind: 'setup',
    name,
    on,
    with: antenna,
    at,
    until,
    measured: details.all('measured', takeMeasured, ['to', 'off', 'at', 'by', 'vertical', 'slant']),
    extensions: details.all('extension', (line) => ({
      length: takeQuantity(line, 'length', 'extension'),
      place: line.place,
    })),
    plummet: details.one(
      'plummet',
      (line) => {
        const sum = line.sum();
        if (!sum) missing(line, 'an uncertainty (± 1 mm)');
        const spread = sum
          ? bareSpread(line, sum, 'length', 'plummet')
          : hole('the plummet is not described', line.place);
        takeAdjusted(line, 'plummet', adjusted);
        return spread;
      },
      ['adjusted'],
    ),
    bubble: details.one(
      'bubble',
      (line) => {
        const tilt = takeBubble(line);
        takeAdjusted(line, 'bubble', adjusted);
        return tilt;
      },
      ['adjusted'],
    ),
    temperature: details.one('temperature', (line) => takeQuantity(line, 'temperature', 'temperature')),
    autonomous: details.one('autonomous', (line) => ({
      ...takePositionAndHeight(line, 'the autonomous position'),
      place: line.place,
    })),
    keyed: details.all('keyed', takeKeyed, ['position', 'height', 'antenna-height', 'antenna-type', 'at']),
    adjusted,
    captured: details.one('captured', takeQuoted),
    rawLog: details.one('raw-log', takeQuoted),
    ephemerides: details.one('ephemerides', takeQuoted),
  };
}

/** `1.284 m to foot, 48 mm off centre, at 07:52, by "L. Brandt"`. */
function takeMeasured(reader: LineReader): Measured {
  const length = takeQuantity(reader, 'length', 'taped length');
  let to: Named | null = null;
  let offCentre: Maybe<Value> | null = null;
  let manner: 'vertical' | 'slant' | null = null;
  let at: Maybe<Moment> | null = null;
  let by: Named | null = null;
  for (;;) {
    const said = reader.word('vertical', 'slant');
    if (said) manner = said;
    else if (reader.word('to')) to = takeNamed(reader);
    else if (reader.word('at')) at = takeMoment(reader, 'time of the reading');
    else if (reader.word('by')) by = takeNamed(reader);
    else if (reader.peek()?.kind === 'sum') {
      offCentre = takeQuantity(reader, 'length', 'distance off centre');
      if (!reader.word('off') || !reader.word('centre', 'center'))
        missing(reader, '`off centre` behind the distance');
    } else if (!reader.comma()) break;
  }
  if (!to) missing(reader, 'what the tape was held to (to foot, to arp, to a tape point)');
  return { length, to, offCentre, manner, at, by, place: reader.place };
}

/** `8' / 2 mm`: the tilt that moves the bubble by one division. */
function takeBubble(reader: LineReader): Maybe<Value> {
  const tilt = takeQuantity(reader, 'angle', 'bubble');
  if (reader.peek()?.kind === 'slash') {
    reader.next();
    takeQuantity(reader, 'length', 'division of the bubble');
  }
  if (isHole(tilt) || tilt.origin !== 'given') return tilt;
  return given('bubble', tilt.value, '°', 0, tilt.typed, tilt.place);
}

/** `adjusted 2026-03-02` behind the plummet or the bubble. */
function takeAdjusted(reader: LineReader, gear: Adjusted['gear'], found: Adjusted[]): void {
  reader.comma();
  if (!reader.word('adjusted')) return;
  const next = reader.peek();
  const date = takeDate(reader, `adjustment of the ${gear}`);
  found.push({ gear, date, place: next ? reader.at(next) : reader.place });
}

/** `keyed position …, height …`, `keyed antenna-height …`, `keyed antenna-type …`, with `at` from when on. */
function takeKeyed(reader: LineReader): Keyed {
  let position: Position | null = null;
  let height: Height | null = null;
  let antennaHeight: Keyed['antennaHeight'] = null;
  let antennaType: Named | null = null;
  let at: Maybe<Moment> | null = null;
  for (;;) {
    if (reader.word('position')) {
      const read = takePositionAndHeight(reader, 'the keyed position');
      position = read.position ?? position;
      height = read.height ?? height;
      if (!read.position) takeOpen(reader, 'position');
    } else if (reader.word('height')) height = takeHeight(reader, 'keyed height');
    else if (reader.word('antenna-height')) antennaHeight = takeAntennaHeight(reader);
    else if (reader.word('antenna-type')) antennaType = takeNamed(reader, 'keyed antenna type');
    else if (reader.word('at')) at = takeMoment(reader, 'time of keying');
    else if (!reader.comma()) break;
  }
  if (!position && !height && !antennaHeight && !antennaType && reader.line.items.length === 0)
    missing(reader, 'what was keyed (position, height, antenna-height or antenna-type)');
  return { position, height, antennaHeight, antennaType, at, place: reader.place };
}

function takeAntennaHeight(reader: LineReader): Keyed['antennaHeight'] {
  const value = takeQuantity(reader, 'length', 'keyed antenna height');
  let to: Named | null = null;
  let manner: 'vertical' | 'slant' | null = null;
  for (;;) {
    const said = reader.word('vertical', 'slant');
    if (said) manner = said;
    else if (reader.word('to')) to = takeNamed(reader);
    else break;
  }
  return { value, to, manner, place: reader.place };
}

function takeOpen(reader: LineReader, word: string): void {
  const item = reader.peek();
  if (item?.kind !== 'sum' || !item.terms[0]?.measure?.parts[0]?.numeral.open) return;
  reader.next();
  reader.remark({ about: 'open-value', place: reader.at(item), word });
}
