/** A sentence of NMEA 0183: found in a line, its checksum proved, its fields read as numbers, times and angles. */
import { dayNumber } from '../civil-time.ts';
import { clipped } from '../problems.ts';

export interface Sentence {
  readonly talker: string;
  readonly type: string;
  readonly fields: readonly string[];
}

/** The sentence in a line, whatever a logger wrote before it; undefined where there is none that is read here. */
export function sentenceIn(line: string): Sentence | 'damaged' | undefined {
  const start = line.lastIndexOf('$');
  if (start === -1) return undefined;
  const star = line.indexOf('*', start);
  const body = line.slice(start + 1, star === -1 ? line.length : star);
  const [address = '', ...fields] = body.split(',');
  if (!/^[A-OQ-Z][A-Z0-9][A-Z]{3}$/.test(address)) return undefined;
  const stated = star === -1 ? '' : line.slice(star + 1, star + 3);
  if (!/^[0-9A-Fa-f]{2}$/.test(stated) || Number.parseInt(stated, 16) !== checksum(body)) return 'damaged';
  return { talker: address.slice(0, 2), type: address.slice(2), fields };
}

/** Seconds of the day of hhmmss.ss. */
export function secondsIn(field: string | undefined): number | undefined {
  const parts = /^(\d{2})(\d{2})(\d{2}(?:\.\d{1,9})?)$/.exec(field ?? '');
  if (!parts) return undefined;
  const [hours, minutes, rest] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  return hours < 24 && minutes < 60 && rest < 61 ? (hours * 60 + minutes) * 60 + rest : undefined;
}

/** Days since 1970 of an RMC's ddmmyy; years from 80 on are of the last century. A void one is not trusted. */
export function dayOfRmc(fields: readonly string[]): number | undefined {
  const parts = fields[1] === 'V' ? null : /^(\d{2})(\d{2})(\d{2})$/.exec(fields[8] ?? '');
  if (!parts) return undefined;
  const year = Number(parts[3]);
  return dayNumber(year < 80 ? 2000 + year : 1900 + year, Number(parts[2]), Number(parts[1]));
}

/** Days since 1970 of a ZDA's day, month and year. */
export function dayOfZda(fields: readonly string[]): number | undefined {
  const [day, month, year] = [numberIn(fields[1]), numberIn(fields[2]), numberIn(fields[3])];
  return day === undefined || month === undefined || year === undefined
    ? undefined
    : dayNumber(year, month, day);
}

/** A plain decimal number; undefined for anything else, an empty field above all. */
export function numberIn(field: string | undefined): number | undefined {
  return field !== undefined && field.length < 24 && /^[-+]?(\d+\.?\d*|\.\d+)$/.test(field)
    ? Number(field)
    : undefined;
}

/** Where the numbers of a sentence stand (NMEA 0183, version 4.11); a later version may have more fields than `least`. */
interface Layout {
  readonly least: number;
  readonly most?: number;
  readonly counts: readonly number[];
  readonly sizes: readonly number[];
  readonly heights: readonly number[];
  /** The letter that stands behind each height. */
  readonly unit?: string;
}
const layouts: Readonly<Record<string, Layout>> = {
  GGA: { least: 14, counts: [6], sizes: [7, 12], heights: [8, 10], unit: 'M' },
  GNS: { least: 12, counts: [6], sizes: [7, 10], heights: [8, 9] },
  GST: { least: 8, most: 8, counts: [], sizes: [5, 6, 7], heights: [] },
};

/**
 * What stands where it cannot. A checksum of one byte lets one damaged sentence of 256 pass; where a piece is lost or
 * doubled, what follows is read in the place of something else, and an altitude becomes a dilution.
 */
export function misplaced(type: string, fields: readonly string[]): string | undefined {
  const layout = layouts[type];
  if (!layout) return undefined;
  const { least, most = Infinity, counts, sizes, heights, unit } = layout;
  if (fields.length < least || fields.length > most)
    return `This ${type} has ${fields.length} fields instead of ${least}; it is not used.`;
  const stated = (at: number) => fields[at]?.trim() !== '';
  const wrong =
    counts.find((at) => stated(at) && !/^\d{1,3}$/.test(fields[at] ?? '')) ??
    sizes.find((at) => stated(at) && !((numberIn(fields[at]) ?? -1) >= 0)) ??
    heights.find((at) => stated(at) && numberIn(fields[at]) === undefined);
  if (wrong !== undefined)
    return `This ${type} has "${clipped(fields[wrong] ?? '')}", which cannot stand where it does; it is not used.`;
  const other = heights.find((at) => unit && stated(at) && fields[at + 1] !== unit);
  return other === undefined
    ? undefined
    : `This ${type} has "${clipped(fields[other + 1] ?? '')}" where the unit of a height should be; it is not used.`;
}

/**
 * Degrees and minutes run together, ddmm.mmm, with a letter for the hemisphere. Degrees have as many figures as the most
 * of them: one more or less and a figure was doubled or lost.
 */
export function angleIn(
  field: string | undefined,
  letter: string | undefined,
  positive: string,
  negative: string,
  most: number,
): number | undefined {
  const parts = /^(\d{2,3})(\d{2}(?:\.\d{1,12})?)$/.exec(field ?? '');
  if (!parts || parts[1]?.length !== String(most).length || (letter !== positive && letter !== negative))
    return undefined;
  const minutes = Number(parts[2]);
  const angle = Number(parts[1]) + minutes / 60;
  if (minutes >= 60 || angle > most) return undefined;
  return letter === positive ? angle : -angle;
}

/** The width of a printed number's last digit. */
export function digitOf(field: string | undefined): number {
  const point = field?.indexOf('.') ?? -1;
  return field === undefined || point === -1 ? 1 : 10 ** (point + 1 - field.length);
}

function checksum(body: string) {
  let sum = 0;
  for (let at = 0; at < body.length; at += 1) sum ^= body.charCodeAt(at);
  return sum;
}
