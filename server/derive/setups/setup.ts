/** A base over its mark: antenna height, what the receiver should be told, the true antenna position, and what was keyed. */
import type { Refusal } from '../../quantities/refusal.ts';
import { hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Antenna, LocalSurface, Setup } from '../../session/entries.ts';
import { instantOf, instantWithin } from '../../session/session.ts';
import { antennaHeight, standingsOf, type AntennaHeight, type Standing } from './antenna-height.ts';
import { broadcastsOf, captureValues, type CaptureValues } from './capture.ts';
import { rawLogValues, type RawLogValues } from './raw-log.ts';
import type { Frame } from '../positions/frame.ts';
import type { GeoidModel } from '../heights/geoid.ts';
import { keyedAntennaHeight, keyedValues, sumOf, type KeyedValues, type True } from './keyed.ts';
import { toGeocentric, type Located } from '../positions/locate.ts';
import { heightOn, type MarkValues } from '../marks/mark.ts';
import { continuedStates, keyedStates, type KeyedState } from './timeline.ts';
import { transformed } from '../positions/transform.ts';

export interface SetupValues {
  readonly setup: Setup;
  readonly mark: MarkValues | null;
  readonly antenna: Antenna | null;
  readonly height: AntennaHeight;
  /** The heights that the antenna stood at, in order of time. */
  readonly standings: readonly Standing[];
  readonly tell: Tell;
  readonly arp: Maybe<{ readonly x: Value; readonly y: Value; readonly z: Value }>;
  readonly keyed: readonly KeyedValues[];
  /** What was broadcast from when on: as keyed, or as a recording shows it where that is something else. */
  readonly broadcasts: readonly KeyedValues[];
  readonly captured: CaptureValues | null;
  readonly rawLog: RawLogValues | null;
  /** Seconds since 1970-01-01 UTC. */
  readonly from: number | null;
  readonly until: number | null;
}

/** What the receiver should be told. */
export interface Tell {
  readonly latitude: Maybe<Value>;
  readonly longitude: Maybe<Value>;
  readonly ellipsoidalHeight: Maybe<Value>;
  /** To the point that the keyed antenna height names, else to the ARP. */
  readonly antennaHeight: Maybe<Value>;
  readonly antennaReference: string;
  readonly antennaType: string | null;
  readonly datum: string | null;
  /** The antenna as it stands by now, geocentric. */
  readonly arp: SetupValues['arp'];
  /** The height rests on a coarse geoid model: good for finding blunders, not for keying. */
  readonly coarse: boolean;
}

export interface SetupSurroundings {
  readonly frame: Frame;
  readonly geoid: (name: string, file: boolean) => Maybe<GeoidModel>;
  readonly surfaces: ReadonlyMap<string, LocalSurface>;
}

/** @param events instants of what happened to this base, in order; `relevelled` those at which it was levelled anew */
export function setupValues(
  setup: Setup,
  mark: MarkValues | null,
  antenna: Antenna | null,
  events: readonly number[],
  relevelled: readonly number[],
  surroundings: SetupSurroundings,
): SetupValues {
  const { frame, geoid, surfaces } = surroundings;
  const keyable = keyablePosition(mark, frame);
  const from = instantOf(setup.at, frame.job);
  const until = instantOf(setup.until, frame.job);
  const instants = setup.measured.map((measured) => instantWithin(measured.at, frame.job, [{ from, until }]));
  const height = antennaHeight(setup, antenna, instants, events);
  const stood = relevelled.filter((at) => (from === null || at >= from) && (until === null || at <= until));
  const standings = standingsOf(height, stood, setup);
  const truths = standings.map((standing) => ({
    mark,
    keyable,
    standing,
    arp: arpOf(keyable, mark, standing.arp, setup.name),
  }));
  const states = continuedStates(
    keyedStates(setup, frame.job),
    standings.filter(({ anew }) => anew).flatMap(({ since }) => since ?? []),
  );
  const last = states[states.length - 1] ?? null;
  const begun = truths[0] as True;
  const now = truths.findLast(({ standing }) => standing.anew || toldSo(standing, last, antenna)) ?? begun;
  const keyed = states.map((state) => {
    const truth = truths.findLast(
      ({ standing }) => stoodBy(standing, state.from) && (standing.anew || toldSo(standing, state, antenna)),
    );
    return keyedValues(state, truth ?? begun, antenna, frame, geoid, surfaces);
  });
  return {
    setup,
    mark,
    antenna,
    height,
    standings,
    tell: tellOf(
      states[states.length - 1]?.antennaHeight?.to?.name ?? 'arp',
      keyable,
      mark,
      now,
      setup,
      frame,
      antenna,
    ),
    arp: begun.arp,
    keyed,
    broadcasts: keyed,
    captured: null,
    rawLog: null,
    from,
    until,
  };
}

/** A tape is read around the time of the keying. */
const stoodBy = ({ since }: Pick<Standing, 'since'>, from: number | null) =>
  since === null || (from !== null && since <= from + AROUND);
const AROUND = 1800;

/** The receiver was told the height that was taped then, so that the antenna did stand so. */
function toldSo({ since, arp }: Standing, state: KeyedState | null, antenna: Antenna | null): boolean {
  const told = state && stoodBy({ since }, state.from) ? keyedAntennaHeight(state, antenna) : null;
  return told !== null && !isHole(told) && !isHole(arp) && Math.abs(told.value - arp.value) <= AS_TAPED;
}
/** What a careful person rounds, and what a tape is read to; metres. */
const AS_TAPED = 0.003;

/** The same setup with what was recorded of it; null where nothing is named. */
export function withEvidence(
  setup: SetupValues,
  captured: Uint8Array | Refusal | null,
  rawLog: Uint8Array | Refusal | null,
  ephemerides: Uint8Array | Refusal | null,
  frame: Frame,
): SetupValues {
  const files = setup.setup;
  const capture = captured && files.captured ? captureValues(setup, files.captured, captured, frame) : null;
  const log = rawLog && files.rawLog ? rawLogValues(setup, files.rawLog, rawLog, ephemerides, frame) : null;
  return { ...setup, captured: capture, broadcasts: broadcastsOf(setup, capture), rawLog: log };
}

/** The mark in the datum of the keyed values. */
function keyablePosition(mark: MarkValues | null, frame: Frame): Maybe<Located> {
  if (!mark) return hole('the setup stands on no known mark');
  if (isHole(mark.located)) return mark.located;
  if (isHole(frame.keyed)) return frame.keyed;
  const epoch = mark.mark.epoch && !isHole(mark.mark.epoch) ? mark.mark.epoch.value : null;
  // Straight from where it was published, unless the notes name the way from the job's own datum.
  const { located, height } = frame.keyedBy
    ? { located: mark.located, height: mark.ellipsoidalHeight }
    : mark.published;
  if (isHole(located)) return located;
  return transformed(located, height, frame.keyed, {
    about: mark.mark.name,
    by: frame.keyedBy,
    epoch,
    asked: frame,
  });
}

function arpOf(position: Maybe<Located>, mark: MarkValues | null, arp: Maybe<Value>, setup: string) {
  if (isHole(position)) return position;
  const height = mark ? heightOn(position, mark) : hole('the mark has no height');
  if (isHole(height)) return height;
  if (isHole(arp)) return arp;
  return toGeocentric(
    position,
    sumOf(`ellipsoidal height of the ARP at ${setup}`, height, arp),
    `the ARP at ${setup}`,
  );
}

function tellOf(
  reference: string,
  position: Maybe<Located>,
  mark: MarkValues | null,
  { standing, arp }: Pick<True, 'standing' | 'arp'>,
  setup: Setup,
  frame: Frame,
  antenna: Antenna | null,
): Tell {
  const toPhaseCentre = reference === 'phase-centre';
  return {
    latitude: isHole(position) ? position : position.latitude,
    longitude: isHole(position) ? position : position.longitude,
    ellipsoidalHeight: isHole(position)
      ? position
      : mark
        ? heightOn(position, mark)
        : hole(`${setup.name} stands on no known mark`),
    antennaHeight: toPhaseCentre ? standing.phaseCentre : standing.arp,
    arp,
    antennaReference: toPhaseCentre ? 'phase-centre' : 'arp',
    antennaType: antenna ? (antenna.description ?? antenna.name) : null,
    datum: isHole(frame.keyed) ? null : frame.keyed.datum.name,
    coarse: mark?.restsOnCoarseModel ?? false,
  };
}
