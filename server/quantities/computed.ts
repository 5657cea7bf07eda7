/** Computing a value from others, with its uncertainty by the law of propagation, down to the numbers that were given or assumed. */
import { once } from './once.ts';
import { assumed, given, type Computed, type Formula, type Leaf, type Unit, type Value } from './value.ts';

type Inputs = Readonly<Record<string, Value>>;
type Numbers<In extends Inputs> = { readonly [Symbol in keyof In]: number };

/**
 * The result of a formula for these inputs; those that are taken `exactly` add nothing to its uncertainty.
 * Partial derivatives are taken numerically; contributions of one source that arrives by several ways are added with
 * their signs, so that what two inputs share cancels or doubles as it must (JCGM 100:2008, 5.1.2 and 5.2.2).
 */
export function compute<In extends Inputs>(
  name: string,
  unit: Unit,
  formula: Formula,
  inputs: In,
  evaluate: (numbers: Numbers<In>) => number,
  exactly: readonly (keyof In)[] = [],
): Computed {
  const [only] = computeAll([{ name, unit, formula }], inputs, (numbers) => [evaluate(numbers)], exactly);
  if (!only) throw new Error('a formula has one result');
  return only;
}

/** Several results of one method, say the three coordinates of a point. */
export function computeAll<In extends Inputs>(
  results: readonly { readonly name: string; readonly unit: Unit; readonly formula: Formula }[],
  inputs: In,
  evaluate: (numbers: Numbers<In>) => readonly number[],
  exactly: readonly (keyof In)[] = [],
): Computed[] {
  const numbers: Record<string, number> = {};
  for (const symbol in inputs) numbers[symbol] = inputs[symbol]?.value ?? NaN;
  const values = evaluate(numbers as Numbers<In>);
  const spreads = new SpreadsWhenAsked(() => propagated(inputs, numbers, values.length, evaluate, exactly));
  return results.map(
    ({ name, unit, formula }, index) =>
      new Result(name, values[index] ?? NaN, unit, formula, inputs, spreads, index),
  );
}

/** What each input adds to each of so many results. */
function propagated<In extends Inputs>(
  inputs: In,
  numbers: Record<string, number>,
  count: number,
  evaluate: (numbers: Numbers<In>) => readonly number[],
  exactly: readonly (keyof In)[],
): Spread[] {
  const found: Contributions[] = [];
  while (found.length < count) found.push(new Contributions());
  for (const symbol in inputs) {
    const input = inputs[symbol];
    if (!input || exactly.includes(symbol) || (input.sigma === 0 && !hasUnknown(input))) continue;
    const step = stepFor(input);
    numbers[symbol] = input.value + step;
    const above = evaluate(numbers as Numbers<In>);
    numbers[symbol] = input.value - step;
    const below = evaluate(numbers as Numbers<In>);
    numbers[symbol] = input.value;
    for (let index = 0; index < count; index += 1) {
      const partial = ((above[index] ?? NaN) - (below[index] ?? NaN)) / (2 * step);
      if (partial !== 0) found[index]?.add(input, partial);
    }
  }
  return found.map((contributions) => contributions.spread());
}

/**
 * A sum of inputs, each times its coefficient: the partial derivatives are the coefficients, so that thousands of
 * inputs take no longer than to add them up.
 */
export function computeLinear(
  name: string,
  unit: Unit,
  formula: Formula,
  terms: readonly { readonly symbol: string; readonly value: Value; readonly coefficient: number }[],
): Computed {
  const inputs: Record<string, Value> = {};
  let total = 0;
  for (const { symbol, value, coefficient } of terms) {
    inputs[symbol] = value;
    total += coefficient * value.value;
  }
  const spreads = new SpreadsWhenAsked(() => {
    const contributions = new Contributions();
    for (const { value, coefficient } of terms) contributions.add(value, coefficient);
    return [contributions.spread()];
  });
  return new Result(name, total, unit, formula, inputs, spreads, 0);
}

/** A level rather than a measurement: all that is put in is taken as it is. */
export function computeExactly<In extends Inputs>(
  name: string,
  unit: Unit,
  formula: Formula,
  inputs: In,
  value: number,
): Computed {
  return new Result(name, value, unit, formula, inputs, ALL_EXACT, 0);
}

/** A result whose uncertainty has no meaning or no use: a scale factor, a convergence, a count. */
export function computePlain(
  name: string,
  unit: Unit,
  formula: Formula,
  inputs: Inputs,
  value: number,
): Computed {
  return new Result(name, value, unit, formula, inputs, UNSPREAD, 0);
}

/** The same, of which the story is long and seldom asked for. */
export const computeTold = (name: string, unit: Unit, value: number, story: () => Story): Computed =>
  new Told(name, value, unit, once(story));

interface Story {
  readonly formula: Formula;
  readonly inputs: Inputs;
}

/** The same number, taken as it is. */
export function exact(value: Value): Value {
  if (value.origin === 'computed') return copied(value, value.name, value.inputs, ALL_EXACT);
  if (value.sigma === 0) return value;
  const { name, value: number, unit } = value;
  return value.origin === 'given'
    ? given(name, number, unit, 0, value.typed, value.place)
    : assumed(name, number, unit, 0, value.because);
}

/** The same value under another name. */
export function renamed(value: Value, name: string): Value {
  if (value.origin === 'computed') return copied(value, name, value.inputs, new Same(value));
  if (value.origin === 'given') return { ...value, name };
  return assumed(name, value.value, value.unit, value.sigma, value.because);
}

const copied = (
  { value, unit, formula }: Computed,
  name: string,
  inputs: Inputs,
  spreads: Spreads,
): Computed => new Result(name, value, unit, formula, inputs, spreads, 0);

/** The given and assumed numbers that a value rests on, each once, in the order of first use. */
export function leavesOf(value: Value): Leaf[] {
  const found = new Set<Leaf>();
  const seen = new Set<Value>();
  const visit = (inner: Value) => {
    if (seen.has(inner)) return;
    seen.add(inner);
    if (inner.origin === 'computed') Object.values(inner.inputs).forEach(visit);
    else found.add(inner);
  };
  visit(value);
  return [...found];
}

/** Covariance of two values, from the contributions that they share; null where an uncertainty is not known. */
export function covariance(one: Value, other: Value): number | null {
  if (one.sigma === null || other.sigma === null) return null;
  const parts = contributionsOf(other);
  let sum = 0;
  for (const [leaf, part] of contributionsOf(one)) sum += part * (parts.get(leaf) ?? 0);
  return sum;
}

export function contributionsOf(value: Value): ReadonlyMap<Leaf, number> {
  if (value.origin === 'computed') return value.contributions;
  return value.sigma === null ? new Map() : new Map([[value, value.sigma]]);
}

const hasUnknown = (value: Value) =>
  value.origin === 'computed' ? value.unknown.length > 0 : value.sigma === null;

/** Small against the uncertainty, so that no curve matters, yet large enough for the digits of a coordinate of ten million metres. */
function stepFor(input: Value): number {
  if (input.unit === '°') return 1e-5;
  const usual = input.unit === 'm' ? 0.1 : 1e-4;
  const spread = input.sigma === null ? usual : input.sigma / 10;
  return Math.max(Math.min(usual, spread), Math.abs(input.value) * 1e-7, usual * 1e-5);
}

/** How good a result is, and what makes it so. */
interface Spread {
  readonly sigma: number | null;
  readonly contributions: ReadonlyMap<Leaf, number>;
  readonly unknown: readonly Leaf[];
}
const NO_SPREAD: Spread = { sigma: null, contributions: new Map(), unknown: [] };
const EXACT: Spread = { ...NO_SPREAD, sigma: 0 };

/** How good each of several results of one method is. */
interface Spreads {
  readonly of: (index: number) => Spread;
}

class Same implements Spreads {
  constructor(private readonly spread: Spread) {}

  of() {
    return this.spread;
  }
}

const UNSPREAD = new Same(NO_SPREAD);
const ALL_EXACT = new Same(EXACT);

/** Found when somebody asks: that takes many evaluations of the formula, and of most results nobody does. */
class SpreadsWhenAsked implements Spreads {
  private found: readonly Spread[] | null = null;

  constructor(private work: (() => readonly Spread[]) | null) {}

  of(index: number) {
    this.found ??= this.work?.() ?? [];
    // What the work was made from need not be kept any longer.
    this.work = null;
    return this.found[index] ?? NO_SPREAD;
  }
}

/** How good it is, is no property of its own that a copy by `...` would take along. */
class Result implements Computed {
  readonly origin = 'computed';
  readonly #spreads: Spreads;
  readonly #index: number;

  constructor(
    readonly name: string,
    readonly value: number,
    readonly unit: Unit,
    readonly formula: Formula,
    readonly inputs: Inputs,
    spreads: Spreads,
    index: number,
  ) {
    this.#spreads = spreads;
    this.#index = index;
  }

  get sigma() {
    return this.#spreads.of(this.#index).sigma;
  }

  get contributions() {
    return this.#spreads.of(this.#index).contributions;
  }

  get unknown() {
    return this.#spreads.of(this.#index).unknown;
  }
}

class Told implements Computed {
  readonly origin = 'computed';
  readonly sigma = null;
  readonly contributions = NO_SPREAD.contributions;
  readonly unknown = NO_SPREAD.unknown;
  readonly #story: () => Story;

  constructor(
    readonly name: string,
    readonly value: number,
    readonly unit: Unit,
    story: () => Story,
  ) {
    this.#story = story;
  }

  get formula() {
    return this.#story().formula;
  }

  get inputs() {
    return this.#story().inputs;
  }
}

class Contributions {
  private readonly parts = new Map<Leaf, number>();
  private unknown: Set<Leaf> | null = null;

  add(input: Value, partial: number): void {
    if (input.origin !== 'computed') {
      if (input.sigma === null) this.addUnknown(input);
      else this.addPart(input, partial * input.sigma);
      return;
    }
    for (const leaf of input.unknown) this.addUnknown(leaf);
    for (const [leaf, part] of input.contributions) this.addPart(leaf, partial * part);
  }

  spread(): Spread {
    const { parts: contributions, unknown } = this;
    if (unknown) return { sigma: null, contributions, unknown: [...unknown] };
    return { sigma: rootSumOfSquares(contributions.values()), contributions, unknown: NO_SPREAD.unknown };
  }

  private addPart(leaf: Leaf, part: number): void {
    this.parts.set(leaf, (this.parts.get(leaf) ?? 0) + part);
  }

  private addUnknown(leaf: Leaf): void {
    this.unknown ??= new Set();
    this.unknown.add(leaf);
  }
}

function rootSumOfSquares(parts: Iterable<number>): number {
  let sum = 0;
  for (const part of parts) sum += part * part;
  return Math.sqrt(sum);
}
