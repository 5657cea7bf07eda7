/** What a file's coordinates are in: its grid, the datum of what is keyed, its geoid model, its confidence. */
import type { Datum, CoordinateSystem, ProjectedSystem } from '../../geodesy/system.ts';
import { groundSystem } from '../../geodesy/ground-grid.ts';
import { projectionOf } from '../../geodesy/projection.ts';
import { systemFrom } from '../../geodesy/registry/definition.ts';
import { datumNamed, horizontalSystemOf } from '../../geodesy/registry/registry.ts';
import { gridEast, gridNorth, metres } from '../../quantities/brands.ts';
import { isRefusal, type Refusal } from '../../quantities/refusal.ts';
import { assumed, hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Named, Position } from '../../session/coordinates.ts';
import type { Ground, Job } from '../../session/entries.ts';
import type { Session } from '../../session/session.ts';
import { interned, NOTHING, remembered, type Nothing } from '../remembered.ts';

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
  /** The epoch that coordinates in a moving frame are asked for at, a decimal year, and the plate that carries marks there. */
  readonly epoch: number | null;
  readonly plate: Named | null;
  /** A fraction. */
  readonly confidence: Value;
  /** The session's own ground grids, by name. */
  readonly grounds: ReadonlyMap<string, Maybe<ProjectedSystem>>;
}

const DEFAULT_CONFIDENCE = assumed('confidence', 0.95, '', 0, 'the job names none, so 95 %');

/** The frame of a file that takes part in a session. */
export const frameIn = (session: Pick<Session, 'jobs' | 'grounds'>, path: string): Frame =>
  frameOf(session.jobs.get(path) ?? NOTHING, groundsOf(session));

/** From a job entry and the session's ground grids; without a job every system is a hole. */
const frameOf = remembered((job: Job | Nothing, list: readonly NamedGround[]): Frame => {
  const grounds = new Map(list.map(({ name, system }) => [name, system]));
  if (job === NOTHING || !('kind' in job)) return { ...withoutJob, grounds };
  const datumSystem = job.datum ? systemNamed(job.datum) : null;
  const system = job.grid
    ? onDatum(systemNamed(job.grid, { grounds }), datumSystem)
    : hole('the job names no grid', job.place);
  const grid: Maybe<ProjectedSystem> = isHole(system)
    ? system
    : system.kind === 'projected'
      ? computed(system, job.grid)
      : hole(`${system.name} is no grid: its coordinates are angles`, job.grid?.place ?? null);
  const geographic = isHole(system) && datumSystem ? datumSystem : system;
  const confidence = job.confidence && !isHole(job.confidence) ? job.confidence : DEFAULT_CONFIDENCE;
  return {
    job,
    grid,
    geographic,
    keyed: keyedSystem(system, datumSystem, job),
    keyedBy: job.datumBy,
    epoch: job.datumEpoch && !isHole(job.datumEpoch) ? job.datumEpoch.value : null,
    plate: job.datumPlate,
    confidence,
    grounds,
  };
});

const noJob = hole('the file has no job entry that names a grid');
const withoutJob: Frame = {
  job: null,
  grid: noJob,
  geographic: noJob,
  keyed: noJob,
  keyedBy: null,
  epoch: null,
  plate: null,
  confidence: DEFAULT_CONFIDENCE,
  grounds: new Map(),
};

/** A definition that names an ellipsoid and no datum is in the datum that the job names, if that has the same ellipsoid. */
function onDatum(
  system: Maybe<CoordinateSystem>,
  named: Maybe<CoordinateSystem> | null,
): Maybe<CoordinateSystem> {
  if (isHole(system) || !named || isHole(named)) return system;
  if (system.datum.realisation !== 'unknown' || system.datum.geographic !== undefined) return system;
  const [own, meant] = [system.datum.ellipsoid, named.datum.ellipsoid];
  const same =
    Math.abs(own.semiMajor - meant.semiMajor) < 1e-3 && Math.abs(own.flattening - meant.flattening) < 1e-10;
  return same ? { ...system, datum: named.datum } : system;
}

interface NamedGround {
  readonly name: string;
  readonly system: Maybe<ProjectedSystem>;
}

const groundsOf = (session: Pick<Session, 'jobs' | 'grounds'>): readonly NamedGround[] =>
  interned(
    [...session.grounds.values()].map((ground) =>
      groundOf(ground, session.jobs.get(ground.place.path) ?? NOTHING),
    ),
  );

/** From the grid that it names, else from that of its own file. */
const groundOf = remembered((ground: Ground, job: Job | Nothing): NamedGround => {
  const { name, place, about, scale, shift } = ground;
  const none = (because: string): NamedGround => ({ name, system: hole(because, place) });
  const named = ground.grid ?? ('kind' in job && job.grid?.name !== name ? job.grid : null);
  if (!named) return none(`the ground grid ${name} does not say which grid it is made from`);
  const grid = gridNamed(named);
  if (isHole(grid)) return { name, system: grid };
  if (!scale || isHole(scale)) return none(`the ground grid ${name} has no scale`);
  if (Math.abs(scale.value - 1) > LARGEST_SCALE)
    return none(`the scale of the ground grid ${name} is not grid distance over ground distance`);
  const point = about && gridPair(about);
  if (!point) return none(`the point that the ground grid ${name} is scaled about is not known`);
  const moved = shift ? gridPair(shift) : { east: 0, north: 0 };
  if (!moved) return none(`the shift of the ground grid ${name} cannot be read`);
  return {
    name,
    system: groundSystem(name, grid, {
      about: { east: gridEast(point.east), north: gridNorth(point.north) },
      combinedFactor: scale.value,
      shift: { east: metres(moved.east), north: metres(moved.north) },
    }),
  };
});

/** No grid is a hundredth off at any height that people survey at. */
const LARGEST_SCALE = 0.01;

function gridPair(position: Position): { readonly east: number; readonly north: number } | null {
  if (position.form !== 'grid' || isHole(position.east) || isHole(position.north)) return null;
  return { east: position.east.value, north: position.north.value };
}

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
    datum.realisation === 'unknown'
      ? `nothing says whether receivers work in ${datum.name}; the job must name the datum of the keyed values`
      : `${datum.name} is not a datum that a receiver works in; the job must name the datum of the keyed values`,
    job.grid?.place ?? job.place,
  );
}

/** Names that a session gives to systems of its own. */
type OwnNames = Pick<Frame, 'grounds'>;

/**
 * The coordinate system of a name: an EPSG code, a ground grid of the session, a definition in double quotes, or a datum
 * by its name, whose geographic system it then is.
 */
export function systemNamed(named: Named, own?: OwnNames): Maybe<CoordinateSystem> {
  const ground = own?.grounds.get(named.name);
  if (ground) return ground;
  const found = isDefinition(named.name) ? defined(named.name) : horizontalSystemOf(named.name);
  if (!isRefusal(found)) return found;
  const datum = datumNamed(named.name);
  return datum ? geographicOf(datum) : hole(found.refused, named.place);
}

/** The same, where it must be a grid. */
export function gridNamed(named: Named, own?: OwnNames): Maybe<ProjectedSystem> {
  const system = systemNamed(named, own);
  if (isHole(system)) return system;
  if (system.kind === 'projected') return computed(system, named);
  return hole(`${system.name} is no grid: its coordinates are no lengths east and north`, named.place);
}

/** A grid whose projection is not computed is refused before anything is looked for in it. */
function computed(system: ProjectedSystem, named: Named | null): Maybe<ProjectedSystem> {
  const projection = projectionOf(system);
  return isRefusal(projection) ? hole(projection.refused, named?.place ?? null) : system;
}

const isDefinition = (name: string) => /^\s*\+|[[(]/.test(name);

/** The same definition is the same system, whose projection is then prepared once. */
function defined(definition: string): CoordinateSystem | Refusal {
  const known = definitions.get(definition);
  if (known) return known;
  const system = systemFrom(definition);
  if (definitions.size >= MOST_DEFINITIONS) definitions.clear();
  definitions.set(definition, system);
  return system;
}
const definitions = new Map<string, CoordinateSystem | Refusal>();
/** A definition is typed letter by letter, and each stage of it is looked at. */
const MOST_DEFINITIONS = 100;

function geographicOf(datum: Datum): CoordinateSystem {
  const registered = datum.geographic === undefined ? undefined : horizontalSystemOf(datum.geographic);
  if (registered && !isRefusal(registered)) return registered;
  const known = geographicSystems.get(datum);
  if (known) return known;
  const system: CoordinateSystem = {
    kind: 'geographic',
    code: undefined,
    name: datum.name,
    datum,
    area: undefined,
  };
  geographicSystems.set(datum, system);
  return system;
}
const geographicSystems = new WeakMap<Datum, CoordinateSystem>();

/** Two systems rest on the same datum, so that coordinates pass between them without a transformation. */
export const sameDatum = (one: Datum, other: Datum) =>
  one.geographic !== undefined && other.geographic !== undefined
    ? one.geographic === other.geographic
    : one.name === other.name;
