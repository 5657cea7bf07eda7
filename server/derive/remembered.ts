/** Functions that answer again what they answered before for the very same objects, so that an edit recomputes only what it touches. */

/** Most branches go on in one way only, and need no table for it. */
interface Branch {
  only: { readonly step: object; readonly next: Branch } | null;
  several: WeakMap<object, Branch> | null;
  answer: { readonly value: unknown } | null;
}

/** Stands in where a function's argument may be absent: absence needs an identity, too. */
export const NOTHING: { readonly nothing: true } = Object.freeze({ nothing: true });
export type Nothing = typeof NOTHING;

/** The function with a memory keyed by the identity of its arguments; entries vanish with the objects. */
export function remembered<Args extends readonly object[], Answer>(
  answer: (...args: Args) => Answer,
): (...args: Args) => Answer {
  const root: Branch = { only: null, several: new WeakMap(), answer: null };
  return (...args) => {
    const leaf = descend(root, args);
    leaf.answer ??= { value: answer(...args) };
    return leaf.answer.value as Answer;
  };
}

const roots: Branch = { only: null, several: new WeakMap(), answer: null };

/** The one array of these objects in this order, so that a list can be an argument of a remembered function. */
export function interned<Thing extends object>(things: readonly Thing[]): readonly Thing[] {
  const leaf = descend(roots, things);
  leaf.answer ??= { value: things };
  return leaf.answer.value as readonly Thing[];
}

function descend(root: Branch, path: readonly object[]): Branch {
  let branch = root;
  for (const step of path) branch = branch.only?.step === step ? branch.only.next : branchTo(step, branch);
  return branch;
}

function branchTo(step: object, branch: Branch): Branch {
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
