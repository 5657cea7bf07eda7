/** Written positions that their projection does not reach, or that lie far outside its area where nothing else compares them. */
import { distanceOutside } from '../../geodesy/area.ts';
import { inverse } from '../../geodesy/projection.ts';
import type { ProjectedSystem } from '../../geodesy/system.ts';
import { gridEast, gridNorth } from '../../quantities/brands.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import { isHole } from '../../quantities/value.ts';
import { gridNamed } from '../../derive/positions/frame.ts';
import { locate, type OwnSystems } from '../../derive/positions/locate.ts';
import type { Derivation } from '../../derive/derivation.ts';
import { metresBetween } from '../../slips/keyed-differences.ts';
import { numberOf } from '../../slips/situation.ts';
import type { Position } from '../../session/coordinates.ts';
import type { Subject, Told } from '../finding.ts';
import { showLength } from '../../quantities/show.ts';
import { foundInWritten, type Written } from './written.ts';
import { BESIDE } from './marks-out-of-area.ts';

export interface OutOfReach {
  readonly written: Written;
  /** Null for geocentric coordinates, which are not near the earth. */
  readonly system: ProjectedSystem | null;
  /** Metres from the area; null where the projection takes no such coordinates. */
  readonly distance: number | null;
  /** With which other reading it lies near a mark, as a clause; null where none is known. */
  readonly other: OtherReading | null;
}

export interface OtherReading {
  readonly what: 'swapped' | 'thousandfold' | 'zone' | 'digit';
  readonly clause: string;
}

export function outOfReach(subject: Subject): OutOfReach[] {
  return beyond(subject)
    .filter(({ written, distance }) => distance === null || !isCompared(written, subject.derivation))
    .map((one) => ({
      ...one,
      other: otherReading(one.written.position, one.system, subject.derivation),
    }));
}

const beyond = foundInWritten((written): Omit<OutOfReach, 'other'>[] => {
  const { position, systems, role } = written;
  const system = gridOf(position, systems);
  // Marks in a grid that has an area are looked at where their area is.
  if (role === 'mark' && position.form !== 'geocentric' && system?.area) return [];
  const distance = distanceOf(position, system, systems);
  return distance === null || distance > BESIDE ? [{ written, system, distance }] : [];
});

const gridOf = (position: Position, systems: OwnSystems): ProjectedSystem | null => {
  if (position.form !== 'grid') return null;
  const system = position.system ? gridNamed(position.system, systems) : systems.grid;
  return isHole(system) ? null : system;
};

/** Null where it is no place at all; 0 where nothing is wrong or nothing can be said. */
function distanceOf(position: Position, system: ProjectedSystem | null, systems: OwnSystems): number | null {
  if (position.form === 'geographic') return 0;
  if (position.form === 'geocentric') {
    const found = locate(position, systems, 'the position', null);
    return isHole(found) && found.place === position.place ? null : 0;
  }
  const [east, north] = [numberOf(position.east), numberOf(position.north)];
  return system && east !== null && north !== null ? gridDistance(system, east, north) : 0;
}

function gridDistance(system: ProjectedSystem, east: number, north: number): number | null {
  const found = inverse(system, { east: gridEast(east), north: gridNorth(north) });
  if (isRefusal(found)) return null;
  return system.area ? distanceOutside(system.area, found) : 0;
}

/** A keyed or an observed position that can be compared is told by how far it is off. */
function isCompared({ role, name, position }: Written, { setups, checks }: Derivation): boolean {
  if (role === 'autonomous') return true;
  if (role === 'observed')
    return checks.some(({ check, residual }) => check.name === name && !isHole(residual.horizontal));
  if (role !== 'keyed') return false;
  const keyed = setups.get(name)?.keyed ?? [];
  return keyed.some(({ state, east }) => state.position === position && !isHole(east));
}

/** What people write instead, the commonest first (common practice). */
function* readings(east: number, north: number): Generator<OtherReading & { east: number; north: number }> {
  yield { what: 'swapped', clause: 'With east and north exchanged', east: north, north: east };
  yield {
    what: 'thousandfold',
    clause: 'Read as millimetres',
    east: east / 1000,
    north: north / 1000,
  };
  if (Math.abs(east) >= ZONE)
    yield { what: 'zone', clause: 'Without the zone number in front of its east', east: east % ZONE, north };
  for (const other of withoutOneDigit(north))
    yield { what: 'digit', clause: 'Without one digit of its north', east, north: other };
  for (const other of withoutOneDigit(east))
    yield { what: 'digit', clause: 'Without one digit of its east', east: other, north };
}
/** An east of a transverse Mercator zone has six digits before its point. */
const ZONE = 1e6;

function withoutOneDigit(value: number): number[] {
  const whole = String(Math.trunc(Math.abs(value)));
  const rest = Math.abs(value) % 1;
  const sign = Math.sign(value);
  return [...whole].map((_, index) => sign * (Number(whole.slice(0, index) + whole.slice(index + 1)) + rest));
}

/** A day's work lies this near to its marks (common practice), metres. */
const NEAR = 30_000;

function otherReading(
  position: Position,
  system: ProjectedSystem | null,
  { marks }: Derivation,
): OtherReading | null {
  if (position.form !== 'grid' || !system) return null;
  const [east, north] = [numberOf(position.east), numberOf(position.north)];
  if (east === null || north === null) return null;
  const places = [...marks.values()].flatMap(({ located }) =>
    isHole(located) ? [] : [{ latitude: located.latitude.value, longitude: located.longitude.value }],
  );
  for (const { what, clause, ...grid } of readings(east, north)) {
    const found = inverse(system, { east: gridEast(grid.east), north: gridNorth(grid.north) });
    if (!isRefusal(found) && places.some((place) => metresBetween(place, found) <= NEAR))
      return { what, clause };
  }
  return null;
}

export function tellOutOfReach({ written, system, distance, other }: OutOfReach): Told {
  const { role, name, says } = written;
  const grid = system ? `${system.code ?? system.name}${system.code ? ` (${system.name})` : ''}` : '';
  const headline =
    other?.what === 'swapped'
      ? `${says}: east and north are exchanged.`
      : !system
        ? `${says}: X, Y and Z are not near the earth’s surface.`
        : distance === null
          ? `${says} cannot lie in ${grid}.`
          : `${says} lies ${showLength(distance)} outside the area of ${grid}.`;
  return {
    severity: 'error',
    headline,
    effect: `${other ? `${other.clause} it lies near the marks. ` : ''}${EFFECTS[role]}`,
    action:
      role === 'keyed'
        ? 'Look at the receiver and key the right numbers.'
        : 'Look at the source, digit by digit.',
    causes: role === 'observed' ? [`check/${name}`] : [],
    follows: ['grid'],
  };
}

const EFFECTS: Readonly<Record<Written['role'], string>> = {
  mark: 'Nothing that is worked out from it can be right.',
  keyed: 'It cannot be compared with the mark, so nothing shows whether the base is right.',
  autonomous: 'It cannot be compared with anything.',
  observed: 'It cannot be compared with its mark, so the check proves nothing.',
  point: 'Its place is unknown.',
};
