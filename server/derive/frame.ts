/** What a file's coordinates are in: its grid, the datum of what is keyed, its geoid model, its confidence. */
import type { Datum, CoordinateSystem, ProjectedSystem } from '../geodesy/system.ts';
import { horizontalSystemOf, projectedSystemOf } from '../geodesy/registry/registry.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { assumed, hole, isHole, type Maybe, type Value } from '../quantities/value.ts';
import type { Named } from '../session/coordinates.ts';
import type { Job } from '../session/entries.ts';
import { NOTHING, remembered, type Nothing } from './remembered.ts';

export interface Frame {
  readonly job: Job | null;
  /** The system that grid coordinates without another one are in. */
  readonly grid: Maybe<ProjectedSystem>;
  /** The system that geographic and geocentric coordinates without another one are in. */
  readonly geographic: Maybe<CoordinateSystem>;
  /** The system that a receiver is to be told coordinates in; a hole where its datum must be named and is not. */
  readonly keyed: Maybe<CoordinateSystem>;
  /** The transformation that the job names from its grid's datum to that one. */
  readonly keyedBy: Named | null;
  /** A fraction. */
  readonly confidence: Value;
}

const DEFAULT_CONFIDENCE = assumed('confidence', 0.95, '', 0, 'the job names none, so 95 %');

/** The frame of a file, from its job entry; without one every system is a hole. */
export const frameOf: (job: Job | Nothing) => Frame = remembered((job) => {
  if (job === NOTHING || !('kind' in job)) return withoutJob;
  const system = job.grid ? systemNamed(job.grid) : hole('the job names no grid', job.place);
  const grid: Maybe<ProjectedSystem> =
    isHole(system) || system.kind === 'projected'
      ? system
      : hole(`${system.name} is no grid: its coordinates are angles`, job.grid?.place ?? null);
  const datumSystem = job.datum ? systemNamed(job.datum) : null;
  const geographic = isHole(system) && datumSystem ? datumSystem : system;
  const confidence = job.confidence && !isHole(job.confidence) ? job.confidence : DEFAULT_CONFIDENCE;
  return {
    job,
    grid,
    geographic,
    keyed: keyedSystem(system, datumSystem, job),
    keyedBy: job.datumBy,
    confidence,
  };
});

const noJob = hole('the file has no job entry that names a grid');
const withoutJob: Frame = {
  job: null,
  grid: noJob,
  geographic: noJob,
  keyed: noJob,
  keyedBy: null,
  confidence: DEFAULT_CONFIDENCE,
};

/** The datum named, else the grid's own where satellite positioning realises it; an older one must never be keyed unsaid. */
function keyedSystem(
  system: Maybe<CoordinateSystem>,
  named: Maybe<CoordinateSystem> | null,
  job: Job,
): Maybe<CoordinateSystem> {
  if (named) return named;
  if (isHole(system)) return system;
  const { datum } = system;
  if (datum.realisation === 'gnss') return system;
  return hole(
    `${datum.name} is not a datum that a receiver works in; the job must name the datum of the keyed values`,
    job.grid?.place ?? job.place,
  );
}

/** The coordinate system of a name such as `EPSG:3763`. */
export function systemNamed(named: Named): Maybe<CoordinateSystem> {
  const found = horizontalSystemOf(named.name);
  return isRefusal(found) ? hole(found.refused, named.place) : found;
}

/** The same, where it must be a grid. */
export function gridNamed(named: Named): Maybe<ProjectedSystem> {
  const found = projectedSystemOf(named.name);
  return isRefusal(found) ? hole(found.refused, named.place) : found;
}

/** Two systems rest on the same datum, so that coordinates pass between them without a transformation. */
export const sameDatum = (one: Datum, other: Datum) =>
  one.geographic !== undefined && other.geographic !== undefined
    ? one.geographic === other.geographic
    : one.name === other.name;
