/** Coordinates whose grid is not known: the job names none, or one that is not in the register. */
import { isHole, type Hole } from '../../quantities/value.ts';
import { frameIn, gridNamed, systemNamed } from '../../derive/positions/frame.ts';
import { kind, type Subject } from '../finding.ts';
import { foundInWritten } from './written.ts';
import { placeOfUse, usedAmong } from '../uses.ts';
import { valuesOf } from '../../session/each.ts';
import { unreadDetail, unreadEntry } from '../unread.ts';
import type { Place } from '../../../grammar/tree.ts';

export const positionGridUnknown = kind({
  code: 'position/grid-unknown',
  find: (subject) => [...unknownGrids(subject), ...unknownBeside(subject), ...usedWithoutGrid(subject)],
  tell: ({ because }, { session }) => ({
    severity: 'error',
    follows: [...unreadEntry('job'), ...(session.job ? [unreadDetail(session.job.title, 'grid')] : [])],
    // What is missing for the grid is one cause, whatever else its datum lacks.
    causes: ['grid'],
    headline: 'Grid of the coordinates not known.',
    effect: `${(because[0]?.toUpperCase() ?? '') + because.slice(1).replace(/[.]$/, '')}.`,
    action: REFUSED.test(because)
      ? 'Give the coordinates as angles, or in a grid that is computed.'
      : 'Name the grid by its code (grid EPSG:3763).',
  }),
});

/** The job's own first; without one, where coordinates first need it. */
function unknownGrids({ session, derivation }: Subject): { place: Place; because: string }[] {
  const { frame } = derivation;
  const { job } = session;
  // `grid ?` is a question that is told on its own.
  if (session.remarks.some((remark) => remark.about === 'open-value' && remark.word === 'grid')) return [];
  const named: Hole[] = [];
  const isGrid = !isHole(frame.geographic) && frame.geographic.kind === 'projected';
  if (job?.grid && isHole(frame.grid) && (isGrid || isHole(frame.geographic))) named.push(frame.grid);
  if (job?.datum && isHole(frame.keyed) && frame.keyed.place === job.datum.place) named.push(frame.keyed);
  if (named.length > 0)
    return named.map(({ hole, place }) => ({
      place: place ?? session.job?.place ?? NOWHERE(session),
      because: hole,
    }));
  if (!isHole(frame.grid)) return [];
  const first = [...session.marks.values()].find(
    (mark) =>
      mark.position &&
      !mark.position.system &&
      mark.place.path === session.document.path &&
      isHole(derivation.marks.get(mark.name)?.located) &&
      ((mark.position.form === 'grid' && isHole(frame.grid)) || isHole(frame.geographic)),
  );
  if (!first?.position) return [];
  return [{ place: first.position.place, because: frame.grid.hole }];
}

const REFUSED = /is refused|is not computed here/;

/** Systems that a position names for itself. */
const unknownBeside = foundInWritten(({ position, systems }): { place: Place; because: string }[] => {
  const named = position.system;
  if (!named) return [];
  const found = position.form === 'grid' ? gridNamed(named, systems) : systemNamed(named, systems);
  return isHole(found) ? [{ place: named.place, because: found.hole }] : [];
});

/** Marks of another file that has no grid: told where the session first names each, since nobody has that file open. */
function usedWithoutGrid(subject: Subject): { place: Place; because: string }[] {
  const { session, derivation } = subject;
  const elsewhere = valuesOf(derivation.marks).filter(
    ({ mark: { place, position }, located }) =>
      place.path !== session.document.path && position !== null && !position.system && isHole(located),
  );
  return usedAmong(elsewhere, subject).flatMap((used) => {
    const { mark } = used.values;
    const { grid, geographic } = frameIn(session, mark.place.path);
    const missing = mark.position?.form === 'grid' ? grid : geographic;
    if (!isHole(missing)) return [];
    const because = `${mark.name} of ${mark.place.path} has no grid: ${missing.hole}`;
    return [{ place: placeOfUse(used, subject, mark.place), because }];
  });
}

const NOWHERE = ({ document }: Subject['session']): Place => ({
  path: document.path,
  entry: document.entries[0] ?? {
    text: '',
    header: { start: 0, end: 0, word: null, items: [], comment: null, indented: false },
    details: [],
    slips: [],
  },
  start: 0,
  end: 0,
});
