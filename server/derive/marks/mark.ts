/** A mark in all its forms: grid, geographic, geocentric, and its height on each surface. */
import { elevationFactor, gridScaleAt } from '../../geodesy/scale.ts';
import type { Datum } from '../../geodesy/system.ts';
import {
  ellipsoidalHeight,
  latitude as asLatitude,
  longitude as asLongitude,
} from '../../quantities/brands.ts';
import { computePlain } from '../../quantities/computed.ts';
import { once } from '../../quantities/once.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import {
  hole,
  isHole,
  partOf,
  withSpread,
  type Hole,
  type Maybe,
  type Value,
} from '../../quantities/value.ts';
import type { Accuracy, LocalSurface, Mark } from '../../session/entries.ts';
import { circularRadius, normalHalfWidth } from '../../quantities/statistics.ts';
import { sameDatum, type Frame } from '../positions/frame.ts';
import { separationFrom, type GeoidModel } from '../heights/geoid.ts';
import {
  ellipsoidalFrom,
  orthometricFrom,
  placedHeight,
  separationBetween,
  type PlacedHeight,
} from '../heights/heights.ts';
import { transformed } from '../positions/transform.ts';
import {
  locate,
  projectionSource,
  spreadOver,
  toGeocentric,
  toGrid,
  type AxisSpread,
  type Located,
} from '../positions/locate.ts';

export interface MarkValues {
  readonly mark: Mark;
  readonly located: Maybe<Located>;
  /** As published, in its own datum and at its own epoch; the very same place where that is the job's. */
  readonly published: { readonly located: Maybe<Located>; readonly height: Maybe<Value> };
  /** Why its coordinates cannot be had in the datum of the job; null where they can, or where it has none. */
  readonly otherDatum: Hole | null;
  readonly latitude: Maybe<Value>;
  readonly longitude: Maybe<Value>;
  readonly ellipsoidalHeight: Maybe<Value>;
  readonly orthometricHeight: Maybe<Value>;
  /** As published, else as the two heights say, else from the job's geoid model. */
  readonly separation: Maybe<Value>;
  /** N by the job's geoid model, whatever was published. */
  readonly modelSeparation: Maybe<Value>;
  /** The separation came from a coarse model, so that what is keyed from it is good for nothing but finding blunders. */
  readonly restsOnCoarseModel: boolean;
  readonly east: Maybe<Value>;
  readonly north: Maybe<Value>;
  readonly x: Maybe<Value>;
  readonly y: Maybe<Value>;
  readonly z: Maybe<Value>;
  readonly convergence: Maybe<Value>;
  readonly pointScale: Maybe<Value>;
  readonly combinedScale: Maybe<Value>;
  /** Standard uncertainties: each horizontal axis, and up; null where none was stated. */
  readonly sigmaHorizontal: number | null;
  readonly sigmaVertical: number | null;
}

/**
 * @param own the frame of the file that the mark stands in; `job` the frame of the session that uses it
 */
export function markValues(
  mark: Mark,
  own: Frame,
  job: Frame,
  geoid: GeoidModel | null,
  surfaces: ReadonlyMap<string, LocalSurface>,
): MarkValues {
  const { name } = mark;
  const sigmaHorizontal = standardUncertainty(mark.uncertainty, 'horizontal');
  const sigmaVertical = standardUncertainty(mark.uncertainty, 'vertical');
  const published = mark.position
    ? locate(mark.position, own, name, horizontalSpread(sigmaHorizontal, sigmaVertical))
    : noPosition(mark);
  const ownHeights = heightsOf(mark, published, geoid, surfaces, sigmaVertical);
  const moved = inDatumOfJob(mark, published, ownHeights.ellipsoidal, job);
  // Without a known way to the job's datum the mark keeps its own, and whatever would mix the two is a hole.
  const located = isHole(moved) ? published : moved;
  const carried = located !== published && !isHole(located) ? located.height : null;
  const heights = carried ? { ...ownHeights, ellipsoidal: carried } : ownHeights;
  return new OneMark(
    mark,
    located,
    { located: published, height: ownHeights.ellipsoidal },
    isHole(moved) && !isHole(published) ? moved : null,
    heights,
    sigmaHorizontal,
    sigmaVertical,
    () => (isHole(moved) ? moved : gridOf(moved, job, name)),
    () => geocentricFrom(located, heights.ellipsoidal, name),
    () => (isHole(moved) ? moved : scaleOf(moved, job, heights.ellipsoidal, name)),
  );
}

/** What a base needs is computed at once; the mark in the grid, its X, Y and Z, and the scale there are for whoever asks. */
class OneMark implements MarkValues {
  readonly latitude: Maybe<Value>;
  readonly longitude: Maybe<Value>;
  readonly ellipsoidalHeight: Maybe<Value>;
  readonly orthometricHeight: Maybe<Value>;
  readonly separation: Maybe<Value>;
  readonly modelSeparation: Maybe<Value>;
  readonly restsOnCoarseModel: boolean;
  private readonly grid: () => Maybe<InGrid>;
  private readonly geocentric: () => Maybe<InSpace>;
  private readonly scale: () => Maybe<Scale>;

  constructor(
    readonly mark: Mark,
    readonly located: Maybe<Located>,
    readonly published: MarkValues['published'],
    readonly otherDatum: Hole | null,
    heights: Heights,
    readonly sigmaHorizontal: number | null,
    readonly sigmaVertical: number | null,
    grid: () => Maybe<InGrid>,
    geocentric: () => Maybe<InSpace>,
    scale: () => Maybe<Scale>,
  ) {
    this.latitude = partOf(located, 'latitude');
    this.longitude = partOf(located, 'longitude');
    this.ellipsoidalHeight = heights.ellipsoidal;
    this.orthometricHeight = heights.orthometric;
    this.separation = heights.separation;
    this.modelSeparation = heights.modelSeparation;
    this.restsOnCoarseModel = heights.coarse;
    this.grid = once(grid);
    this.geocentric = once(geocentric);
    this.scale = once(scale);
  }

  get east() {
    return partOf(this.grid(), 'east');
  }

  get north() {
    return partOf(this.grid(), 'north');
  }

  get x() {
    return partOf(this.geocentric(), 'x');
  }

  get y() {
    return partOf(this.geocentric(), 'y');
  }

  get z() {
    return partOf(this.geocentric(), 'z');
  }

  get convergence() {
    return partOf(this.scale(), 'convergence');
  }

  get pointScale() {
    return partOf(this.scale(), 'point');
  }

  get combinedScale() {
    return partOf(this.scale(), 'combined');
  }
}

type InGrid = Readonly<Record<'east' | 'north', Value>>;
type InSpace = Readonly<Record<'x' | 'y' | 'z', Value>>;
type Scale = Readonly<Record<'point' | 'convergence', Value> & Record<'combined', Maybe<Value>>>;

/** The mark in the datum that the job's coordinates are in; the very same place where it is in it already. */
function inDatumOfJob(
  mark: Mark,
  published: Maybe<Located>,
  height: Maybe<Value>,
  job: Frame,
): Maybe<Located> {
  if (isHole(published)) return published;
  const wanted = isHole(job.grid) ? job.geographic : job.grid;
  if (isHole(wanted)) return published;
  const epoch = mark.epoch && !isHole(mark.epoch) ? mark.epoch.value : null;
  return transformed(published, height, wanted, {
    about: mark.name,
    by: mark.position?.by ?? null,
    epoch,
    asked: job,
  });
}

/** X, Y and Z need a height above the datum's own ellipsoid, which an old network does not have. */
function geocentricFrom(located: Maybe<Located>, height: Maybe<Value>, name: string) {
  if (isHole(located)) return located;
  const { datum } = located.system;
  if (datum.realisation === 'terrestrial')
    return hole(
      `${datum.name} has no ellipsoidal heights of its own, so ${name} has no geocentric coordinates in it`,
    );
  return isHole(height) ? height : toGeocentric(located, height, name);
}

/** The mark's height above the ellipsoid of a place that is the mark itself, or the mark in another datum. */
export const heightOn = (place: Located, mark: MarkValues): Maybe<Value> =>
  place === mark.located
    ? mark.ellipsoidalHeight
    : place === mark.published.located
      ? mark.published.height
      : (place.height ?? mark.ellipsoidalHeight);

/** A stated accuracy as a standard uncertainty: of each axis horizontally (a radius is divided by its factor), and up. */
export function standardUncertainty(
  accuracy: Accuracy | null,
  direction: 'horizontal' | 'vertical',
): number | null {
  const stated = accuracy?.[direction];
  if (!stated || isHole(stated.constant)) return null;
  const size = Math.abs(stated.constant.value);
  if (stated.confidence === null) return size;
  return (
    size /
    (direction === 'horizontal' ? circularRadius(stated.confidence) : normalHalfWidth(stated.confidence))
  );
}

const noPosition = (mark: Mark) => hole(`${mark.name} has no coordinates`, mark.place);

function horizontalSpread(horizontal: number | null, vertical: number | null): AxisSpread | null {
  return horizontal === null ? null : { sigma: horizontal, up: vertical, because: 'as stated for the mark' };
}

interface Heights {
  readonly ellipsoidal: Maybe<Value>;
  readonly orthometric: Maybe<Value>;
  readonly separation: Maybe<Value>;
  readonly modelSeparation: Maybe<Value>;
  readonly coarse: boolean;
}

function heightsOf(
  mark: Mark,
  located: Maybe<Located>,
  geoid: GeoidModel | null,
  surfaces: ReadonlyMap<string, LocalSurface>,
  sigma: number | null,
): Heights {
  const { name } = mark;
  const modelSeparation = isHole(located)
    ? located
    : geoid
      ? separationFrom(geoid, located, name)
      : hole('the job names no geoid model');
  const published =
    mark.separation && !isHole(mark.separation) ? publishedSeparation(mark.separation, sigma) : null;
  const spread = sigma === null ? null : { sigma, because: 'as stated for the mark' };
  const typed = mark.height ? spreadHeight(placedHeight(mark.height, surfaces, name), spread) : null;
  const brought = !isHole(located) && located.height ? located.height : null;
  if (brought && typed && !isHole(typed) && typed.surface === 'orthometric') {
    const separation = published ?? separationBetween(brought, typed.value, name);
    return { ellipsoidal: brought, orthometric: typed.value, separation, modelSeparation, coarse: false };
  }
  const height: Maybe<PlacedHeight> =
    typed && !(isHole(typed) && brought)
      ? typed
      : brought
        ? { value: brought, surface: 'ellipsoidal' }
        : hole(`${name} has no height`, mark.place);
  const separation = published ?? modelSeparation;
  const coarse = !published && !isHole(modelSeparation) && (geoid?.coarse ?? false);
  if (isHole(height))
    return { ellipsoidal: height, orthometric: height, separation, modelSeparation, coarse: false };
  if (height.surface === 'ellipsoidal') {
    const orthometric = isHole(separation) ? separation : orthometricFrom(height.value, separation, name);
    return { ellipsoidal: height.value, orthometric, separation, modelSeparation, coarse: false };
  }
  const ellipsoidal = isHole(separation)
    ? hole(
        `${name} has no separation and the job no geoid model, so its ellipsoidal height is not known`,
        mark.height?.place ?? mark.place,
      )
    : ellipsoidalFrom(height.value, separation, name);
  return { ellipsoidal, orthometric: height.value, separation, modelSeparation, coarse };
}

/** The vertical uncertainty of a mark is that of its published heights, so the separation beside them adds nothing of its own but what is typed with it. */
function publishedSeparation(separation: Value, sigma: number | null): Value {
  if (separation.origin !== 'given' || sigma === null) return separation;
  return withSpread(separation, 0, 'covered by the vertical uncertainty of the mark');
}

const spreadHeight = (height: Maybe<PlacedHeight>, spread: AxisSpread | null): Maybe<PlacedHeight> =>
  isHole(height) ? height : { ...height, value: spreadOver(height.value, spread) };

function gridOf(located: Located, job: Frame, name: string) {
  const wanted = gridFor(located, job);
  return isHole(wanted) ? wanted : toGrid(located, wanted, name);
}

/** A job that names no grid has the mark's own; one that names a grid that is not known has none. */
const gridFor = ({ system }: Located, { grid, job }: Frame) =>
  isHole(grid) && !job?.grid && system.kind === 'projected' ? system : grid;

const otherDatum = (name: string, own: Datum, wanted: Datum) =>
  hole(`${name} is in ${own.name} and the job in ${wanted.name}; no transformation between them is named`);

function scaleOf(located: Located, job: Frame, height: Maybe<Value>, name: string) {
  const system = gridFor(located, job);
  if (isHole(system)) return system;
  if (!sameDatum(located.system.datum, system.datum))
    return otherDatum(name, located.system.datum, system.datum);
  const at = {
    latitude: asLatitude(located.latitude.value),
    longitude: asLongitude(located.longitude.value),
  };
  const scale = gridScaleAt(system, at);
  if (isRefusal(scale)) return hole(scale.refused);
  const inputs = { φ: located.latitude, λ: located.longitude };
  const source = `distortion of the projection itself, by differences (Snyder 1987, chapter 4); ${projectionSource(system)}`;
  const formula = (symbol: string, expression: string) => ({ symbol, expression, evaluable: false, source });
  const point = computePlain(
    `point scale factor at ${name}`,
    '',
    formula('k', `grid distance / ellipsoidal distance at (φ, λ) in ${system.code ?? system.name}`),
    inputs,
    scale.point,
  );
  const convergence = computePlain(
    `convergence at ${name}`,
    '°',
    formula('γ', `azimuth − grid bearing at (φ, λ) in ${system.code ?? system.name}`),
    inputs,
    scale.convergence,
  );
  if (isHole(height)) return { point, convergence, combined: height };
  const { ellipsoid } = located.system.datum;
  const factor = elevationFactor(ellipsoid, at, ellipsoidalHeight(height.value));
  const elevation = computePlain(
    `elevation factor at ${name}`,
    '',
    {
      symbol: 'k_h',
      expression: 'R / (R + h), R = √(MN)',
      evaluable: false,
      source: 'ICSM GDA2020 Technical Manual',
    },
    { ...inputs, h: height },
    factor,
  );
  const combined = computePlain(
    `combined scale factor at ${name}`,
    '',
    { symbol: 'k_c', expression: 'k · k_h', evaluable: true, source: 'ICSM GDA2020 Technical Manual' },
    { k: point, k_h: elevation },
    point.value * factor,
  );
  return { point, convergence, combined };
}
