/** Reads `antenna`, `rover`, `surface` and `ground`. */
import { given, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Source } from './bind.ts';
import { takePositionAndHeight, type Position, type Surface } from '../coordinates.ts';
import type { Antenna, AntennaCalibration, Ground, LocalSurface, Rover, TapePoint } from '../entries.ts';
import type { LineReader } from './line-reader.ts';
import { missing, takeAccuracy, takeGeoid, takeNamed, takePole, takeQuoted } from './phrases.ts';
import { bareNumber, quantity, takeQuantity } from '../quantities.ts';

export function bindAntenna({ header, details, entry, place, remarks }: Source): Antenna {
  const name = takeNamed(header)?.name ?? '';
  const description = header.text()?.text ?? null;
  header.finish();
  return {
    entry,
    place,
    remarks,
    kind: 'antenna',
    name,
    description,
    phaseCentre: details.one('phase-centre', (line) => takeAboveArp(line, `phase centre of ${name}`), [
      'above',
      'below',
    ]),
    calibration: details.one('calibration', takeCalibration, COMBINATIONS),
    tapePoints: details.all('tape-point', (line) => takeTapePoint(line, name), ['radius', 'above', 'below']),
    hook: details.one('hook', (line) => takeQuantity(line, 'length', `hook of ${name}`)),
    fixedHeight: details.one('fixed-height', (line) => {
      const height = takeQuantity(line, 'length', `fixed height of ${name}`);
      if (line.word('to')) takeNamed(line);
      return height;
    }),
    serial: details.one('serial', takeNamed),
  };
}

const COMBINATIONS: readonly string[] = ['L1', 'L2', 'ionosphere-free'];

/** `"antennas.atx" "TRB-CHOKE       NONE" L1`. */
function takeCalibration(reader: LineReader): AntennaCalibration | null {
  const file = takeQuoted(reader);
  const text = reader.text();
  const type = text ? { text: text.text, place: reader.at(text) } : null;
  const item = reader.peek();
  const word = reader.word(...COMBINATIONS);
  const combination = word && item ? { name: word, place: reader.at(item) } : null;
  if (file && !type) missing(reader, 'the antenna type as the file has it, in double quotes');
  return file && { file, type, combination, place: reader.place };
}

/** `92 mm above arp`, negative below it. */
function takeAboveArp(reader: LineReader, what: string): Maybe<Value> {
  const value = takeQuantity(reader, 'length', what);
  const side = reader.word('above', 'below');
  if (side) takeNamed(reader);
  if (isHole(value) || side !== 'below') return value;
  return value.origin === 'given'
    ? given(what, -value.value, 'm', value.sigma, `${value.typed} below`, value.place)
    : value;
}

function takeTapePoint(reader: LineReader, antenna: string): TapePoint {
  const name = takeNamed(reader)?.name ?? '';
  let radius: Maybe<Value> | null = null;
  let above: Maybe<Value> | null = null;
  for (;;) {
    if (reader.word('radius')) radius = takeQuantity(reader, 'length', `radius of ${name}`);
    else if (reader.peek()?.kind === 'sum')
      above = takeAboveArp(reader, `${name} of ${antenna} above the ARP`);
    else break;
    reader.comma();
  }
  if (!radius) missing(reader, 'the radius (radius 168 mm)');
  if (!above) missing(reader, 'the height above the ARP (35 mm above arp)');
  const because = { hole: `${name} of ${antenna} is not described in full`, place: reader.place };
  return { name, radius: radius ?? because, above: above ?? because, place: reader.place };
}

export function bindRover({ header, details, entry, place, remarks }: Source): Rover {
  const name = takeNamed(header)?.name ?? '';
  const description = header.text()?.text ?? null;
  header.finish();
  return {
    entry,
    place,
    remarks,
    kind: 'rover',
    name,
    description,
    pole: details.one('pole', takePole, ['to', 'held']),
    uncertainty: details.one('uncertainty', (line) => takeAccuracy(line, `uncertainty of ${name}`), [
      'horizontal',
      'vertical',
    ]),
    geoid: details.one('geoid', takeGeoid),
    scale: details.one('scale', takeScale),
    siteCalibration: details.one('site-calibration', takeNamed),
    serial: details.one('serial', takeNamed),
  };
}

/** A ratio such as 1.000134, or what it differs from one: `134 ppm`. */
function takeScale(reader: LineReader): Maybe<Value> {
  const sum = reader.sum();
  if (!sum) {
    missing(reader, 'a ratio (1.000134)');
    return { hole: 'the scale is missing', place: reader.place };
  }
  if (!sum.terms[0]?.measure?.parts[0]?.unit) return bareNumber(reader, sum, 'scale');
  const difference = quantity(reader, sum, 'ratio', 'scale');
  if (isHole(difference) || difference.origin !== 'given') return difference;
  return { ...difference, value: 1 + difference.value };
}

export function bindSurface({ header, details, entry, place, remarks }: Source): LocalSurface {
  const name = takeNamed(header)?.name ?? '';
  const description = header.text()?.text ?? null;
  header.finish();
  const offset = details.one('offset', (line) => takeOffset(line, name), ['above', 'below']);
  return {
    entry,
    place,
    remarks,
    kind: 'surface',
    name,
    description,
    offset: offset?.value ?? null,
    against: offset?.against ?? null,
  };
}

export function bindGround({ header, details, entry, place, remarks }: Source): Ground {
  const name = takeNamed(header)?.name ?? '';
  const description = header.text()?.text ?? null;
  header.finish();
  return {
    entry,
    place,
    remarks,
    kind: 'ground',
    name,
    description,
    grid: details.one('grid', takeNamed),
    about: details.one('about', (line) => takeGrid(line, `the point that ${name} is scaled about`)),
    scale: details.one('scale', takeScale),
    shift: details.one('shift', (line) => takeGrid(line, `the shift of ${name}`)),
  };
}

function takeGrid(reader: LineReader, about: string): Position | null {
  const { position } = takePositionAndHeight(reader, about);
  if (position?.form === 'grid') return position;
  missing(reader, 'grid coordinates (… m E, … m N)');
  return null;
}

/** `2.00 m below orthometric`: a height above this surface plus −2.00 m is a height above that one. */
function takeOffset(reader: LineReader, surface: string): { value: Maybe<Value>; against: Surface | null } {
  const what = `offset of ${surface}`;
  const value = takeQuantity(reader, 'length', what);
  const side = reader.word('above', 'below');
  const named = side ? takeNamed(reader) : null;
  if (!side || !named) missing(reader, '`above` or `below` and the other surface (2.00 m below orthometric)');
  const against: Surface | null =
    named?.name === 'orthometric' || named?.name === 'ellipsoidal'
      ? named.name
      : named
        ? { above: named }
        : null;
  if (isHole(value) || value.origin !== 'given' || side !== 'below') return { value, against };
  return { value: given(what, -value.value, 'm', value.sigma, `${value.typed} below`, value.place), against };
}
