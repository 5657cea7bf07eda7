/** Points of which nobody says whether they are as broadcast or already corrected. */
import type { Place } from '../../../grammar/tree.ts';
import { saidOf, type PointSet } from '../../derive/points/points.ts';
import { repairOf } from '../../derive/repair/repair.ts';
import { dayFacts, trustOf } from '../../derive/trust/trust.ts';
import { kind, type Subject } from '../finding.ts';
import { addedDetail } from '../edits.ts';
import { unreadIn } from '../unread.ts';
import { short } from '../words.ts';

interface StateUnknown {
  readonly place: Place;
  readonly set: PointSet;
  /** Written and not known. */
  readonly typed: string | null;
  /** Something is wrong with what the base broadcast, so that it matters. */
  readonly matters: boolean;
}

const STATES = ['as-broadcast', 'corrected'];

export const pointsStateUnknown = kind({
  code: 'points/state-unknown',
  find: (subject) => unknown(subject),
  tell: ({ set, typed, matters, place }) => ({
    severity: matters ? 'warning' : 'information',
    follows: unreadIn(place, 'state'),
    headline:
      typed === null
        ? `No state noted for ${nameOf(set)}: as broadcast or corrected?`
        : `Unknown state ${short(typed)} of ${nameOf(set)}.`,
    effect: matters
      ? 'The error of the base is not taken off, since corrected points would become wrong again.'
      : 'They cannot be repaired.',
    action: 'Write `state as-broadcast` or `state corrected`.',
  }),
  mend: ({ set, typed }) =>
    typed === null
      ? [
          {
            title: 'Add a line for the state, still open',
            edits: [addedDetail(set.entry.place.path, set.entry.entry, 'state', '?')],
          },
        ]
      : [],
});

function unknown({ session, derivation }: Subject): StateUnknown[] {
  const silent = derivation.points.flatMap((set): Omit<StateUnknown, 'matters'>[] => {
    const state = saidOf(set).state;
    if (state && STATES.includes(state.name)) return [];
    if (state) return [{ set, place: state.place, typed: state.name }];
    return saidByRows(set) || isOpen(set) ? [] : [{ set, place: set.placeOf(1), typed: null }];
  });
  if (silent.length === 0) return [];
  const { remedies } = repairOf(dayFacts(session, derivation), trustOf(session, derivation), []);
  return silent.map(({ set, place, typed }) => ({
    set,
    place,
    typed,
    matters: remedies.some(
      ({ setup }) => set.entry.from === null || set.entry.from.name === setup.setup.name,
    ),
  }));
}

/** Every row says it itself. */
function saidByRows(set: PointSet): boolean {
  if (set.unaskedState) return false;
  const { states, rowCount } = set.scan();
  const said = [...states.values()].reduce((sum, count) => sum + count, 0);
  return rowCount > 0 && said === rowCount && [...states.keys()].every((state) => STATES.includes(state));
}

/** `state ?` has its own hint. */
const isOpen = ({ entry }: PointSet) =>
  entry.entry.details.some(({ word }) => word?.word.toLowerCase() === 'state');

const nameOf = (set: PointSet) =>
  set.kind === 'file' ? `the points of ${short(set.name)}` : set.kind === 'rows' ? 'these points' : set.name;
