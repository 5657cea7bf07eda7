/** Everything that follows from a session: marks, setups and checks with their values, computed once for the same entries. */
import { hole, isHole, type Maybe } from '../quantities/value.ts';
import { answersFrom, tableBy, valuesOf, type Table } from '../session/each.ts';
import type { Check, Job, LocalSurface, Mark, Rover, Setup } from '../session/entries.ts';
import type { Files } from '../session/files.ts';
import { instantOf, type Session } from '../session/session.ts';
import { setupFor, timesOf, type SetupTime } from './checks/base-of-check.ts';
import { antennasOf, type CalibratedAntennaOf } from './evidence/calibrated-antennas.ts';
import { checkValues, type CheckValues } from './checks/check.ts';
import { judgedTogether } from './checks/together.ts';
import { recordingsOf, withRecords, type Recordings } from './evidence/files.ts';
import type { RecordingValues } from './evidence/recording.ts';
import { frameIn, type Frame } from './positions/frame.ts';
import type { GeoidModel } from './heights/geoid.ts';
import { linkValues, type LinkValues } from './link/link.ts';
import { markValues, type MarkValues } from './marks/mark.ts';
import { geoidsOf, modelsByName, type NamedModel } from './heights/models.ts';
import { pointSets, type PointSet } from './points/points.ts';
import { interned, NOTHING, orNull, remembered, type Nothing } from './remembered.ts';
import { reviewValues, type ReviewValues } from './reviews.ts';
import { setupValues, type SetupSurroundings, type SetupValues } from './setups/setup.ts';

export interface Derivation {
  readonly frame: Frame;
  readonly geoid: Maybe<GeoidModel>;
  readonly marks: ReadonlyMap<string, MarkValues>;
  readonly setups: ReadonlyMap<string, SetupValues>;
  /** Antennas by name, with the phase centre of their calibration file where they have one. */
  readonly antennas: ReadonlyMap<string, CalibratedAntennaOf>;
  /** In the order of the text. */
  readonly checks: readonly CheckValues[];
  /** In the order of the text; nothing is read before it is asked for. */
  readonly points: readonly PointSet[];
  readonly link: LinkValues;
  /** Who reviewed it, and whether it has changed since. */
  readonly reviews: readonly ReviewValues[];
  /** False where the program failed over a part of the session, which is then left out. */
  readonly whole: boolean;
}

export function deriveSession(session: Session, files: Files): Derivation {
  const frame = frameIn(session, session.document.path);
  const geoids = geoidsOf(session, files);
  const geoid = session.job?.geoid
    ? geoids(session.job.geoid.name, session.job.geoid.file)
    : hole('the job names no geoid model', session.job?.place ?? null);
  const surfaces = surfacesOf(interned([...session.surfaces.values()]));
  const model = isHole(geoid) ? NOTHING : geoid;
  const { jobs, grounds, rovers, job } = session;
  const marks = markTable(marksOf(valuesOf(session.marks), jobs, grounds, frame, model, surfaces));
  const surroundings = surroundingsOf(frame, surfaces, modelsByName(session, geoids));
  const antennas = antennaTable(interned(antennasOf(session, files)));
  const events = eventsBySetup(session.events, job ?? NOTHING);
  const noted = setupsOf(valuesOf(session.setups), marks, antennas, events, surroundings);
  const setups = setupTable(withRecords(noted, frame, files));
  const recordings = recordingsOf(session, frame, files);
  const times = timesOf(valuesOf(setups));
  const alone = checksOf(session.checks, marks, setups, times, rovers, job, frame, surfaces, recordings);
  const checks = judgedTogether(alone, frame);
  const points = pointSets(session, frame, surfaces, times, files);
  const link = linkValues(session, checks, points, setups);
  const reviews = reviewValues(session, files);
  return { frame, geoid, marks, setups, antennas, checks, points, link, reviews, whole: true };
}

const markTable = tableBy<MarkValues>(({ mark }) => mark.name);
const setupTable = tableBy<SetupValues>(({ setup }) => setup.name);
const antennaTable = tableBy<CalibratedAntennaOf>(({ antenna }) => antenna.name);

const marksOf = answersFrom(
  (
    mark: Mark,
    jobs: Session['jobs'],
    grounds: Session['grounds'],
    frame: Frame,
    model: GeoidModel | Nothing,
    surfaces: Surfaces,
  ) => [frameIn({ jobs, grounds }, mark.place.path), frame, model, surfaces],
  remembered((mark: Mark, own: Frame, job: Frame, geoid: GeoidModel | Nothing, surfaces: Surfaces) =>
    markValues(mark, own, job, orNull<GeoidModel>(geoid), surfaces),
  ),
);

const setupsOf = answersFrom(
  (
    setup: Setup,
    marks: Table<MarkValues>,
    antennas: Table<CalibratedAntennaOf>,
    eventsOn: (setup: Setup) => EventInstants,
    surroundings: SetupSurroundings,
  ) => {
    const mark = setup.on ? marks.get(setup.on.name) : undefined;
    const antenna = setup.with ? antennas.get(setup.with.name) : undefined;
    return [mark ?? NOTHING, antenna ?? NOTHING, eventsOn(setup), surroundings];
  },
  remembered(
    (
      setup: Setup,
      mark: MarkValues | Nothing,
      antenna: CalibratedAntennaOf | Nothing,
      events: EventInstants,
      surroundings: SetupSurroundings,
    ) =>
      setupValues(
        setup,
        orNull<MarkValues>(mark),
        orNull<CalibratedAntennaOf>(antenna)?.antenna ?? null,
        events.instants,
        events.relevelled,
        surroundings,
      ),
  ),
);

const checksOf = answersFrom(
  (
    check: Check,
    marks: Table<MarkValues>,
    setups: Table<SetupValues>,
    times: readonly SetupTime[],
    rovers: Session['rovers'],
    job: Job | null,
    frame: Frame,
    surfaces: Surfaces,
    recordings: Recordings,
  ) => {
    const mark = check.on ? marks.get(check.on.name) : undefined;
    const rover = check.by ? rovers.get(check.by.name) : undefined;
    const setup = setupFor(check, setups, times, job);
    const recording = recordings.get(check);
    return [mark ?? NOTHING, setup ?? NOTHING, rover ?? NOTHING, frame, surfaces, recording ?? NOTHING];
  },
  remembered(
    (
      check: Check,
      mark: MarkValues | Nothing,
      setup: SetupValues | Nothing,
      rover: Rover | Nothing,
      frame: Frame,
      surfaces: Surfaces,
      recording: RecordingValues | Nothing,
    ) =>
      checkValues(
        check,
        orNull<MarkValues>(mark),
        orNull<SetupValues>(setup),
        orNull<Rover>(rover),
        frame,
        surfaces,
        orNull<RecordingValues>(recording),
      ),
  ),
);

type Surfaces = ReadonlyMap<string, LocalSurface>;
const surfacesOf = remembered(
  (surfaces: readonly LocalSurface[]): Surfaces =>
    new Map(surfaces.map((surface) => [surface.name, surface])),
);

interface EventInstants {
  readonly instants: readonly number[];
  /** Those at which the tripod was levelled anew. */
  readonly relevelled: readonly number[];
}
const instantsOf = remembered((events: Session['events'], job: Job | Nothing): EventInstants => {
  const inOrder = (some: Session['events']) =>
    some
      .map((event) => instantOf(event.at, orNull<Job>(job)))
      .filter((instant) => instant !== null)
      .sort((one, other) => one - other);
  return {
    instants: inOrder(events),
    relevelled: inOrder(events.filter(({ what }) => what === 're-level')),
  };
});

/** Events that name no setup happened to all of them. */
const eventsBySetup = remembered((events: Session['events'], job: Job | Nothing) => {
  const named = new Set(events.map(({ on }) => on?.name));
  const of = (name: string | undefined) =>
    instantsOf(interned(events.filter(({ on }) => on === null || on.name === name)), job);
  const common = of(undefined);
  return ({ name }: Setup): EventInstants => (named.has(name) ? of(name) : common);
});

const surroundingsOf = remembered(
  (frame: Frame, surfaces: Surfaces, models: readonly NamedModel[]): SetupSurroundings => ({
    frame,
    surfaces,
    geoid: (name) =>
      models.find((model) => model.name === name)?.model ?? hole(`the geoid model ${name} is not known`),
  }),
);
