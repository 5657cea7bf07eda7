/** Reads typed quantities as values in basic units, or as holes with a remark that says what is wrong. */
import type { Measure, Part, Place, Sum, Term } from '../../grammar/tree.ts';
import { unitNamed, UNITS, type Dimension, type UnitSpec } from '../../grammar/units.ts';
import { sumOf } from '../quantities/sum.ts';
import { given, hole, isHole, type Maybe, type Unit, type Value } from '../quantities/value.ts';
import type { LineReader } from './binding/line-reader.ts';
import { nearest } from '../quantities/near.ts';

const basicUnit: Readonly<Record<Dimension, Unit>> = {
  length: 'm',
  angle: '°',
  frequency: 'Hz',
  'bit-rate': 'bit/s',
  power: 'W',
  time: 's',
  ratio: '',
  temperature: '',
};

/** A quantity with a constant part and one that grows with distance: `35 mm + 1 ppm`. */
export interface Budget {
  readonly constant: Maybe<Value>;
  /** Metres for each metre of distance; null where none is given. */
  readonly perDistance: Maybe<Value> | null;
  readonly place: Place;
}

/** A sum of quantities of one dimension; a hole where any of its terms is one. */
export function quantity(reader: LineReader, sum: Sum, wanted: Dimension, name: string): Maybe<Value> {
  const terms = sum.terms.map((term) => termValue(reader, term, wanted, name));
  const missing = terms.find(isHole);
  if (missing) return missing;
  const values = terms.filter((term): term is Value => !isHole(term));
  const [only] = values;
  if (values.length === 1 && only && sum.terms[0]?.sign === 1) return only;
  return sumOf(
    name,
    basicUnit[wanted],
    values.map((value, index) => ({ sign: sum.terms[index]?.sign ?? 1, value })),
  );
}

/** Reads the next item as a quantity; without one there, a hole and a remark. */
export function takeQuantity(reader: LineReader, wanted: Dimension, name: string): Maybe<Value> {
  const sum = reader.sum();
  if (sum) return quantity(reader, sum, wanted, name);
  const word = reader.line.word?.word ?? '';
  reader.remark({ about: 'missing-value', place: reader.place, word, expects: expectations[wanted] });
  return hole(`${name} is missing`, reader.place);
}

/** A plain number: counts, ratios, identifiers. */
export function bareNumber(reader: LineReader, sum: Sum, name: string): Maybe<Value> {
  const measure = sum.terms.length === 1 ? sum.terms[0]?.measure : null;
  const part = measure?.parts[0];
  const place = reader.at(sum);
  if (!measure || !part || measure.parts.length > 1) return leftover(reader, sum, name);
  if (part.numeral.value === null) return openOrSpoilt(reader, part, name);
  if (part.unit) {
    const typed = reader.typed(part);
    reader.remark({
      about: 'unit-wrong',
      place,
      typed,
      measures: 'a plain number',
      wanted: 'no unit',
      readings: [part.numeral.typed],
    });
    return hole(`${name} is a plain number, without a unit`, place);
  }
  return given(name, signed(measure) * part.numeral.value, '', null, reader.typed(measure), place);
}

/** A constant part and parts in a million: `35 mm + 1 ppm`. */
export function budget(reader: LineReader, sum: Sum, name: string): Budget {
  const isRatio = (term: Term) =>
    term.measure?.parts[0]?.unit && unitNamed(term.measure.parts[0].unit.unit)?.measures === 'ratio';
  const ratio = sum.terms.filter(isRatio);
  const rest = sum.terms.filter((term) => !isRatio(term));
  const place = reader.at(sum);
  return {
    constant:
      rest.length > 0
        ? quantity(reader, { ...sum, terms: rest }, 'length', name)
        : given(name, 0, 'm', null, '0', place),
    perDistance:
      ratio.length > 0 ? quantity(reader, { ...sum, terms: ratio }, 'ratio', `${name} for each metre`) : null,
    place,
  };
}

/** The `± q` of a term alone, where no value is given: `plummet ± 1 mm`. */
export function bareSpread(reader: LineReader, sum: Sum, wanted: Dimension, name: string): Maybe<Value> {
  const [term] = sum.terms;
  const measure = term?.uncertainty ?? term?.measure;
  if (!term || sum.terms.length > 1 || !measure) return leftover(reader, sum, name);
  return measureValue(reader, measure, wanted, name, null);
}

function termValue(reader: LineReader, term: Term, wanted: Dimension, name: string): Maybe<Value> {
  if (!term.measure) return leftover(reader, term, name);
  const label = term.label ? `${name} (${term.label.text})` : name;
  const spread = term.uncertainty
    ? measureValue(reader, term.uncertainty, wanted, `uncertainty of ${name}`, null)
    : null;
  if (isHole(spread)) return spread;
  return measureValue(reader, term.measure, wanted, label, spread ? Math.abs(spread.value) : null);
}

function measureValue(
  reader: LineReader,
  measure: Measure,
  wanted: Dimension,
  name: string,
  sigma: number | null,
): Maybe<Value> {
  let total = 0;
  for (const part of measure.parts) {
    const value = partValue(reader, measure, part, wanted, name);
    if (isHole(value)) return value;
    total += value;
  }
  return given(
    name,
    signed(measure) * total,
    basicUnit[wanted],
    sigma,
    reader.typed(measure),
    reader.at(measure),
  );
}

function partValue(
  reader: LineReader,
  measure: Measure,
  part: Part,
  wanted: Dimension,
  name: string,
): Maybe<number> {
  if (part.numeral.value === null) return openOrSpoilt(reader, part, name);
  if (!part.unit) return unitMissing(reader, measure, part, wanted, name);
  const spec = unitNamed(part.unit.unit);
  if (!spec || spec.measures !== wanted) return unitWrong(reader, measure, part, spec, wanted, name);
  return spec.factor === null ? decibels(part.numeral.value) : part.numeral.value * spec.factor;
}

/** dBm to watts. */
const decibels = (level: number) => 10 ** (level / 10) / 1000;

/** What is wrong with the letters is remarked on already; a run such as `1.2.3` is only seen to be no number here. */
function openOrSpoilt(reader: LineReader, part: Part, name: string): ReturnType<typeof hole> {
  const place = reader.at(part);
  if (part.numeral.open) {
    reader.remark({ about: 'open-value', place, word: name });
    return hole(`${name} is still open (?)`, place);
  }
  const told = reader.entry.slips.some(({ start, end }) => start < part.end && end > part.start);
  if (!told) {
    const { start, end, typed } = part.numeral;
    const slip = { slip: 'broken-number' as const, start, end, typed, readings: [] };
    reader.remark({ about: 'letters', place: reader.at(part.numeral), slip });
  }
  return hole(`${name} cannot be read as typed`, place);
}

/** A number without a unit; a word behind it may be a unit written wrongly, and is taken with it. */
function unitMissing(reader: LineReader, measure: Measure, part: Part, wanted: Dimension, name: string) {
  const next = reader.peek();
  const place = reader.at(part);
  if (next?.kind === 'word' && next.start - part.end <= 1) {
    const meant = unitsMeant(next.word, wanted);
    if (meant.length > 0) {
      reader.next();
      reader.remark({ about: 'unit-slip', place: reader.at(next), typed: next.word, readings: meant });
      return hole(`the unit of ${name}, ${next.word}, is not known`, reader.at(next));
    }
  }
  const units = UNITS.filter((unit) => unit.measures === wanted && unit.factor !== null);
  const readings = units.map((unit) => `${part.numeral.typed} ${unit.unit}`);
  reader.remark({
    about: 'unit-missing',
    place: reader.at(measure),
    typed: reader.typed(measure),
    measures: name,
    readings: readings.map((reading) => signedText(measure) + reading),
  });
  return hole(`${name} has no unit`, place);
}

function unitWrong(
  reader: LineReader,
  measure: Measure,
  part: Part,
  spec: UnitSpec | undefined,
  wanted: Dimension,
  name: string,
) {
  const place = reader.at(measure);
  const typed = reader.typed(measure);
  reader.remark({
    about: 'unit-wrong',
    place,
    typed,
    measures: spec?.measures ?? part.unit?.unit ?? '',
    wanted: expectations[wanted],
    readings: feetReading(measure, wanted),
  });
  return hole(`${name} is not ${expectations[wanted]}`, place);
}

/** `5'2"` for a length means feet and inches. */
function feetReading(measure: Measure, wanted: Dimension): string[] {
  const [feet, inches] = measure.parts;
  if (wanted !== 'length' || feet?.unit?.unit !== "'") return [];
  return [`${signedText(measure)}${feet.numeral.typed} ft${inches ? ` ${inches.numeral.typed} in` : ''}`];
}

const wordsForUnits: Readonly<Record<string, readonly string[]>> = {
  m: ['metre', 'metres', 'meter', 'meters', 'mtr', 'mtrs'],
  mm: ['millimetre', 'millimetres', 'millimeter', 'millimeters', 'mms'],
  cm: ['centimetre', 'centimetres', 'centimeter', 'centimeters', 'cms'],
  ft: ['foot', 'feet'],
  in: ['inch', 'inches'],
  usft: ['ftus', 'us-ft', 'sft'],
  s: ['sec', 'secs', 'second', 'seconds'],
  min: ['mins', 'minute', 'minutes'],
  h: ['hr', 'hrs', 'hour', 'hours'],
  gon: ['grad', 'gons'],
};

/** Units of a dimension that a wrongly written one can mean; only such that are no unit as typed. */
function unitsMeant(typed: string, wanted: Dimension): string[] {
  const lower = typed.toLowerCase();
  const fitting = UNITS.filter((unit) => unit.measures === wanted).map((unit) => unit.unit);
  const exact = fitting.filter(
    (unit) => unit.toLowerCase() === lower || wordsForUnits[unit]?.includes(lower),
  );
  if (exact.length > 0) return exact;
  const known = [...(wordsForUnits.usft ?? []), ...Object.values(wordsForUnits).flat()];
  const near = nearest(lower, known)[0];
  if (!near || lower.length < 4) return [];
  return fitting.filter((unit) => wordsForUnits[unit]?.includes(near));
}

const expectations: Readonly<Record<Dimension, string>> = {
  length: 'a length (1.284 m, 250 mm, 4.21 ft)',
  angle: 'an angle (41°09\'08.2")',
  frequency: 'a frequency (461.0375 MHz)',
  'bit-rate': 'a bit rate (9.6 kbps)',
  power: 'a power (500 mW)',
  time: 'a time span (10 s)',
  ratio: 'a ratio (95 %, 1 ppm)',
  temperature: 'a temperature (18 °C)',
};

function leftover(reader: LineReader, span: { start: number; end: number }, name: string) {
  const place = reader.at(span);
  reader.remark({ about: 'leftover', place, typed: reader.typed(span), near: [] });
  return hole(`${name} cannot be read as typed`, place);
}

const signed = (measure: Measure) => (measure.sign === '-' ? -1 : 1);
const signedText = (measure: Measure) => (measure.sign === '-' ? '-' : '');
