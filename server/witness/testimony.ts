/** What a base's own raw observations say of where its antenna stood, and of whether anything moved it: plain data. */
import type { Geocentric, Metres, Seconds } from '../quantities/brands.ts';
import type { EvidenceProblem } from '../evidence/problems.ts';

/** Seconds since 1970-01-01 00:00 on the GPS time scale, which has no leap seconds (18 s ahead of UTC since 2017). */
export type GpsSeconds = number;

/** Satellites of which system an answer rests on. */
export type Systems = 'GPS and Galileo' | 'GPS' | 'Galileo';

export interface Testimony {
  /** First and last epoch. */
  readonly from: GpsSeconds;
  readonly to: GpsSeconds;
  /** The most frequent distance between epochs. */
  readonly interval: Seconds;
  readonly epochs: number;
  readonly systems: Systems;
  /** What was in the file and is not used: observations of satellites of other systems, by RINEX letter. */
  readonly skipped: Readonly<Record<string, number>>;
  /** Null with the reason among `problems`, where no epoch could be solved. */
  readonly stood: Stood | null;
  /** Sudden movements, in order of time. */
  readonly steps: readonly Step[];
  /** Everything from `from` to `to`, side by side: what would have been seen there, or why nothing can be said. */
  readonly spans: readonly WatchedSpan[];
  /** Displacements pair by pair, thinned to what a drawing can show; the largest of each piece is kept. */
  readonly trace: Trace;
  readonly problems: readonly EvidenceProblem[];
}

/** Where the antenna's phase centre stood, in the frame of the orbits (ITRF of the day, within centimetres). */
export interface Stood {
  readonly position: Geocentric;
  /** Years, for the shift of frames by date. */
  readonly epoch: number;
  /** Half-widths of 95 %. Systematic errors of orbits and ionosphere rule, so it does not shrink with the session's length. */
  readonly horizontal: Metres;
  readonly vertical: Metres;
  readonly spatial: Metres;
  readonly solvedEpochs: number;
  readonly satellites: number;
}

/** A sudden movement between two neighbouring epochs. */
export interface Step {
  readonly from: GpsSeconds;
  readonly to: GpsSeconds;
  readonly east: Metres;
  readonly north: Metres;
  readonly up: Metres;
  /** Standard uncertainties. */
  readonly sigmaEast: Metres;
  readonly sigmaNorth: Metres;
  readonly sigmaUp: Metres;
  /** Chi-square of three degrees of freedom. */
  readonly statistic: number;
  readonly satellites: number;
}

export type WatchedSpan = {
  readonly from: GpsSeconds;
  readonly to: GpsSeconds;
} & (
  | {
      readonly watched: true;
      /** Sudden movements of this size would have been seen with 80 % power or more, at 19 of 20 moments of the span. */
      readonly horizontal: Metres;
      readonly vertical: Metres;
    }
  | { readonly watched: false; readonly because: Silence }
);

/** Why nothing can be said of a span. */
export type Silence =
  'gap' | 'few satellites' | 'lock lost' | 'uncertain movement' | 'GPS alone' | 'no ephemerides' | 'unsolved';

/** One row per pair that is kept: parallel lists of equal length. Lengths in metres. */
export interface Trace {
  readonly times: readonly GpsSeconds[];
  readonly east: readonly number[];
  readonly north: readonly number[];
  readonly up: readonly number[];
  /** What a step needs to be told from noise in each component: threshold times standard uncertainty. */
  readonly limitEast: readonly number[];
  readonly limitNorth: readonly number[];
  readonly limitUp: readonly number[];
  readonly satellites: readonly number[];
}
