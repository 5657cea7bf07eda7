/** Reads positions and heights: grid, geographic or geocentric, in any order, with the surface that a height stands on. */
import type { Item, Measure, Place, Sum } from '../../grammar/tree.ts';
import { given, hole, isHole, type Maybe, type Value } from '../quantities/value.ts';
import type { LineReader } from './binding/line-reader.ts';
import { nearest } from '../quantities/near.ts';
import { quantity } from './quantities.ts';
import type { RemarkOf } from './remark.ts';

export interface Named {
  readonly name: string;
  readonly place: Place;
}

/** Coordinates as typed; metres or degrees, east and north positive, whatever letter was typed. */
export type Position = {
  readonly place: Place;
  /** The system that the coordinates are in, where it is not the file's own. */
  readonly system: Named | null;
  /** The transformation from it, by EPSG code or name, where one was typed. */
  readonly by: Named | null;
} & (
  | { readonly form: 'grid'; readonly east: Maybe<Value>; readonly north: Maybe<Value> }
  | { readonly form: 'geographic'; readonly latitude: Maybe<Value>; readonly longitude: Maybe<Value> }
  | {
      readonly form: 'geocentric';
      readonly x: Maybe<Value>;
      readonly y: Maybe<Value>;
      readonly z: Maybe<Value>;
    }
);

/** The surface of a height: the geoid or levelling datum, the ellipsoid, or a named local surface. */
export type Surface = 'orthometric' | 'ellipsoidal' | { readonly above: Named };

export interface Height {
  readonly value: Maybe<Value>;
  /** Null where none was typed. */
  readonly surface: Surface | null;
  /** The model by which the instrument itself converted, where one was typed. */
  readonly geoid: Named | null;
  readonly place: Place;
}

export interface PositionAndHeight {
  readonly position: Position | null;
  readonly height: Height | null;
}

/** Reads coordinates and a height in any order, as long as there are any. */
export function takePositionAndHeight(reader: LineReader, about: string): PositionAndHeight {
  const found: Coordinate[] = [];
  let height: Height | null = null;
  let system: Named | null = null;
  let by: Named | null = null;
  for (;;) {
    if (reader.word('height')) height = takeHeight(reader, `height of ${about}`);
    else if (reader.peek()?.kind === 'word' && wordAt(reader) === 'in') {
      reader.next();
      system = reader.nameOrText() ?? null;
      if (reader.word('by')) by = reader.nameOrText() ?? null;
    } else {
      const coordinate = takeCoordinate(reader, about);
      if (!coordinate) break;
      found.push(coordinate);
    }
    if (reader.peek()?.kind === 'comma' && startsCoordinate(reader, 1)) reader.next();
  }
  remarkLetters(reader, found);
  return { position: assembled(reader, found, system, by, about), height };
}

/** Reads `6.284 m orthometric`; the word `height` has been taken. */
export function takeHeight(reader: LineReader, name: string): Height {
  const sum = reader.sum();
  if (!sum) {
    reader.remark({
      about: 'missing-value',
      place: reader.place,
      word: 'height',
      expects: 'a height with its surface (6.284 m orthometric)',
    });
    return {
      value: hole(`${name} is missing`, reader.place),
      surface: null,
      geoid: null,
      place: reader.place,
    };
  }
  const value = quantity(reader, sum, 'length', name);
  const start = reader.at(sum);
  const surface = takeSurface(reader);
  const geoid = reader.word('geoid') ? (reader.nameOrText() ?? null) : null;
  const open = sum.terms[0]?.measure?.parts[0]?.numeral.open ?? false;
  if (!surface && !open) {
    const typed = reader.typed(sum);
    reader.remark({
      about: 'no-surface',
      place: start,
      typed,
      readings: [`${typed} orthometric`, `${typed} ellipsoidal`],
    });
  }
  if (surface === 'spoilt')
    return {
      value: hole(`the surface of the ${name} cannot be read as typed`, start),
      surface: null,
      geoid,
      place: start,
    };
  return { value, surface, geoid, place: start };
}

/** A word that only nearly is a surface spoils the height; it is remarked on once, and never guessed. */
function takeSurface(reader: LineReader): Surface | 'spoilt' | null {
  const known = reader.word('orthometric', 'ellipsoidal');
  if (known) return known;
  const next = reader.peek();
  const [meant] = next?.kind === 'word' ? nearest(next.word, ['orthometric', 'ellipsoidal', 'above']) : [];
  if (next && meant) {
    reader.next();
    const place = reader.at(next);
    reader.remark({ about: 'leftover', place, typed: reader.typed(next), near: [meant] });
    return 'spoilt';
  }
  if (!reader.word('above')) return null;
  const above = reader.nameOrText();
  if (!above) return null;
  if (above.name === 'orthometric' || above.name === 'ellipsoidal') return above.name;
  return { above };
}

type Way = 'east or west' | 'north or south';
const wayOf = (letter: string): Way => (letter === 'N' || letter === 'S' ? 'north or south' : 'east or west');

interface Coordinate {
  readonly axis: 'east' | 'north' | 'latitude' | 'longitude' | 'x' | 'y' | 'z';
  readonly value: Maybe<Value>;
  readonly place: Place;
  /** As its letter says, O among them; null where it has none. */
  readonly way: Way | null;
  /** The letter is missing; which it may be is known once those of the other coordinates are. */
  readonly letterless?: RemarkOf<'hemisphere' | 'angle-sign'>;
}

function takeCoordinate(reader: LineReader, about: string): Coordinate | null {
  const first = reader.peek();
  if (first?.kind === 'word' && /^[XYZ]$/.test(first.word)) return takeGeocentric(reader, first.word, about);
  if (first?.kind !== 'sum') return null;
  if (isPackedThreesome(reader)) return takePacked(reader, about);
  reader.next();
  if (isAngle(first)) return takeAngle(reader, first, about);
  const west = bareWest(first);
  const number = west?.sum ?? first;
  const letter = west?.letter ?? takeLetter(reader);
  const packed = letter ? packedIn(number, letter) : [];
  if (letter && packed.length > 0)
    return packedCoordinate(reader, { start: number.start, end: letter.end }, packed, letter.letter, about);
  const name = `${letterNames[letter?.letter ?? '?'] ?? 'coordinate'} of ${about}`;
  const degrees = letter ? null : mayBeDegrees(reader, number);
  if (degrees !== null) {
    const place = reader.at(number);
    const readings = [`${degrees}°`, `${degrees} m`, `${degrees} ft`, `${degrees} usft`];
    reader.remark({ about: 'unit-missing', place, typed: degrees, measures: name, readings });
    return { axis: 'east', value: hole(`${name} has no unit`, place), place, way: null };
  }
  const value = quantity(reader, number, 'length', name);
  const place = reader.at({ start: number.start, end: letter?.end ?? number.end });
  // A unit that is written wrongly stands between the number and its letter, and is taken with the number.
  const late = letter ?? takeLetter(reader);
  const eastOrWest = late ? null : takeO(reader, number);
  if (eastOrWest) {
    const reason = `O may be east or west in the ${name}`;
    return { axis: 'east', value: hole(reason, place), place, way: 'east or west', letterless: eastOrWest };
  }
  if (!late) {
    const missing = hole(`${name} has no letter (E or N)`, place);
    const letterless = withLetters(place, reader.typed(first), ['E', 'N']);
    return { axis: 'east', value: missing, place, way: null, ...(isHole(value) ? {} : { letterless }) };
  }
  const turned = late.letter === 'W' || late.letter === 'S';
  return {
    axis: late.letter === 'E' || late.letter === 'W' ? 'east' : 'north',
    value: turned ? negated(value) : value,
    place,
    way: wayOf(late.letter),
  };
}

/** `41.15` alone, without letter or unit, as it is typed: degrees as likely as a length. */
function mayBeDegrees(reader: LineReader, { terms: [term, ...more], ...sum }: Sum): string | null {
  const [part, ...parts] = term?.measure?.parts ?? [];
  if (!part || more.length > 0 || parts.length > 0 || part.unit || reader.peek()?.kind === 'word')
    return null;
  return part.numeral.value !== null && part.numeral.value <= 180 ? reader.typed(sum) : null;
}

function takeGeocentric(reader: LineReader, letter: string, about: string): Coordinate | null {
  const word = reader.next();
  const sum = reader.sum();
  if (!word || !sum) return null;
  const value = quantity(reader, sum, 'length', `${letter} of ${about}`);
  return {
    axis: letter.toLowerCase() as 'x' | 'y' | 'z',
    value,
    place: reader.at({ start: word.start, end: sum.end }),
    way: null,
  };
}

const letterNames: Readonly<Record<string, string>> = { E: 'east', W: 'east', N: 'north', S: 'north' };

interface Letter {
  readonly letter: 'N' | 'S' | 'E' | 'W';
  readonly end: number;
}

function takeLetter(reader: LineReader): Letter | null {
  const end = reader.peek()?.end ?? 0;
  const letter = reader.word('N', 'S', 'E', 'W');
  return letter ? { letter, end } : null;
}

/** O stands for east in German and for west in French, so it stands for nothing here. */
function takeO(reader: LineReader, sum: Sum): RemarkOf<'hemisphere'> | null {
  const end = reader.peek()?.end ?? 0;
  if (!reader.word('O')) return null;
  const number = reader.typed(sum);
  const place = reader.at({ start: sum.start, end });
  return {
    about: 'hemisphere',
    place,
    typed: reader.typed(place),
    readings: [`${number} E`, `${number} W`],
  };
}

/** `8.62 W` is a longitude without its degree mark, not a power: the number and the letter that was taken for watts. */
function bareWest(sum: Sum): { readonly sum: Sum; readonly letter: Letter } | null {
  const [term] = sum.terms;
  const part = term?.measure?.parts[0];
  if (
    !term?.measure ||
    !part?.unit ||
    part.unit.unit !== 'W' ||
    sum.terms.length > 1 ||
    term.measure.parts.length > 1
  )
    return null;
  const bare = { ...part, unit: null, end: part.numeral.end };
  const measure = { ...term.measure, parts: [bare], end: bare.end };
  return {
    sum: { ...sum, terms: [{ ...term, measure, end: bare.end }], end: bare.end },
    letter: { letter: 'W', end: sum.end },
  };
}

/** Readings of a number without unit or sign before a letter. */
function packedIn(number: Sum, letter: Letter): string[] {
  const measure = number.terms.length === 1 ? number.terms[0]?.measure : null;
  const part = measure?.parts[0];
  if (!measure || !part || part.unit) return [];
  const readings = packedReadings(part.numeral.typed, letter.letter, letter.end - 1 === part.numeral.end);
  return measure.sign ? eitherHemisphere(readings) : readings;
}

function takeAngle(reader: LineReader, sum: Sum, about: string): Coordinate {
  const letter = takeLetter(reader);
  const place = reader.at({ start: sum.start, end: letter?.end ?? sum.end });
  const eastOrWest = letter ? null : takeO(reader, sum);
  if (eastOrWest)
    return {
      axis: 'longitude',
      value: hole(`O may be east or west in the longitude of ${about}`, place),
      place,
      way: 'east or west',
      letterless: eastOrWest,
    };
  const measure = sum.terms[0]?.measure;
  const typed = reader.typed(place);
  if (!letter || !measure) {
    const beyondPole = (measure?.parts[0]?.numeral.value ?? 0) > 90;
    const fitting = (letters: readonly string[]) =>
      beyondPole ? letters.filter((letter) => wayOf(letter) === 'east or west') : letters;
    const bare = typed.replace(/^\S\s*/, '');
    const letterless = measure?.sign
      ? ({
          about: 'angle-sign',
          place,
          typed,
          readings: fitting(measure.sign === '-' ? ['W', 'S'] : ['E', 'N']).map((meant) => bare + meant),
        } as const)
      : withLetters(place, typed, fitting(['N', 'S', 'E', 'W']));
    const value = hole(`an angle of ${about} has no hemisphere`, place);
    return { axis: 'latitude', value, place, way: null, letterless };
  }
  const axis = letter.letter === 'N' || letter.letter === 'S' ? 'latitude' : 'longitude';
  const name = `${axis} of ${about}`;
  const value = angleValue(reader, sum, measure, letter.letter, name, typed, place);
  return { axis, value, place, way: wayOf(letter.letter) };
}

/** Each part by its own unit, so that `4'` is no degree and a gon is 0.9 of one; null where one cannot be read. Divided, which is exact more often than times a sixtieth. */
function degreesIn(parts: readonly { readonly value: number | null; readonly unit: string | undefined }[]) {
  let size = 0;
  for (const { value, unit } of parts) {
    if (value === null) return null;
    size += unit === 'gon' ? value * 0.9 : value / ({ "'": 60, '"': 3600 }[unit ?? ''] ?? 1);
  }
  return size;
}

function angleValue(
  reader: LineReader,
  sum: Sum,
  measure: Measure,
  letter: 'N' | 'S' | 'E' | 'W',
  name: string,
  typed: string,
  place: Place,
): Maybe<Value> {
  if (measure.sign) {
    const bare = typed.replace(/^\S\s*/, '');
    const readings = [bare, bare.slice(0, -1) + opposite(letter)];
    reader.remark({ about: 'angle-sign', place, typed, readings });
    return hole(`${name} has a sign and a hemisphere`, place);
  }
  const parts = measure.parts.map(({ numeral, unit }) => ({ value: numeral.value, unit: unit?.unit }));
  const size = degreesIn(parts);
  if (size === null) {
    const open = measure.parts.some((part) => part.numeral.open);
    if (open) reader.remark({ about: 'open-value', place, word: name });
    return hole(open ? `${name} is still open (?)` : `${name} cannot be read as typed`, place);
  }
  const limit = letter === 'N' || letter === 'S' ? 90 : 180;
  const last = parts.length - 1;
  const beyond = parts.some(({ value }, index) => index > 0 && (value ?? 0) >= 60);
  const split = parts.some(({ value }, index) => index < last && !Number.isInteger(value));
  if (size > limit || beyond || split) {
    const told = size > limit ? `${limit}°` : 'minutes and seconds below 60';
    reader.remark({ about: 'angle-range', place, typed, limit: told });
    return hole(`${name} is out of range`, place);
  }
  const spread = sum.terms[0]?.uncertainty;
  const sigma = spread?.parts[0]?.unit?.unit === '"' ? (spread.parts[0].numeral.value ?? 0) / 3600 : null;
  return given(name, letter === 'S' || letter === 'W' ? -size : size, '°', sigma, typed, place);
}

const withLetters = (place: Place, typed: string, letters: readonly string[]): RemarkOf<'hemisphere'> => ({
  about: 'hemisphere',
  place,
  typed,
  readings: letters.map((letter) => `${typed} ${letter}`),
});

/** A position has one coordinate each way, so that no letter is read into a coordinate which would say a way twice. */
function remarkLetters(reader: LineReader, found: readonly Coordinate[]): void {
  for (const { letterless } of found) {
    if (!letterless) continue;
    const said = found.filter((other) => other.letterless !== letterless).map(({ way }) => way);
    const free = letterless.readings.filter((reading) => !said.includes(wayOf(reading.slice(-1))));
    // What a sign may mean is said even so.
    const readings = free.length === 0 && letterless.about === 'angle-sign' ? letterless.readings : free;
    reader.remark({ ...letterless, readings });
  }
}

/** Three numbers in a row and a letter: degrees, minutes and seconds without their marks. */
function isPackedThreesome(reader: LineReader): boolean {
  const bare = (item: Item | undefined) =>
    item?.kind === 'sum' &&
    item.terms.length === 1 &&
    item.terms[0]?.measure?.parts.length === 1 &&
    !item.terms[0].measure.parts[0]?.unit;
  if (!bare(reader.peek(0)) || !bare(reader.peek(1))) return false;
  const third = reader.peek(2);
  const letter = reader.peek(3);
  if (bare(third)) return letter?.kind === 'word' && /^[NSEW]$/.test(letter.word);
  return third?.kind === 'sum' && bareWest(third) !== null;
}

function takePacked(reader: LineReader, about: string): Coordinate {
  const first = reader.next();
  reader.next();
  const third = reader.next();
  const letter = takeLetter(reader) ?? (third?.kind === 'sum' ? (bareWest(third)?.letter ?? null) : null);
  const span = { start: first?.start ?? 0, end: letter?.end ?? first?.end ?? 0 };
  const [, sign = '', degrees = '', minutes = '', seconds = ''] =
    /^([-+\u2212]?)\s*(\S+)\s+(\S+)\s+(\S+)\s*\S$/.exec(reader.typed(span)) ?? [];
  const reading = sexagesimal(degrees, minutes, seconds, letter?.letter ?? 'N');
  const readings = reading === null ? [] : sign === '' ? [reading] : eitherHemisphere([reading]);
  return packedCoordinate(reader, span, readings, letter?.letter ?? 'N', about);
}

function packedCoordinate(
  reader: LineReader,
  span: { start: number; end: number },
  readings: readonly string[],
  letter: string,
  about: string,
): Coordinate {
  const place = reader.at(span);
  reader.remark({ about: 'angle-packed', place, typed: reader.typed(span), readings });
  const axis = letter === 'N' || letter === 'S' ? 'latitude' : 'longitude';
  return {
    axis,
    value: hole(`${axis} of ${about} is packed and can be read in more than one way`, place),
    place,
    way: wayOf(letter),
  };
}

/**
 * Every plausible reading of `41-09-08.18`, `410908.18` or `41.090818` before a hemisphere letter.
 * A long run of digits parted from its letter by a blank is a grid coordinate without a unit instead.
 */
function packedReadings(typed: string, letter: string, adjoining: boolean): string[] {
  if (!/^[NSEW]$/.test(letter)) return [];
  const dashed = /^(\d{1,3})[-./](\d{1,2})[-./](\d{1,2}(?:\.\d+)?)$/.exec(typed);
  const readings: (string | null)[] = [];
  const limit = letter === 'N' || letter === 'S' ? 90 : 180;
  if (dashed) readings.push(sexagesimal(dashed[1] ?? '', dashed[2] ?? '', dashed[3] ?? '', letter));
  const run = adjoining && /^(\d{5,7})(\.\d+)?$/.exec(typed);
  if (run) {
    const whole = run[1] ?? '';
    const seconds = whole.slice(-2) + (run[2] ?? '');
    readings.push(sexagesimal(whole.slice(0, -4), whole.slice(-4, -2), seconds, letter));
  }
  const minutesRun = adjoining && /^(\d{3,5})(\.\d+)$/.exec(typed);
  if (minutesRun) {
    const whole = minutesRun[1] ?? '';
    const minutes = Number(whole.slice(-2) + (minutesRun[2] ?? ''));
    if (minutes < 60 && Number(whole.slice(0, -2)) <= limit)
      readings.push(`${Number(whole.slice(0, -2))}°${whole.slice(-2)}${minutesRun[2] ?? ''}'${letter}`);
  }
  const decimal = /^(\d{1,3})\.(\d{4,})$/.exec(typed);
  if (decimal && Number(typed) <= limit) {
    readings.push(`${typed}°${letter}`);
    const digits = decimal[2] ?? '';
    const seconds = digits.slice(2, 4) + (digits.length > 4 ? `.${digits.slice(4)}` : '');
    readings.push(sexagesimal(decimal[1] ?? '', digits.slice(0, 2), seconds, letter));
  }
  return readings.filter((reading): reading is string => reading !== null);
}

/** The digits as they were typed, so that nothing is rounded and no sign is lost; null beyond the range of an angle. */
function sexagesimal(degrees: string, minutes: string, seconds: string, letter: string): string | null {
  if (![degrees, minutes].every((part) => /^\d+$/.test(part)) || !/^\d+(?:\.\d+)?$/.test(seconds))
    return null;
  const limit = letter === 'N' || letter === 'S' ? 90 : 180;
  const size = Number(degrees) + Number(minutes) / 60 + Number(seconds) / 3600;
  if (Number(minutes) >= 60 || Number(seconds) >= 60 || size > limit) return null;
  const [whole = '', ...decimals] = seconds.split('.');
  const padded = [whole.padStart(2, '0'), ...decimals].join('.');
  return `${Number(degrees)}°${minutes.padStart(2, '0')}'${padded}"${letter}`;
}

/** A sign beside a letter may say the hemisphere a second time, or turn it round. */
const eitherHemisphere = (readings: readonly string[]) =>
  readings.flatMap((reading) => [reading, reading.slice(0, -1) + opposite(reading.slice(-1))]);

const opposite = (letter: string) => ({ N: 'S', S: 'N', E: 'W' })[letter] ?? 'E';

function assembled(
  reader: LineReader,
  found: readonly Coordinate[],
  system: Named | null,
  by: Named | null,
  about: string,
): Position | null {
  const [first] = found;
  const last = found[found.length - 1];
  if (!first || !last) return null;
  const place = reader.at({ start: first.place.start, end: last.place.end });
  const pick = (axis: Coordinate['axis'], name: string): Maybe<Value> => {
    const matching = found.filter((coordinate) => coordinate.axis === axis);
    const [one, second] = matching;
    if (one && second) {
      // What is wrong with a coordinate without its letter has been said; which axis it is of, nobody knows.
      if (!isHole(one.value) && !isHole(second.value))
        reader.remark({
          about: 'leftover',
          place: second.place,
          typed: reader.typed(second.place),
          near: [],
        });
      return hole(`${name} of ${about} is given twice`, second.place);
    }
    if (one) return one.value;
    if (!found.some((coordinate) => isHole(coordinate.value)))
      reader.remark({ about: 'missing-value', place, word: 'position', expects: `its ${name}` });
    return hole(`${name} of ${about} is missing`, place);
  };
  const axes = new Set(found.map((coordinate) => coordinate.axis));
  if (axes.has('x') || axes.has('y') || axes.has('z'))
    return { form: 'geocentric', x: pick('x', 'X'), y: pick('y', 'Y'), z: pick('z', 'Z'), place, system, by };
  if (axes.has('latitude') || axes.has('longitude'))
    return {
      form: 'geographic',
      latitude: pick('latitude', 'latitude'),
      longitude: pick('longitude', 'longitude'),
      place,
      system,
      by,
    };
  return { form: 'grid', east: pick('east', 'east'), north: pick('north', 'north'), place, system, by };
}

function negated(value: Maybe<Value>): Maybe<Value> {
  if (isHole(value) || value.origin !== 'given') return value;
  return { ...value, value: -value.value };
}

const isAngle = (sum: Sum) => {
  const unit = sum.terms[0]?.measure?.parts[0]?.unit?.unit;
  return unit === '°' || unit === "'" || unit === 'gon';
};

const wordAt = (reader: LineReader, ahead = 0) => {
  const item = reader.peek(ahead);
  return item?.kind === 'word' ? item.word : undefined;
};

/** Behind a comma any quantity is meant as a coordinate; what it lacks is said there. */
function startsCoordinate(reader: LineReader, ahead: number): boolean {
  const item = reader.peek(ahead);
  return item?.kind === 'sum' || (item?.kind === 'word' && /^([XYZ]|height|in)$/.test(item.word));
}
