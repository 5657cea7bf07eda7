/** A mark whose coordinates lie outside the area that the grid is for; where all do, the grid is the wrong one. */
import { showLength } from '../../quantities/show.ts';
import { kind, type Subject, type Told } from '../finding.ts';
import { marksOutOfArea, type Outside } from './marks-out-of-area.ts';
import { outOfReach, tellOutOfReach, type OutOfReach } from './reach.ts';
import {
  outsideTransformation,
  tellOutsideTransformation,
  type OutsideTransformation,
} from './transformation-area.ts';
import type { Place } from '../../../grammar/tree.ts';

type Evidence =
  | { readonly place: Place; readonly outside: readonly Outside[] }
  | { readonly place: Place; readonly beyond: OutOfReach }
  | { readonly place: Place; readonly transformation: OutsideTransformation };

export const positionOutOfArea = kind<Evidence>({
  code: 'position/out-of-area',
  find: (subject) => [
    ...marksOutside(subject),
    ...othersOutside(subject),
    ...outsideTransformation(subject).map((one) => ({ place: one.place, transformation: one })),
  ],
  tell: (evidence) =>
    'beyond' in evidence
      ? tellOutOfReach(evidence.beyond)
      : 'transformation' in evidence
        ? tellOutsideTransformation(evidence.transformation)
        : tellMarks(evidence.outside),
});

const othersOutside = (subject: Subject): Evidence[] =>
  outOfReach(subject)
    .filter(({ other }) => other?.what !== 'swapped')
    .map((beyond) => ({ place: beyond.written.position.place, beyond }));

function marksOutside(subject: Subject): Evidence[] {
  const outside = marksOutOfArea(subject).filter(({ swappedInside }) => !swappedInside);
  const grid = subject.session.job?.grid;
  // One wrong grid is one cause, however many marks it puts elsewhere.
  if (grid && outside.length > 1 && outside.length === placedMarks(subject))
    return [{ place: grid.place, outside }];
  return outside.map((one) => ({ place: one.position.place, outside: [one] }));
}

function tellMarks(outside: readonly Outside[]): Told {
  const [first] = outside;
  const system = first?.system;
  const code = system?.code ?? system?.name ?? 'the grid';
  const names = outside.map(({ mark }) => mark.name);
  const far = first?.distance ?? null;
  const who = names.length > 1 ? 'All marks are' : `${names[0] ?? ''} is`;
  return {
    severity: 'error',
    headline: `${who} outside the area of ${code}${far === null ? '' : `, ${names[0] ?? ''} by ${showLength(far)}`}.`,
    effect: `It is for ${short(system?.area?.name ?? '')}.${far === null ? ' Its projection takes no such coordinates.' : ''}`,
    action: `Look at the coordinates and the grid (${system?.name ?? code}).`,
    causes: [
      ...(names.length > 1 ? ['grid'] : []),
      ...names.flatMap((name) => [`mark/${name}/position`, `mark/${name}/height`]),
    ],
  };
}

/** The first sentence of the register's, ended at a word where it is long. */
function short(area: string): string {
  const said = (area.split(/\.\s/)[0] ?? '').replace(/[.]$/, '');
  return said.length <= 60 ? said : `${said.slice(0, said.lastIndexOf(' ', 60)).replace(/[\s,;-]+$/, '')} …`;
}

const placedMarks = ({ session }: Subject) =>
  [...session.marks.values()].filter(({ position }) => position).length;
