/** Reads `mark`. */
import type { Place } from '../../../grammar/tree.ts';
import type { Maybe, Value } from '../../quantities/value.ts';
import type { Source } from './bind.ts';
import { takeHeight, takePositionAndHeight, type Named } from '../coordinates.ts';
import type { Mark } from '../entries.ts';
import type { LineReader } from './line-reader.ts';
import { isOpen } from '../moments.ts';
import { missing, takeAccuracy, takeEpoch, takeNamed, takeQuoted, takeSource } from './phrases.ts';
import { takeQuantity } from '../quantities.ts';

export function bindMark({ header, details, entry, place, remarks }: Source): Mark {
  const name = takeNamed(header)?.name ?? '';
  const description = header.text()?.text ?? null;
  header.finish();
  details.all('photo', takeQuoted);
  const separation = details.one<{ value: Maybe<Value>; place: Place }>('separation', (line) => ({
    value: takeQuantity(line, 'length', `separation of ${name}`),
    place: line.place,
  }));
  return {
    entry,
    place,
    remarks,
    kind: 'mark',
    name,
    description,
    position: details.one(
      'position',
      (line) => {
        const { position, height } = takePositionAndHeight(line, name);
        if (height) line.remark({ about: 'leftover', place: height.place, typed: 'height', near: [] });
        if (!position) takeOpen(line);
        return position;
      },
      ['in'],
    ),
    height: details.one('height', (line) => takeHeight(line, `height of ${name}`), [
      'orthometric',
      'ellipsoidal',
      'above',
    ]),
    separation: separation?.value ?? null,
    separationPlace: separation?.place ?? null,
    uncertainty: details.one('uncertainty', (line) => takeAccuracy(line, `uncertainty of ${name}`), [
      'horizontal',
      'vertical',
    ]),
    relative: details.one('relative', (line) => takeAccuracy(line, `relative uncertainty of ${name}`), [
      'horizontal',
      'vertical',
    ]),
    epoch: details.one('epoch', takeEpoch),
    source: details.one('source', takeSource),
    found: details.one('found', takeFound),
  };
}

/** The states a mark can be found in; what makes it unfit is for the findings to say. */
export const FOUND = ['intact', 'damaged', 'disturbed', 'destroyed', 'not-found'] as const;

function takeFound(line: LineReader): Named | null {
  const found = takeNamed(line);
  if (found && !FOUND.some((word) => word === found.name))
    line.remark({
      about: 'value-range',
      place: found.place,
      word: 'found',
      typed: found.name,
      allowed: FOUND.join(', '),
      among: FOUND,
    });
  return found;
}

/** `position ?` is a hole that the writer knows of; anything else without coordinates is a slip. */
function takeOpen(line: LineReader): void {
  const item = line.peek();
  if (!isOpen(item)) return missing(line, 'coordinates (… m E, … m N)');
  line.next();
  line.remark({ about: 'open-value', place: line.at(item), word: 'position' });
}
