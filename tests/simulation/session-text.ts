/** Writes a simulated day as the session file that its surveyor would have typed. */
import { toSexagesimal } from './angles.ts';
import type { BaseSetting, Reading } from './base.ts';
import type { Shown } from './controller.ts';
import type { Day, Observation, Scene } from './day.ts';
import type { PublishedMark } from './planted.ts';
import type { Graticule } from './world.ts';

export interface TextOptions {
  /** The path under which the session names the geoid grid; without it no geoid is named. */
  readonly geoid?: string;
  /** A whole `tolerance` detail, `35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical`. */
  readonly tolerance?: string;
  /** Whether the knock at noon was seen and written down; by default it is where the base moved. */
  readonly disturbanceNoted?: boolean;
  /** Whether the points stand in the text; by default they do. */
  readonly points?: boolean;
}

export function sessionText(day: Day, options: TextOptions = {}): string {
  const { scene } = day;
  const { published } = scene.baseMark;
  const known = [scene.baseMark, ...scene.checkMarks].map((mark) => mark.published);
  const disturbance = options.disturbanceNoted ?? day.planted?.moved !== undefined;
  const entries = [
    jobEntry(day, options),
    ...[...known, scene.situation.yesterday.mark].map((mark) => markEntry(mark, scene)),
    [
      'surface CHART "port chart datum"',
      detail('offset', `${scene.situation.chartBelow.toFixed(2)} m below orthometric`),
    ],
    antennaEntry(day),
    roverEntry(day, options),
    setupEntry(day, published.name),
    ...happenings(day, disturbance),
    ...((options.points ?? true) ? pointsEntry(day) : []),
  ];
  return `${entries.map((entry) => entry.join('\n')).join('\n\n')}\n`;
}

type Entry = readonly string[];

const NAIL = 'NAIL-1';

function jobEntry({ scene }: Day, options: TextOptions): Entry {
  const { noise } = scene;
  return [
    `job "simulated day ${String(scene.seed)}"`,
    detail('date', scene.date),
    detail('clock', offset(scene.clockOffset)),
    detail('observer', '"S. Observer"'),
    detail('grid', scene.grid.name),
    ...(options.geoid === undefined ? [] : [detail('geoid', `"${options.geoid}"`)]),
    detail('confidence', '95 %'),
    ...(options.tolerance === undefined ? [] : [detail('tolerance', options.tolerance)]),
    `  # vectors: ${millimetres(noise.pairHorizontal.constant)} + ${noise.pairHorizontal.ppm.toFixed(2)} ppm an axis, ${millimetres(noise.pairUp.constant)} + ${noise.pairUp.ppm.toFixed(2)} ppm up`,
  ];
}

function markEntry(mark: PublishedMark, scene: Scene): Entry {
  const { noise } = scene;
  return [
    `mark ${mark.name} "${mark.description}"`,
    detail('position', scene.form === 'grid' ? gridText(mark.grid) : placeText(mark.place)),
    detail('height', `${metres(mark.orthometric)} orthometric`),
    detail('separation', metres(mark.separation)),
    detail(
      'uncertainty',
      `${millimetres(noise.markHorizontal)} horizontal, ${millimetres(noise.markVertical)} vertical`,
    ),
    detail('source', `"control register" ${scene.date.slice(0, 4)}-01-01`),
    detail('found', 'intact'),
  ];
}

function antennaEntry({ scene }: Day): Entry {
  const { name, phaseCentre, rim } = scene.baseAntenna;
  return [
    `antenna ${name} "base antenna"`,
    detail('phase-centre', `${millimetres(phaseCentre)} above arp`),
    detail('tape-point', `RIM radius ${millimetres(rim.radius)}, ${millimetres(rim.rise)} above arp`),
  ];
}

function roverEntry({ scene, noted }: Day, options: TextOptions): Entry {
  const { scale, siteCalibration, geoid } = noted.rover;
  const model = geoid === undefined ? 'none' : options.geoid === undefined ? undefined : `"${options.geoid}"`;
  return [
    'rover R1',
    detail('pole', `${metres(scene.roverPole)} to arp`),
    ...(model === undefined ? [] : [detail('geoid', model)]),
    ...(scale === undefined ? [] : [detail('scale', scale.factor.toFixed(8))]),
    ...(siteCalibration === undefined ? [detail('site-calibration', 'none')] : []),
  ];
}

function setupEntry({ scene, noted }: Day, mark: string): Entry {
  const { setting, readings, extension } = noted;
  const { setup, autonomous, baseAntenna, noise } = scene;
  return [
    `setup BASE on ${mark} with ${baseAntenna.name} at ${clock(setup.from)} until ${clock(setup.until)}`,
    ...readings.map((reading) => detail('measured', `${readingText(reading)}, at ${clock(reading.minutes)}`)),
    ...(extension === 0 ? [] : [detail('extension', millimetres(extension))]),
    detail('plummet', `± ${millimetres(noise.plummet)}`),
    detail(
      'autonomous',
      `${coarsePlaceText(autonomous)}, height ${autonomous.height.toFixed(0)} m ellipsoidal`,
    ),
    ...keyedDetails(setting, baseAntenna.name),
  ];
}

function keyedDetails(setting: BaseSetting, antenna: string): Entry {
  const place =
    setting.position.kind === 'grid'
      ? gridText(setting.position.position)
      : placeText(setting.position.place);
  return [
    detail('keyed', `position ${place}, height ${metres(setting.height)} ellipsoidal`),
    detail('keyed', `antenna-height ${metres(setting.antennaHeight)} to ${setting.antennaReference}`),
    ...(setting.antennaTypeKnown ? [detail('keyed', `antenna-type ${antenna}`)] : []),
  ];
}

function readingText(reading: Reading): string {
  if (reading.to.kind === 'rim') return `${metres(reading.length)} to RIM`;
  const aside = reading.to.offCentre === 0 ? '' : `, ${millimetres(reading.to.offCentre)} off centre`;
  return `${metres(reading.length)} to foot${aside}`;
}

/** Checks, and the knock at noon where it was noted, in the order of the day. */
function happenings(day: Day, disturbance: boolean): readonly Entry[] {
  const { scene, observations } = day;
  const checks = observations
    .filter(({ occupation }) => occupation.on !== 'point')
    .map((check) => ({ minutes: check.occupation.minutes, entry: checkEntry(check, day) }));
  const knock = {
    minutes: scene.disturbance,
    entry: [`event disturbance at ${clock(scene.disturbance)} "somebody passed close to the tripod"`],
  };
  return [...checks, ...(disturbance ? [knock] : [])]
    .sort((first, second) => first.minutes - second.minutes)
    .map(({ entry }) => entry);
}

function checkEntry({ occupation, status, shown, solution }: Observation, { scene, noted }: Day): Entry {
  const told =
    noted.rover.pole === scene.roverPole ? [] : [detail('pole', `${metres(noted.rover.pole)} to arp`)];
  return [
    `check ${occupation.name} on ${occupation.mark?.published.name ?? NAIL} at ${clock(occupation.minutes)} by R1`,
    ...told,
    detail('observed', shownText(shown, scene.form)),
    detail(
      'quality',
      `${status}, 60 epochs, pdop ${solution.pdop.toFixed(1)}, ${String(solution.satellites)} satellites`,
    ),
  ];
}

function pointsEntry({ scene, observations }: Day): readonly Entry[] {
  const points = observations.filter(({ occupation }) => occupation.on === 'point');
  if (points.length === 0) return [];
  const columns =
    scene.form === 'grid'
      ? 'name, east m, north m, height m orthometric, time local'
      : 'name, latitude °, longitude °, height m ellipsoidal, time local';
  return [
    [
      'points',
      detail('from', 'BASE'),
      detail('by', 'R1'),
      detail('state', 'as-broadcast'),
      detail('columns', columns),
      ...points.map((point) => detail('row', pointCells(point, scene.form).join(', '))),
    ],
  ];
}

/** The same points as a CSV file with a header. */
export function pointsCsv({ scene, observations }: Day): string {
  const header =
    scene.form === 'grid' ? 'name,east,north,height,time' : 'name,latitude,longitude,height,time';
  const rows = observations
    .filter(({ occupation }) => occupation.on === 'point')
    .map((point) => pointCells(point, scene.form).join(','));
  return `${[header, ...rows].join('\n')}\n`;
}

function pointCells({ occupation, shown }: Observation, form: Scene['form']): readonly string[] {
  const time = clock(occupation.minutes);
  if (form === 'grid') {
    const { east, north } = shown.grid;
    return [occupation.name, east.toFixed(3), north.toFixed(3), shown.height.toFixed(3), time];
  }
  const { latitude, longitude, height } = shown.geodetic;
  return [occupation.name, latitude.toFixed(9), longitude.toFixed(9), height.toFixed(3), time];
}

function shownText(shown: Shown, form: Scene['form']): string {
  return form === 'grid'
    ? `${gridText(shown.grid)}, height ${metres(shown.height)} orthometric`
    : `${placeText(shown.geodetic)}, height ${metres(shown.geodetic.height)} ellipsoidal`;
}

function gridText({ east, north }: { readonly east: number; readonly north: number }): string {
  return `${metres(east)} E, ${metres(north)} N`;
}

function placeText({ latitude, longitude }: Graticule): string {
  return `${angleText(latitude, 5)}${latitude < 0 ? 'S' : 'N'}, ${angleText(longitude, 5)}${longitude < 0 ? 'W' : 'E'}`;
}

function coarsePlaceText({ latitude, longitude }: Graticule): string {
  return `${angleText(latitude, 1)}${latitude < 0 ? 'S' : 'N'}, ${angleText(longitude, 1)}${longitude < 0 ? 'W' : 'E'}`;
}

/** Rounded to the digits first, so that no sixtieth second is ever written. */
function angleText(angle: number, digits: number): string {
  const step = 3600 * 10 ** digits;
  const { degrees, minutes, seconds } = toSexagesimal(Math.round(angle * step) / step);
  return `${String(degrees)}°${minutes}'${seconds.slice(0, 3 + digits)}"`;
}

function metres(value: number): string {
  return `${value.toFixed(3)} m`;
}

function millimetres(value: number): string {
  return `${String(Number((value * 1000).toFixed(1)))} mm`;
}

function clock(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

function offset(minutes: number): string {
  return `UTC${minutes < 0 ? '-' : '+'}${clock(Math.abs(minutes))}`;
}

function detail(word: string, rest: string): string {
  return `  ${word.padEnd(11)} ${rest}`;
}
