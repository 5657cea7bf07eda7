/** The checks of a day judged together: how many tests it makes, what chance does among so many, and what agreeing checks say jointly. */
import { computeLinear, covariance } from '../../quantities/computed.ts';
import { ellipseOf } from '../../quantities/statistics.ts';
import { isHole, type Value } from '../../quantities/value.ts';
import type { Frame } from '../positions/frame.ts';
import { interned, remembered, tokenOf, type Token } from '../remembered.ts';
import type { CheckValues } from './check.ts';
import { chanceLimit, judgedOn, sizesOf, verdictOf, type Component, type Judgement } from './verdict.ts';

/** A check and an earlier one on the same mark, by the same rover, with the same values in the base. */
export type Pair = readonly [earlier: CheckValues, later: CheckValues];

/** Whether a check may prove or condemn anything: not on the base's own mark, and not too weak. */
export const decides = ({ weak, mark, setup }: CheckValues): boolean =>
  !weak && (mark === null || mark !== setup?.mark);

/** Each check with the first and with the last one before it; a mark without coordinates will do. */
export function comparedPairs(checks: readonly CheckValues[]): Pair[] {
  const before = new Map<string, CheckValues[]>();
  const pairs: Pair[] = [];
  const usable = checks
    .filter((check) => check.mark && check.setup && decides(check))
    .toSorted((one, other) => (one.instant ?? 0) - (other.instant ?? 0));
  for (const check of usable) {
    const { mark, keyed, setup } = check;
    const key = [setup?.setup.name, mark?.mark.name, check.check.by?.name, keyed?.state.number].join(' \n');
    const earlier = before.get(key) ?? [];
    for (const one of new Set([earlier[0], earlier.at(-1)])) if (one) pairs.push([one, check]);
    before.set(key, [...earlier.slice(0, 1), check]);
  }
  return pairs;
}

/** How many tests a day makes: each component of each check, of each comparison of two, and of each mean. */
export function testsOf(checks: readonly CheckValues[]): number {
  const bySetup = new Map<unknown, CheckValues[]>();
  for (const check of checks) {
    const own = bySetup.get(check.setup);
    if (own) own.push(check);
    else bySetup.set(check.setup, [check]);
  }
  let tests = 0;
  for (const own of bySetup.values()) tests += testsAt(interned(own));
  return Math.max(1, tests);
}

const testsAt = remembered((checks: readonly CheckValues[]): number => {
  const deciding = checks.filter(decides);
  const components = deciding.reduce((sum, { residual }) => {
    const { horizontal, up } = sizesOf(residual);
    return sum + (horizontal === null ? 0 : 1) + (up === null ? 0 : 1);
  }, 0);
  const means = groupsOf(deciding).filter((group) => group.length > 1).length;
  return components + 2 * comparedPairs(checks).length + 2 * means;
});

/** The probability for each of so many tests that leaves the whole day at the job's confidence (Šidák). */
export const eachOf = (tests: number, { confidence }: Frame): number => confidence.value ** (1 / tests);

/** How often a day without mistakes has a test as far out as this one, in one of its tests; null where nobody can say. */
export function chanceOfDay(check: CheckValues, component: Component, tests: number): number | null {
  const test = check.tests[component];
  return isHole(test) ? null : 1 - (1 - test.probability.value) ** tests;
}

/** The same checks, with the verdicts that they have among all tests of the day. */
export const judgedTogether = remembered((checks: readonly CheckValues[], frame: Frame) => {
  if (!checks.some(({ verdict }) => verdict === 'fails' || verdict === 'marginal')) return checks;
  const each = eachOf(testsOf(checks), frame);
  const jointly = groupsOf(checks.filter(decides)).flatMap((group) => failingJointly(group, each));
  return checks.map((check) => {
    if (check.verdict !== 'fails' && check.verdict !== 'marginal') return check;
    const among = judgedOn(sizesOf(check.residual), check, each);
    const own: Judgement = {
      horizontal: check.judged.horizontal && among.horizontal,
      up: check.judged.up && among.up,
    };
    const judged = jointly.reduce<Judgement>(
      (sofar, joint) =>
        joint.check === check && sofar[joint.component] === 'marginal'
          ? { ...sofar, [joint.component]: 'fails' }
          : sofar,
      own,
    );
    return withJudgement(check, tokenOf(judged.horizontal), tokenOf(judged.up));
  });
});

/** The same object for the same check and judgement. */
const withJudgement = remembered(
  (
    check: CheckValues,
    { worth: horizontal }: Token<Judgement['horizontal']>,
    { worth: up }: Token<Judgement['up']>,
  ): CheckValues => {
    const judged = { horizontal, up };
    if (check.judged.horizontal === horizontal && check.judged.up === up) return check;
    return { ...check, judged, verdict: verdictOf(judged, check.absent) };
  },
);

/** Checks that what was keyed shifts alike. */
function groupsOf(checks: readonly CheckValues[]): CheckValues[][] {
  const groups = new Map<unknown, CheckValues[]>();
  for (const check of checks) {
    const key = check.keyed ?? check.setup;
    if (key === null) continue;
    const group = groups.get(key);
    if (group) group.push(check);
    else groups.set(key, [check]);
  }
  return [...groups.values()];
}

interface Joint {
  readonly check: CheckValues;
  readonly component: Component;
}

/** Where the mean of a group's residuals is beyond chance, those beyond the tolerance confirm one another. */
function failingJointly(group: readonly CheckValues[], each: number): Joint[] {
  return (['horizontal', 'up'] as const).flatMap((component): Joint[] => {
    const judged = group.filter((check) => check.judged[component] !== null);
    const beyond = judged.filter((check) => check.judged[component] !== 'passes');
    if (judged.length < 2 || beyond.length < 2 || !isMeanBeyond(judged, component, each)) return [];
    return beyond.map((check) => ({ check, component }));
  });
}

/** What checks share (the base, a mark, the tape) stays in their mean in full. */
function isMeanBeyond(checks: readonly CheckValues[], component: Component, each: number): boolean {
  const mean = (axis: 'east' | 'north' | 'up'): Value | null => {
    const values = checks.map(({ residual }) => residual[axis]);
    const known = values.filter((value): value is Value => !isHole(value) && value.sigma !== null);
    if (known.length < values.length) return null;
    const terms = known.map((value, index) => ({
      symbol: `r${index + 1}`,
      value,
      coefficient: 1 / known.length,
    }));
    return computeLinear(`mean residual, ${axis}`, 'm', MEAN, terms);
  };
  if (component === 'up') {
    const up = mean('up');
    const limit = up && chanceLimit('up', { spread: { horizontal: null, up: up.sigma } }, each);
    return up !== null && limit !== null && Math.abs(up.value) > limit;
  }
  const [east, north] = [mean('east'), mean('north')];
  if (!east || !north) return false;
  const spread = ellipseOf(east.sigma ?? NaN, north.sigma ?? NaN, covariance(east, north) ?? NaN);
  const limit = chanceLimit('horizontal', { spread: { horizontal: spread, up: null } }, each);
  return limit !== null && Math.hypot(east.value, north.value) > limit;
}

const MEAN = {
  symbol: 'm',
  expression: 'mean of the residuals',
  evaluable: false,
  source: 'law of propagation of uncertainty (JCGM 100:2008, 5.2.2), with what the checks share',
};
