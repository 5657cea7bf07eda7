/** What a receiver was told from when on: the keyed states of a setup, each from one change to the next. */
import { isHole } from '../../quantities/value.ts';
import type { Job, Keyed, Setup } from '../../session/entries.ts';
import { instantOf, instantWithin } from '../../session/session.ts';

/** Everything the receiver was told, from `from` until the next change. */
export interface KeyedState {
  /** Counted from 1 in order of time. */
  readonly number: number;
  /** Seconds since 1970-01-01 UTC; null where the notes do not say. */
  readonly from: number | null;
  readonly until: number | null;
  readonly position: Keyed['position'];
  readonly height: Keyed['height'];
  readonly antennaHeight: Keyed['antennaHeight'];
  readonly antennaType: Keyed['antennaType'];
  /** The lines that this state differs by from the one before. */
  readonly lines: readonly Keyed[];
}

/** Lines without a time were keyed when the setup began. */
export function keyedStates(setup: Setup, job: Job | null): KeyedState[] {
  const start = instantOf(setup.at, job);
  const end = instantOf(setup.until, job);
  const timed = setup.keyed.map((line) => ({
    line,
    at: line.at && !isHole(line.at) ? instantWithin(line.at, job, [{ from: start, until: end }]) : start,
  }));
  timed.sort((one, other) => (one.at ?? -Infinity) - (other.at ?? -Infinity));
  const states: KeyedState[] = [];
  let open: { at: number | null; lines: Keyed[] } | null = null;
  const close = () => {
    if (open)
      states.push(nextState(states[states.length - 1] ?? null, open.lines, open.at, states.length + 1));
  };
  for (const { line, at } of timed) {
    if (open && (open.at === at || (at !== null && start !== null && at <= start))) open.lines.push(line);
    else {
      close();
      open = { at, lines: [line] };
    }
  }
  close();
  return states.map((state, index) => ({ ...state, until: states[index + 1]?.from ?? end }));
}

/** What was keyed around the time of a new levelling was keyed for it, seconds. */
const AROUND = 1800;

/** A tripod that is levelled anew begins another state even where nothing is keyed: the receiver goes on with the old values. */
export function continuedStates(states: readonly KeyedState[], relevelled: readonly number[]): KeyedState[] {
  const untold = relevelled.filter(
    (at) => !states.some(({ from }) => from !== null && at <= from && from <= at + AROUND),
  );
  if (untold.length === 0) return [...states];
  const split = states.flatMap((state) => {
    const inside = untold.filter(
      (at) => (state.from === null || state.from < at) && (state.until === null || at < state.until),
    );
    const cuts = [state.from, ...inside];
    return cuts.map((from, index): KeyedState => ({
      ...state,
      from,
      until: cuts[index + 1] ?? state.until,
      lines: index === 0 ? state.lines : [],
    }));
  });
  return split.map((state, index) => ({ ...state, number: index + 1 }));
}

function nextState(
  before: KeyedState | null,
  lines: readonly Keyed[],
  from: number | null,
  number: number,
): KeyedState {
  const pick = <Field>(of: (line: Keyed) => Field | null, earlier: Field | null): Field | null =>
    lines.reduce<Field | null>((found, line) => of(line) ?? found, earlier);
  return {
    number,
    from,
    until: null,
    position: pick((line) => line.position, before?.position ?? null),
    height: pick((line) => line.height, before?.height ?? null),
    antennaHeight: pick((line) => line.antennaHeight, before?.antennaHeight ?? null),
    antennaType: pick((line) => line.antennaType, before?.antennaType ?? null),
    lines,
  };
}

/** The state in force at a time; the only one there is where the time is not known. */
export function stateAt<State extends { readonly state: Pick<KeyedState, 'from'> }>(
  states: readonly State[],
  instant: number | null,
): State | null {
  if (instant === null) return states.length === 1 ? (states[0] ?? null) : null;
  let found: State | null = null;
  for (const state of states) if (state.state.from === null || state.state.from <= instant) found = state;
  // What was keyed when the setup began holds for what is noted a minute too early, too.
  return found ?? states[0] ?? null;
}
