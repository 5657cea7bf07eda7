/** A round of fuzzing with fixed seeds; `npm run fuzz` goes on for as long as it is told to. */
import { describe, expect, it } from 'vitest';
import { TARGETS } from './targets.ts';

const SEED = 20_260_519;

describe(`one round from seed ${SEED}`, () => {
  it.each(TARGETS.map((target) => [target.name, target] as const))('%s', async (_, target) => {
    const broken = await target.round(SEED, target.cases, () => undefined);
    expect(broken).toBeNull();
  });
});
