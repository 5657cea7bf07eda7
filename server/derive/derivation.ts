/** Everything that follows from a session: marks, setups and checks with their values, computed once for the same entries. */
import { isRefusal, type Refusal } from '../quantities/refusal.ts';
import { calibrated, type CalibratedValues } from './calibration.ts';
import { hole, isHole, type Hole, type Maybe } from '../quantities/value.ts';
import type {
  Antenna,
  Check,
  GeoidName,
  Job,
  LocalSurface,
  Mark,
  Quoted,
  Rover,
  Setup,
} from '../session/entries.ts';
import { resolvePath, type Files } from '../session/files.ts';
import { instantOf, type Session } from '../session/session.ts';
import { checkValues, type CheckValues } from './check.ts';
import { answersFrom, foundInEach, tableBy, valuesOf, type Table } from '../session/each.ts';
import { recordingValues, type RecordingValues } from './evidence-recording.ts';
import { frameIn, type Frame } from './frame.ts';
import { EGM96, isBuiltIn, type GeoidModel } from './geoid.ts';
import { geoidFromFile } from './geoid-file.ts';
import { linkValues, type LinkValues } from './link.ts';
import { markValues, type MarkValues } from './mark.ts';
import { pointSets, type PointSet } from './points.ts';
import { interned, NOTHING, remembered, type Nothing } from './remembered.ts';
import { reviewValues, type ReviewValues } from './reviews.ts';
import { setupValues, withEvidence, type SetupSurroundings, type SetupValues } from './setup.ts';

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
}

export interface CalibratedAntennaOf {
  readonly antenna: Antenna;
  /** Null where the notes name no calibration file. */
  readonly calibration: CalibratedValues | null;
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
  const checks = checksOf(session.checks, marks, setups, times, rovers, job, frame, surfaces, recordings);
  const points = pointSets(session, frame, surfaces, files);
  const link = linkValues(session, checks, points, setups);
  const reviews = reviewValues(session, files);
  return { frame, geoid, marks, setups, antennas, checks, points, link, reviews };
}

const markTable = tableBy<MarkValues>(({ mark }) => mark.name);
const setupTable = tableBy<SetupValues>(({ setup }) => setup.name);
const antennaTable = tableBy<CalibratedAntennaOf>(({ antenna }) => antenna.name);

const orNull = <Thing extends object>(thing: Thing | Nothing): Thing | null =>
  thing === NOTHING ? null : (thing as Thing);

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
        surroundings,
      ),
  ),
);

/** Setups with what was recorded of them. */
function withRecords(noted: readonly SetupValues[], frame: Frame, files: Files): readonly SetupValues[] {
  if (recordedIn(noted).length === 0) return noted;
  const evidence = (file: Quoted | null) => (file ? bytesOf(file, files) : NOTHING);
  const setups = noted.map((values) => {
    const { captured, rawLog } = values.setup;
    return captured || rawLog ? recordedSetup(values, evidence(captured), evidence(rawLog), frame) : values;
  });
  return interned(setups);
}
const recordedIn = foundInEach((values: SetupValues) =>
  values.setup.captured || values.setup.rawLog ? [values] : [],
);

type Recordings = ReadonlyMap<Check, RecordingValues>;

/** What was recorded of checks; the same table for the same checks and contents. */
function recordingsOf({ checks, rovers }: Session, frame: Frame, files: Files): Recordings {
  const logged = loggedIn(checks);
  const recordings = logged.map((check) => {
    const file = check.observed?.recording?.file;
    const rover = check.by ? rovers.get(check.by.name) : undefined;
    return file ? recordingOf(check, bytesOf(file, files), rover ?? NOTHING, frame) : NOTHING;
  });
  return recordingTable(interned(logged), interned(recordings));
}
const loggedIn = foundInEach((check: Check) => (check.observed?.recording ? [check] : []));
const recordingTable = remembered(
  (checks: readonly Check[], recordings: readonly (RecordingValues | Nothing)[]): Recordings =>
    new Map(
      checks.flatMap((check, index) => {
        const recording = orNull<RecordingValues>(recordings[index] ?? NOTHING);
        return recording ? [[check, recording]] : [];
      }),
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

/** The bytes of a recording, or a refusal that is the same object for the same reason. */
function bytesOf({ text, place }: Quoted, files: Files): Uint8Array | Refusal {
  const bytes = files.bytes(resolvePath(place.path, text));
  return isRefusal(bytes) ? unreadable(bytes.refused) : bytes;
}

const recordedSetup = remembered(
  (
    setup: SetupValues,
    captured: Uint8Array | Refusal | Nothing,
    rawLog: Uint8Array | Refusal | Nothing,
    frame: Frame,
  ): SetupValues =>
    withEvidence(setup, orNull<Uint8Array | Refusal>(captured), orNull<Uint8Array | Refusal>(rawLog), frame),
);
const recordingOf = remembered(
  (
    check: Check,
    log: Uint8Array | Refusal | Nothing,
    rover: Rover | Nothing,
    frame: Frame,
  ): RecordingValues | Nothing => {
    const recording = check.observed?.recording;
    const bytes = orNull<Uint8Array | Refusal>(log);
    return recording && bytes
      ? recordingValues(check, recording, bytes, orNull<Rover>(rover), frame)
      : NOTHING;
  },
);

type Surfaces = ReadonlyMap<string, LocalSurface>;
const surfacesOf = remembered(
  (surfaces: readonly LocalSurface[]): Surfaces =>
    new Map(surfaces.map((surface) => [surface.name, surface])),
);

interface EventInstants {
  readonly instants: readonly number[];
}
const instantsOf = remembered((events: Session['events'], job: Job | Nothing): EventInstants => ({
  instants: events
    .map((event) => instantOf(event.at, orNull<Job>(job)))
    .filter((instant) => instant !== null)
    .sort((one, other) => one - other),
}));

/** Antennas whose notes give no phase centre take it from their calibration file. */
function antennasOf(session: Session, files: Files): CalibratedAntennaOf[] {
  const date = session.job?.date;
  const day = dayToken(date && !isHole(date) ? date.day * 86_400 : null);
  return [...session.antennas.values()].map((antenna) =>
    antennaOf(antenna, antenna.calibration ? bytesOf(antenna.calibration.file, files) : NOTHING, day),
  );
}

const antennaOf = remembered(
  (antenna: Antenna, file: Uint8Array | Refusal | Nothing, day: DayToken): CalibratedAntennaOf => {
    if (!antenna.calibration || file === NOTHING) return { antenna, calibration: null };
    const calibration = calibrated(antenna, antenna.calibration, file as Uint8Array | Refusal, day.seconds);
    return {
      antenna: antenna.phaseCentre ? antenna : { ...antenna, phaseCentre: calibration.phaseCentre },
      calibration,
    };
  },
);

interface DayToken {
  readonly seconds: number | null;
}
const dayTokens = new Map<number | null, DayToken>();
function dayToken(seconds: number | null): DayToken {
  const token = dayTokens.get(seconds) ?? { seconds };
  dayTokens.set(seconds, token);
  return token;
}
const refusals = new Map<string, Refusal>();
function unreadable(because: string): Refusal {
  const known = refusals.get(because) ?? { refused: because };
  refusals.set(because, known);
  return known;
}

/** Events that name no setup happened to all of them. */
const eventsBySetup = remembered((events: Session['events'], job: Job | Nothing) => {
  const named = new Set(events.map(({ on }) => on?.name));
  const of = (name: string | undefined) =>
    instantsOf(interned(events.filter(({ on }) => on === null || on.name === name)), job);
  const common = of(undefined);
  return ({ name }: Setup): EventInstants => (named.has(name) ? of(name) : common);
});

/** The base of a check: the one it names, else the one that stood at its time, else the only one. */
function setupFor(
  check: Pick<Check, 'from' | 'at'>,
  setups: Table<SetupValues>,
  begun: readonly SetupTime[],
  job: Job | null,
): SetupValues | null {
  if (check.from) return setups.get(check.from.name) ?? null;
  if (setups.size === 1) return valuesOf(setups)[0] ?? null;
  const instant = instantOf(check.at, job);
  if (instant === null) return null;
  // Of those that stood at that time the one that was begun last.
  for (let index = countBegun(begun, instant) - 1; index >= 0; index -= 1) {
    const time = begun[index];
    if (time && time.until >= instant) return setups.get(time.name) ?? null;
  }
  return null;
}

/** From when to when a setup stood, in seconds since 1970-01-01 UTC; without end where none is known. */
interface SetupTime {
  readonly name: string;
  readonly from: number;
  readonly until: number;
}

/** By their beginning; the same list as long as no time is another one. */
function timesOf(setups: readonly SetupValues[]): readonly SetupTime[] {
  const times = setups.map(({ setup, from, until }) => ({
    name: setup.name,
    from: from ?? -Infinity,
    until: until ?? Infinity,
  }));
  const same = (time: SetupTime, index: number) => {
    const before = latestTimes.asNoted[index];
    return before?.name === time.name && before.from === time.from && before.until === time.until;
  };
  if (times.length === latestTimes.asNoted.length && times.every(same)) return latestTimes.byBeginning;
  const byBeginning = times.toSorted((one, other) => (one.from === other.from ? 0 : one.from - other.from));
  latestTimes = { asNoted: times, byBeginning };
  return byBeginning;
}
let latestTimes: Record<'asNoted' | 'byBeginning', readonly SetupTime[]> = { asNoted: [], byBeginning: [] };

/** How many setups had begun at an instant, by halving. */
function countBegun(begun: readonly SetupTime[], instant: number): number {
  let [low, high] = [0, begun.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((begun[middle]?.from ?? Infinity) <= instant) low = middle + 1;
    else high = middle;
  }
  return low;
}

type Geoids = (name: string, file: boolean) => Maybe<GeoidModel>;

/** Models by name; a grid file is looked for beside the session. */
function geoidsOf(session: Session, files: Files): Geoids {
  return (name, file) => {
    const asked: Pick<GeoidName, 'name' | 'file'> = { name, file };
    if (isBuiltIn(asked as GeoidName)) return EGM96;
    if (!file)
      return hole(
        `the geoid model ${name} is not known; name a grid file in double quotes, or EGM96`,
        session.job?.geoid?.place ?? null,
      );
    const bytes = files.bytes(resolvePath(session.document.path, name));
    if (isRefusal(bytes))
      return hole(
        `the geoid grid ${name} cannot be read: ${bytes.refused}`,
        session.job?.geoid?.place ?? null,
      );
    return geoidFromFile(bytes, name);
  };
}

/** Models that keyed heights name, resolved once so that the answer can be remembered. */
function modelsByName(session: Session, geoids: Geoids): readonly NamedModel[] {
  const names = new Set(modelsNamed(valuesOf(session.setups)));
  return interned([...names].map((name) => namedModel(geoids(name, name.includes('.')), nameToken(name))));
}
const modelsNamed = foundInEach(({ keyed }: Setup) =>
  keyed.flatMap(({ height }) => (height?.geoid ? [height.geoid.name] : [])),
);
interface NamedModel {
  readonly name: string;
  readonly model: Maybe<GeoidModel>;
}
const tokens = new Map<string, { readonly name: string }>();
function nameToken(name: string): { readonly name: string } {
  const token = tokens.get(name) ?? { name };
  tokens.set(name, token);
  return token;
}
const namedModel = remembered((model: GeoidModel | Hole, token: { readonly name: string }): NamedModel => ({
  name: token.name,
  model,
}));

const surroundingsOf = remembered(
  (frame: Frame, surfaces: Surfaces, models: readonly NamedModel[]): SetupSurroundings => ({
    frame,
    surfaces,
    geoid: (name) =>
      models.find((model) => model.name === name)?.model ?? hole(`the geoid model ${name} is not known`),
  }),
);
