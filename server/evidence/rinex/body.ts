/** What every form of an observation file's body hands its records to: epochs, satellites, and events between them. */
import type { ProblemList } from '../problems.ts';
import { clipped } from '../problems.ts';
import { dayNumber, secondsOfDay } from '../civil-time.ts';
import { decimalAt, textIn, wholeAt, ZERO } from './fields.ts';
import { columns, GALILEO, MOST_ROWS, type Columns } from './raw-observations.ts';
import { signalChoice, signalPlan, type Reading, type SignalPlan } from './signals.ts';

/** Reads one line of a body. */
export type BodyLine = (bytes: Uint8Array, from: number, to: number, number: number) => void;

export interface Body {
  /** Types by system letter; version 2 has one list for all. */
  readonly types: Map<string, readonly string[]>;
  readonly plans: { G?: SignalPlan; E?: SignalPlan };
  /** An epoch's flag 0 or 1, or an event's 2 to 6. False where its satellites are not to be kept. */
  readonly begin: (time: number, flag: number, line: number) => boolean;
  /** The satellite's number, or 0 where its system is not used; counts it then. */
  readonly satellite: (letter: number, prn: number) => number;
  readonly keep: (satellite: number, reading: Reading) => void;
  /** Types that were stated anew by an event; plans follow. */
  readonly replan: () => void;
  readonly complain: (sentence: string, line: number) => void;
  readonly columns: Columns;
  readonly skipped: Record<string, number>;
  readonly second: { G: 'L2' | 'L5'; E: 'E5a' | 'E5b' };
}

export function body(problems: ProblemList, toGps: () => number): Body {
  const kept = columns();
  const choice = signalChoice();
  let moving = false;
  let full = false;
  const complain = (sentence: string, line: number) => problems.add({ sentence, line });
  const self: Body = {
    types: new Map(),
    plans: {},
    columns: kept,
    skipped: {},
    second: { G: 'L2', E: 'E5a' },
    complain,
    replan() {
      for (const system of ['G', 'E'] as const) {
        const types = self.types.get(system);
        if (!types) continue;
        const plan = signalPlan(system, types);
        self.plans[system] = plan;
        if (plan.frequency === 'L2' || plan.frequency === 'L5') self.second.G = plan.frequency;
        else self.second.E = plan.frequency;
      }
    },
    begin(time, flag, line) {
      if (flag === 2) complain('The antenna begins to move here; what follows is not used.', line);
      if (flag === 2 || flag === 3) moving = flag === 2;
      if (flag > 1) return false;
      if (moving || full) return false;
      const gps = time + toGps();
      if (Number.isNaN(gps)) {
        complain('The time of this epoch cannot be read; it is not used.', line);
        return false;
      }
      if (gps <= kept.lastTime()) {
        complain('This epoch is not later than the one before; it is not used.', line);
        return false;
      }
      full = !kept.epoch(gps, flag === 1);
      if (full) complain(`More than ${MOST_ROWS} observations; those from here on are not used.`, line);
      return !full;
    },
    satellite(letter, prn) {
      const most = letter === LETTER_G ? 32 : letter === LETTER_E ? 36 : 0;
      if (prn >= 1 && prn <= most) return letter === LETTER_G ? prn : GALILEO + prn;
      const system = letter >= 65 && letter <= 90 ? String.fromCharCode(letter) : '?';
      self.skipped[system] = (self.skipped[system] ?? 0) + 1;
      return 0;
    },
    keep(satellite, reading) {
      const plan = satellite > GALILEO ? self.plans.E : self.plans.G;
      if (!plan) return;
      choice.take(plan, satellite, reading);
      const { code1, phase1, code2, phase2, flags } = choice;
      if (Number.isNaN(code1) && Number.isNaN(phase1)) return;
      kept.row(satellite, code1, phase1, code2, phase2, flags);
    },
  };
  return self;
}

export const LETTER_G = 71;
export const LETTER_E = 69;
/** More satellites than one epoch can have. */
export const MOST_SATELLITES = 200;

/** The types of `SYS / # / OBS TYPES` (versions 3 and 4) or `# / TYPES OF OBSERV` (version 2), added line by line. */
export function typesReader(types: Map<string, readonly string[]>): (label: string, line: string) => void {
  let system = '';
  const add = (key: string, words: readonly string[]) => {
    const all = [...(types.get(key) ?? []), ...words];
    if (all.length <= MOST_TYPES) types.set(key, all);
  };
  return (label, line) => {
    if (label === 'SYS / # / OBS TYPES') {
      const named = line.charAt(0);
      if (named !== ' ') {
        system = named;
        types.set(system, []);
      }
      if (system) add(system, line.slice(7, 60).split(' ').filter(Boolean));
    }
    if (label === '# / TYPES OF OBSERV') {
      const words = line.slice(6, 60).split(' ').filter(Boolean);
      for (const key of ['G', 'E']) {
        if (line.slice(0, 6).trim() !== '') types.set(key, []);
        add(key, words);
      }
    }
  };
}
const MOST_TYPES = 120;

/** The time of an epoch line: fields `year month day hour minute` from these columns, then seconds. */
export function epochTime(
  bytes: Uint8Array,
  from: number,
  to: number,
  places: readonly (readonly [at: number, width: number])[],
): number {
  const field = (index: number) => {
    const [at, width] = places[index] ?? [0, 0];
    return wholeAt(bytes, from + at, width, to);
  };
  const typed = field(0);
  const year = places[0]?.[1] === 2 ? typed + (typed < 80 ? 2000 : 1900) : typed;
  const [at, width] = places[5] ?? [0, 0];
  const second = decimalAt(bytes, from + at, width, to);
  const days = dayNumberOnce(year, field(1), field(2));
  const hour = field(3);
  const minute = field(4);
  if (days === undefined || !(hour < 24) || !(minute < 60) || !(second < 61)) return Number.NaN;
  return days * secondsOfDay + hour * 3600 + minute * 60 + second;
}

/** The calendar is asked once a day and not at each epoch. */
const dayNumberOnce = (() => {
  let asked = [0, 0, 0];
  let known: number | undefined;
  return (year: number, month: number, day: number) => {
    if (asked[0] !== year || asked[1] !== month || asked[2] !== day) {
      known = dayNumber(year, month, day);
      asked = [year, month, day];
    }
    return known;
  };
})();

/** The digits of a satellite's number in two columns, the first of which may be blank. */
export function prnAt(bytes: Uint8Array, at: number, to: number): number {
  const tens = at < to ? (bytes[at] ?? 0) - ZERO : -1;
  const ones = at + 1 < to ? (bytes[at + 1] ?? 0) - ZERO : -1;
  return ones >= 0 && ones <= 9 && tens <= 9 ? (tens > 0 ? tens : 0) * 10 + ones : 0;
}

/** Passes over the lines of an event; types that it states anew are taken. */
export function eventLines(self: Body): {
  readonly start: (lines: number) => void;
  readonly take: BodyLine;
} & {
  left: number;
} {
  let read = typesReader(self.types);
  const event = {
    left: 0,
    start(lines: number) {
      event.left = lines;
      read = typesReader(self.types);
    },
    take(bytes: Uint8Array, from: number, to: number) {
      event.left -= 1;
      const line = textIn(bytes, from, Math.min(to, from + 80));
      read(line.slice(60).trim(), line);
      if (event.left === 0) self.replan();
    },
  };
  return event;
}

export const unreadable = (bytes: Uint8Array, from: number, to: number) =>
  `An epoch should begin here: "${clipped(textIn(bytes, from, Math.min(to, from + 60)))}". Passed over.`;
