/** Simulated days for the diagnosis: each with a place where the slip that is planted has room, and with plates and datums as published. */
import type { DayOptions, Scene } from '../simulation/day.ts';
import { drawScene, liveDay } from '../simulation/day.ts';
import { geoidAsGtx } from '../simulation/geoid.ts';
import type { OtherDatum, Planted, SlipName } from '../simulation/planted.ts';
import { waysOf } from '../simulation/planted.ts';
import { sessionText } from '../simulation/session-text.ts';
import type { Ellipsoid, EastNorthUp, Graticule } from '../simulation/world.ts';
import { INTERNATIONAL_1924, localFrame, toGeocentric, toLocal, WGS84 } from '../simulation/world.ts';
import { openDocument } from '../../grammar/document.ts';
import { deriveSession } from '../../server/derive/derivation.ts';
import type { Files } from '../../server/session/files.ts';
import { sessionOf } from '../../server/session/session.ts';
import { diagnosesOf, type Diagnosis } from '../../server/slips/diagnosis.ts';
import { seedOf, type Series } from './series.ts';

export interface PlantedDay {
  readonly scene: Scene;
  readonly planted: Planted;
}

/** The day of this number for a slip, in one of its ways; null where this draw has no room for it. */
export function plantedDay(slip: SlipName, number: number, series: Series): PlantedDay | null {
  const scene = sceneFor(slip, number, series);
  const ways = waysOf(slip, scene.situation);
  const planted = ways[number % Math.max(1, ways.length)];
  return planted ? { scene, planted } : null;
}

/** What the program makes of the notes of a day. */
export function diagnosisOf(
  scene: Scene,
  planted: Planted | undefined,
  notes: 'faithful' | 'unaware' = 'unaware',
): Diagnosis | null {
  const text = sessionText(liveDay(scene, planted, notes), { geoid: 'region.gtx', points: false });
  const grid = geoidAsGtx(scene.geoid);
  const files: Files = { document: () => ({ refused: 'there is none' }), bytes: () => grid };
  const session = sessionOf(openDocument('day.trib', text), files);
  return diagnosesOf(session, deriveSession(session, files))[0] ?? null;
}

/** Options have streams of their own, so that places without a wish of theirs stay as drawn. */
function sceneFor(slip: SlipName, number: number, series: Series): Scene {
  const seed = seedOf(series, slip, number);
  const scene = drawScene({ seed, points: 0, ...optionsFor(slip, number) });
  if (slip !== 'epoch') return scene;
  const { velocity } = plateAt(number);
  const { plate } = scene.situation;
  return { ...scene, situation: { ...scene.situation, plate: { ...plate, velocity } } };
}

function optionsFor(slip: SlipName, number: number): Partial<DayOptions> {
  switch (slip) {
    case 'survey-feet':
    case 'zone':
      return { keyedForm: 'grid' };
    case 'east-north-swapped':
      // Elsewhere a north of thousands of kilometres is no east that any projection takes.
      return { keyedForm: 'grid', latitude: 3 + ((number * 7) % 24) };
    case 'hemisphere':
      return { keyedForm: 'geographic' };
    case 'rover-geoid-off':
    case 'rover-scale':
    case 'rover-site-calibration':
      return { form: 'grid' };
    case 'datum':
      return datumAt(number);
    case 'epoch':
      return plateAt(number).place;
    default:
      return {};
  }
}

/** Clarke 1866 and the Australian National Spheroid (EPSG ellipsoids 7008 and 7003). */
const CLARKE_1866: Ellipsoid = { semiMajor: 6378206.4, flattening: 1 / 294.978698214 };
const AUSTRALIAN: Ellipsoid = { semiMajor: 6378160, flattening: 1 / 298.25 };

/** Translations to WGS 84 from the EPSG dataset (operations 1133, 1173 and 1108), each in the middle of its area. */
const OLD_DATUMS: readonly { readonly place: Graticule; readonly datum: OtherDatum }[] = [
  {
    place: { latitude: 44, longitude: 8 },
    datum: { name: 'ED50', ellipsoid: INTERNATIONAL_1924, translation: { x: -87, y: -98, z: -121 } },
  },
  {
    place: { latitude: 40, longitude: -98 },
    datum: { name: 'NAD27', ellipsoid: CLARKE_1866, translation: { x: -8, y: 160, z: 176 } },
  },
  {
    place: { latitude: -30, longitude: 140 },
    datum: { name: 'AGD66', ellipsoid: AUSTRALIAN, translation: { x: -133, y: -48, z: 148 } },
  },
];

function datumAt(number: number): Partial<DayOptions> {
  const { place, datum } = OLD_DATUMS[number % OLD_DATUMS.length] ?? { place: {}, datum: undefined };
  return { ...place, otherDatums: datum ? [datum] : [] };
}

/**
 * Rotation of plates in milli-arc-seconds a year, and a place on each: Altamimi et al. (2017), ITRF2014 plate motion model,
 * Geophysical Journal International 209, table 1.
 */
const PLATES: readonly {
  readonly place: Graticule;
  readonly turn: { readonly x: number; readonly y: number; readonly z: number };
}[] = [
  { place: { latitude: 50, longitude: 10 }, turn: { x: -0.085, y: -0.531, z: 0.77 } },
  { place: { latitude: 40, longitude: -98 }, turn: { x: 0.024, y: -0.694, z: -0.063 } },
  { place: { latitude: -30, longitude: 140 }, turn: { x: 1.51, y: 1.182, z: 1.215 } },
  { place: { latitude: 10, longitude: 10 }, turn: { x: 0.099, y: -0.614, z: 0.733 } },
];

function plateAt(number: number): { readonly place: Graticule; readonly velocity: EastNorthUp } {
  const { place, turn } = PLATES[number % PLATES.length] ?? {
    place: { latitude: 0, longitude: 0 },
    turn: { x: 0, y: 0, z: 0 },
  };
  const r = toGeocentric({ ...place, height: 0 }, WGS84);
  const rate = Math.PI / 180 / 3600 / 1000;
  const moved = {
    x: (turn.y * r.z - turn.z * r.y) * rate,
    y: (turn.z * r.x - turn.x * r.z) * rate,
    z: (turn.x * r.y - turn.y * r.x) * rate,
  };
  return { place, velocity: { ...toLocal(moved, localFrame(place)), up: 0 } };
}
