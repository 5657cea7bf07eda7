/** The key card of a setup: what the receiver should be told, in the order in which it asks, with what to beware of. */
import { allOf, showNumber, showSigma } from '../../quantities/show.ts';
import { hole, isHole, type Hole, type Maybe, type Value } from '../../quantities/value.ts';
import { sameDatum, type Frame } from '../../derive/positions/frame.ts';
import type { KeyedValues } from '../../derive/setups/keyed.ts';
import type { SetupValues, Tell } from '../../derive/setups/setup.ts';
import { bearingOn } from '../../findings/keyed/bears-on-told.ts';
import type { Finding } from '../../findings/finding.ts';
import type { Inspection } from '../../inspect.ts';
import { lineInWords } from '../../session/where.ts';
import { keyedBeside, type Beside } from './keyed-beside.ts';
import { onGround } from './on-ground.ts';
import { inReceiver, type InReceiver } from './receiver-form.ts';

export interface KeyCard {
  readonly setup: string;
  readonly mark: string;
  readonly lines: readonly KeyLine[];
  /** The antenna reference point as messages 1005 and 1006 carry it, to look up in what the receiver sends. */
  readonly broadcast: readonly KeyLine[];
  readonly warnings: readonly string[];
}

export interface KeyLine {
  readonly label: string;
  /** Null where it cannot be said; the note then says why. */
  readonly value: string | null;
  readonly note: string;
  /** What was keyed last; null where nothing was, or where it cannot be compared. */
  readonly keyed: Beside | null;
}

/** Shown once, never certified. */
export const CAUTIONS =
  'The usual cautions: stand clear of the transmitting aerial, keep it and the poles away from overhead lines, keep the tripod out of traffic and walkways. Follow local rules and the person in charge of the site.';

/** A number that an error is about is not told: it would look as good as any other. */
export function keyCard(values: SetupValues, inspection: Inspection): KeyCard {
  const { setup, mark } = values;
  const { session, derivation, findings } = inspection;
  const bearing = bearingOn(values, findings, inspection);
  const errors = { mark: bearing.mark.find(isError), antenna: bearing.antenna.find(isError) };
  const wrong = (finding: Finding | undefined) =>
    finding && hole(`${lineInWords(session, finding.place)} has an error (${finding.code})`, finding.place);
  const tell = toldWithout(values.tell, wrong(errors.mark), wrong(errors.antenna));
  const arp = wrong(errors.mark ?? errors.antenna) ?? tell.arp;
  const whole = isHole(arp) ? { x: arp, y: arp, z: arp } : arp;
  const { keyed: system } = derivation.frame;
  const form = inReceiver(derivation.frame.job);
  const keyed = keyedBeside(values, session.antennas, form);
  const lines = [
    isHole(system)
      ? { label: 'Datum', value: null, note: system.hole, keyed: null }
      : { label: 'Datum', value: system.datum.name, note: system.datum.geographic ?? '', keyed: null },
    ...(form.position === 'grid'
      ? gridLines(values, derivation.frame, wrong(errors.mark), form)
      : [
          line('Latitude', tell.latitude, (value) => form.angle(value, 'N'), '', keyed.latitude),
          line('Longitude', tell.longitude, (value) => form.angle(value, 'E'), '', keyed.longitude),
        ]),
    tell.coarse
      ? line('Ellipsoidal height', tell.ellipsoidalHeight, toMetre, 'by EGM96, not for keying')
      : line(
          'Ellipsoidal height',
          tell.ellipsoidalHeight,
          form.length,
          'not the height above sea level',
          keyed.height,
        ),
    line(
      'Antenna height',
      tell.antennaHeight,
      form.length,
      `vertical, ${REFERENCES[tell.antennaReference] ?? ''}`,
      keyed.antennaHeight,
    ),
    {
      label: 'Antenna type',
      value: tell.antennaType,
      note: tell.antennaType ? '' : 'the setup names no antenna',
      keyed: tell.antennaType ? keyed.antennaType : null,
    },
  ];
  const broadcast = tell.coarse
    ? []
    : [line('X', whole.x, toTenth), line('Y', whole.y, toTenth), line('Z', whole.z, toTenth)];
  const missing = missingFrom(lines);
  return {
    setup: setup.name,
    mark: mark ? named(mark.mark.name, mark.mark.description) : (setup.on?.name ?? 'no mark'),
    lines,
    broadcast,
    warnings: [
      ...missing,
      ...coarsePosition(values),
      ...coarseHeight(values),
      ...doubtful([...bearing.mark, ...bearing.antenna], session),
      ...(missing.length > 0 ? [] : keyedSoFar(values, form)),
    ],
  };
}

/** Of the mark in the job's grid; a receiver that takes them projects from the datum that it was told itself. */
function gridLines(
  { mark }: SetupValues,
  { grid, keyed }: Frame,
  wrong: Hole | undefined,
  form: InReceiver,
): KeyLine[] {
  const note = isHole(grid) ? '' : [grid.code, grid.name].filter(Boolean).join('  ');
  const value = (part: Maybe<Value> | undefined) =>
    wrong ?? otherDatum(grid, keyed) ?? part ?? hole('no mark');
  return [line('East', value(mark?.east), form.length, note), line('North', value(mark?.north), form.length)];
}

const otherDatum = (grid: Frame['grid'], keyed: Frame['keyed']): Hole | undefined =>
  isHole(grid) || isHole(keyed) || sameDatum(grid.datum, keyed.datum)
    ? undefined
    : hole(
        `the grid is in ${grid.datum.name} and the receiver in ${keyed.datum.name}: set it to geographic coordinates`,
      );

const isError = ({ severity }: Finding) => severity === 'error';

/** What is missing already keeps its own reason. */
function toldWithout(tell: Tell, mark: Hole | undefined, antenna: Hole | undefined): Tell {
  const unless = (wrong: Hole | undefined, value: Maybe<Value>) => (wrong && !isHole(value) ? wrong : value);
  return {
    ...tell,
    latitude: unless(mark, tell.latitude),
    longitude: unless(mark, tell.longitude),
    ellipsoidalHeight: unless(mark, tell.ellipsoidalHeight),
    antennaHeight: unless(antenna, tell.antennaHeight),
  };
}

/** Lines that are probably wrong; the coarse model has a sentence of its own. */
function doubtful(findings: readonly Finding[], session: Inspection['session']): string[] {
  const warned = findings.filter(
    ({ severity, code }) => severity === 'warning' && code !== 'height/coarse-model',
  );
  const lines = warned.map(({ code, place }) => `${lineInWords(session, place)} (${code})`);
  return lines.length === 0 ? [] : [`This rests on what check warns of: ${allOf([...new Set(lines)])}.`];
}

const REFERENCES: Readonly<Record<string, string>> = {
  arp: 'to the antenna reference point (ARP)',
  'phase-centre': 'to the phase centre',
};

const toMetre = (metres: number) => `about ${showNumber(metres, 0)} m`;
/** Messages 1005 and 1006 count in tenths of a millimetre. */
const toTenth = (metres: number) => `${showNumber(metres, 4)} m`;

const named = (name: string, description: string | null) =>
  description === null ? name : `${name} (${description})`;

const line = (
  label: string,
  value: Maybe<Value>,
  show: (number: number) => string,
  note = '',
  keyed: Beside | null = null,
): KeyLine =>
  isHole(value)
    ? { label, value: null, note: value.hole, keyed: null }
    : { label, value: show(value.value), note, keyed };

/** What cannot be said, once for each reason. */
function missingFrom(lines: readonly KeyLine[]): string[] {
  const reasons = new Map<string, string[]>();
  for (const { label, value, note } of lines)
    if (value === null) reasons.set(note, [...(reasons.get(note) ?? []), label.toLowerCase()]);
  return [...reasons].map(
    ([reason, labels]) => `Do not key this yet, for want of ${allOf(labels)}: ${reason.replace(/[.]$/, '')}.`,
  );
}

/** A survey mark is known better than this [m]; a transformation from an old network often is not. */
const COARSE_POSITION = 0.1;

function coarsePosition({ tell: { latitude, longitude } }: SetupValues): string[] {
  if (isHole(latitude) || isHole(longitude)) return [];
  const north = onGround(latitude.sigma ?? 0, latitude.value, 'meridian');
  const east = onGround(longitude.sigma ?? 0, latitude.value, 'parallel');
  const most = Math.max(north, east);
  if (most < COARSE_POSITION) return [];
  return [
    `Latitude and longitude are good to ${showSigma(most, 'm')} here (standard uncertainty). Every point of the day shares this error, so that it shows neither between them nor against marks of the same grid.`,
  ];
}

const coarseHeight = ({ tell }: SetupValues): string[] =>
  tell.coarse
    ? [
        'The ellipsoidal height rests on EGM96, which can be a metre out: good for finding blunders, not for keying. Use the separation that is published for the mark, or the geoid model of the region.',
      ]
    : [];

/** How far what was keyed last is from this card; below a millimetre it is the same, and a coarse height says nothing. */
function keyedSoFar({ keyed, tell }: SetupValues, form: InReceiver): string[] {
  const last = keyed[keyed.length - 1];
  if (!last) return [];
  const { east, north, up } = last;
  if (isHole(east) || isHole(north) || isHole(up)) return [];
  const offBy = (metres: number, positive: string, negative: string) =>
    Math.abs(metres) < 0.001 ? '' : `${form.length(Math.abs(metres))} ${metres > 0 ? positive : negative}`;
  const parts = [
    offBy(east.value, 'east', 'west'),
    offBy(north.value, 'north', 'south'),
    tell.coarse ? '' : offBy(up.value, 'too high', 'too low'),
  ].filter((part) => part !== '');
  return parts.length === 0 ? [] : [`What was keyed${since(last)} puts the base ${allOf(parts)}.`];
}

const since = ({ state }: KeyedValues) => (state.number > 1 ? ' last' : '');
