/** What a slip is: its name, how often it is made before anybody has looked, and what it would have done to this very session. */
import type { CheckValues } from '../derive/checks/check.ts';
import type { Situation } from './situation.ts';

export interface Slip {
  readonly name: SlipName;
  /** The kind of finding that tells it where the notes show the wrong number; null where they never do. */
  readonly code: string | null;
  /** How likely it is among all slips that spoil a day, shared by all the ways to make it (common practice, not measured). */
  readonly prior: number;
  /** The observation that would show it, or show that it was something else. */
  readonly look: string;
  /** Every way to make it here; none where this session has no room for it. */
  readonly ways: (situation: Situation) => readonly Way[];
}

/** One way to make a slip. */
export interface Way {
  /** A clause that completes "it would be explained if". */
  readonly says: string;
  /** How often this way is taken beside the others of its slip; 1 where nothing is said. */
  readonly weight?: number;
  /** In place of the slip's own, where this way is rarer than the others of its kind. */
  readonly prior?: number;
  readonly effect: Effect;
}

export type Effect =
  | { readonly on: 'told'; readonly told: Told }
  /** The receivers make the antenna stand higher by this than it was told; metres. */
  | { readonly on: 'antenna'; readonly up: number }
  /** What the rover showed is off, at each check in its own way. */
  | {
      readonly on: 'rover';
      readonly shift: (check: CheckValues) => Shift | null;
      readonly free?: readonly Freedom[];
    }
  /** The broadcast position is off by a vector in the mark's horizon that is known in part, at the checks that this holds for. */
  | {
      readonly on: 'base';
      readonly shift: Shift;
      readonly free: readonly Freedom[];
      readonly applies: (check: CheckValues) => boolean;
    };

/** The numbers that the receiver was told instead of the right ones; a field that is not there was told rightly. */
export interface Told {
  /** As it is typed, to the point that the receiver asks for; metres. */
  readonly antennaHeight?: number;
  /** Above the ellipsoid, as the receiver takes it; metres. */
  readonly height?: number;
  /** Degrees. */
  readonly place?: Place;
  /** What is not known of these numbers: standard uncertainty of each horizontal axis and of up, metres. */
  readonly spread?: { readonly horizontal: number; readonly up: number };
}
export interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

/** East, north and up, metres. */
export interface Shift {
  readonly east: number;
  readonly north: number;
  readonly up: number;
}

/** A vector that is there some number of times, the number normally distributed around 0 with standard deviation 1. */
export type Freedom = (check: CheckValues) => Shift;

export type SlipName =
  | 'antenna-height-left-out'
  | 'antenna-height-twice'
  | 'metres-dropped'
  | 'tape-misread'
  | 'pole-left-out'
  | 'pole-twice'
  | 'extension-left-out'
  | 'extension-twice'
  | 'extension-inside-slant'
  | 'slope-not-reduced'
  | 'vertical-told-as-slant'
  | 'rise-forgotten'
  | 'phase-centre-for-arp'
  | 'arp-for-phase-centre'
  | 'base-antenna-type-missing'
  | 'orthometric-for-ellipsoidal'
  | 'chart-for-ellipsoidal'
  | 'separation-sign'
  | 'separation-twice'
  | 'millimetres-for-metres'
  | 'feet'
  | 'feet-and-inches-as-decimals'
  | 'survey-feet'
  | 'digits-swapped'
  | 'east-north-swapped'
  | 'zone'
  | 'hemisphere'
  | 'wrong-mark'
  | 'datum'
  | 'epoch'
  | 'yesterdays-coordinates'
  | 'base-moved'
  | 'rover-pole'
  | 'rover-geoid'
  | 'rover-scale'
  | 'rover-site-calibration'
  | 'rover-antenna-type-missing';
