/** Marks out of a register extract: rows with a declared order, or GeoJSON (RFC 7946). */
import { separatedReader } from './points/separated.ts';
import { clipped, type EvidenceProblem } from './problems.ts';

export interface ExtractMark {
  readonly name: string;
  readonly description: string;
  readonly values: readonly {
    readonly means: ExtractRole;
    readonly digits: string;
    readonly qualifiers: string;
  }[];
}
export type ExtractRole =
  'east' | 'north' | 'west' | 'south' | 'latitude' | 'longitude' | 'x' | 'y' | 'z' | 'height' | 'separation';

export interface ExtractColumn {
  readonly means: ExtractRole | 'name' | 'description' | 'skip';
  /** Unit and surface as declared: `m orthometric`; empty where nothing was said. */
  readonly qualifiers: string;
}
export interface Extract {
  readonly marks: readonly ExtractMark[];
  readonly problems: readonly EvidenceProblem[];
}

const ROLES: readonly string[] = [
  'east',
  'north',
  'west',
  'south',
  'latitude',
  'longitude',
  'x',
  'y',
  'z',
  'height',
  'separation',
  'name',
  'description',
  'skip',
];

/** `name, east m, north m, height m orthometric` as columns, or the sentence that says which of them is none. */
export function extractColumns(declared: string): readonly ExtractColumn[] | string {
  const columns: ExtractColumn[] = [];
  for (const part of declared.split(',')) {
    const [means = '', ...qualifiers] = part.trim().split(/\s+/);
    if (!ROLES.includes(means))
      return `${means === '' ? 'an empty column' : means} is no column of a register extract; those are ${ROLES.join(', ')}`;
    columns.push({ means: means as ExtractColumn['means'], qualifiers: qualifiers.join(' ') });
  }
  return columns.some(({ means }) => means === 'name') ? columns : 'one of the columns must be the name';
}

/** @param decimal the decimal sign of the file; digits are kept as they are otherwise */
export function extractRows(
  bytes: Uint8Array,
  columns: readonly ExtractColumn[],
  separator: string,
  decimal: '.' | ',',
  skip: number,
): Extract {
  const marks: ExtractMark[] = [];
  const problems: EvidenceProblem[] = [];
  let rows = 0;
  const reader = separatedReader(
    separator,
    ({ line, cells }) => {
      if (++rows <= skip) return;
      if (cells.length < columns.length)
        problems.push({
          sentence: `This row has ${cells.length} of ${columns.length} columns; it is left out.`,
          line,
        });
      else {
        marks.push(markOf(columns, cells, decimal, (sentence) => problems.push({ sentence, line })));
        if (isHeading(columns, cells)) problems.push({ sentence: HEADING, line });
      }
    },
    (sentence, line) => problems.push({ sentence, line }),
  );
  reader.push(bytes);
  reader.finish();
  return { marks, problems };
}

const HEADING =
  'No value of this row has a figure. If it is a heading, say how many rows to skip before the first mark.';

function isHeading(columns: readonly ExtractColumn[], cells: readonly string[]): boolean {
  const values = cells.filter((_, index) => !TEXTS.includes(columns[index]?.means ?? 'skip'));
  return values.some((cell) => cell.trim() !== '') && !values.some((cell) => /\d/.test(cell));
}
const TEXTS: readonly string[] = ['name', 'description', 'skip'];

function markOf(
  columns: readonly ExtractColumn[],
  cells: readonly string[],
  decimal: '.' | ',',
  addProblem: (sentence: string) => void,
): ExtractMark {
  let name = '';
  let description = '';
  const values: ExtractMark['values'][number][] = [];
  columns.forEach(({ means, qualifiers }, index) => {
    const cell = (cells[index] ?? '').trim();
    if (means === 'name') name = cell;
    else if (means === 'description') description = cell;
    else if (means !== 'skip' && cell !== '') {
      const hasPoint = decimal === ',' && cell.includes('.');
      const isNumber = NUMBER.test(cell) && !hasPoint;
      const wrong = hasPoint ? 'has a point, where the decimal sign is a comma' : 'is no number';
      if (!isNumber) addProblem(`The ${means} "${clipped(cell)}" ${wrong}; it is left open (?).`);
      const digits = decimal === ',' ? cell.replace(',', '.') : cell;
      values.push(isNumber ? { means, digits, qualifiers } : { means, digits: '?', qualifiers: '' });
    }
  });
  return { name, description, values };
}

/** One number on one line, with what may part its figures and the signs of angles: nothing that could say more than that. */
const NUMBER = /^(?=.*\d)[-+\u2212]?[\d.,' \u00a0\u2019\u00b0\u2032\u2033"NSEW-]{1,40}$/;

/** Points of a GeoJSON text: WGS 84 longitude and latitude, and a third coordinate above the ellipsoid (RFC 7946, 3.1.1 and 4). */
export function extractGeojson(text: string, nameProperty: string): Extract | string {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return 'it is not JSON';
  }
  if (!isObject(data)) return 'it is not GeoJSON';
  if ('crs' in data)
    return 'it names a coordinate system of its own (crs), which RFC 7946 does not have; export it in WGS 84, or as rows';
  const features =
    data['type'] === 'FeatureCollection' && Array.isArray(data['features'])
      ? data['features']
      : data['type'] === 'Feature'
        ? [data]
        : null;
  if (!features) return 'it is no GeoJSON Feature or FeatureCollection';
  const marks: ExtractMark[] = [];
  const problems: EvidenceProblem[] = [];
  features.forEach((feature: unknown, index) => {
    const mark = featureMark(feature, nameProperty);
    if (typeof mark === 'string') problems.push({ sentence: `Feature ${index + 1} is left out: ${mark}.` });
    else marks.push(mark);
  });
  return { marks, problems };
}

function featureMark(feature: unknown, nameProperty: string): ExtractMark | string {
  if (!isObject(feature)) return 'it is no object';
  const geometry = feature['geometry'];
  if (!isObject(geometry) || geometry['type'] !== 'Point' || !Array.isArray(geometry['coordinates']))
    return 'it is no point';
  const [longitude, latitude, height] = geometry['coordinates'] as unknown[];
  if (typeof longitude !== 'number' || typeof latitude !== 'number') return 'its coordinates are no numbers';
  const properties = isObject(feature['properties']) ? feature['properties'] : {};
  const name = Object.hasOwn(properties, nameProperty) ? properties[nameProperty] : feature['id'];
  if (typeof name !== 'string' && typeof name !== 'number') return `it has no ${nameProperty}`;
  const description = Object.hasOwn(properties, 'description') ? properties['description'] : '';
  return {
    name: String(name),
    description: typeof description === 'string' ? description : '',
    values: [
      { means: 'latitude', digits: plain(latitude), qualifiers: '°' },
      { means: 'longitude', digits: plain(longitude), qualifiers: '°' },
      ...(typeof height === 'number'
        ? [{ means: 'height' as const, digits: plain(height), qualifiers: 'm ellipsoidal' }]
        : []),
    ],
  };
}

/** Without an exponent, which the session language does not have. */
function plain(number: number): string {
  const text = String(number);
  return text.includes('e') ? number.toFixed(12).replace(/\.?0+$/, '') : text;
}

const isObject = (thing: unknown): thing is Readonly<Record<string, unknown>> =>
  typeof thing === 'object' && thing !== null && !Array.isArray(thing);
