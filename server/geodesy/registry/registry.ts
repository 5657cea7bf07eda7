/** Coordinate reference systems by EPSG code or by words of their name, out of the register carried in the package. */
import { refuse, isRefusal, type Refusal } from '../../quantities/refusal.ts';
import { ellipsoidOf, type Ellipsoid } from '../ellipsoid.ts';
import type {
  AnySystem,
  AreaOfUse,
  AxisDirection,
  CoordinateSystem,
  Datum,
  LinearUnit,
  ProjectedSystem,
  VerticalSystem,
} from '../system.ts';
import { cautionOf, realisationOf } from './realisation.ts';
import { uncomputedBecause } from './uncomputed.ts';
import { AREAS, DATUMS, ELLIPSOIDS, SYSTEMS, UNITS } from './systems.ts';

/** The system of a code, as `EPSG:3763`, `epsg:3763` or `3763`; the same object at every call. */
export function systemOf(code: string): AnySystem | Refusal {
  const digits = /^\s*(?:EPSG\s*:{1,2}\s*)?(\d{4,5})\s*$/i.exec(code)?.[1];
  if (digits === undefined) return refuse(`“${code.slice(0, 40)}” is not an EPSG code, such as EPSG:3763.`);
  const known = decoded.get(digits);
  if (known) return known;
  const line = lineOf(digits);
  if (line === undefined)
    return refuse(`EPSG:${digits} is not in the register carried here: withdrawn, newer, or misspelt.`);
  const system = decode(line);
  decoded.set(digits, system);
  return system;
}

/** The system of a code, if it is one that positions can be given in; the horizontal part of a compound one. */
export function horizontalSystemOf(code: string): CoordinateSystem | Refusal {
  const system = systemOf(code);
  if (isRefusal(system)) return system;
  if (system.kind === 'compound') return system.horizontal;
  if (system.kind === 'vertical')
    return refuse(`${system.code} (${system.name}) is a height system; it has no horizontal coordinates.`);
  return system;
}

/** The system of a code, if it is a grid. */
export function projectedSystemOf(code: string): ProjectedSystem | Refusal {
  const system = horizontalSystemOf(code);
  if (isRefusal(system) || system.kind === 'projected') return system;
  return refuse(`${system.code ?? system.name} (${system.name}) has no grid; it is a ${system.kind} system.`);
}

/** The datum of the geographic system with this name, for example `ETRS89`, in whatever letters and blanks. */
export function datumNamed(name: string): Datum | undefined {
  const wanted = bare(name);
  datumPlaces ??= new Map(
    DATUMS.slice(1, -1)
      .split('\n')
      .map((line, place) => [bare(line.split('|', 1)[0] ?? ''), String(place)]),
  );
  return datumAt(datumPlaces.get(wanted) ?? '');
}

let datumPlaces: Map<string, string> | undefined;
const bare = (name: string) => plain(name).replace(/[\s_]/g, '');

/** One system found by its name. */
export interface FoundSystem {
  readonly code: string;
  readonly name: string;
  readonly kind: AnySystem['kind'];
  readonly areaName: string;
}

export interface SystemSearch {
  readonly atMost?: number;
  /** Only these; all where it is not said. */
  readonly kinds?: readonly AnySystem['kind'][];
  /** Of equal ones, those whose area of use holds this place come first, the smallest area before a larger one. */
  readonly near?: { readonly latitude: number; readonly longitude: number } | null;
}

/**
 * The systems whose code, name or area of use contain every word of the text, a code from its first digits on: codes
 * first, then those whose name has all the words, shorter names before longer ones. No text finds all near the place.
 */
export function searchSystems(
  text: string,
  { atMost = 20, kinds, near = null }: SystemSearch = {},
): readonly FoundSystem[] {
  const words = plain(text).split(/\s+/).filter(Boolean).slice(0, 12);
  if (words.length === 0 && !near) return [];
  const code = words.length === 1 && /^\d+$/.test(words[0] ?? '') ? (words[0] ?? null) : null;
  return searchable()
    .filter(({ kind }) => !kinds || kinds.includes(kind))
    .map((found) => ({
      ...found,
      rank: rankOf(found, words, code),
      size: near && areaSize(found.area, near),
    }))
    .filter(({ rank, size }) => rank < Infinity && (words.length > 0 || size !== Infinity))
    .sort(
      (one, other) =>
        one.rank - other.rank ||
        bySize(one.size, other.size) ||
        one.name.length - other.name.length ||
        +one.code - +other.code,
    )
    .slice(0, atMost)
    .map(({ code: digits, name, kind, areaName }) => ({ code: `EPSG:${digits}`, name, kind, areaName }));
}

/** Infinity is not less than itself. */
const bySize = (one: number | null, other: number | null) => (one === other ? 0 : (one ?? 0) - (other ?? 0));

/** In square degrees; infinite where the place lies outside, or the area is not known. */
function areaSize(area: string, { latitude, longitude }: NonNullable<SystemSearch['near']>): number {
  const { south, west, north, east } = areaAt(area) ?? NOWHERE;
  const across = (east - west + 360) % 360 || 360;
  const inside = south <= latitude && latitude <= north && (longitude - west + 360) % 360 <= across;
  return inside ? (north - south) * across : Infinity;
}
const NOWHERE = { south: NaN, west: NaN, north: NaN, east: NaN };

interface Searchable extends FoundSystem {
  /** Its place in the table of areas. */
  readonly area: string;
  readonly searchedName: string;
  readonly searchedArea: string;
}

/** Infinite for one that is not found. @param code the text, where it is digits alone */
function rankOf(
  { code: own, searchedName, searchedArea }: Searchable,
  words: readonly string[],
  code: string | null,
): number {
  if (code !== null && own.startsWith(code)) return own === code ? 0 : 1;
  if (words.every((word) => searchedName.includes(word))) return 2;
  return words.every((word) => searchedName.includes(word) || searchedArea.includes(word)) ? 3 : Infinity;
}

const decoded = new Map<string, AnySystem | Refusal>();

/** The lines stand in the order of their codes, but a plain search of the text costs less than splitting it. */
function lineOf(digits: string): string | undefined {
  const start = SYSTEMS.indexOf(`\n${Number(digits)}|`);
  if (start < 0) return undefined;
  return SYSTEMS.slice(start + 1, SYSTEMS.indexOf('\n', start + 1));
}

function decode(line: string): AnySystem | Refusal {
  const [digits = '', kind = '', name = '', area = '', ...rest] = line.split('|');
  const head = { code: `EPSG:${digits}`, name, area: areaAt(area) };
  if (kind === 'V') return { ...head, ...verticalPart(rest) };
  if (kind === 'K') return compoundOf(head, rest);
  const datum = datumAt(rest[0] ?? '');
  const uncomputed = kind === 'P' ? uncomputedBecause(digits, name) : undefined;
  if (datum === undefined)
    return refuse(
      uncomputed ?? `EPSG:${digits} (${name}) is in the register by name only, without its ellipsoid.`,
    );
  if (kind === 'G') return { ...head, kind: 'geographic', datum };
  if (kind === 'H') return { ...head, kind: 'geographic-3d', datum };
  if (kind === 'C') return { ...head, kind: 'geocentric', datum };
  const [, unit = '', axes = '', projection = ''] = rest;
  return {
    ...head,
    kind: 'projected',
    datum,
    unit: unitAt(unit),
    axes: axesOf(axes),
    projection: projection === '' || uncomputed ? undefined : projection,
    ...(uncomputed === undefined ? {} : { uncomputed }),
  };
}

function verticalPart([datumName = '', unit = '', direction = '']: readonly string[]) {
  return {
    kind: 'vertical',
    datumName: datumName.replaceAll('_', ' '),
    unit: unitAt(unit),
    direction: direction === 'd' ? 'down' : 'up',
  } as const;
}

function compoundOf(
  head: { readonly code: string; readonly name: string; readonly area: AreaOfUse | undefined },
  [horizontalCode = '', verticalCode = '']: readonly string[],
): AnySystem | Refusal {
  const horizontal = horizontalSystemOf(horizontalCode);
  if (isRefusal(horizontal)) return horizontal;
  const vertical = systemOf(verticalCode);
  const isVertical = (system: AnySystem | Refusal): system is VerticalSystem =>
    !isRefusal(system) && system.kind === 'vertical';
  return { ...head, kind: 'compound', horizontal, vertical: isVertical(vertical) ? vertical : undefined };
}

const DIRECTIONS: Readonly<Record<string, AxisDirection>> = { e: 'east', n: 'north', w: 'west', s: 'south' };

const axesOf = (letters: string) => ({
  first: DIRECTIONS[letters.charAt(0)] ?? 'east',
  second: DIRECTIONS[letters.charAt(1)] ?? 'north',
});

/** A table kept as lines, which are read and split at its first use; its rows are made once, so that equal things are the same object. */
function tableOf<Row>(lines: () => string, make: (fields: readonly string[]) => Row) {
  let split: string[] | undefined;
  const rows: Row[] = [];
  return (place: string): Row | undefined => {
    split ??= lines().slice(1, -1).split('\n');
    const at = Number(place);
    const line = place === '' ? undefined : split[at];
    return line === undefined ? undefined : (rows[at] ??= make(line.split('|')));
  };
}

const areaAt = tableOf(
  () => AREAS,
  ([name = '', box = '']): AreaOfUse => {
    const [south = NaN, west = NaN, north = NaN, east = NaN] = box.split(' ').map(Number);
    return { name, south, west, north, east };
  },
);

const ellipsoidAt = tableOf(
  () => ELLIPSOIDS,
  ([name = '', axis = '', inverse = '']): Ellipsoid => ellipsoidOf(name, Number(axis), Number(inverse)),
);

const unitRow = tableOf(
  () => UNITS,
  ([name = '', factor = '']): LinearUnit => ({ name, metres: Number(factor) }),
);
const unitAt = (place: string): LinearUnit => unitRow(place) ?? { name: 'metre', metres: 1 };

const datumRow = tableOf(
  () => DATUMS,
  ([name = '', code = '', ellipsoidPlace = '', meridian = '']) => {
    const ellipsoid = ellipsoidAt(ellipsoidPlace);
    return ellipsoid && datumFrom(name, code, ellipsoid, Number(meridian));
  },
);
const datumAt = (place: string): Datum | undefined => datumRow(place);

function datumFrom(name: string, code: string, ellipsoid: Ellipsoid, primeMeridian: number): Datum {
  const caution = cautionOf(name);
  return {
    name,
    geographic: code === '' ? undefined : `EPSG:${code}`,
    ellipsoid,
    primeMeridian,
    realisation: realisationOf(name, ellipsoid),
    ...(caution === undefined ? {} : { caution }),
  };
}

let searched: readonly Searchable[] | undefined;

function searchable(): readonly Searchable[] {
  return (searched ??= SYSTEMS.slice(1, -1)
    .split('\n')
    .map((line) => {
      const [code = '', kind = '', name = '', area = ''] = line.split('|', 4);
      const areaName = areaAt(area)?.name ?? '';
      return {
        code,
        name,
        kind: KINDS[kind] ?? 'projected',
        area,
        areaName,
        searchedName: plain(name),
        searchedArea: plain(areaName),
      };
    }));
}

const KINDS: Readonly<Record<string, AnySystem['kind']>> = {
  P: 'projected',
  G: 'geographic',
  H: 'geographic-3d',
  C: 'geocentric',
  V: 'vertical',
  K: 'compound',
};

/** Small letters without accents, so that a search does not depend on them. */
const plain = (text: string) => text.slice(0, 400).normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
