/** What each entry of a session says, as plain data; holes where a value is missing or cannot be read. */
import type { Entry, Place } from '../../grammar/tree.ts';
import type { UnitSpec } from '../../grammar/units.ts';
import type { Maybe, Value } from '../quantities/value.ts';
import type { Height, Named, Position, Surface } from './coordinates.ts';
import type { Moment } from './moments.ts';
import type { Budget } from './quantities.ts';
import type { Remark } from './remark.ts';

interface Base {
  readonly entry: Entry;
  /** The entry's first line. */
  readonly place: Place;
  readonly remarks: readonly Remark[];
}

export interface Quoted {
  readonly text: string;
  readonly place: Place;
}
export interface Day {
  readonly day: number;
  readonly typed: string;
  readonly place: Place;
}
/** Standard uncertainties or tolerances, horizontal and vertical. */
export interface Accuracy {
  readonly horizontal: Stated | null;
  readonly vertical: Stated | null;
  readonly place: Place;
}
export interface Stated extends Budget {
  /** The probability it was stated for, as a fraction; null for a standard uncertainty or a plain limit. */
  readonly confidence: number | null;
}

export interface Job extends Base {
  readonly kind: 'job';
  readonly title: string;
  readonly language: Named | null;
  readonly date: Maybe<Day> | null;
  readonly clock: Maybe<ClockOffset> | null;
  readonly observer: Quoted | null;
  readonly grid: Named | null;
  readonly datum: Named | null;
  /** The transformation from the grid's datum to it, by EPSG code or name. */
  readonly datumBy: Named | null;
  /** The epoch that coordinates in it are wanted at, a decimal year, where one is asked for. */
  readonly datumEpoch: Maybe<Value> | null;
  /** The tectonic plate that carries the marks there. */
  readonly datumPlate: Named | null;
  readonly vertical: Quoted | null;
  readonly geoid: GeoidName | null;
  /** How the receiver takes numbers; null where the job does not say. */
  readonly receiver: ReceiverForm | null;
  readonly confidence: Maybe<Value> | null;
  readonly tolerance: Accuracy | null;
  readonly limits: Limits | null;
}
/** What is not said is metres, and degrees with minutes and seconds. */
export interface ReceiverForm {
  readonly unit: UnitSpec | null;
  readonly position: PositionForm | null;
}
/** Degrees with minutes and seconds, decimal degrees, or the coordinates of the job's grid. */
export type PositionForm = 'dms' | 'degrees' | 'grid';
/** Seconds that the clock is ahead of UTC. */
export interface ClockOffset {
  readonly seconds: number;
  readonly place: Place;
}
/** A grid file, or the name of a model. */
export interface GeoidName extends Named {
  readonly file: boolean;
}
export interface Limits {
  readonly solution: Named | null;
  readonly pdop: Maybe<Value> | null;
  readonly satellites: Maybe<Value> | null;
  readonly epochs: Maybe<Value> | null;
  readonly place: Place;
}

export interface Use extends Base {
  readonly kind: 'use';
  readonly path: Quoted | null;
}

export interface Mark extends Base {
  readonly kind: 'mark';
  readonly name: string;
  readonly description: string | null;
  readonly position: Position | null;
  readonly height: Height | null;
  readonly separation: Maybe<Value> | null;
  readonly separationPlace: Place | null;
  readonly uncertainty: Accuracy | null;
  readonly relative: Accuracy | null;
  /** A decimal year. */
  readonly epoch: Maybe<Value> | null;
  readonly source: Source | null;
  readonly found: Named | null;
}
export interface Source {
  readonly text: string;
  readonly date: Maybe<Day> | null;
  readonly place: Place;
}

export interface Antenna extends Base {
  readonly kind: 'antenna';
  readonly name: string;
  readonly description: string | null;
  /** Phase centre above the ARP. */
  readonly phaseCentre: Maybe<Value> | null;
  readonly calibration: AntennaCalibration | null;
  readonly tapePoints: readonly TapePoint[];
  readonly hook: Maybe<Value> | null;
  readonly fixedHeight: Maybe<Value> | null;
  readonly serial: Named | null;
}
/** A calibration file, the antenna's type in it (20 characters with the radome), and the signal or combination measured. */
export interface AntennaCalibration {
  readonly file: Quoted;
  readonly type: Quoted | null;
  readonly combination: Named | null;
  readonly place: Place;
}
export interface TapePoint {
  readonly name: string;
  readonly radius: Maybe<Value>;
  /** Above the ARP. */
  readonly above: Maybe<Value>;
  readonly place: Place;
}

export interface Rover extends Base {
  readonly kind: 'rover';
  readonly name: string;
  readonly description: string | null;
  readonly pole: Pole | null;
  /** Of vectors from base to rover: each horizontal axis, and up. */
  readonly uncertainty: Accuracy | null;
  readonly geoid: GeoidName | null;
  readonly scale: Maybe<Value> | null;
  readonly siteCalibration: Named | null;
  readonly serial: Named | null;
}
export interface Pole {
  readonly length: Maybe<Value>;
  readonly to: Named | null;
  /** Held by hand, not standing on a bipod. */
  readonly held: boolean;
  readonly place: Place;
}

export interface LocalSurface extends Base {
  readonly kind: 'surface';
  readonly name: string;
  readonly description: string | null;
  /** Added to a height above this surface it gives one above `against`. */
  readonly offset: Maybe<Value> | null;
  readonly against: Surface | null;
}

/** A site's own grid: the projected one scaled about a point and shifted. */
export interface Ground extends Base {
  readonly kind: 'ground';
  readonly name: string;
  readonly description: string | null;
  /** The projected grid that it is made from; the job's where none is named. */
  readonly grid: Named | null;
  readonly about: Position | null;
  /** Grid distance over ground distance. */
  readonly scale: Maybe<Value> | null;
  readonly shift: Position | null;
}

export interface Setup extends Base {
  readonly kind: 'setup';
  readonly name: string;
  readonly on: Named | null;
  readonly with: Named | null;
  readonly at: Maybe<Moment> | null;
  readonly until: Maybe<Moment> | null;
  readonly measured: readonly Measured[];
  readonly extensions: readonly Extension[];
  readonly plummet: Maybe<Value> | null;
  /** Degrees of tilt for one division. */
  readonly bubble: Maybe<Value> | null;
  readonly temperature: Maybe<Value> | null;
  /** When gear of this setup was last adjusted, where its line says so. */
  readonly adjusted: readonly Adjusted[];
  readonly autonomous: {
    readonly position: Position | null;
    readonly height: Height | null;
    readonly place: Place;
  } | null;
  readonly keyed: readonly Keyed[];
  readonly captured: Quoted | null;
  readonly rawLog: Quoted | null;
  readonly ephemerides: Quoted | null;
}
export interface Adjusted {
  readonly gear: 'plummet' | 'bubble';
  readonly date: Maybe<Day>;
  readonly place: Place;
}
export interface Measured {
  readonly length: Maybe<Value>;
  /** What the tape was held to: `arp`, `foot`, or a tape point of the antenna. */
  readonly to: Named | null;
  readonly offCentre: Maybe<Value> | null;
  /** Typed as read straight down (`vertical`) or along the slope (`slant`). */
  readonly manner: 'vertical' | 'slant' | null;
  readonly at: Maybe<Moment> | null;
  readonly by: Named | null;
  readonly place: Place;
}
export interface Extension {
  readonly length: Maybe<Value>;
  readonly place: Place;
}
/** One line of what the receiver was told; fields that it does not speak of are null. */
export interface Keyed {
  readonly position: Position | null;
  readonly height: Height | null;
  readonly antennaHeight: {
    readonly value: Maybe<Value>;
    readonly to: Named | null;
    readonly manner: 'vertical' | 'slant' | null;
    readonly place: Place;
  } | null;
  readonly antennaType: Named | null;
  readonly at: Maybe<Moment> | null;
  readonly place: Place;
}

export interface Radio extends Base {
  readonly kind: 'radio';
  readonly name: string;
  readonly carrier: Maybe<Value> | null;
  readonly channel: Maybe<Value> | null;
  readonly rate: Maybe<Value> | null;
  readonly spreading: Named | null;
  readonly bandwidth: Maybe<Value> | null;
  readonly coding: Named | null;
  readonly power: Maybe<Value> | null;
  readonly aerial: Maybe<Value> | null;
  readonly clearance: Maybe<Value> | null;
  readonly licence: Quoted | null;
}
export interface Stream extends Base {
  readonly kind: 'stream';
  readonly from: Named | null;
  readonly messages: readonly StreamMessage[];
  readonly tracked: readonly Tracked[];
  readonly signals: Maybe<Value> | null;
}
export interface StreamMessage {
  readonly number: Named;
  readonly every: Maybe<Value>;
  /** How long after the others it is first sent, so that messages take turns. */
  readonly after: Maybe<Value> | null;
  readonly place: Place;
}
export interface Tracked {
  readonly system: string;
  readonly satellites: Maybe<Value>;
  readonly place: Place;
}

/** Where a rover's antenna log stands in for what the controller showed. */
export interface Recording {
  readonly file: Quoted;
  readonly from: Maybe<Moment> | null;
  readonly to: Maybe<Moment> | null;
}
export interface Observed {
  readonly position: Position | null;
  readonly height: Height | null;
  readonly recording: Recording | null;
  readonly place: Place;
}
export interface Quality {
  readonly solution: Named | null;
  readonly epochs: Maybe<Value> | null;
  readonly pdop: Maybe<Value> | null;
  readonly satellites: Maybe<Value> | null;
  readonly place: Place;
}
interface Occupied extends Base {
  readonly name: string;
  readonly at: Maybe<Moment> | null;
  readonly by: Named | null;
  readonly from: Named | null;
  readonly pole: Pole | null;
  readonly observed: Observed | null;
  readonly quality: Quality | null;
  readonly spread: Accuracy | null;
}
export interface Check extends Occupied {
  readonly kind: 'check';
  readonly on: Named | null;
}
export interface Point extends Occupied {
  readonly kind: 'point';
  readonly description: string | null;
  readonly state: Named | null;
}

export interface Event extends Base {
  readonly kind: 'event';
  readonly what: string;
  readonly at: Maybe<Moment> | null;
  readonly on: Named | null;
  readonly text: string | null;
}

export interface Points extends Base {
  readonly kind: 'points';
  /** Null where the rows stand in the notes. */
  readonly file: Quoted | null;
  /** What such rows are called. */
  readonly title: string | null;
  readonly from: Named | null;
  readonly by: Named | null;
  readonly state: Named | null;
  readonly columns: readonly Column[];
  readonly columnsPlace: Place | null;
  readonly rows: readonly Row[];
  readonly separator: Named | null;
  readonly decimal: Named | null;
}
/** `east m "Easting"`: what a column means, in which unit or surface, and the file's own header for it. */
export interface Column {
  readonly means: string;
  readonly qualifiers: readonly string[];
  readonly header: string | null;
  readonly place: Place;
}
export interface Row {
  readonly cells: readonly { readonly text: string; readonly place: Place }[];
  readonly place: Place;
}

export interface Hazard extends Base {
  readonly kind: 'hazard';
  readonly text: string;
  readonly controls: readonly Quoted[];
}
export interface Note extends Base {
  readonly kind: 'note';
  readonly text: string;
}
export interface Correction extends Base {
  readonly kind: 'correction';
  readonly text: string;
  readonly on: Named | null;
  readonly at: Maybe<Moment> | null;
  readonly by: Named | null;
  readonly because: Quoted | null;
}
export interface Review extends Base {
  readonly kind: 'review';
  readonly by: string;
  readonly date: Maybe<Day> | null;
  readonly seal: Named | null;
}
/** An entry whose first word is not known; its details are kept from complaint. */
export interface Unknown extends Base {
  readonly kind: 'unknown';
}

export type Bound =
  | Job
  | Use
  | Mark
  | Antenna
  | Rover
  | LocalSurface
  | Ground
  | Setup
  | Radio
  | Stream
  | Check
  | Event
  | Points
  | Point
  | Hazard
  | Note
  | Correction
  | Review
  | Unknown;
