/** Reads `job` and `use`. */
import { LENGTH_UNITS } from '../../../grammar/units.ts';
import { PLATES } from '../../geodesy/datums/plates.ts';
import { hole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Source } from './bind.ts';
import type { Named } from '../coordinates.ts';
import type { ClockOffset, Job, PositionForm, ReceiverForm, Use } from '../entries.ts';
import type { LineReader } from './line-reader.ts';
import { takeDate } from '../moments.ts';
import { missing, takeAccuracy, takeEpoch, takeGeoid, takeLimits, takeNamed, takeQuoted } from './phrases.ts';
import { takeQuantity } from '../quantities.ts';

export function bindJob({ header, details, entry, place, remarks }: Source): Job {
  const title = header.nameOrText()?.name ?? '';
  header.finish();
  const datum = details.one('datum', takeDatum, ['by', 'epoch', 'plate']);
  return {
    entry,
    place,
    remarks,
    kind: 'job',
    title,
    language: details.one('language', takeNamed),
    date: details.one('date', (line) => takeDate(line, 'date of the job')),
    clock: details.one('clock', takeClock),
    observer: details.one('observer', takeQuoted),
    grid: details.one('grid', takeNamed),
    datum: datum?.datum ?? null,
    datumBy: datum?.by ?? null,
    datumEpoch: datum?.epoch ?? null,
    datumPlate: datum?.plate ?? null,
    vertical: details.one('vertical', takeQuoted),
    geoid: details.one('geoid', takeGeoid),
    receiver: details.one('receiver', takeReceiver),
    confidence: details.one('confidence', (line) => takeQuantity(line, 'ratio', 'confidence')),
    tolerance: details.one('tolerance', (line) => takeAccuracy(line, 'tolerance'), [
      'horizontal',
      'vertical',
    ]),
    limits: details.one('limits', takeLimits),
  };
}

interface NamedDatum {
  readonly datum: Named | null;
  readonly by: Named | null;
  readonly epoch: Maybe<Value> | null;
  readonly plate: Named | null;
}

/** `EPSG:4258`, `by EPSG:1314` where the way to it must be named, `epoch 2026.38, plate Eurasia` for a frame that moves. */
function takeDatum(reader: LineReader): NamedDatum {
  let named: NamedDatum = { datum: takeNamed(reader), by: null, epoch: null, plate: null };
  for (;;) {
    if (reader.word('by')) named = { ...named, by: takeNamed(reader) };
    else if (reader.word('epoch')) named = { ...named, epoch: takeEpoch(reader) };
    else if (reader.word('plate')) named = { ...named, plate: takePlate(reader) };
    else if (!reader.comma()) return named;
  }
}

function takePlate(reader: LineReader): Named | null {
  const plate = inTwoWords(takeNamed(reader), reader);
  if (plate && !PLATES.some((known) => known === plate.name))
    reader.remark({
      about: 'value-range',
      place: plate.place,
      word: 'plate',
      typed: plate.name,
      allowed: PLATES.join(', '),
      among: PLATES,
    });
  return plate;
}

/** `North America` needs no quotes. */
function inTwoWords(first: Named | null, reader: LineReader): Named | null {
  const second = reader.peek();
  if (!first || (second?.kind !== 'name' && second?.kind !== 'word')) return first;
  const place = { ...first.place, end: second.end };
  const name = reader.typed(place).replace(/\s+/g, ' ');
  if (!PLATES.some((known) => known === name)) return first;
  reader.next();
  return { name, place };
}

const FORMS: readonly PositionForm[] = ['dms', 'degrees', 'grid'];

/** `usft, dms`: a unit of length and a form of positions, in any order. */
function takeReceiver(reader: LineReader): ReceiverForm {
  let form: ReceiverForm = { unit: null, position: null };
  do {
    const item = reader.anyWord();
    if (!item) {
      const open = reader.peek();
      if (open && reader.typed(open) === '?') {
        reader.next();
        reader.remark({ about: 'open-value', place: reader.at(open), word: 'receiver' });
      } else missing(reader, 'a unit of length or a form of positions');
      return form;
    }
    const unit = LENGTH_UNITS.find((known) => known.unit === item.word);
    const position = FORMS.find((known) => known === item.word);
    if (!unit && !position)
      reader.remark({
        about: 'value-range',
        place: reader.at(item),
        word: 'receiver',
        typed: item.word,
        allowed: `a unit such as m, ft or usft, and ${FORMS.join(', ')}`,
        among: [...LENGTH_UNITS.map(({ unit: known }) => known), ...FORMS],
      });
    form = { unit: unit ?? form.unit, position: position ?? form.position };
  } while (reader.comma());
  return form;
}

export function bindUse({ header, entry, place, remarks }: Source): Use {
  const path = takeQuoted(header);
  header.finish();
  return { entry, place, remarks, kind: 'use', path };
}

/** `UTC`, `UTC+01:00` or `UTC-3:30`: how far the clock is ahead of UTC. */
function takeClock(reader: LineReader): Maybe<ClockOffset> {
  const named = takeNamed(reader);
  if (!named) return hole('the clock is not said', reader.place);
  const match = /^UTC(?:([+\u2212-])(\d{1,2})(?::?(\d{2}))?)?$/i.exec(named.name);
  const hours = Number(match?.[2] ?? 0);
  const minutes = Number(match?.[3] ?? 0);
  if (!match || hours > 14 || minutes > 59) {
    reader.remark({
      about: 'value-range',
      place: named.place,
      word: 'clock',
      typed: named.name,
      allowed: 'UTC, or UTC with an offset such as UTC+01:00',
    });
    return hole('the clock cannot be read', named.place);
  }
  const size = hours * 3600 + minutes * 60;
  return { seconds: match[1] && match[1] !== '+' ? -size : size, place: named.place };
}
