/** The verdict of a session in a sentence: what its checks prove, and what to do next. */
import type { CheckValues } from '../derive/check.ts';
import { clockTime } from '../findings/words.ts';
import type { Inspection } from '../inspect.ts';
import { whereIs } from '../session/where.ts';

export interface Verdict {
  readonly sentence: string;
  readonly next: string;
  /** A check on a known mark passed, and none that still counts failed. */
  readonly checked: boolean;
}

export function verdictOf(inspection: Inspection): Verdict {
  const { checks, setups } = inspection.derivation;
  const passing = checks.filter(({ verdict }) => verdict === 'passes');
  const failing = checks.filter((check) => check.verdict === 'fails' && !putRight(check, passing));
  const bases = [...setups.values()];
  return {
    sentence: sentenceOf(bases.length, passing, failing, inspection),
    next: nextOf(
      bases.some(({ setup }) => setup.until === null),
      passing,
      failing,
      inspection,
    ),
    checked: passing.length > 0 && failing.length === 0,
  };
}

/** The base was told something else after the check, and a check after that passed. */
const putRight = (check: CheckValues, passing: readonly CheckValues[]) =>
  passing.some(
    (later) =>
      later.setup === check.setup &&
      later.keyed !== check.keyed &&
      (later.instant ?? -Infinity) > (check.instant ?? Infinity),
  );

function sentenceOf(
  bases: number,
  passing: readonly CheckValues[],
  failing: readonly CheckValues[],
  inspection: Inspection,
): string {
  if (bases === 0) return 'No base is set up in this session, so there is nothing to prove.';
  const named = (checks: readonly CheckValues[]) =>
    listed(checks.map(({ check, instant }) => withTime(check.name, clockTime(instant, inspection))));
  if (failing.length > 0)
    return `The day is in doubt: ${named(failing)} ${failing.length === 1 ? 'fails' : 'fail'}.`;
  if (passing.length === 0) return 'Nothing proves the day: no check on a second known mark has passed.';
  const marks = listed([...new Set(passing.map(({ check }) => check.on?.name ?? '?'))]);
  return `${named(passing)} ${passing.length === 1 ? 'agrees' : 'agree'} with ${marks}.`;
}

function nextOf(
  open: boolean,
  passing: readonly CheckValues[],
  failing: readonly CheckValues[],
  { findings, session, derivation }: Inspection,
): string {
  const error = findings.find(({ severity }) => severity === 'error');
  if (error) {
    const { path, line } = whereIs(session, error.place);
    const where = path === session.document.path ? `line ${line}` : `line ${line} of ${path}`;
    return `Put right ${error.code} in ${where} first; check again after that.`;
  }
  if (failing.length > 0) return 'Measure nothing more from this base before it is known why.';
  if (derivation.setups.size === 0) return '';
  if (passing.length === 0)
    return open ? 'Occupy a second known mark and compare, before the work begins.' : '';
  return open ? 'Check a known mark again before the base is taken down.' : '';
}

const withTime = (name: string, time: string | null) => (time === null ? name : `${name} (${time})`);

const listed = (words: readonly string[]) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1] ?? ''}`;
