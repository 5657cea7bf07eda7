/** Computing a value from others, with its uncertainty by the law of propagation, down to the numbers that were given or assumed. */
import type { Computed, Formula, Leaf, Unit, Value } from './value.ts';

type Inputs = Readonly<Record<string, Value>>;
type Numbers<In extends Inputs> = { readonly [Symbol in keyof In]: number };

/**
 * The result of a formula for these inputs.
 * Partial derivatives are taken numerically; contributions of one source that arrives by several ways are added with
 * their signs, so that what two inputs share cancels or doubles as it must (JCGM 100:2008, 5.1.2 and 5.2.2).
 */
export function compute<In extends Inputs>(
  name: string,
  unit: Unit,
  formula: Formula,
  inputs: In,
  evaluate: (numbers: Numbers<In>) => number,
): Computed {
  const [only] = computeAll([{ name, unit, formula }], inputs, (numbers) => [evaluate(numbers)]);
  if (!only) throw new Error('a formula has one result');
  return only;
}

/** Several results of one method, say the three coordinates of a point. */
export function computeAll<In extends Inputs>(
  results: readonly { readonly name: string; readonly unit: Unit; readonly formula: Formula }[],
  inputs: In,
  evaluate: (numbers: Numbers<In>) => readonly number[],
): Computed[] {
  const symbols = Object.keys(inputs);
  const at = Object.fromEntries(symbols.map((symbol) => [symbol, inputs[symbol]?.value ?? NaN]));
  const values = evaluate(at as Numbers<In>);
  const contributions = results.map(() => new Map<Leaf, number>());
  const unknown = results.map(() => new Set<Leaf>());
  for (const symbol of symbols) {
    const input = inputs[symbol];
    if (!input || (input.sigma === 0 && !hasUnknown(input))) continue;
    const step = stepFor(input);
    const above = evaluate({ ...at, [symbol]: input.value + step } as Numbers<In>);
    const below = evaluate({ ...at, [symbol]: input.value - step } as Numbers<In>);
    results.forEach((_, index) => {
      const partial = ((above[index] ?? NaN) - (below[index] ?? NaN)) / (2 * step);
      if (partial === 0) return;
      addContributions(input, partial, contributions[index], unknown[index]);
    });
  }
  return results.map(({ name, unit, formula }, index) => {
    const parts = contributions[index] ?? new Map<Leaf, number>();
    const missing = [...(unknown[index] ?? [])];
    return {
      origin: 'computed',
      name,
      value: values[index] ?? NaN,
      unit,
      sigma: missing.length > 0 ? null : rootSumOfSquares([...parts.values()]),
      formula,
      inputs,
      contributions: parts,
      unknown: missing,
    };
  });
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
  const contributions = new Map<Leaf, number>();
  const unknown = new Set<Leaf>();
  for (const { value, coefficient } of terms) addContributions(value, coefficient, contributions, unknown);
  return {
    origin: 'computed',
    name,
    value: terms.reduce((sum, { value, coefficient }) => sum + coefficient * value.value, 0),
    unit,
    sigma: unknown.size > 0 ? null : rootSumOfSquares([...contributions.values()]),
    formula,
    inputs: Object.fromEntries(terms.map(({ symbol, value }) => [symbol, value])),
    contributions,
    unknown: [...unknown],
  };
}

/** A result whose uncertainty has no meaning or no use: a scale factor, a convergence, a count. */
export function computePlain(
  name: string,
  unit: Unit,
  formula: Formula,
  inputs: Inputs,
  value: number,
): Computed {
  return {
    origin: 'computed',
    name,
    value,
    unit,
    sigma: null,
    formula,
    inputs,
    contributions: new Map(),
    unknown: [],
  };
}

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

function addContributions(
  input: Value,
  partial: number,
  contributions: Map<Leaf, number> | undefined,
  unknown: Set<Leaf> | undefined,
): void {
  const leaves = input.origin === 'computed' ? input.unknown : input.sigma === null ? [input] : [];
  for (const leaf of leaves) unknown?.add(leaf);
  for (const [leaf, part] of contributionsOf(input))
    contributions?.set(leaf, (contributions.get(leaf) ?? 0) + partial * part);
}

const rootSumOfSquares = (parts: readonly number[]) =>
  Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0));
