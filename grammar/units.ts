/** The units that may be typed, with what each measures and how many of the basic unit it makes. */

/** What a unit measures; the basic units are m, °, Hz, bit/s, W, s, ratio and °C. */
export type Dimension =
  'length' | 'angle' | 'frequency' | 'bit-rate' | 'power' | 'time' | 'ratio' | 'temperature';

export interface UnitSpec {
  readonly unit: string;
  readonly measures: Dimension;
  /** Value in the basic unit of one of these; null where the relation is not a factor (dBm). */
  readonly factor: number | null;
  readonly says: string;
}

/** The international foot, exactly; the US survey foot is 1200/3937 m (withdrawn 31 December 2022, 85 FR 62698). */
const FOOT = 0.3048;

export const UNITS: readonly UnitSpec[] = [
  { unit: 'm', measures: 'length', factor: 1, says: 'metre' },
  { unit: 'mm', measures: 'length', factor: 0.001, says: 'millimetre' },
  { unit: 'cm', measures: 'length', factor: 0.01, says: 'centimetre' },
  { unit: 'km', measures: 'length', factor: 1000, says: 'kilometre' },
  { unit: 'ft', measures: 'length', factor: FOOT, says: 'international foot, 0.3048 m' },
  { unit: 'usft', measures: 'length', factor: 1200 / 3937, says: 'US survey foot, 1200/3937 m' },
  { unit: 'in', measures: 'length', factor: FOOT / 12, says: 'inch, 25.4 mm' },
  { unit: '°', measures: 'angle', factor: 1, says: 'degree' },
  { unit: "'", measures: 'angle', factor: 1 / 60, says: 'minute of arc' },
  { unit: '"', measures: 'angle', factor: 1 / 3600, says: 'second of arc' },
  { unit: 'gon', measures: 'angle', factor: 0.9, says: 'gon, 400 to the circle' },
  { unit: 'Hz', measures: 'frequency', factor: 1, says: 'hertz' },
  { unit: 'kHz', measures: 'frequency', factor: 1e3, says: 'kilohertz' },
  { unit: 'MHz', measures: 'frequency', factor: 1e6, says: 'megahertz' },
  { unit: 'bps', measures: 'bit-rate', factor: 1, says: 'bits a second' },
  { unit: 'kbps', measures: 'bit-rate', factor: 1000, says: 'kilobits a second' },
  { unit: 'W', measures: 'power', factor: 1, says: 'watt' },
  { unit: 'mW', measures: 'power', factor: 0.001, says: 'milliwatt' },
  { unit: 'dBm', measures: 'power', factor: null, says: 'decibels above a milliwatt' },
  { unit: 's', measures: 'time', factor: 1, says: 'second' },
  { unit: 'min', measures: 'time', factor: 60, says: 'minute' },
  { unit: 'h', measures: 'time', factor: 3600, says: 'hour' },
  { unit: 'ppm', measures: 'ratio', factor: 1e-6, says: 'parts in a million' },
  { unit: 'ppb', measures: 'ratio', factor: 1e-9, says: 'parts in a thousand million' },
  { unit: '%', measures: 'ratio', factor: 0.01, says: 'per cent' },
  { unit: '°C', measures: 'temperature', factor: 1, says: 'degree Celsius' },
];

/** Those in which a length may be typed, or stand in a column of a table, the metre first. */
export const LENGTH_UNITS: readonly UnitSpec[] = UNITS.filter(({ measures }) => measures === 'length');

const units = new Map(UNITS.map((spec) => [spec.unit, spec]));

export const unitNamed = (unit: string): UnitSpec | undefined => units.get(unit);
export const isUnit = (unit: string) => units.has(unit);
