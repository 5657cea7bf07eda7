/** A number with its unit, its standard uncertainty and its story: given in the text, assumed, or computed from others. */
import type { Place } from '../../grammar/tree.ts';

/** Results are in basic units: metres, degrees, seconds, or a plain ratio; those of the radio link in bytes, hertz, decibels. */
export type Unit = 'm' | '°' | 's' | '' | 'B' | 'B/s' | 'bit/s' | 'Hz' | 'W' | 'dB' | 'dBm';

interface Common {
  readonly value: number;
  readonly unit: Unit;
  /** Standard uncertainty in the same unit; 0 for what is exact, null where nobody has said. */
  readonly sigma: number | null;
}

/** A number that stands in the text. */
export interface Given extends Common {
  readonly origin: 'given';
  readonly name: string;
  readonly typed: string;
  readonly place: Place;
  /** Where the standard uncertainty comes from when it was not typed beside the number. */
  readonly spread?: string;
}

/** A number that nobody typed and that a result rests on all the same. */
export interface Assumed extends Common {
  readonly origin: 'assumed';
  readonly name: string;
  readonly because: string;
}

/** A number that follows from others. */
export interface Computed extends Common {
  readonly origin: 'computed';
  readonly name: string;
  readonly formula: Formula;
  /** The numbers put in, by the symbol that the formula has for them. */
  readonly inputs: Readonly<Record<string, Value>>;
  /** What each given or assumed number adds to the uncertainty, with its sign: partial derivative times standard uncertainty. */
  readonly contributions: ReadonlyMap<Leaf, number>;
  /** Numbers whose uncertainty is not known and that this result depends on. */
  readonly unknown: readonly Leaf[];
}

export type Leaf = Given | Assumed;
export type Value = Given | Assumed | Computed;

/** An equation with the source that it is taken from. */
export interface Formula {
  /** The symbol of the result. */
  readonly symbol: string;
  /** The right side, in the source's symbols; `evaluable` ones are arithmetic that a reader can redo with a calculator. */
  readonly expression: string;
  readonly evaluable: boolean;
  /** How many decimals the result earns, where its uncertainty does not say: of a probability, a statistic, a direction. */
  readonly decimals?: number;
  /** The publication, or where the rule comes from. */
  readonly source: string;
}

/** A number that is missing, and why. */
export interface Hole {
  readonly hole: string;
  readonly place: Place | null;
}
export type Maybe<T> = T | Hole;

export const hole = (because: string, place: Place | null = null): Hole => ({ hole: because, place });

export function isHole(thing: unknown): thing is Hole {
  return typeof thing === 'object' && thing !== null && (thing as Partial<Hole>).hole !== undefined;
}

/** One part of what may be missing whole. */
export const partOf = <Whole extends object, Name extends keyof Whole>(
  whole: Maybe<Whole>,
  name: Name,
): Whole[Name] | Hole => (isHole(whole) ? whole : whole[name]);

export function given(
  name: string,
  value: number,
  unit: Unit,
  sigma: number | null,
  typed: string,
  place: Place,
): Given {
  return { origin: 'given', name, value, unit, sigma, typed, place };
}

/** The same number with a standard uncertainty that was said elsewhere or is assumed; one typed beside it stays. */
export function withSpread(value: Given, sigma: number, spread: string): Given {
  if (value.sigma !== null) return value;
  const { name, value: number, unit, typed, place } = value;
  return { origin: 'given', name, value: number, unit, sigma, typed, place, spread };
}

export function assumed(
  name: string,
  value: number,
  unit: Unit,
  sigma: number | null,
  because: string,
): Assumed {
  return { origin: 'assumed', name, value, unit, sigma, because };
}
