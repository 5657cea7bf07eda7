/** What is fuzzed: where inputs come from, and a law that holds for every one of them. */
import fc from 'fast-check';

export interface Target {
  readonly name: string;
  /** Cases in one round; one round is what `npm test` runs. */
  readonly cases: number;
  readonly round: (seed: number, cases: number, watch: Watch) => Promise<Broken | null>;
}

/** Hears of each case before it is tried, so that one that never ends can be named. */
export type Watch = (about: { target: string; seed: number; number: number; input: unknown }) => void;

/** A law that was broken, with the smallest input that was found to break it. */
export interface Broken {
  readonly target: string;
  readonly seed: number;
  readonly input: string;
  readonly because: string;
}

/** @param law throws where it is broken */
export function target<Input>(
  name: string,
  cases: number,
  inputs: fc.Arbitrary<Input>,
  law: (input: Input) => void | Promise<void>,
): Target {
  return {
    name,
    cases,
    round: async (seed, count, watch) => {
      let number = 0;
      const property = fc.asyncProperty(inputs, async (input) => {
        watch({ target: name, seed, number: number++, input });
        await law(input);
        unpolluted();
      });
      const result = await fc.check(property, {
        seed,
        numRuns: count,
        interruptAfterTimeLimit: LONGEST_ROUND,
        markInterruptAsFailure: false,
      });
      if (!result.failed) return null;
      const error: unknown = result.errorInstance;
      const because = error instanceof Error ? (error.stack ?? error.message) : String(error);
      return { target: name, seed, input: fc.stringify(result.counterexample?.[0]), because };
    },
  };
}

/** Milliseconds; looking for a smaller input ends here, too. */
const LONGEST_ROUND = 240_000;

/** What every object inherits is what it was, whatever names an input has. */
function unpolluted(): void {
  for (const [what, before] of INHERITED)
    if (Object.getOwnPropertyNames(what).join() !== before)
      throw new Error(`an input has written into what all objects inherit: ${Object.keys(what).join()}`);
}
const INHERITED = [
  Object.prototype,
  Array.prototype,
  Function.prototype,
  Map.prototype,
  String.prototype,
].map((what) => [what, Object.getOwnPropertyNames(what).join()] as const);

/** The sentence says which law. */
export function law(holds: boolean, sentence: string): void {
  if (!holds) throw new Error(sentence);
}

/** Both say the same, down to the last digit; numbers that are none are equal to themselves. */
export function same(one: unknown, other: unknown, sentence: string): void {
  const [first, second] = [shown(one), shown(other)];
  if (first !== second) throw new Error(`${sentence}\n${difference(first, second)}`);
}

const shown = (thing: unknown) =>
  JSON.stringify(thing, (_, value: unknown) => {
    if (value instanceof Map) return ['Map', ...value];
    if (value instanceof Set) return ['Set', ...value];
    if (typeof value === 'number' && !Number.isFinite(value)) return String(value);
    if (Object.is(value, -0)) return '-0';
    return value;
  }) ?? 'undefined';

function difference(one: string, other: string): string {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  const around = (text: string) => text.slice(Math.max(0, at - 80), at + 160);
  return `  ${around(one)}\n  ${around(other)}`;
}
