/** The words of the language: which open an entry, which are a detail of which entry, and where a name stands. */
import { plainHyphens } from './characters.ts';

/** What stands directly behind a first word. */
export type Subject = 'name' | 'text' | 'value';

export interface WordEntry {
  readonly word: string;
  readonly subject: Subject;
  readonly details: readonly string[];
  readonly says: string;
  readonly example: string;
}
export interface DetailWord {
  readonly word: string;
  readonly subject: Subject;
  readonly repeatable: boolean;
  readonly says: string;
  readonly example: string;
}

export const ENTRIES: readonly WordEntry[] = [
  entry(
    'job',
    'text',
    'language date clock observer grid datum vertical geoid receiver confidence tolerance limits',
    'What the whole file is about: the day, its clock, its coordinate systems and what the job allows.',
    'job "North arm, as built"',
  ),
  entry(
    'use',
    'text',
    '',
    'Brings the marks, antennas, rovers, surfaces and ground grids of another file.',
    'use "../marks.trib"',
  ),
  entry(
    'mark',
    'name',
    'position height separation uncertainty relative epoch source found photo',
    'A survey mark with its published coordinates.',
    'mark PM-14 "brass bolt, pier deck"',
  ),
  entry(
    'antenna',
    'name',
    'phase-centre calibration tape-point hook fixed-height serial',
    'An antenna and where its points lie above the antenna reference point (ARP).',
    'antenna A1 "choke ring, serial 0413"',
  ),
  entry(
    'rover',
    'name',
    'pole uncertainty geoid scale site-calibration serial',
    'A rover and what its controller was told.',
    'rover R1 "serial 2207"',
  ),
  entry(
    'surface',
    'name',
    'offset',
    'A local height surface against another one.',
    'surface CHART "port chart datum"',
  ),
  entry(
    'ground',
    'name',
    'grid about scale shift',
    'A site grid whose distances are those on the ground: a projected grid scaled about a point and shifted.',
    'ground SITE "site grid, north arm"',
  ),
  entry(
    'setup',
    'name',
    'measured extension plummet bubble temperature autonomous keyed captured photo raw-log ephemerides remark',
    'A base receiver over a mark, from when to when.',
    'setup BASE on PM-14 with A1 at 07:50 until 15:40',
  ),
  entry(
    'radio',
    'name',
    'carrier channel rate spreading bandwidth coding power aerial clearance licence',
    'The settings of one end of the radio link.',
    'radio base',
  ),
  entry('stream', 'value', 'message tracked', 'The corrections that a base sends.', 'stream from BASE'),
  entry(
    'check',
    'name',
    'pole observed quality spread from remark',
    'A known mark occupied by the rover, to prove the base.',
    'check OPEN on PM-09 at 08:25 by R1',
  ),
  entry(
    'event',
    'name',
    '',
    'Something that may have moved the base: disturbance, re-level or power-loss.',
    'event disturbance at 11:10 "forklift passed"',
  ),
  entry(
    'points',
    'text',
    'from by state columns row separator decimal',
    'A file of measured points, or rows of them.',
    'points "pickup.csv"',
  ),
  entry(
    'point',
    'name',
    'pole observed quality spread from by state remark',
    'One measured point.',
    'point KERB-1 at 09:14 by R1',
  ),
  entry(
    'hazard',
    'text',
    'control',
    'What could hurt somebody at this site.',
    'hazard "vehicles on the pier deck"',
  ),
  entry(
    'note',
    'text',
    '',
    'Text that belongs to the record; a seal covers it.',
    'note "Wind from the west all day."',
  ),
  entry(
    'correction',
    'text',
    'by because',
    'Who confirmed which slip, when, and why.',
    'correction "extension left out" on BASE at 16:10',
  ),
  entry(
    'review',
    'text',
    '',
    'Who reviewed the session when, with the seal of what was reviewed.',
    'review "L. Brandt" 2026-05-21',
  ),
];

export const DETAILS: readonly DetailWord[] = [
  detail('language', 'name', 'The language of the notes.', 'language en'),
  detail('date', 'value', 'The day of the session.', 'date 2026-05-19'),
  detail('clock', 'name', 'The clock that the times are read from.', 'clock UTC+01:00'),
  detail('observer', 'text', 'Who was there.', 'observer "R. Okafor"'),
  detail('grid', 'name', 'The projected coordinate system of the job.', 'grid EPSG:3763'),
  detail('datum', 'name', 'The datum of the values keyed into the receiver.', 'datum EPSG:4258'),
  detail('vertical', 'text', 'The levelling datum of the heights.', 'vertical "harbour levelling datum"'),
  detail('geoid', 'name', 'The geoid model: a grid file or the built-in EGM96.', 'geoid "grids/region.gtx"'),
  detail(
    'receiver',
    'value',
    'The unit and the form in which the receiver takes numbers; the key card is written in them.',
    'receiver usft, dms',
  ),
  detail('confidence', 'value', 'How sure the expected values should be.', 'confidence 95 %'),
  detail(
    'tolerance',
    'value',
    'How far a check may be off.',
    'tolerance 35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical',
  ),
  detail(
    'limits',
    'value',
    'What the job asks of an observation.',
    'limits fixed, pdop 3, 8 satellites, 30 epochs',
  ),
  detail(
    'position',
    'value',
    'Published coordinates: grid, geographic or geocentric.',
    'position -41203.118 m E, 164904.902 m N',
  ),
  detail('height', 'value', 'A published height and the surface it stands on.', 'height 6.284 m orthometric'),
  detail('separation', 'value', 'The geoid above the ellipsoid at the mark (N).', 'separation 54.917 m'),
  detail(
    'uncertainty',
    'value',
    'Standard uncertainty: of published values, or of a rover with its base.',
    'uncertainty 8 mm horizontal, 12 mm vertical',
  ),
  detail(
    'relative',
    'value',
    'Standard uncertainty between marks of one source.',
    'relative 3 mm horizontal, 4 mm vertical',
  ),
  detail('epoch', 'value', 'The epoch of the coordinates.', 'epoch 2010.0'),
  detail(
    'source',
    'text',
    'Where the values were published, and when they were looked up.',
    'source "harbour control register" 2026-04-02',
  ),
  detail(
    'found',
    'name',
    'The state the mark was found in: intact, damaged, disturbed, destroyed or not-found.',
    'found intact',
  ),
  many('photo', 'text', 'A picture.', 'photo "pm14.jpg"'),
  detail('phase-centre', 'value', 'The phase centre above the ARP.', 'phase-centre 92 mm above arp'),
  detail(
    'calibration',
    'text',
    'The antenna calibration file, and the type in it.',
    'calibration "antennas.atx" "TRB-CHOKE       NONE" L1',
  ),
  many(
    'tape-point',
    'name',
    'A point on the antenna that a tape is held to.',
    'tape-point RIM radius 168 mm, 35 mm above arp',
  ),
  detail('hook', 'value', 'What a tape hook adds to its reading.', 'hook 104 mm'),
  detail(
    'fixed-height',
    'value',
    'The height of a fixed-height tripod, mark to ARP.',
    'fixed-height 1.800 m',
  ),
  detail('serial', 'name', 'The serial number.', 'serial "2207"'),
  detail('pole', 'value', 'The pole height that the controller was told.', 'pole 2.000 m to arp'),
  detail(
    'scale',
    'value',
    'Grid distance over ground distance: of a ground grid, or as the controller applied it.',
    'scale 1.000134',
  ),
  detail(
    'about',
    'value',
    'The point that a ground grid is scaled about, in the projected grid.',
    'about -41203.118 m E, 164904.902 m N',
  ),
  detail(
    'shift',
    'value',
    'What is added to the coordinates of a ground grid, so that none is taken for a projected one.',
    'shift 10000 m E, 20000 m N',
  ),
  detail(
    'site-calibration',
    'name',
    'The site calibration that the controller applied.',
    'site-calibration none',
  ),
  detail('offset', 'value', 'The surface against another one.', 'offset 2.00 m below orthometric'),
  many('measured', 'value', 'A taped reading.', 'measured 1.284 m to foot, 48 mm off centre, at 07:52'),
  many('extension', 'value', 'A pole between tripod and antenna.', 'extension 250 mm'),
  detail(
    'plummet',
    'value',
    'Standard uncertainty of the plummet, and when it was last adjusted.',
    'plummet ± 1 mm, adjusted 2026-03-02',
  ),
  detail(
    'bubble',
    'value',
    'The bubble: angle for each division, and when it was last adjusted.',
    "bubble 8' / 2 mm",
  ),
  detail('temperature', 'value', 'The temperature of the tape.', 'temperature 18 °C'),
  detail(
    'autonomous',
    'value',
    'Where the receiver found itself on its own.',
    `autonomous 41°09'08.2"N, 8°37'26.3"W, height 63 m ellipsoidal`,
  ),
  many('keyed', 'value', 'What the receiver was told.', 'keyed antenna-height 1.533 m to arp'),
  detail('captured', 'text', 'A recording of the broadcast corrections.', 'captured "base.rtcm3"'),
  detail('raw-log', 'text', 'The raw data file.', 'raw-log "base.26o"'),
  detail(
    'ephemerides',
    'text',
    'The navigation file of the raw data; with it the raw data say where the base stood and whether it was knocked.',
    'ephemerides "base.26n"',
  ),
  many('remark', 'text', 'Something worth knowing.', 'remark "legs on sandbags"'),
  detail('carrier', 'value', 'The carrier frequency.', 'carrier 461.0375 MHz'),
  detail('channel', 'value', 'The channel spacing.', 'channel 12.5 kHz'),
  detail('rate', 'value', 'The air rate.', 'rate 9.6 kbps'),
  detail('spreading', 'name', 'The spreading factor.', 'spreading SF7'),
  detail('bandwidth', 'value', 'The bandwidth.', 'bandwidth 250 kHz'),
  detail('coding', 'name', 'The coding rate.', 'coding 4/6'),
  detail('power', 'value', 'The transmitted power.', 'power 500 mW'),
  detail('aerial', 'value', 'The height of the aerial above ground.', 'aerial 3.0 m'),
  detail('clearance', 'value', 'The room under the receiver for a whip aerial.', 'clearance 300 mm'),
  detail(
    'licence',
    'text',
    'The licence under which the transmitter works.',
    'licence "harbour frequency plan, sheet 4"',
  ),
  many('message', 'name', 'A message and how often it is sent.', 'message 1077 every 1 s'),
  detail('tracked', 'value', 'What the base tracks.', 'tracked GPS 10, GLONASS 7, 2 signals'),
  detail(
    'observed',
    'value',
    'What the controller showed for the ground point.',
    'observed -40311.876 m E, 165377.410 m N, height 5.203 m orthometric',
  ),
  detail(
    'quality',
    'value',
    'How good the observation was.',
    'quality fixed, 60 epochs, pdop 1.5, 16 satellites',
  ),
  detail('spread', 'value', 'How far the epochs scattered.', 'spread 4 mm horizontal, 7 mm vertical'),
  detail('from', 'name', 'The base of these points, or of this check.', 'from BASE'),
  detail('by', 'name', 'The rover of these points, or the person.', 'by R1'),
  detail('state', 'name', 'Whether the points are as broadcast or already corrected.', 'state as-broadcast'),
  detail(
    'columns',
    'value',
    'What the columns of the rows mean.',
    'columns name, east m, north m, height m orthometric, code, time local',
  ),
  many('row', 'value', 'One row of points.', 'row 101, -40990.120, 165002.331, 5.870, KB, 09:12'),
  detail('separator', 'name', 'What parts the columns of the file.', 'separator semicolon'),
  detail('decimal', 'name', 'The decimal sign of the file.', 'decimal comma'),
  many('control', 'text', 'What was done about the hazard.', 'control "cones at 15 m"'),
  detail('because', 'text', 'The reason.', 'because "extension found in the case"'),
];

/** Words inside a line that a name follows. */
export const NAME_FOLLOWS: ReadonlySet<string> = new Set([
  'on',
  'with',
  'by',
  'from',
  'to',
  'in',
  'above',
  'below',
  'antenna-type',
  'plate',
  'seal',
  'geoid',
]);

const entries = new Map(ENTRIES.map((spec) => [spec.word, spec]));
const details = new Map(DETAILS.map((spec) => [spec.word, spec]));

/** Words are known without regard to case and to what a word processor made of a hyphen. */
export const entryWord = (word: string): WordEntry | undefined => entries.get(plain(word));
export const detailWord = (word: string): DetailWord | undefined => details.get(plain(word));
export const nameFollows = (word: string) => NAME_FOLLOWS.has(plain(word));

const plain = (word: string) => plainHyphens(word).toLowerCase();

function entry(word: string, subject: Subject, list: string, says: string, example: string): WordEntry {
  return {
    word,
    subject,
    details: list === '' ? [] : list.split(' '),
    says,
    example,
  };
}
function detail(word: string, subject: Subject, says: string, example: string): DetailWord {
  return { word, subject, repeatable: false, says, example };
}
function many(word: string, subject: Subject, says: string, example: string): DetailWord {
  return { ...detail(word, subject, says, example), repeatable: true };
}
