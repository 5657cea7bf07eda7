/** Functions that answer again what they answered before for the very same objects, so that an edit recomputes only what it touches. */

type Branch = { next: WeakMap<object, Branch>; answer?: { readonly value: unknown } };

/** Stands in where a function's argument may be absent: absence needs an identity, too. */
export const NOTHING: { readonly nothing: true } = Object.freeze({ nothing: true });
export type Nothing = typeof NOTHING;

/** The function with a memory keyed by the identity of its arguments; entries vanish with the objects. */
export function remembered<Args extends readonly object[], Answer>(
  answer: (...args: Args) => Answer,
): (...args: Args) => Answer {
  const root: Branch = { next: new WeakMap() };
  return (...args) => {
    const leaf = descend(root, args);
    leaf.answer ??= { value: answer(...args) };
    return leaf.answer.value as Answer;
  };
}

const roots: Branch = { next: new WeakMap() };

/** The one array of these objects in this order, so that a list can be an argument of a remembered function. */
export function interned<Thing extends object>(things: readonly Thing[]): readonly Thing[] {
  const leaf = descend(roots, things);
  leaf.answer ??= { value: things };
  return leaf.answer.value as readonly Thing[];
}

function descend(root: Branch, path: readonly object[]): Branch {
  let branch = root;
  for (const step of path) {
    let next = branch.next.get(step);
    if (!next) {
      next = { next: new WeakMap() };
      branch.next.set(step, next);
    }
    branch = next;
  }
  return branch;
}
