/** The receiver is set to the zone beside the right one. */
import type { ProjectedSystem } from '../geodesy/system.ts';
import { toldGrid } from './grid-told.ts';
import type { Slip } from './slip.ts';

export const zone: Slip = {
  name: 'zone',
  code: 'position/keyed-differs',
  prior: 0.03,
  look: 'the grid and zone that the receiver is set to',
  ways: ({ right: { grid } }) => {
    if (!grid) return [];
    const { system, east, north } = grid;
    return [-1, 1].flatMap((by) => {
      const beside = neighbour(system, by);
      return beside
        ? toldGrid(beside, east, north, `the receiver was set to the zone to the ${by < 0 ? 'west' : 'east'}`)
        : [];
    });
  },
};

/** Zones of six degrees (UTM) by number; others are no zones of a series that is known here. */
function neighbour(system: ProjectedSystem, by: number): ProjectedSystem | null {
  const known = neighbours.get(system) ?? new Map<number, ProjectedSystem | null>();
  neighbours.set(system, known);
  const found = known.get(by);
  if (found !== undefined) return found;
  const number = Number(/^proj=utm zone=(\d+)/.exec(system.projection ?? '')?.[1] ?? NaN);
  const next = ((number + by + 59) % 60) + 1;
  const made: ProjectedSystem | null = Number.isNaN(number)
    ? null
    : {
        ...system,
        code: undefined,
        name: `${system.name}, zone ${next}`,
        area: undefined,
        projection: (system.projection ?? '').replace(`zone=${number}`, `zone=${next}`),
      };
  known.set(by, made);
  return made;
}
const neighbours = new WeakMap<ProjectedSystem, Map<number, ProjectedSystem | null>>();
