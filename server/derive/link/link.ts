/** The correction link of a session: what each base sends, whether its radio carries it, and how far that reaches. */
import type { PointRow } from '../../evidence/points/points-file.ts';
import { geodeticOf } from '../../geodesy/geocentric.ts';
import { geodesicBetween } from '../../geodesy/geodesic.ts';
import { inverse } from '../../geodesy/projection.ts';
import type { CoordinateSystem } from '../../geodesy/system.ts';
import {
  latitude as asLatitude,
  longitude as asLongitude,
  type Geographic,
} from '../../quantities/brands.ts';
import { computePlain } from '../../quantities/computed.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import type { Radio, Stream } from '../../session/entries.ts';
import type { Session } from '../../session/session.ts';
import { isHole } from '../../quantities/value.ts';
import type { CheckValues } from '../checks/check.ts';
import { valuesOf } from '../../session/each.ts';
import { differences, radioEnds, radioOf, type RadioEnds } from './ends.ts';
import { reachValues, type Farthest, type ReachValues } from './reach.ts';
import { streamValues, type StreamValues } from './stream.ts';
import type { MarkValues } from '../marks/mark.ts';
import { sameDatum } from '../positions/frame.ts';
import { saidOf, type PointSet } from '../points/points.ts';
import { NOTHING, remembered, tokenOf, type Nothing, type Token } from '../remembered.ts';
import type { SetupValues } from '../setups/setup.ts';

export interface LinkValues {
  readonly ends: RadioEnds;
  readonly streams: readonly StreamValues[];
  /** One for each pair of radios, or for a base's alone. */
  readonly reaches: readonly ReachValues[];
}

export function linkValues(
  session: Session,
  checks: readonly CheckValues[],
  points: readonly PointSet[],
  setups: ReadonlyMap<string, SetupValues>,
): LinkValues {
  const ends = radioEnds([...session.radios.values()], session.setups);
  const only = session.setups.size === 1 ? (valuesOf(session.setups)[0]?.name ?? null) : null;
  const streams = session.streams.map((stream) => {
    const name = stream.from?.name ?? only ?? 'base';
    return streamOf(stream, radioOf(ends, name) ?? NOTHING, tokenOf(name));
  });
  const farthest = (base: Radio, rover: Radio | null) => {
    const check = farthestCheck(base, rover, session, checks);
    const point = farthestPoint(base, rover, session, points, setups);
    return reachIn(point) > reachIn(check) ? point : check;
  };
  const reaches =
    ends.rovers.length === 0
      ? ends.bases.map((base) => reachOf(base, NOTHING, farthest(base, null)))
      : ends.rovers.map((rover) => {
          const base = partnerOf(rover, ends);
          return base
            ? reachOf(base, rover, farthest(base, rover))
            : reachOf(rover, NOTHING, farthest(rover, rover));
        });
  return { ends, streams, reaches };
}

/** The base that a rover's radio was set for: the one that differs least. */
export function partnerOf(rover: Radio, { bases }: RadioEnds): Radio | null {
  let best: { base: Radio; count: number } | null = null;
  for (const base of bases) {
    const count = differences(base, rover).length;
    if (!best || count < best.count) best = { base, count };
  }
  return best?.base ?? null;
}

const streamOf = remembered(
  (stream: Stream, radio: Radio | Nothing, { worth: name }: Token<string>): StreamValues =>
    streamValues(stream, name, radio === NOTHING ? null : (radio as Radio)),
);
const reachOf = remembered((base: Radio, rover: Radio | Nothing, farthest: Farthest | Nothing): ReachValues =>
  reachValues(
    base,
    rover === NOTHING ? null : (rover as Radio),
    farthest === NOTHING ? null : (farthest as Farthest),
  ),
);

/** The check farthest from its base; radios called after a setup or a rover count that one's checks only. */
function farthestCheck(
  base: Radio,
  rover: Radio | null,
  session: Session,
  checks: readonly CheckValues[],
): Farthest | Nothing {
  let farthest: CheckValues | null = null;
  for (const check of checks) {
    if (session.setups.has(base.name) && check.setup?.setup.name !== base.name) continue;
    if (rover && session.rovers.has(rover.name) && check.rover?.name !== rover.name) continue;
    if (lengthOf(check) > (farthest ? lengthOf(farthest) : 0)) farthest = check;
  }
  return farthest ? checkFarthest(farthest) : NOTHING;
}

const checkFarthest = remembered((values: CheckValues): Farthest | Nothing => {
  const { ellipsoid } = values.distance;
  if (isHole(ellipsoid)) return NOTHING;
  const fixed = values.quality?.solution?.name === 'fixed';
  return { distance: ellipsoid, where: values.check.name, fixed };
});

const lengthOf = ({ distance: { ellipsoid } }: CheckValues) => (isHole(ellipsoid) ? 0 : ellipsoid.value);

/** The same among the points: of each set the outermost ones are looked at. */
function farthestPoint(
  base: Radio,
  rover: Radio | null,
  session: Session,
  points: readonly PointSet[],
  setups: ReadonlyMap<string, SetupValues>,
): Farthest | Nothing {
  const only = setups.size === 1 ? [...setups.values()][0] : undefined;
  let farthest: Farthest | Nothing = NOTHING;
  for (const set of points) {
    const { from, by } = saidOf(set);
    const setup = from ? setups.get(from.name) : only;
    if (!setup?.mark || (session.setups.has(base.name) && setup.setup.name !== base.name)) continue;
    if (rover && session.rovers.has(rover.name) && by?.name !== rover.name) continue;
    const found = pointFarthest(set, setup.mark);
    if (reachIn(found) > reachIn(farthest)) farthest = found;
  }
  return farthest;
}

const reachIn = (farthest: Farthest | Nothing) => ('distance' in farthest ? farthest.distance.value : 0);

const pointFarthest = remembered((set: PointSet, mark: MarkValues): Farthest | Nothing => {
  const { located } = mark;
  const { system } = set;
  if (isHole(located) || isHole(system) || !sameDatum(located.system.datum, system.datum)) return NOTHING;
  const { ellipsoid } = system.datum;
  const start = {
    latitude: asLatitude(located.latitude.value),
    longitude: asLongitude(located.longitude.value),
  };
  let best: { name: string; length: number } | null = null;
  for (const row of set.scan().outermost) {
    const place = placeOf(row, system);
    if (!place) continue;
    const length = geodesicBetween(ellipsoid, start, place).distance;
    if (length > (best?.length ?? 0)) best = { name: row.name ?? set.name, length };
  }
  if (!best) return NOTHING;
  const distance = computePlain(
    `ellipsoidal distance from ${mark.mark.name} to ${best.name}`,
    'm',
    {
      symbol: 'D',
      expression: `geodesic on ${ellipsoid.name} from (φ, λ) to the farthest point of ${set.name}`,
      evaluable: false,
      source: 'Karney (2013), Algorithms for geodesics, Journal of Geodesy 87, 43–55',
    },
    { φ: located.latitude, λ: located.longitude },
    best.length,
  );
  return { distance, where: best.name, fixed: false };
});

function placeOf(row: PointRow, system: CoordinateSystem): Geographic | null {
  const { east, north, latitude, longitude, x, y, z } = row;
  if (east !== undefined && north !== undefined && system.kind === 'projected') {
    const found = inverse(system, { east, north });
    return isRefusal(found) ? null : found;
  }
  if (latitude !== undefined && longitude !== undefined) return { latitude, longitude };
  if (x === undefined || y === undefined || z === undefined) return null;
  return geodeticOf(system.datum.ellipsoid, { x, y, z });
}
