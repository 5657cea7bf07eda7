/** The story of a value, printed as one would write it on paper: formula, numbers put in, result, uncertainty, source. */
import { contributionsOf } from './computed.ts';
import { decimalsFor, showNumber, showSigma, showValue } from './show.ts';
import type { Leaf, Value } from './value.ts';

/** Where a number stands, in words; the caller knows lines, the value only knows places. */
export type TellPlace = (leaf: Leaf) => string;

/**
 * The lines of a value's story.
 * An evaluable formula's second line holds the numbers put in, with digits enough to redo the result by hand.
 */
export function explain(value: Value, tellPlace: TellPlace): string[] {
  if (value.origin === 'given')
    return [`${value.name} = ${showValue(value)}: given as ${value.typed}, ${tellPlace(value)}`];
  if (value.origin === 'assumed') return [`${value.name} = ${showValue(value)}: assumed, ${value.because}`];
  const { formula, inputs } = value;
  const putIn = formula.evaluable ? [`  = ${substituted(formula.expression, inputs)}`] : [];
  return [
    `${value.name}: ${formula.symbol} = ${formula.expression}`,
    ...putIn,
    `  = ${fullResult(value)}`,
    ...Object.entries(inputs).map(([symbol, input]) => `  ${symbol}: ${told(input, tellPlace)}`),
    ...shares(value),
    ...(value.unknown.length > 0
      ? [
          `  uncertainty unknown: nobody has said how good ${value.unknown.map((leaf) => leaf.name).join(' and ')} is`,
        ]
      : []),
    `  source: ${formula.source}`,
  ];
}

/** The story of a value and of everything it was computed from, each once. */
export function explainAll(value: Value, tellPlace: TellPlace): string[] {
  const seen = new Set<Value>();
  const visit = (inner: Value): string[] => {
    if (seen.has(inner) || inner.origin !== 'computed') return [];
    seen.add(inner);
    return [...explain(inner, tellPlace), ...Object.values(inner.inputs).flatMap(visit)];
  };
  return value.origin === 'computed' ? visit(value) : explain(value, tellPlace);
}

function told(input: Value, tellPlace: TellPlace): string {
  const shown = `${input.name} = ${fullDigits(input)}`;
  const spread =
    input.sigma === null ? '' : input.sigma === 0 ? '' : ` ± ${showSigma(input.sigma, input.unit)}`;
  const spreadFrom = input.origin === 'given' && input.spread ? ` (${input.spread})` : '';
  if (input.origin === 'given')
    return `${shown}${spread}${spreadFrom}, given as ${input.typed}, ${tellPlace(input)}`;
  if (input.origin === 'assumed') return `${shown}${spread}, assumed: ${input.because}`;
  return `${shown}${spread}, computed`;
}

/** Symbols are replaced as whole words, so that `s` never touches the s of `sqrt`. */
function substituted(expression: string, inputs: Readonly<Record<string, Value>>): string {
  return expression.replace(/[\p{L}\p{Nd}_]+/gu, (symbol) => {
    const input = Object.hasOwn(inputs, symbol) ? inputs[symbol] : undefined;
    if (!input) return symbol;
    const digits = fullDigits(input, false);
    return input.value < 0 ? `(${digits})` : digits;
  });
}

/** One or two digits more than the uncertainty earns, so that a result can be computed again from what is printed. */
function fullDigits(input: Value, unit = true): string {
  const decimals = input.unit === '°' ? 10 : input.unit === '' ? 10 : 5;
  const text = showNumber(input.value, decimals)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
  if (!unit || input.unit === '') return text;
  return input.unit === '°' ? `${text}°` : `${text} ${input.unit}`;
}

function fullResult(value: Value): string {
  const spread = value.sigma === null || value.sigma === 0 ? '' : ` ± ${showSigma(value.sigma, value.unit)}`;
  const plain = value.unit === '°' || value.unit === '';
  const decimals = Math.max(decimalsFor(value.unit, value.sigma), plain ? 9 : value.unit === 'm' ? 4 : 0);
  const number = showNumber(value.value, decimals);
  return `${number}${value.unit === '' ? '' : value.unit === '°' ? '°' : ` ${value.unit}`}${spread}`;
}

/** What each source adds, largest first, as a share of the variance; below one per cent it is left out. */
function shares(value: Value): string[] {
  const { sigma } = value;
  if (sigma === null || sigma === 0) return [];
  const parts = [...contributionsOf(value)]
    .map(([leaf, part]) => ({ leaf, share: (part / sigma) ** 2 }))
    .filter(({ share }) => share >= 0.01)
    .sort((one, other) => other.share - one.share);
  if (parts.length === 0) return [];
  return [
    `  uncertainty from ${parts.map(({ leaf, share }) => `${leaf.name} ${Math.round(share * 100)} %`).join(', ')}`,
  ];
}
