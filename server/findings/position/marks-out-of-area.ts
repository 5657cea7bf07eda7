/** Grid coordinates that lie outside the area that their grid is for: of one mark, or of all. */
import type { MarkValues } from '../../derive/marks/mark.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Session } from '../../session/session.ts';
import { distanceOutside } from '../../geodesy/area.ts';
import { inverse } from '../../geodesy/projection.ts';
import type { ProjectedSystem } from '../../geodesy/system.ts';
import {
  gridEast,
  gridNorth,
  latitude as asLatitude,
  longitude as asLongitude,
} from '../../quantities/brands.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import { isHole } from '../../quantities/value.ts';
import { frameIn, gridNamed, type Frame } from '../../derive/positions/frame.ts';
import { locate } from '../../derive/positions/locate.ts';
import { remembered } from '../../derive/remembered.ts';
import { placeOf } from '../../slips/grid-told.ts';
import { metresBetween } from '../../slips/keyed-differences.ts';
import type { Position } from '../../session/coordinates.ts';
import type { Mark } from '../../session/entries.ts';
import type { Subject } from '../finding.ts';

export interface Outside {
  readonly mark: Mark;
  readonly position: Position;
  readonly system: ProjectedSystem;
  /** Metres from the area, 0 within it; null where the projection takes no such coordinates at all. */
  readonly distance: number | null;
  /** With east and north in each other's place they lie inside. */
  readonly swappedInside: boolean;
}

/** Work goes on beyond the edge of a zone as far as a base there reaches, some 20 km (common practice); metres. */
export const BESIDE = 25_000;

export function marksOutOfArea({ session, derivation }: Subject): readonly Outside[] {
  return outsideOf(valuesOf(derivation.marks), session.jobs, session.grounds);
}

const outsideOf = foundInEach(({ mark }: MarkValues, jobs: Session['jobs'], grounds: Session['grounds']) =>
  outside(mark, frameIn({ jobs, grounds }, mark.place.path)),
);

const outside = remembered((mark: Mark, frame: Frame): Outside[] => {
  const { position } = mark;
  if (!position || position.form === 'geocentric') return [];
  const system = position.system && position.form === 'grid' ? gridNamed(position.system, frame) : frame.grid;
  if (isHole(system) || !system.area) return [];
  if (position.form === 'geographic') {
    const { latitude, longitude } = position;
    if (isHole(latitude) || isHole(longitude) || position.system) return [];
    const distance = distanceFrom(system, latitude.value, longitude.value);
    return distance <= BESIDE
      ? []
      : [
          {
            mark,
            position,
            system,
            distance,
            swappedInside: exchanged(latitude.value, longitude.value).some(
              (place) => distanceFrom(system, place.latitude, place.longitude) === 0,
            ),
          },
        ];
  }
  const { east, north } = position;
  if (isHole(east) || isHole(north)) return [];
  const distance = gridDistance(system, east.value, north.value);
  if (distance !== null && distance <= BESIDE) return [];
  const swappedInside = gridDistance(system, north.value, east.value) === 0;
  return [{ mark, position, system, distance, swappedInside }];
});

/** The angles in each other's place, with every hemisphere that their letters could have had. */
const exchanged = (latitude: number, longitude: number) =>
  Math.abs(longitude) > 90
    ? []
    : [1, -1].flatMap((north) =>
        [1, -1].map((east) => ({ latitude: north * longitude, longitude: east * latitude })),
      );

/** A receiver alone is good to some metres (common practice); twice what is an error there is plenty here, metres. */
const WITH_THE_RECEIVER = 50;

/** Marks under a base that lie far from where the receiver found itself, and there with east and north exchanged. */
export function marksElsewhere({ derivation }: Subject): Outside[] {
  const bases = new Map(alone(valuesOf(derivation.setups)).map((one) => [one.mark, one]));
  return [...bases.values()].flatMap(({ setup, mark }): Outside[] => {
    const position = mark?.mark.position;
    if (!setup.autonomous?.position || !mark || position?.form !== 'grid') return [];
    const system = position.system ? gridNamed(position.system) : derivation.frame.grid;
    const itself = locate(setup.autonomous.position, derivation.frame, 'the autonomous position', null);
    if (isHole(system) || isHole(itself) || isHole(position.east) || isHole(position.north)) return [];
    const there = { latitude: itself.latitude.value, longitude: itself.longitude.value };
    const far = (east: number, north: number) => {
      const found = placeOf(system, east, north);
      return found ? metresBetween(found, there) : Infinity;
    };
    const { value: east } = position.east;
    const { value: north } = position.north;
    if (far(east, north) <= WITH_THE_RECEIVER || far(north, east) > WITH_THE_RECEIVER) return [];
    return [{ mark: mark.mark, position, system, distance: 0, swappedInside: true }];
  });
}

const alone = foundInEach((setup: SetupValues) => (setup.setup.autonomous?.position ? [setup] : []));

function gridDistance(system: ProjectedSystem, east: number, north: number): number | null {
  const found = inverse(system, { east: gridEast(east), north: gridNorth(north) });
  return isRefusal(found) ? null : distanceFrom(system, found.latitude, found.longitude);
}

const distanceFrom = ({ area }: ProjectedSystem, latitude: number, longitude: number): number =>
  area ? distanceOutside(area, { latitude: asLatitude(latitude), longitude: asLongitude(longitude) }) : 0;
