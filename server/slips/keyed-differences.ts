/** Keyed numbers that are not the right ones: by how much, from when until when, and which slip gives the very number that was keyed. */
import { keptWith } from '../../grammar/kept-with.ts';
import { GRS80 } from '../geodesy/ellipsoid.ts';
import { meanRadius } from '../geodesy/radii.ts';
import { digitsSwapped, swapBack } from './digits-swapped.ts';
import { toRadians } from '../geodesy/angles.ts';
import { latitude as asLatitude } from '../quantities/brands.ts';
import { isHole, type Maybe, type Value } from '../quantities/value.ts';
import type { Derivation } from '../derive/derivation.ts';
import type { Frame } from '../derive/positions/frame.ts';
import type { KeyedValues } from '../derive/setups/keyed.ts';
import { keyedLimit } from '../derive/setups/keyed-transformation.ts';
import type { SetupValues } from '../derive/setups/setup.ts';
import { foundInEach, valuesOf } from '../session/each.ts';
import type { Session } from '../session/session.ts';
import type { Place as TextPlace } from '../../grammar/tree.ts';
import { lastDigit } from './digits.ts';
import { numberOf, rightNumbers, ROUNDED, situationOf, SURELY, type Situation } from './situation.ts';
import type { Place, Slip, Told, Way } from './slip.ts';
import { SLIPS } from './slips.ts';

export type Field = 'position' | 'height' | 'antennaHeight';

export interface KeyedDifference {
  readonly setup: SetupValues;
  readonly situation: Situation;
  readonly field: Field;
  /** Where the wrong number stands. */
  readonly place: TextPlace;
  /** The keyed states that have it. */
  readonly states: readonly number[];
  readonly from: number | null;
  /** When something else was keyed in its stead; null where it stayed. */
  readonly until: number | null;
  /** Keyed minus right: a length for a height, the two horizontal components for a position. Metres. */
  readonly by: { readonly up: number } | { readonly east: number; readonly north: number };
  /** What should have been keyed, metres; null for a position. */
  readonly right: number | null;
  readonly keyed: number | null;
  readonly named: Recognised | null;
  /** The height is that of the antenna, keyed with an antenna height of nothing: `right` is that of the antenna, too. */
  readonly atAntenna?: boolean;
  /** By no more than the last digit typed: either the receiver was told a rounded number, or only the note has one. */
  readonly rounded?: boolean;
  /** What the last digit typed of a rounded number stands for, metres. */
  readonly lastDigit?: number;
  /** How far off it may be for the transformation alone, metres; 0 where there is none. */
  readonly transformation: number;
}

export interface Recognised {
  readonly slip: Slip;
  readonly says: string;
  /** Every field that this one slip gives. */
  readonly fields: readonly Field[];
}

/** Whether a geoid model stands between the published height of the mark and the one above the ellipsoid. */
function restsOnModel({ mark }: SetupValues): boolean {
  if (!mark || (!isHole(mark.located) && mark.located.height)) return false;
  const { height, separation } = mark.mark;
  return height !== null && height.surface !== 'ellipsoidal' && (separation === null || isHole(separation));
}
/** Two grids of one geoid model, or two ways to interpolate in it, differ by this (common practice), metres. */
const BETWEEN_GRIDS = 0.02;
/** Nothing closer than this can be said from the coarse global model, metres. */
const COARSE = 3;

export function keyedDifferences(session: Session, derivation: Derivation): readonly KeyedDifference[] {
  const known = cache.get(derivation);
  if (known) return known;
  const wrong = wronglyKeyed(valuesOf(derivation.setups), derivation.frame);
  const found = wrong.flatMap((setup) => ofSetup(setup, session, derivation));
  cache.set(derivation, found);
  return found;
}
const cache = keptWith<Derivation, readonly KeyedDifference[]>();

function ofSetup(setup: SetupValues, session: Session, derivation: Derivation): KeyedDifference[] {
  const seen = new Set<object>();
  return setup.keyed.flatMap((keyed) => {
    const situation = situationOf(setup, keyed, session, derivation);
    const wrong = differences(keyed, situation);
    const named = recognise(wrong, situation);
    return wrong.flatMap((one) => {
      const typed = typedField(one.field, keyed);
      // What stays as it was keyed is one finding, however many states it lasts.
      if (typed && seen.has(typed)) return [];
      if (typed) seen.add(typed);
      const lasting = setup.keyed.filter(
        (other) => other.state.number >= keyed.state.number && typedField(one.field, other) === typed,
      );
      const last = lasting[lasting.length - 1]?.state;
      const replaced = last !== undefined && last.number < setup.keyed.length;
      return [
        {
          ...one,
          setup,
          situation,
          states: lasting.map(({ state }) => state.number),
          from: keyed.state.from ?? setup.from,
          until: replaced ? last.until : null,
          named: named.get(one.field) ?? null,
        },
      ];
    });
  });
}

/** Whether another mark or another setup would explain anything is asked only where something is wrong. */
const wronglyKeyed = foundInEach((setup: SetupValues, frame: Frame) => {
  const rightly = setup.keyed.every((keyed) => {
    const numbers = { setup, frame, right: rightNumbers(setup, keyed, frame) };
    return differences(keyed, numbers).length === 0;
  });
  return rightly ? [] : [setup];
});

const FIELDS: readonly Field[] = ['position', 'height', 'antennaHeight'];

function typedField(field: Field, { state }: KeyedValues): object | null {
  if (field === 'antennaHeight') return state.antennaHeight;
  return field === 'height' ? (state.height ?? state.position) : state.position;
}

type Found = Pick<
  KeyedDifference,
  'field' | 'place' | 'by' | 'right' | 'keyed' | 'atAntenna' | 'rounded' | 'lastDigit' | 'transformation'
> & {
  readonly digit: number;
  readonly typed: string | null;
};

/** A receiver sends what it was told: what a rounded number leaves out is an error as any other beyond this, metres. */
const ROUNDING = 0.01;

/** How far what was keyed may be off for its last digit alone. */
const leftOut = (digit: number) => Math.max(ROUNDED, Math.min(digit, ROUNDING));

/** What is off by no more than its last digit came of no slip, however many would then fit. */
const roundedBy = (off: number, digit: number) =>
  off <= digit ? { digit: leftOut(digit), rounded: true, lastDigit: digit } : { digit };

/** A base and what it should have been told, whatever else the day was. */
type Numbers = Pick<Situation, 'setup' | 'frame' | 'right'>;

/** The height of the antenna may be keyed as it is, with an antenna height of nothing: only what both come to is sent. */
function differences(keyed: KeyedValues, numbers: Numbers): Found[] {
  const found = FIELDS.flatMap((field) => difference(field, keyed, numbers));
  const [height, antenna] = (['height', 'antennaHeight'] as const).map((field) =>
    found.find((one) => one.field === field),
  );
  if (!height || !antenna || !('up' in height.by) || !('up' in antenna.by)) return found;
  const up = height.by.up + antenna.by.up;
  const others = found.filter((one) => one !== height && one !== antenna);
  const allowed = Math.max(
    leftOut(height.digit),
    leftOut(antenna.digit),
    SURELY * numbers.right.antennaHeightSigma,
  );
  if (Math.abs(up) <= allowed) return others;
  const isNothing = numberOf(keyed.antennaHeight) === 0;
  if (!isNothing || Math.abs(up) >= Math.abs(height.by.up) || height.right === null || antenna.right === null)
    return found;
  return [...others, { ...height, by: { up }, right: height.right + antenna.right, atAntenna: true }];
}

function difference(field: Field, keyed: KeyedValues, situation: Numbers): Found[] {
  if (field === 'position') return positionDifference(keyed, situation);
  return field === 'height' ? heightDifference(keyed, situation) : antennaDifference(keyed, situation);
}

function antennaDifference(keyed: KeyedValues, { right, setup }: Numbers): Found[] {
  const field = keyed.state.antennaHeight;
  const told = numberOf(keyed.antennaHeight);
  if (!field || told === null || right.tapedHeight === null) return [];
  const digit = lastDigit(field.value) ?? 0;
  const up = told - right.toArp - right.tapedHeight;
  const allowed = Math.max(leftOut(digit), SURELY * right.antennaHeightSigma);
  if (Math.abs(up) <= allowed || asTapedLater(told, allowed, keyed, setup)) return [];
  const typed = typedNumber(field.value);
  return [
    {
      field: 'antennaHeight',
      place: placeOf(field.value) ?? field.place,
      by: { up },
      right: right.tapedHeight,
      keyed: told - right.toArp,
      ...roundedBy(Math.abs(up), digit),
      transformation: 0,
      typed,
    },
  ];
}

/** A tripod that was set anew stands at the height that was taped then. */
function asTapedLater(
  told: number,
  allowed: number,
  { state }: KeyedValues,
  { height }: SetupValues,
): boolean {
  const { from } = state;
  if (from === null) return false;
  return height.groups.slice(1).some(({ readings, arp }) => {
    const taped = readings[0]?.instant ?? null;
    return taped !== null && taped >= from - AROUND && Math.abs(told - arp.value) <= allowed;
  });
}
/** The tape is read within this of the keying, seconds. */
const AROUND = 1800;

function heightDifference(keyed: KeyedValues, { right, setup, frame }: Numbers): Found[] {
  const told = numberOf(keyed.height);
  const place = keyed.state.height
    ? (placeOf(keyed.state.height.value) ?? keyed.state.height.place)
    : keyed.state.position?.place;
  if (told === null || right.height === null || !place) return [];
  const digit = lastDigit(keyed.state.height?.value) ?? 0;
  const model = setup.tell.coarse ? COARSE : restsOnModel(setup) ? BETWEEN_GRIDS : 0;
  const up = told - right.height;
  if (Math.abs(up) <= Math.max(leftOut(digit), model)) return [];
  const transformation = keyedLimit(keyed, setup, frame.confidence.value).up;
  if (Math.abs(up) <= transformation) return [];
  const typed = typedNumber(keyed.state.height?.value);
  return [
    {
      field: 'height',
      place,
      by: { up },
      right: right.height,
      keyed: told,
      ...roundedBy(Math.abs(up), digit),
      transformation,
      typed,
    },
  ];
}

function positionDifference(keyed: KeyedValues, { right, setup, frame }: Numbers): Found[] {
  const { position } = keyed.state;
  const east = numberOf(keyed.east);
  const north = numberOf(keyed.north);
  if (!position || !right.place || east === null || north === null) return [];
  const parts =
    position.form === 'grid'
      ? [position.east, position.north]
      : position.form === 'geographic'
        ? [position.latitude, position.longitude]
        : [position.x, position.y, position.z];
  const digits = parts.map((part) => {
    const digit = lastDigit(part) ?? 0;
    return position.form === 'geographic' ? digit * METRES_IN_A_DEGREE : digit;
  });
  const digit = Math.max(...digits);
  if (Math.hypot(east, north) <= leftOut(digit)) return [];
  const transformation = keyedLimit(keyed, setup, frame.confidence.value).horizontal;
  if (Math.hypot(east, north) <= transformation) return [];
  return [
    {
      field: 'position',
      place: wrongPart(parts, [east, north], position.form) ?? position.place,
      by: { east, north },
      right: null,
      keyed: null,
      ...roundedBy(Math.hypot(east, north), digit),
      transformation,
      typed: null,
    },
  ];
}

const METRES_IN_A_DEGREE = 111_320;

/** The one coordinate that is wrong, where the other is right. */
function wrongPart(
  parts: readonly Maybe<Value>[],
  [east, north]: readonly [number, number],
  form: 'grid' | 'geographic' | 'geocentric',
): TextPlace | null {
  if (form === 'geocentric') return null;
  // Across the convergence a wrong east moves the north a little.
  const only =
    Math.abs(east) < 0.02 * Math.abs(north)
      ? 'north'
      : Math.abs(north) < 0.02 * Math.abs(east)
        ? 'east'
        : null;
  if (!only) return null;
  const index = (form === 'grid') === (only === 'east') ? 0 : 1;
  return placeOf(parts[index]);
}

const placeOf = (value: Maybe<Value> | undefined): TextPlace | null =>
  value && !isHole(value) && value.origin === 'given' ? value.place : null;
const typedNumber = (value: Maybe<Value> | undefined): string | null =>
  value && !isHole(value) && value.origin === 'given' ? (/[\d.]+/.exec(value.typed)?.[0] ?? null) : null;

/** The slips that give the keyed numbers: first one that gives several of them, then one for each. */
function recognise(wrong: readonly Found[], situation: Situation): Map<Field, Recognised> {
  const named = new Map<Field, Recognised>();
  if (wrong.length === 0) return named;
  const candidates = SLIPS.flatMap((slip) => {
    const ways = slip.ways(situation);
    return ways.flatMap((way) => {
      const match = matchOf(way, wrong, situation);
      return match
        ? [{ slip, says: way.says, ...match, score: (match.score * slip.prior) / ways.length }]
        : [];
    });
  });
  candidates.sort((one, other) => other.fields.length - one.fields.length || other.score - one.score);
  for (const { slip, says, fields } of candidates) {
    if (fields.some((field) => named.has(field))) continue;
    for (const field of fields) named.set(field, { slip, says, fields });
  }
  for (const one of wrong) if (!named.has(one.field)) bySwappedDigits(one, named);
  return named;
}

/** The digits of what was keyed, swapped back, are the right number, however that was rounded. */
function bySwappedDigits({ typed, right, keyed, digit, field }: Found, named: Map<Field, Recognised>): void {
  if (typed === null || right === null || keyed === null) return;
  const says = swapBack(
    typed,
    right / (keyed / Number(typed)),
    Math.max(ROUNDED, digit) / (keyed / Number(typed)),
  );
  if (says !== null) named.set(field, { slip: digitsSwapped, says, fields: [field] });
}

/** A way that would have told exactly the wrong fields that it touches, and no field that was told rightly. */
function matchOf(
  { effect }: Way,
  wrong: readonly Found[],
  situation: Situation,
): { fields: Field[]; score: number } | null {
  const told = effect.on === 'told' ? effect.told : null;
  if (!told) return null;
  const fields = FIELDS.filter((field) => toldField(field, told) !== undefined);
  let score = 1;
  for (const field of fields) {
    const found = wrong.find((one) => one.field === field);
    if (!found) return null;
    const fit = fitOf(found, told, situation);
    if (fit === null) return null;
    score *= fit;
  }
  return fields.length === 0 ? null : { fields, score };
}

const toldField = (field: Field, told: Told) =>
  field === 'position' ? told.place : field === 'height' ? told.height : told.antennaHeight;

/** How well a told number agrees with the keyed one, 1 at best; null where it does not, or where it says too little. */
function fitOf(found: Found, told: Told, { keyed, right }: Situation): number | null {
  const spread = told.spread ?? { horizontal: 0, up: 0 };
  const rough = (known: number) => Math.hypot(SURELY * known, found.transformation);
  if (found.field === 'position') {
    const at = keyed && !isHole(keyed.located) ? keyed.located : null;
    if (!told.place || !at || !right.place) return null;
    if (metresBetween(told.place, right.place) < rough(spread.horizontal)) return null;
    const miss = metresBetween(told.place, {
      latitude: at.latitude.value,
      longitude: at.longitude.value,
    });
    return fit(miss, Math.max(found.digit, ROUNDED), rough(spread.horizontal));
  }
  const number = found.field === 'height' ? told.height : told.antennaHeight;
  if (number === undefined || found.keyed === null || found.right === null) return null;
  // Nothing is no number in another unit, however small a right one is in it, and a small number is not nothing.
  if ((found.keyed === 0) !== (number === 0)) return null;
  // What a rounded last digit explains by itself shows no slip of less than that digit.
  if (found.lastDigit !== undefined && Math.abs(number - found.right) <= found.lastDigit) return null;
  if (Math.abs(number - found.right) < rough(spread.up) || spread.up > ANY) return null;
  const times = Math.max(1, Math.abs(number / found.right));
  const sigma = found.field === 'antennaHeight' ? right.antennaHeightSigma : 0;
  const allowed = Math.max(found.digit, times * Math.max(ROUNDED, SURELY * sigma));
  return fit(Math.abs(number - found.keyed), allowed, rough(spread.up));
}

/** A height that is known to this only agrees with any other, metres. */
const ANY = 0.1;

/** What is known roughly fits nearly everything, and says little when it does. */
function fit(miss: number, allowed: number, rough: number): number | null {
  const wide = Math.hypot(allowed, rough);
  return miss > wide ? null : Math.exp(-2 * (miss / wide) ** 2) * (allowed / wide) ** 2;
}

/** Near enough for points a few metres apart and for points continents apart alike. */
export function metresBetween(one: Place, other: Place): number {
  const R = meanRadius(GRS80, asLatitude(one.latitude));
  const turn = ((other.longitude - one.longitude + 540) % 360) - 180;
  const east = R * toRadians(turn) * Math.cos(toRadians((one.latitude + other.latitude) / 2));
  return Math.hypot(east, R * toRadians(other.latitude - one.latitude));
}
