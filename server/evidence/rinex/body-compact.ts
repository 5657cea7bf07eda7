/**
 * The body of a compact observation file: each number as a difference of some order to the epochs before, each text
 * as the characters that changed.
 *
 * Source: Y. Hatanaka (2008), A compression format and tools for GNSS observation data, Bulletin of the Geospatial
 * Information Authority of Japan 55, 21–30.
 */
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
import { TIME_2 } from './body-2.ts';
import { ARROW, digit, TIME_3 } from './body-3.ts';
import { BLANK, NINE, wholeAt, ZERO } from './fields.ts';
import { GALILEO } from './raw-observations.ts';
import type { Reading, SignalPlan } from './signals.ts';

/** Version 1 compacts RINEX 2, version 3 compacts RINEX 3 and 4. */
export function compactBody(self: Body, version: 1 | 3): BodyLine {
  const event = eventLines(self);
  const epochLine: ChangingText = { bytes: new Uint8Array(64 + 3 * MOST_SATELLITES), length: 0 };
  const places = version === 1 ? { time: TIME_2, flag: 28, list: 32 } : { time: TIME_3, flag: 31, list: 41 };
  const reading: Reading = { values: new Float64Array(128), lockIndicators: new Uint8Array(128) };
  const arcs = new Map<number, Arc>();
  let satellites: number[] = [];
  let expects: 'epoch' | 'clock' | 'satellite' = 'epoch';
  let current = 0;
  let keeping = false;
  let lost = true;
  let epoch = 0;

  const begin: BodyLine = (bytes, from, to, number) => {
    const first = bytes[from];
    const fresh = to > from && first === (version === 1 ? AMPERSAND : ARROW);
    if (lost && !fresh) return;
    if (fresh) epochLine.length = 0;
    change(epochLine, bytes, from, to);
    const line = epochLine.bytes;
    const flag = wholeAt(line, places.flag, 1, epochLine.length);
    const count = wholeAt(line, places.flag + 1, 3, epochLine.length);
    lost = !(flag <= 6) || !(count <= (flag > 1 ? 999 : MOST_SATELLITES));
    if (lost) {
      self.complain(unreadable(line, 0, epochLine.length), number);
      return;
    }
    keeping = self.begin(epochTime(line, 0, epochLine.length, places.time), flag, number);
    if (flag > 1) {
      event.start(count);
      lost = true;
      return;
    }
    epoch += 1;
    satellites = Array.from({ length: count }, (_, place) => {
      const at = places.list + 3 * place;
      const letter = line[at] ?? BLANK;
      return self.satellite(letter === BLANK ? LETTER_G : letter, prnAt(line, at + 1, epochLine.length));
    });
    current = 0;
    expects = 'clock';
  };
  const observe: BodyLine = (bytes, from, to) => {
    const satellite = satellites[current] ?? 0;
    current += 1;
    if (current >= satellites.length) expects = 'epoch';
    const plan = satellite > GALILEO ? self.plans.E : self.plans.G;
    if (satellite === 0 || !plan) return;
    let arc = arcs.get(satellite);
    if (!arc || arc.types !== plan.types) arcs.set(satellite, (arc = arcOf(plan.types)));
    if (arc.epoch !== epoch - 1) restart(arc);
    arc.epoch = epoch;
    expand(arc, bytes, from, to, plan, reading);
    if (keeping) self.keep(satellite, reading);
  };
  return (bytes, from, to, number) => {
    if (event.left > 0) event.take(bytes, from, to, number);
    else if (expects === 'epoch') begin(bytes, from, to, number);
    else if (expects === 'clock') expects = satellites.length > 0 ? 'satellite' : 'epoch';
    else observe(bytes, from, to, number);
  };
}

interface ChangingText {
  bytes: Uint8Array;
  length: number;
}

/** A blank leaves a character as it is, an ampersand makes it blank, all others replace it. */
function change(text: ChangingText, bytes: Uint8Array, from: number, to: number) {
  const until = Math.min(to - from, text.bytes.length);
  for (let index = text.length; index < until; index += 1) text.bytes[index] = BLANK;
  text.length = Math.max(text.length, until);
  for (let index = 0; index < until; index += 1) {
    const sign = bytes[from + index] ?? BLANK;
    if (sign !== BLANK) text.bytes[index] = sign === AMPERSAND ? BLANK : sign;
  }
}

/** What is known of one satellite: for each type the differences of rising order, and the indicators. */
interface Arc {
  readonly types: number;
  epoch: number;
  readonly differences: Float64Array;
  /** The order that is reached, and that which it will reach; -1 where nothing goes on. */
  readonly reached: Int8Array;
  readonly order: Int8Array;
  readonly indicators: ChangingText;
}

const MOST_ORDER = 7;

const arcOf = (types: number): Arc => ({
  types,
  epoch: -1,
  differences: new Float64Array(types * (MOST_ORDER + 1)),
  reached: new Int8Array(types).fill(-1),
  order: new Int8Array(types),
  indicators: { bytes: new Uint8Array(2 * types).fill(BLANK), length: 0 },
});

function restart(arc: Arc) {
  arc.reached.fill(-1);
  arc.indicators.length = 0;
}

function expand(arc: Arc, bytes: Uint8Array, from: number, to: number, plan: SignalPlan, into: Reading) {
  let at = from;
  for (let type = 0; type < arc.types; type += 1) {
    const begin = at;
    while (at < to && bytes[at] !== BLANK) at += 1;
    into.values[type] = at > begin ? next(arc, type, bytes, begin, at) : ended(arc, type);
    at += 1;
  }
  if (at < to) change(arc.indicators, bytes, at, to);
  else change(arc.indicators, bytes, to, to);
  for (const type of plan.wanted) {
    into.lockIndicators[type] =
      2 * type < arc.indicators.length ? digit(arc.indicators.bytes[2 * type] ?? 0) : 0;
  }
}

function ended(arc: Arc, type: number) {
  arc.reached[type] = -1;
  return Number.NaN;
}

/** One field: `3&123` begins an arc of order 3, `-45` is the difference of the order reached. */
function next(arc: Arc, type: number, bytes: Uint8Array, from: number, to: number): number {
  const first = type * (MOST_ORDER + 1);
  const differences = arc.differences;
  if (bytes[from + 1] === AMPERSAND) {
    const value = integer(bytes, from + 2, to);
    const order = digit(bytes[from] ?? 0);
    if (Number.isNaN(value) || order > MOST_ORDER) return ended(arc, type);
    arc.order[type] = order;
    arc.reached[type] = 0;
    differences[first] = value;
    return value / 1000;
  }
  const before = arc.reached[type] ?? -1;
  const value = integer(bytes, from, to);
  if (before < 0 || Number.isNaN(value)) return ended(arc, type);
  const reached = Math.min(before + 1, arc.order[type] ?? 0);
  arc.reached[type] = reached;
  differences[first + reached] = reached === 0 ? (differences[first] ?? 0) + value : value;
  for (let order = reached; order > 0; order -= 1) {
    differences[first + order - 1] =
      (differences[first + order - 1] ?? 0) + (differences[first + order] ?? 0);
  }
  const whole = differences[first] ?? 0;
  return Math.abs(whole) < Number.MAX_SAFE_INTEGER ? whole / 1000 : ended(arc, type);
}

function integer(bytes: Uint8Array, from: number, to: number): number {
  const negative = bytes[from] === MINUS;
  let value = 0;
  const begin = negative ? from + 1 : from;
  if (begin >= to || to - begin > 15) return Number.NaN;
  for (let index = begin; index < to; index += 1) {
    const sign = bytes[index] ?? 0;
    if (sign < ZERO || sign > NINE) return Number.NaN;
    value = value * 10 + (sign - ZERO);
  }
  return negative ? -value : value;
}

const AMPERSAND = 38;
const MINUS = 45;
