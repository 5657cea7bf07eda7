/** The body of RINEX 2 observation files: satellites listed in the epoch line, five observations a line. Source: RINEX 2.11, table A2. */
import {
  epochTime,
  eventLines,
  LETTER_G,
  MOST_SATELLITES,
  prnAt,
  unreadable,
  type Body,
  type BodyLine,
} from './body.ts';
import { digit } from './body-3.ts';
import { BLANK, decimalAt, wholeAt } from './fields.ts';
import type { Reading } from './signals.ts';

export const TIME_2 = [
  [1, 2],
  [4, 2],
  [7, 2],
  [10, 2],
  [13, 2],
  [15, 11],
] as const;

export function bodyOf2(self: Body): BodyLine {
  const event = eventLines(self);
  const reading: Reading = { values: new Float64Array(128), lockIndicators: new Uint8Array(128) };
  let satellites: number[] = [];
  let awaited = 0;
  let current = 0;
  let column = 0;
  let keeping = false;
  let lost = false;
  const typeCount = () => self.types.get('G')?.length ?? 0;

  const listSatellites = (bytes: Uint8Array, from: number, to: number) => {
    for (let place = 0; place < 12 && satellites.length < awaited; place += 1) {
      const at = from + 32 + 3 * place;
      const letter = at < to ? (bytes[at] ?? BLANK) : BLANK;
      satellites.push(self.satellite(letter === BLANK ? LETTER_G : letter, prnAt(bytes, at + 1, to)));
    }
  };
  const begin: BodyLine = (bytes, from, to, number) => {
    const flag = wholeAt(bytes, from + 28, 1, to);
    const count = wholeAt(bytes, from + 29, 3, to);
    if (!(flag <= 6) || !(count <= 999)) {
      if (to > from && !lost) self.complain(unreadable(bytes, from, to), number);
      lost = true;
      return;
    }
    lost = false;
    keeping = self.begin(epochTime(bytes, from, to, TIME_2), flag, number);
    if (flag > 1 && flag < 6) {
      event.start(count);
      return;
    }
    satellites = [];
    current = 0;
    column = 0;
    awaited = Math.min(count, MOST_SATELLITES);
    listSatellites(bytes, from, to);
  };
  const observe: BodyLine = (bytes, from, to) => {
    for (let place = 0; place < 5 && column < typeCount(); place += 1, column += 1) {
      const at = from + 16 * place;
      reading.values[column] = decimalAt(bytes, at, 14, to);
      reading.lockIndicators[column] = at + 14 < to ? digit(bytes[at + 14] ?? 0) : 0;
    }
    if (column < typeCount()) return;
    const satellite = satellites[current] ?? 0;
    if (satellite > 0 && keeping) self.keep(satellite, reading);
    current += 1;
    column = 0;
  };
  return (bytes, from, to, number) => {
    if (event.left > 0) event.take(bytes, from, to, number);
    else if (satellites.length < awaited) listSatellites(bytes, from, to);
    else if (current < satellites.length && typeCount() > 0) observe(bytes, from, to, number);
    else begin(bytes, from, to, number);
  };
}
