/** A check that is farther off than the job tolerates, with what would explain it. */
import { foundInEach } from '../../session/each.ts';
import { showLength } from '../../quantities/show.ts';
import type { Maybe, Value } from '../../quantities/value.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import { limitOf } from '../../derive/checks/verdict.ts';
import { keyedLimit } from '../../derive/setups/keyed-transformation.ts';
import { numberOf } from '../../slips/situation.ts';
import { kind, type Subject } from '../finding.ts';
import { antennaTypeEffects } from '../antenna/type.ts';
import type { Place } from '../../../grammar/tree.ts';
import { residualPlace, saidResidual } from './residuals.ts';
import { apart } from '../height/separation.ts';
import { settledSetups } from '../height/settled.ts';
import { isSwapped, swappedKey } from '../position/swapped-observed.ts';
import { diagnosisOf, type Diagnosis } from '../../slips/diagnosis.ts';
import { toldDiagnosis } from './diagnosis-told.ts';

export const checkFails = kind({
  code: 'check/fails',
  find: (subject) => failures(subject),
  tell: ({ check, beyond, reasons, diagnosis, leads }, subject) => {
    const { name } = check.check;
    const own = check.mark ? ` on ${check.mark.mark.name}` : '';
    return {
      severity: 'error',
      headline: `${name} fails: ${beyond.map(({ said, limit, from }, index) => `${said}${index === 0 ? own : ''} (limit ${showLength(limit)}${LIMITS[from]})`).join(', ')}.`,
      effect: byTransformation(check, reasons, subject),
      untilExplained: check.weak
        ? 'It is too weak to condemn the day, but it shows a blunder.'
        : 'Find the cause: every point since the last check that passed is in doubt.',
      causes: [`check/${name}`, ...(diagnosis && leads ? [diagnosisKey(diagnosis)] : [])],
      // Where none of the known slips explains the checks they may have several causes, and each is told on its own.
      follows: [
        ...reasons,
        ...marksOf(check),
        ...(diagnosis?.answer === 'slips' && !leads ? [diagnosisKey(diagnosis)] : []),
      ],
      rests: diagnosis && leads ? toldDiagnosis(diagnosis, subject) : [],
      ...putRight(check, subject),
    };
  },
});

/** Where a limit comes from, unless the job sets it. */
const LIMITS = {
  job: '',
  expected: ', far beyond what chance does',
  assumed: ', assumed: nobody states how good the marks are',
  weak: ', for so weak a check',
} as const;

interface Failure {
  readonly check: CheckValues;
  readonly place: Place;
  readonly beyond: readonly Beyond[];
  /** Keys of what the notes themselves have to explain it; none where it stays unexplained. */
  readonly reasons: readonly string[];
  /** What was made of the unexplained checks of this base. */
  readonly diagnosis: Diagnosis | null;
  /** One cause is one story: it is told at the first check that nothing else explains, and the others hang under it. */
  readonly leads: boolean;
}

function failures(subject: Subject): Failure[] {
  const { session, derivation } = subject;
  const led = new Set<Diagnosis>();
  return failing(derivation.checks).map(({ check, beyond }): Failure => {
    const reasons = reasonsFor(check, beyond, subject);
    const found =
      reasons.length > 0 || !check.setup ? null : diagnosisOf(check.setup, check.keyed, session, derivation);
    const diagnosis = found?.answer === 'nothing' ? null : found;
    const leads = diagnosis !== null && !led.has(diagnosis);
    if (diagnosis) led.add(diagnosis);
    return { check, place: residualPlace(check), beyond, reasons, diagnosis, leads };
  });
}

const failing = foundInEach((check: CheckValues) => {
  const beyond = check.verdict === 'fails' ? beyondLimits(check) : [];
  return beyond.length > 0 ? [{ check, beyond }] : [];
});

const diagnosisKey = ({ setup, keyed }: Diagnosis) =>
  `diagnosis/${setup.setup.name}/${keyed?.state.number ?? 0}`;

interface Beyond {
  readonly component: 'horizontal' | 'up';
  readonly said: string;
  readonly limit: number;
  readonly from: keyof typeof LIMITS;
}

/** The components that fail. */
function beyondLimits(check: CheckValues): Beyond[] {
  const judge = (component: 'horizontal' | 'up'): Beyond[] => {
    const residual = numberOf(check.residual[component]);
    if (residual === null || check.judged[component] !== 'fails') return [];
    const { size: limit, from } = limitOf(component, check);
    return [{ component, said: saidResidual(component, residual), limit, from }];
  };
  return [...judge('horizontal'), ...judge('up')];
}

/** A tiny share of a large keyed error is lost on the way: receivers bend vectors, and horizons differ. */
const LOST = 0.02;

/** Keys of what explains every failing component; none where one of them stays unexplained. */
function reasonsFor(check: CheckValues, beyond: readonly Beyond[], subject: Subject): string[] {
  const { setup, keyed } = check;
  if (!setup) return [];
  const { east, north, up } = check.explained;
  const told = keyed ? `keyed/${setup.setup.name}/${keyed.state.number}` : null;
  const keys: string[] = [];
  for (const { component, limit } of beyond) {
    const left = (parts: readonly Maybe<Value>[], residuals: readonly Maybe<Value>[]) => {
      const explained = parts.map(numberOf);
      const size = Math.hypot(...explained.map((part) => part ?? 0));
      const rest = residuals.map((residual, index) => (numberOf(residual) ?? 0) - (explained[index] ?? 0));
      return size > 0 && !explained.includes(null) && Math.hypot(...rest) <= Math.max(limit, LOST * size);
    };
    const byKeyed =
      component === 'up'
        ? left([up], [check.residual.up])
        : left([east, north], [check.residual.east, check.residual.north]);
    const found: string[] = [];
    if (component === 'horizontal' && isSwapped(check)) found.push(swappedKey(check));
    if (byKeyed && told) found.push(`${told}/${component}`);
    if (component === 'up') {
      const residual = (numberOf(check.residual.up) ?? 0) - (numberOf(up) ?? 0);
      const within = (effect: number) => Math.abs(residual - effect) <= limit && Math.abs(effect) > 0;
      for (const { key, up: effect } of antennaTypeEffects(setup, subject))
        if (keyed && key.endsWith(`/${keyed.state.number}`) && within(effect)) found.push(key);
      const height = check.check.observed?.height;
      for (const { mark: base, difference } of apart(subject))
        if (base === setup.mark && height?.surface === 'orthometric' && within(difference))
          found.push(`mark/${base.mark.name}/separation`);
      if (settledSetups(subject).some((one) => one.setup === setup && within(-one.by)))
        found.push(`moved/${setup.setup.name}`);
    }
    if (found.length === 0) return [];
    for (const key of found) keys.push(key);
  }
  return keys;
}

/** What was keyed explains the check, and lies where the transformation alone may put it. */
function byTransformation(
  { keyed, setup }: CheckValues,
  reasons: readonly string[],
  { derivation }: Subject,
): string {
  if (!keyed || !setup || !reasons.includes(`keyed/${setup.setup.name}/${keyed.state.number}/horizontal`))
    return '';
  const { horizontal } = keyedLimit(keyed, setup, derivation.frame.confidence.value);
  const off = Math.hypot(numberOf(keyed.east) ?? 0, numberOf(keyed.north) ?? 0);
  return off <= horizontal
    ? 'The keyed position is off alike, within what the transformation is good to: base and rover use different transformations. Set both to the same one.'
    : '';
}

/** What is wrong with a mark itself comes before what is wrong with a check on it. */
const marksOf = ({ setup, mark }: CheckValues): string[] =>
  [setup?.mark, mark].flatMap((known) =>
    known ? [`mark/${known.mark.name}/position`, `mark/${known.mark.name}/height`] : [],
  );

/** Something else was keyed since, and a later check agrees: what failed is a fact of that time. */
function putRight(check: CheckValues, { derivation }: Subject) {
  const { setup, keyed, instant } = check;
  if (!setup || !keyed || instant === null) return {};
  const rekeyed = setup.keyed.some(({ state }) => state.number > keyed.state.number);
  const passing = derivation.checks.some(
    (later) =>
      later.setup === setup &&
      later.verdict === 'passes' &&
      (later.instant ?? -Infinity) > instant &&
      (later.keyed?.state.number ?? 0) > keyed.state.number,
  );
  return rekeyed && passing
    ? { past: { from: keyed.state.from ?? setup.from, until: keyed.state.until } }
    : {};
}
