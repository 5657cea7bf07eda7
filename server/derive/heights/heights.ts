/** Heights on their surfaces: ellipsoid, geoid, and local surfaces such as chart datum. */
import { compute } from '../../quantities/computed.ts';
import { hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Height, Surface } from '../../session/coordinates.ts';
import type { LocalSurface } from '../../session/entries.ts';

export interface PlacedHeight {
  readonly value: Value;
  readonly surface: 'orthometric' | 'ellipsoidal';
}

/** A height on the geoid or on the ellipsoid, going through local surfaces as far as they are described. */
export function placedHeight(
  height: Height,
  surfaces: ReadonlyMap<string, LocalSurface>,
  about: string,
): Maybe<PlacedHeight> {
  if (isHole(height.value)) return height.value;
  if (!height.surface) return hole(`the surface of the height of ${about} is not said`, height.place);
  return onKnownSurface(height.value, height.surface, surfaces, about, new Set());
}

/** Surfaces that are described by one another: ports have three or four of them. */
const FARTHEST = 20;

function onKnownSurface(
  value: Value,
  surface: Surface,
  surfaces: ReadonlyMap<string, LocalSurface>,
  about: string,
  passed: ReadonlySet<string>,
): Maybe<PlacedHeight> {
  if (typeof surface === 'string') return { value, surface };
  const { name, place } = surface.above;
  const local = surfaces.get(name);
  if (!local) return hole(`the surface ${name} is not described`, place);
  if (passed.has(name)) return hole(`the surface ${name} is described by itself`, place);
  if (passed.size === FARTHEST)
    return hole(`the surface ${name} lies more than ${FARTHEST} surfaces away from the geoid`, local.place);
  if (!local.offset || !local.against) return hole(`the surface ${name} has no offset`, local.place);
  if (isHole(local.offset)) return local.offset;
  const formula = {
    symbol: 'H',
    expression: 'a + o',
    evaluable: true,
    source: `surface ${name} as described in the notes`,
  };
  const moved = compute(
    `height of ${about} from ${name}`,
    'm',
    formula,
    { a: value, o: exactUnlessSaid(local.offset) },
    ({ a, o }) => a + o,
  );
  return onKnownSurface(moved, local.against, surfaces, about, new Set([...passed, name]));
}

/** An offset between surfaces is a definition; it is exact unless somebody says otherwise. */
const exactUnlessSaid = (offset: Value): Value =>
  offset.origin === 'given' && offset.sigma === null
    ? { ...offset, sigma: 0, spread: 'by definition' }
    : offset;

/** h = H + N. */
export const ellipsoidalFrom = (H: Value, N: Value, about: string): Value =>
  compute(
    `ellipsoidal height of ${about}`,
    'm',
    { symbol: 'h', expression: 'H + N', evaluable: true, source: HEIGHT_SOURCE },
    { H, N },
    (v) => v.H + v.N,
  );

/** H = h − N. */
export const orthometricFrom = (h: Value, N: Value, about: string): Value =>
  compute(
    `orthometric height of ${about}`,
    'm',
    { symbol: 'H', expression: 'h − N', evaluable: true, source: HEIGHT_SOURCE },
    { h, N },
    (v) => v.h - v.N,
  );

/** N = h − H. */
export const separationBetween = (h: Value, H: Value, about: string): Value =>
  compute(
    `separation of ${about}`,
    'm',
    { symbol: 'N', expression: 'h − H', evaluable: true, source: HEIGHT_SOURCE },
    { h, H },
    (v) => v.h - v.H,
  );

const HEIGHT_SOURCE = 'h = H + N (ICSM GDA2020 Technical Manual)';
