/** Short derived values for the ends of lines: reduced heights, what keyed values differ by, residuals. */
import { entryAt } from '../../grammar/document.ts';
import type { Place } from '../../grammar/tree.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import type { KeyedValues } from '../derive/setups/keyed.ts';
import type { MarkValues } from '../derive/marks/mark.ts';
import type { SetupValues } from '../derive/setups/setup.ts';
import type { Inspection } from '../inspect.ts';
import { showNumber } from '../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../quantities/value.ts';
import type { Bound, Keyed } from '../session/entries.ts';

export type InlayKind = 'heights' | 'residuals' | 'differences';

export interface Inlay {
  readonly kind: InlayKind;
  /** An offset in the session's own text: the end of what the line says. */
  readonly at: number;
  readonly label: string;
}

/** Nobody types it, so that what stands behind it is never taken for the writer's own. */
const ARROW = '→';

export function inlaysIn(inspection: Inspection, start: number, end: number): Inlay[] {
  const { session } = inspection;
  const { entries, starts } = session.document;
  const first = entryAt(starts, start);
  const last = entryAt(starts, end);
  return session.entries.slice(first, last + 1).flatMap((bound, index) => {
    const offset = starts[first + index] ?? 0;
    const found = inlaysOf(bound, inspection).map(({ kind, place, says }) => ({
      kind,
      at: offset + place.end,
      label: `${ARROW} ${says}`,
    }));
    return entries[first + index] === bound.entry ? found.filter(({ at }) => start <= at && at <= end) : [];
  });
}

interface Said {
  readonly kind: InlayKind;
  readonly place: Place;
  readonly says: string;
}

function inlaysOf(bound: Bound, { session, derivation }: Inspection): Said[] {
  if (bound.kind === 'mark' && session.marks.get(bound.name) === bound) {
    const values = derivation.marks.get(bound.name);
    return values ? ofMark(values) : [];
  }
  if (bound.kind === 'setup' && session.setups.get(bound.name) === bound) {
    const values = derivation.setups.get(bound.name);
    return values ? ofSetup(values) : [];
  }
  if (bound.kind !== 'check') return [];
  const values = derivation.checks.find(({ check }) => check === bound);
  return values ? ofCheck(values) : [];
}

/** The height on the other surface, behind the one that was typed. */
function ofMark({ mark, ellipsoidalHeight, orthometricHeight }: MarkValues): Said[] {
  const { height } = mark;
  if (!height?.surface) return [];
  const ellipsoidal = height.surface === 'ellipsoidal';
  const other = ellipsoidal ? orthometricHeight : ellipsoidalHeight;
  if (isHole(other)) return [];
  const says = `${metres(other)} ${ellipsoidal ? 'orthometric' : 'ellipsoidal'}`;
  return [{ kind: 'heights', place: lineOf(height.place), says }];
}

function ofSetup(values: SetupValues): Said[] {
  const { setup, height } = values;
  const reduced = height.readings.flatMap(({ measured, arp }): Said[] =>
    isHole(arp) ? [] : [{ kind: 'heights', place: measured.place, says: `ARP ${metres(arp)}` }],
  );
  const untaped: Said[] =
    height.readings.length === 0 && !isHole(height.arp)
      ? [{ kind: 'heights', place: setup.place, says: `ARP ${metres(height.arp)}` }]
      : [];
  return [...untaped, ...reduced, ...values.keyed.flatMap((keyed) => ofKeyed(keyed, values))];
}

function ofKeyed(keyed: KeyedValues, values: SetupValues): Said[] {
  return keyed.state.lines.flatMap((line): Said[] => {
    const differences = differencesOf(line, keyed, values);
    if (differences.length === 0) return [];
    const agrees = differences.every(({ value }) => Math.abs(value) < AGREES);
    const told = differences.map(({ axis, value }) => `${axis}${signed(value)}`);
    return [{ kind: 'differences', place: line.place, says: agrees ? 'as it should be' : told.join(', ') }];
  });
}

/** Less than is ever keyed: half a millimetre. */
const AGREES = 0.0005;

function differencesOf(line: Keyed, keyed: KeyedValues, { tell }: SetupValues) {
  const horizontal = line.position ? [axis('E ', keyed.east), axis('N ', keyed.north)] : [];
  const vertical = line.height ? [less('h ', keyed.height, tell.ellipsoidalHeight)] : [];
  const antenna = line.antennaHeight ? [less('', keyed.antennaHeight, keyed.wanted.standing.arp)] : [];
  return [...horizontal, ...vertical, ...antenna].filter((difference) => difference !== null);
}

const axis = (name: string, value: Maybe<Value>) =>
  isHole(value) ? null : { axis: name, value: value.value };

const less = (name: string, keyed: Maybe<Value>, wanted: Maybe<Value>) =>
  isHole(keyed) || isHole(wanted) ? null : { axis: name, value: keyed.value - wanted.value };

function ofCheck({ check, residual, verdict }: CheckValues): Said[] {
  if (!check.observed) return [];
  const axes = [axis('E ', residual.east), axis('N ', residual.north), axis('up ', residual.up)].filter(
    (found) => found !== null,
  );
  if (axes.length === 0) return [];
  const told = axes.map(({ axis: name, value }) => `${name}${signed(value)}`).join(', ');
  const judged = verdict === 'undecided' ? '' : `, ${verdict}`;
  return [{ kind: 'residuals', place: check.observed.place, says: told + judged }];
}

/** Whole millimetres: what a check earns. */
export function signed(length: number): string {
  const text =
    Math.abs(length) < 0.9995 ? `${showNumber(length * 1000, 0)} mm` : `${showNumber(length, 3)} m`;
  return length > 0 && !/^0 mm/.test(text) ? `+${text}` : text;
}

export const metres = (value: Value) => `${showNumber(value.value, 3)} m`;

/** The line that a place inside it belongs to. */
function lineOf(place: Place): Place {
  const line = place.entry.details.find(({ start, end }) => start <= place.start && place.end <= end);
  return line ? { ...place, start: line.start, end: line.end } : place;
}
