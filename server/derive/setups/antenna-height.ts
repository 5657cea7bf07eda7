/** The height of the antenna reference point above the mark, from what the tape said. */
import { compute, computeLinear, renamed } from '../../quantities/computed.ts';
import { showNumber } from '../../quantities/show.ts';
import { mapTerms } from '../../quantities/sum.ts';
import {
  assumed,
  hole,
  isHole,
  withSpread,
  type Hole,
  type Maybe,
  type Value,
} from '../../quantities/value.ts';
import type { Antenna, Extension, Measured, Setup } from '../../session/entries.ts';

/** Defaults of the tape, all common practice; each shows in every story that it enters. */
export const READING_SIGMA = 0.001;
const COMMON_SIGMA = 0.0005;
const EXTENSION_SIGMA = 0.0002;
const FIXED_HEIGHT_SIGMA = 0.0005;

/** Steel tapes; common practice. */
const EXPANSION = assumed(
  'expansion of a steel tape, per °C',
  11.6e-6,
  '',
  0,
  'steel, 11.6 millionths for each °C (common practice)',
);
const STANDARD_TEMPERATURE = assumed(
  'standard temperature of the tape, in °C',
  20,
  '',
  0,
  'tapes are made for 20 °C (common practice)',
);

export interface Reading {
  readonly measured: Measured;
  /** ARP above the mark as this reading has it. */
  readonly arp: Maybe<Value>;
  /** The taped length, as read. */
  readonly length: Maybe<Value>;
  /** What the slope makes the tape read too long; null where it is held straight down or nothing can be said. */
  readonly slope: Value | null;
  /** The distance off the plumb line, where the tape is not longer than it and so makes no slope; else null. */
  readonly beyond: Value | null;
  /** Seconds since 1970-01-01 UTC. */
  readonly instant: number | null;
}

export interface AntennaHeight {
  readonly readings: readonly Reading[];
  /** Readings of one time, in order of time; a later group is compared with the first, never averaged with it. */
  readonly groups: readonly ReadingGroup[];
  readonly arp: Maybe<Value>;
  readonly phaseCentre: Maybe<Value>;
  readonly extension: Value | null;
}
export interface ReadingGroup {
  readonly readings: readonly Reading[];
  readonly arp: Value;
  readonly phaseCentre: Maybe<Value>;
}

/** The height of the antenna while it stood at one height. */
export type Standing = Pick<AntennaHeight, 'arp' | 'phaseCentre'> & {
  /** When it was levelled anew, else when it was first taped so; null for how the base began. */
  readonly since: number | null;
  /** The tripod was levelled anew; else it may only have sunk, and the receiver went on with what it was told. */
  readonly anew: boolean;
  /** Null for how the base began, and where nothing was taped since it was levelled anew. */
  readonly group: ReadingGroup | null;
};

/** How the base began, each height that was taped later, and what nobody taped after it was levelled anew. */
export function standingsOf(height: AntennaHeight, relevelled: readonly number[], setup: Setup): Standing[] {
  const { groups } = height;
  const again = groups.slice(1).flatMap((group, index): Standing[] => {
    const before = groups[index]?.readings.at(-1)?.instant ?? null;
    const taped = group.readings[0]?.instant ?? null;
    if (before === null || taped === null) return [];
    const { arp, phaseCentre } = group;
    const level = relevelled.findLast((at) => before <= at && at <= taped);
    return [{ arp, phaseCentre, since: level ?? taped, anew: level !== undefined, group }];
  });
  return [begunAt(height), ...again, ...untaped(height, relevelled, setup)];
}

export const begunAt = ({ arp, phaseCentre }: AntennaHeight): Standing => ({
  arp,
  phaseCentre,
  since: null,
  anew: true,
  group: null,
});

/** Levelled anew and not taped since: at what height it stands nobody knows. Without any reading nothing was known before. */
function untaped(
  { groups, readings }: AntennaHeight,
  relevelled: readonly number[],
  setup: Setup,
): Standing[] {
  const since = relevelled.at(-1);
  if (since === undefined || groups.length === 0) return [];
  if (readings.some(({ instant }) => instant !== null && instant >= since)) return [];
  const none = hole(`${setup.name} was levelled anew and not taped since`, setup.place);
  return [{ arp: none, phaseCentre: none, since, anew: true, group: null }];
}

/** Readings further apart than this, or with an event between them, are of different times. */
const ONE_TIME = 30 * 60;

/**
 * @param instants of the readings, in their order; @param events instants between which readings are of one time
 */
export function antennaHeight(
  setup: Setup,
  antenna: Antenna | null,
  instants: readonly (number | null)[],
  events: readonly number[],
): AntennaHeight {
  const each = setup.extensions.map((extension, index) =>
    extensionLength(extension, index, setup.extensions.length),
  );
  const extension = extensionSum(each, setup.name);
  // A formula of hundreds of terms says nothing, and each of them would be varied in each reading.
  const extensions = extension && each.length > MOST_TERMS ? [extension] : each;
  const readings = setup.measured.map((measured, index) =>
    readingOf(measured, index, setup, antenna, extensions, instants[index] ?? null),
  );
  const usable = readings.filter((reading) => !isHole(reading.arp));
  const common = assumed(
    `error that all readings at ${setup.name} share`,
    0,
    'm',
    COMMON_SIGMA,
    'the readings share a tape and a person (common practice)',
  );
  const groups = grouped(usable, events).map((group): ReadingGroup => {
    const arp = weighed(group, common, setup.name);
    return { readings: group, arp, phaseCentre: phaseCentreOf(arp, antenna, setup) };
  });
  const arp =
    groups[0]?.arp ??
    fixedHeight(setup, antenna, extensions) ??
    firstHole(readings) ??
    hole(`nothing was taped at ${setup.name}`, setup.place);
  return {
    readings,
    groups,
    arp,
    phaseCentre: phaseCentreOf(arp, antenna, setup),
    extension,
  };
}

function extensionLength(extension: Extension, index: number, count: number): Maybe<Value> {
  if (isHole(extension.length)) return extension.length;
  const length = mapTerms(extension.length, (term) =>
    term.origin === 'given'
      ? withSpread(term, EXTENSION_SIGMA, 'assumed 0.2 mm for an extension (common practice)')
      : term,
  );
  return count > 1 ? renamed(length, `extension ${index + 1}`) : length;
}

/** Extensions that a formula shows one by one. */
const MOST_TERMS = 6;

function extensionSum(extensions: readonly Maybe<Value>[], setup: string): Value | null {
  const values = extensions.filter((extension): extension is Value => !isHole(extension));
  if (values.length === 0 || values.length < extensions.length) return null;
  const [only] = values;
  if (values.length === 1 && only) return only;
  const terms = values.map((value, index) => ({ symbol: `e${index + 1}`, value, coefficient: 1 }));
  const expression = terms.map(({ symbol }) => symbol).join(' + ');
  const formula = { symbol: 'e', expression, evaluable: true, source: TRADE };
  return computeLinear(`extensions at ${setup}`, 'm', formula, terms);
}

function readingOf(
  measured: Measured,
  index: number,
  setup: Setup,
  antenna: Antenna | null,
  extensions: readonly Maybe<Value>[],
  instant: number | null,
): Reading {
  const name = `ARP height at ${setup.name} by reading ${index + 1}`;
  const length = named(measured.length, `reading ${index + 1}`);
  const reduced = reduction(measured, antenna, extensions);
  if (isHole(length) || isHole(reduced)) {
    return {
      measured,
      arp: isHole(length) ? length : (reduced as Hole),
      length,
      slope: null,
      beyond: null,
      instant,
    };
  }
  const { radius, rise, expression } = reduced;
  if (radius && length.value <= radius.value) {
    const arp = hole(
      `the tape (${showNumber(length.value, 3)} m) is not longer than its distance from the plumb line (${showNumber(radius.value, 3)} m)`,
      measured.place,
    );
    return { measured, arp, length, slope: null, beyond: radius, instant };
  }
  const warm = temperatureOf(setup);
  const s = warm ? 's · (1 + α · (T − T_0))' : 's';
  const slanted = radius ? `√(${warm ? `(${s})` : s}² − r²)` : s;
  const formula = {
    symbol: 'H_ARP',
    expression: slanted + expression,
    evaluable: true,
    source: radius ? SLANT_SOURCE : TRADE,
  };
  const inputs = { s: length, ...(radius ? { r: radius } : {}), ...warm, ...rise };
  const arp = compute(name, 'm', formula, inputs, (numbers: Readonly<Record<string, number>>) => {
    const stretch = (numbers['α'] ?? 0) * ((numbers['T'] ?? 0) - (numbers['T_0'] ?? 0));
    const s = (numbers['s'] ?? NaN) * (1 + stretch);
    const r = numbers['r'] ?? 0;
    return Math.sqrt(s * s - r * r) + riseOf(numbers, rise);
  });
  return {
    measured,
    arp,
    length,
    slope: radius ? slopeOf(length, radius, index) : null,
    beyond: null,
    instant,
  };
}

/** What lies between the taped point and the ARP is added, the height of a tape point above the ARP taken off. */
function riseOf(numbers: Readonly<Record<string, number>>, parts: Readonly<Record<string, Value>>): number {
  let rise = 0;
  for (const symbol of Object.keys(parts)) rise += (symbol === 'v' ? -1 : 1) * (numbers[symbol] ?? NaN);
  return rise;
}

/** Where the notes give the tape's temperature it is reckoned with; a thermometer in the field is good to two degrees. */
function temperatureOf({ temperature }: Setup): Readonly<Record<string, Value>> | null {
  if (!temperature || isHole(temperature)) return null;
  const T =
    temperature.origin === 'given'
      ? withSpread(temperature, 2, 'assumed 2 °C for a thermometer in the field (common practice)')
      : temperature;
  return { α: EXPANSION, T, T_0: STANDARD_TEMPERATURE };
}

const slopeOf = (s: Value, r: Value, index: number): Value =>
  compute(
    `slope of reading ${index + 1}`,
    'm',
    { symbol: 'Δ', expression: 's − √(s² − r²)', evaluable: true, source: SLANT_SOURCE },
    { s, r },
    (v) => v.s - Math.sqrt(v.s * v.s - v.r * v.r),
  );

interface Reduction {
  readonly radius: Value | null;
  readonly rise: Readonly<Record<string, Value>>;
  readonly expression: string;
}

/** From the taped point to the ARP: the extensions above a foot, less the height of a tape point on the antenna, plus a hook's constant. */
function reduction(
  measured: Measured,
  antenna: Antenna | null,
  extensions: readonly Maybe<Value>[],
): Maybe<Reduction> {
  const to = measured.to?.name;
  if (measured.offCentre && isHole(measured.offCentre)) return measured.offCentre;
  const offCentre = measured.offCentre ? exact(measured.offCentre) : null;
  const radius = measured.manner === 'vertical' ? null : offCentre;
  if (to === undefined) return hole('the reading does not say what the tape was held to', measured.place);
  if (to === 'arp') return { radius, rise: {}, expression: '' };
  if (to === 'foot') {
    const missing = extensions.find(isHole);
    if (missing) return missing;
    const symbols = extensions.map((_, index) => (extensions.length > 1 ? `e${index + 1}` : 'e'));
    const rise = Object.fromEntries(symbols.map((symbol, index) => [symbol, extensions[index] as Value]));
    return { radius, rise, expression: symbols.map((symbol) => ` + ${symbol}`).join('') };
  }
  if (to === 'hook') {
    const hook = antenna?.hook;
    if (!hook)
      return hole(
        `${antenna ? `antenna ${antenna.name}` : 'the antenna'} has no hook constant`,
        measured.place,
      );
    return isHole(hook) ? hook : { radius, rise: { c: exact(hook) }, expression: ' + c' };
  }
  const point = antenna?.tapePoints.find((candidate) => candidate.name === to);
  if (!point)
    return hole(
      `${antenna ? `antenna ${antenna.name}` : 'the antenna'} has no tape point ${to}`,
      measured.to?.place ?? measured.place,
    );
  if (isHole(point.radius)) return point.radius;
  if (isHole(point.above)) return point.above;
  const own = measured.manner === 'vertical' ? null : (offCentre ?? exact(point.radius));
  return { radius: own, rise: { v: exact(point.above) }, expression: ' − v' };
}

/** Dimensions of gear are taken as exact where nothing is said of them: they matter by some hundredths of a millimetre. */
const exact = (value: Value): Value =>
  value.origin === 'given' ? withSpread(value, 0, 'taken as exact') : value;

/** The tape has its uncertainty in the first term; corrections made by hand have the one typed beside them, or none. */
function named(length: Maybe<Value>, name: string): Maybe<Value> {
  if (isHole(length)) return length;
  const spread = mapTerms(length, (term, index) => {
    if (term.origin !== 'given') return term;
    return index === 0
      ? withSpread(term, READING_SIGMA, 'assumed 1 mm for a tape reading (common practice)')
      : withSpread(term, 0, 'taken as exact');
  });
  return renamed(spread, name);
}

/** Readings in order of time; an event between two of them, or half an hour, starts a new group. */
function grouped(readings: readonly Reading[], events: readonly number[]): Reading[][] {
  const ordered = [...readings].sort(
    (one, other) => (one.instant ?? -Infinity) - (other.instant ?? -Infinity),
  );
  const groups: Reading[][] = [];
  for (const reading of ordered) {
    const group = groups[groups.length - 1];
    const first = group?.[0];
    const last = group?.[group.length - 1];
    if (group && first && last && ofOneTime(first, last, reading, events)) group.push(reading);
    else groups.push([reading]);
  }
  return groups;
}

function ofOneTime(first: Reading, last: Reading, next: Reading, events: readonly number[]): boolean {
  if (last.instant === null || next.instant === null) return true;
  const start = last.instant;
  const end = next.instant;
  if (events.some((event) => event > start && event <= end)) return false;
  return end - (first.instant ?? end) <= ONE_TIME;
}

/** Whether the reading can be none of the group, whatever was read. */
export const isOfOtherTime = ({ instant: at }: Reading, { readings }: ReadingGroup): boolean =>
  at !== null && readings.every(({ instant }) => instant !== null && Math.abs(instant - at) > ONE_TIME);

/** The weighed mean of readings of one time: u² = u_read²/n + u_common² where they are equally good. */
function weighed(group: readonly Reading[], common: Value, setup: string): Value {
  const values = group.map((reading) => reading.arp as Value);
  const weights = values.map((value) => 1 / Math.max(value.sigma ?? READING_SIGMA, 1e-5) ** 2);
  const equal = weights.every((weight) => Math.abs(weight / (weights[0] ?? 1) - 1) < 0.01);
  const least = weights.reduce((smallest, weight) => Math.min(smallest, weight), Infinity);
  // Weights are nobody's fact: three digits of them say all there is to say.
  const shares = weights.map((weight) => (equal ? 1 : Number((weight / least).toPrecision(3))));
  const total = shares.reduce((sum, share) => sum + share, 0);
  const terms = values.map((value, index) => ({
    symbol: `h${index + 1}`,
    value,
    coefficient: (shares[index] ?? 1) / total,
  }));
  const written = terms.map(({ symbol }, index) =>
    shares[index] === 1 ? symbol : `${shares[index] ?? 1} · ${symbol}`,
  );
  const mean = values.length === 1 ? 'h1' : `(${written.join(' + ')}) / ${Number(total.toPrecision(12))}`;
  const formula = {
    symbol: 'H_ARP',
    expression: `${mean} + c`,
    evaluable: true,
    source: 'mean of the readings of one time, weighed by their uncertainties (JCGM 100:2008)',
  };
  return computeLinear(`ARP height at ${setup}`, 'm', formula, [
    ...terms,
    { symbol: 'c', value: common, coefficient: 1 },
  ]);
}

/** A tripod of fixed height needs no tape; extensions stand on top of it. */
function fixedHeight(
  setup: Setup,
  antenna: Antenna | null,
  extensions: readonly Maybe<Value>[],
): Maybe<Value> | null {
  const height = antenna?.fixedHeight;
  if (!height) return null;
  if (isHole(height)) return height;
  const missing = extensions.find(isHole);
  if (missing) return missing;
  const fixed =
    height.origin === 'given'
      ? withSpread(height, FIXED_HEIGHT_SIGMA, 'assumed 0.5 mm for a fixed-height tripod (common practice)')
      : height;
  const symbols = extensions.map((_, index) => `e${index + 1}`);
  const inputs = {
    f: fixed,
    ...Object.fromEntries(symbols.map((symbol, index) => [symbol, extensions[index] as Value])),
  };
  const formula = {
    symbol: 'H_ARP',
    expression: ['f', ...symbols].join(' + '),
    evaluable: true,
    source: TRADE,
  };
  return compute(`ARP height at ${setup.name}`, 'm', formula, inputs, (numbers) =>
    Object.values(numbers).reduce((sum, part) => sum + part, 0),
  );
}

const firstHole = (readings: readonly Reading[]): Hole | undefined =>
  readings.map((reading) => reading.arp).find(isHole);

function phaseCentreOf(arp: Maybe<Value>, antenna: Antenna | null, setup: Setup): Maybe<Value> {
  if (isHole(arp)) return arp;
  const offset = antenna?.phaseCentre;
  if (!offset)
    return hole(
      `${antenna ? `antenna ${antenna.name}` : `the antenna at ${setup.name}`} has no phase centre described`,
      antenna?.place ?? setup.place,
    );
  if (isHole(offset)) return offset;
  const formula = {
    symbol: 'H_PC',
    expression: 'H_ARP + o',
    evaluable: true,
    source: 'mean phase centre = ARP + offset (IGS ANTEX 1.4)',
  };
  return compute(
    `phase centre height at ${setup.name}`,
    'm',
    formula,
    { H_ARP: arp, o: exact(offset) },
    (numbers) => numbers.H_ARP + numbers.o,
  );
}

const TRADE = 'the parts of the setup added up (common practice)';
const SLANT_SOURCE =
  'right triangle of slant, radius and plumb line (geodetic facility technical note on slant heights)';
