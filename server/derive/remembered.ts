/** Functions that answer again what they answered before for the very same objects, so that an edit recomputes only what it touches. */
import { keptTogether, keptWith, type Kept } from '../../grammar/kept-with.ts';
import type { Refusal } from '../quantities/refusal.ts';

/** Most branches go on in one way only, and need no table for it. */
interface Branch {
  only: { readonly step: object; readonly next: Branch } | null;
  several: WeakMap<object, Branch> | null;
  answer: { readonly value: unknown } | null;
}

/** Stands in where a function's argument may be absent: absence needs an identity, too. */
export const NOTHING: { readonly nothing: true } = { nothing: true };
export type Nothing = typeof NOTHING;

/** A text, a number or null as an object, the same one each time, so that it can be an argument of a remembered function. */
export interface Token<Worth> {
  readonly worth: Worth;
}
const tokens = new Map<unknown, Token<unknown>>();
export function tokenOf<Worth extends string | number | null>(worth: Worth): Token<Worth> {
  const token = tokens.get(worth) ?? { worth };
  tokens.set(worth, token);
  return token as Token<Worth>;
}

/** A refusal in the same words is the same object, so that what rests on it need not be computed again. */
export function sameRefusal(refusal: Refusal): Refusal {
  const known = refusals.get(refusal.refused) ?? refusal;
  refusals.set(refusal.refused, known);
  return known;
}
const refusals = new Map<string, Refusal>();

export const orNull = <Thing extends object>(thing: Thing | Nothing): Thing | null =>
  thing === NOTHING ? null : (thing as Thing);

/** The function with a memory keyed by the identity of its arguments; it is kept with the first, and entries vanish with the objects. */
export function remembered<First extends object, Rest extends readonly object[], Answer>(
  answer: (first: First, ...rest: Rest) => Answer,
): (first: First, ...rest: Rest) => Answer {
  const roots = keptTogether<First, Branch>();
  return (first, ...rest) => {
    const leaf = descend(rootOf(first, roots), rest);
    leaf.answer ??= { value: answer(first, ...rest) };
    return leaf.answer.value as Answer;
  };
}

const lists = keptWith<object, Branch>();
const EMPTY: readonly never[] = [];

/** The one array of these objects in this order, so that a list can be an argument of a remembered function. */
export function interned<Thing extends object>(things: readonly Thing[]): readonly Thing[] {
  const [first] = things;
  if (!first) return EMPTY;
  const leaf = descend(rootOf(first, lists), things);
  leaf.answer ??= { value: things };
  return leaf.answer.value as readonly Thing[];
}

function rootOf<First extends object>(first: First, roots: Kept<First, Branch>): Branch {
  const known = roots.get(first);
  if (known) return known;
  const root: Branch = { only: null, several: null, answer: null };
  roots.set(first, root);
  return root;
}

function descend(root: Branch, path: readonly object[]): Branch {
  let branch = root;
  for (const step of path) branch = branchTo(step, branch);
  return branch;
}

function branchTo(step: object, branch: Branch): Branch {
  if (branch.only?.step === step) return branch.only.next;
  const known = branch.several?.get(step);
  if (known) return known;
  const next: Branch = { only: null, several: null, answer: null };
  if (!branch.only && !branch.several) branch.only = { step, next };
  else {
    branch.several ??= new WeakMap();
    if (branch.only) branch.several.set(branch.only.step, branch.only.next);
    branch.only = null;
    branch.several.set(step, next);
  }
  return next;
}
