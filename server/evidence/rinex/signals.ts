/**
 * Which observation types of a file are taken: one code and its phase on two frequencies, for GPS and Galileo.
 *
 * Source: RINEX 3.05 and 4.00, tables of observation codes of GPS and Galileo; RINEX 2.11, table A1.
 */
import {
  GALILEO,
  HALF_1,
  HALF_2,
  LOST_1,
  LOST_2,
  type GalileoSecond,
  type GpsSecond,
} from './raw-observations.ts';

/** A code and the phase that belongs to it, as columns of the file's own list of types; -1 where the file has none. */
interface Signal {
  readonly code: number;
  readonly phase: number;
}
export interface SignalPlan {
  readonly first: readonly Signal[];
  readonly second: readonly Signal[];
  /** The columns to read, rising; others need not be looked at. */
  readonly wanted: readonly number[];
  readonly types: number;
}

/** Attributes in the order in which they are preferred. */
const ATTRIBUTES = {
  G1: 'CWPXLSYM',
  G2: 'WPXLSCYDM',
  G5: 'QXI',
  E1: 'CXBZA',
  E5: 'QXI',
  E7: 'QXI',
} as const;

function signalsOf(types: readonly string[], band: keyof typeof ATTRIBUTES): readonly Signal[] {
  const digit = band.charAt(1);
  const modern = [...ATTRIBUTES[band]].map((attribute) => ({
    code: types.indexOf(`C${digit}${attribute}`),
    phase: types.indexOf(`L${digit}${attribute}`),
  }));
  const precise = band === 'G2' ? ['P', 'C'] : ['C', 'P'];
  const old = precise.map((kind) => ({
    code: types.indexOf(`${kind}${digit}`),
    phase: types.indexOf(`L${digit}`),
  }));
  return [...modern, ...old].filter(({ code, phase }) => code >= 0 || phase >= 0);
}

/** The plan for one system, and which second frequency it takes. */
export function signalPlan(
  system: 'G' | 'E',
  types: readonly string[],
): SignalPlan & { readonly frequency: GpsSecond | GalileoSecond } {
  const first = signalsOf(types, system === 'G' ? 'G1' : 'E1');
  const usual = signalsOf(types, system === 'G' ? 'G2' : 'E5');
  const other = usual.length > 0 ? usual : signalsOf(types, system === 'G' ? 'G5' : 'E7');
  const frequency = system === 'G' ? (usual === other ? 'L2' : 'L5') : usual === other ? 'E5a' : 'E5b';
  const wanted = [...new Set([...first, ...other].flatMap(({ code, phase }) => [code, phase]))]
    .filter((column) => column >= 0)
    .sort((one, another) => one - another);
  return { first, second: other, wanted, types: types.length, frequency };
}

/** What one satellite observed at one epoch, by column; NaN and 0 where there is nothing. */
export interface Reading {
  readonly values: Float64Array;
  readonly lockIndicators: Uint8Array;
}

/** Picks a satellite's signal and stays with it: another one in the middle of an arc would look like a slip. */
export interface SignalChoice {
  readonly take: (plan: SignalPlan, satellite: number, reading: Reading) => void;
  /** Of the satellite last taken. */
  code1: number;
  phase1: number;
  code2: number;
  phase2: number;
  flags: number;
}

export function signalChoice(): SignalChoice {
  const chosen = new Int8Array(4 * GALILEO).fill(-1);
  const pick = (signals: readonly Signal[], slot: number, { values }: Reading): Signal | undefined => {
    const before = chosen[slot] ?? -1;
    if (before >= 0) return signals[before];
    const both = signals.findIndex(
      ({ code, phase }) => !Number.isNaN(at(values, code)) && !Number.isNaN(at(values, phase)),
    );
    if (both >= 0) chosen[slot] = both;
    return signals[both] ?? signals.find(({ code }) => !Number.isNaN(at(values, code)));
  };
  const choice: SignalChoice = {
    code1: Number.NaN,
    phase1: Number.NaN,
    code2: Number.NaN,
    phase2: Number.NaN,
    flags: 0,
    take(plan, satellite, reading) {
      const { values, lockIndicators } = reading;
      const first = pick(plan.first, 2 * satellite, reading);
      const second = pick(plan.second, 2 * satellite + 1, reading);
      choice.code1 = first ? at(values, first.code) : Number.NaN;
      choice.phase1 = first ? at(values, first.phase) : Number.NaN;
      choice.code2 = second ? at(values, second.code) : Number.NaN;
      choice.phase2 = second ? at(values, second.phase) : Number.NaN;
      // Bits 0 and 1 count, bit 2 (tracking under anti-spoofing) does not.
      const lock1 = first && first.phase >= 0 ? (lockIndicators[first.phase] ?? 0) : 0;
      const lock2 = second && second.phase >= 0 ? (lockIndicators[second.phase] ?? 0) : 0;
      choice.flags =
        (lock1 & 1 ? LOST_1 : 0) |
        (lock1 & 2 ? HALF_1 : 0) |
        (lock2 & 1 ? LOST_2 : 0) |
        (lock2 & 2 ? HALF_2 : 0);
    },
  };
  return choice;
}

/** A zero stands for missing, as a blank does. */
const at = (values: Float64Array, column: number) =>
  column < 0 || values[column] === 0 ? Number.NaN : (values[column] ?? Number.NaN);
