/** A mark in another datum than its own; a hole where no transformation between the two is known. */
import type { Datum } from '../geodesy/system.ts';
import { hole, type Hole, type Maybe, type Value } from '../quantities/value.ts';
import type { Mark } from '../session/entries.ts';
import type { Located } from './locate.ts';

export function geodeticIn(
  located: Located,
  _height: Maybe<Value>,
  wanted: Datum,
  mark: Mark,
): Maybe<Located> | Hole {
  return hole(
    `${mark.name} is in ${located.system.datum.name} and is to be keyed in ${wanted.name}; no transformation between them is known`,
    mark.position?.place ?? mark.place,
  );
}
