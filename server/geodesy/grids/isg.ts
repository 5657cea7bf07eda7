/**
 * Geoid grids in the text form of the International Service for the Geoid, version 1.0 or 2.0.
 *
 * Source: International Service for the Geoid, ISG format specifications 1.0 and 2.0. In version 1.0 the limits are the
 * outer edges of the cells, in version 2.0 they are the outer nodes; the header's own sums (limits, steps, counts) say
 * which, and a header whose sums fit neither is refused.
 */
import { isRefusal, refuse, type Refusal } from '../../quantities/refusal.ts';
import { plausible, type GeoidGrid } from './geoid-grid.ts';

export function readIsg(bytes: Uint8Array): GeoidGrid | Refusal {
  const top = latin(bytes.subarray(0, LONGEST_HEADER));
  const end = /^end_of_head.*$/im.exec(top);
  if (!end) return refuse('The ISG file has no “end_of_head” line within its first 64 KiB.');
  const header = headerOf(top.slice(0, end.index));
  const format = `ISG ${header.get('isg format') ?? ''}`.trim();
  const unfit = UNDERSTOOD.find(([key, allowed]) => {
    const value = header.get(key);
    return value !== undefined && !allowed.test(value);
  });
  if (unfit)
    return refuse(`The ISG file’s “${unfit[0]}” is “${header.get(unfit[0])}”, which is not read here.`);
  const frame = frameOf(header, format);
  if (isRefusal(frame)) return frame;
  const { rows, columns } = frame;
  // A value takes at least a digit and a blank, so that a header cannot ask for more than the file holds.
  const body = bytes.subarray(end.index + end[0].length);
  if (rows * columns > (body.length + 1) / 2)
    return refuse(`The ISG file is too short for the ${rows} × ${columns} values that its header announces.`);
  const values = valuesOf(body, rows * columns);
  if (isRefusal(values)) return values;
  const noData = Number(header.get('nodata') ?? -9999);
  return {
    ...frame,
    node: (row, column) => {
      const value = values[(rows - 1 - row) * columns + column];
      return value === undefined || value === noData || !(Math.abs(value) < 200) ? undefined : value;
    },
  };
}

const LONGEST_HEADER = 65_536;

/** What a header may say; what it leaves out is as in the format's examples. */
const UNDERSTOOD: readonly (readonly [string, RegExp])[] = [
  ['data format', /^grid$/i],
  ['data ordering', /^n-to-s,\s?w-to-e$/i],
  ['data units', /^met(er|re)s?$/i],
  ['units', /^met(er|re)s?$/i],
  ['coord type', /^geodetic$/i],
  ['coord units', /^(deg|dms)\b/i],
  ['isg format', /^[12]\.0$/],
];

const latin = (bytes: Uint8Array) => {
  let text = '';
  for (let at = 0; at < bytes.length; at += 4096)
    text += String.fromCharCode(...bytes.subarray(at, at + 4096));
  return text;
};

function headerOf(text: string): ReadonlyMap<string, string> {
  const entries = text.split(/\r\n|\r|\n/).flatMap((line) => {
    const at = line.search(/[:=]/);
    return at < 0 ? [] : [[line.slice(0, at).trim().toLowerCase(), line.slice(at + 1).trim()] as const];
  });
  return new Map(entries);
}

function frameOf(header: ReadonlyMap<string, string>, format: string): GeoidGrid | Refusal {
  const angle = (key: string) => degreesOf(header.get(key) ?? '');
  const [southLimit, northLimit] = [angle('lat min'), angle('lat max')];
  const [westLimit, eastLimit] = [angle('lon min'), angle('lon max')];
  const [latitudeStep, longitudeStep] = [angle('delta lat'), angle('delta lon')];
  const [rows, columns] = [Number(header.get('nrows')), Number(header.get('ncols'))];
  const up = registration(southLimit, northLimit, latitudeStep, rows);
  const right = registration(westLimit, eastLimit, longitudeStep, columns);
  if (up === undefined || right === undefined || up !== right)
    return refuse(
      'The ISG file’s limits, steps and counts of rows and columns do not fit one another, neither as cells nor as nodes.',
    );
  return plausible({
    format,
    south: southLimit + up * latitudeStep,
    west: westLimit + right * longitudeStep,
    latitudeStep,
    longitudeStep,
    rows,
    columns,
    node: () => undefined,
  });
}

/** From the limit to the first node, in steps: half where the limits are edges of cells, nothing where they are nodes. */
function registration(low: number, high: number, step: number, count: number): 0 | 0.5 | undefined {
  const steps = (high - low) / step;
  // Printed to four or more decimals of a degree, over thousands of steps.
  const near = (whole: number) => Math.abs(steps - whole) < 0.1;
  if (near(count)) return 0.5;
  return near(count - 1) ? 0 : undefined;
}

/** `41.5`, or `41°30'00"` with whatever signs stand between. */
function degreesOf(text: string): number {
  const parts = text.split(/[^\d.+-]+/).filter(Boolean);
  const [whole = NaN, minutes = 0, seconds = 0] = parts.map(Number);
  const size = Math.abs(whole) + minutes / 60 + seconds / 3600;
  return text.trim().startsWith('-') ? -size : size;
}

function valuesOf(body: Uint8Array, count: number): Float64Array | Refusal {
  const values = new Float64Array(count);
  let found = 0;
  let at = 0;
  while (at < body.length) {
    while (at < body.length && isBlank(body[at])) at++;
    const start = at;
    while (at < body.length && !isBlank(body[at])) at++;
    if (at === start) break;
    if (found === count) return refuse('The ISG file holds more values than its header announces.');
    const value = Number(latin(body.subarray(start, Math.min(at, start + 32))));
    if (Number.isNaN(value)) return refuse(`Value ${found + 1} of the ISG file is not a number.`);
    values[found++] = value;
  }
  if (found < count) return refuse(`The ISG file ends after ${found} of ${count} values.`);
  return values;
}

const isBlank = (byte: number | undefined) => byte === undefined || byte <= 32;
