/** The body of RINEX 3 and 4 observation files: one line an epoch, one line a satellite. Source: RINEX 3.05, table A3; 4.00, table A3. */
import {
  epochTime,
  eventLines,
  MOST_SATELLITES,
  prnAt,
  unreadable,
  type Body,
  type BodyLine,
} from './body.ts';
import { decimalAt, NINE, wholeAt, ZERO } from './fields.ts';
import type { Reading, SignalPlan } from './signals.ts';
import { GALILEO } from './raw-observations.ts';

export const TIME_3 = [
  [2, 4],
  [7, 2],
  [10, 2],
  [13, 2],
  [16, 2],
  [19, 10],
] as const;
export const ARROW = 62;

export function bodyOf3(self: Body): BodyLine {
  const event = eventLines(self);
  const reading: Reading = { values: new Float64Array(128), lockIndicators: new Uint8Array(128) };
  let keeping = false;
  let satellitesLeft = 0;
  let lost = false;
  return (bytes, from, to, number) => {
    if (event.left > 0) {
      event.take(bytes, from, to, number);
      return;
    }
    if (bytes[from] === ARROW && to > from) {
      const flag = wholeAt(bytes, from + 31, 1, to);
      const count = wholeAt(bytes, from + 32, 3, to);
      lost = !(flag <= 6) || !(count <= 999);
      if (lost) {
        self.complain(unreadable(bytes, from, to), number);
        return;
      }
      keeping = self.begin(epochTime(bytes, from, to, TIME_3), flag, number);
      if (flag > 1) event.start(count);
      satellitesLeft = flag > 1 ? 0 : Math.min(count, MOST_SATELLITES);
      return;
    }
    if (satellitesLeft === 0) {
      if (to > from && !lost) self.complain(unreadable(bytes, from, to), number);
      lost ||= to > from;
      return;
    }
    satellitesLeft -= 1;
    const satellite = self.satellite(bytes[from] ?? 0, prnAt(bytes, from + 1, to));
    if (satellite === 0 || !keeping) return;
    const plan = satellite > GALILEO ? self.plans.E : self.plans.G;
    if (!plan) return;
    readColumns(bytes, from + 3, to, plan, reading);
    self.keep(satellite, reading);
  };
}

/** Fields of F14.3, I1, I1; of them only the wanted ones. */
function readColumns(bytes: Uint8Array, from: number, to: number, plan: SignalPlan, into: Reading) {
  for (const column of plan.wanted) {
    const at = from + 16 * column;
    into.values[column] = decimalAt(bytes, at, 14, to);
    into.lockIndicators[column] = at + 14 < to ? digit(bytes[at + 14] ?? 0) : 0;
  }
}

export const digit = (sign: number) => (sign >= ZERO && sign <= NINE ? sign - ZERO : 0);
