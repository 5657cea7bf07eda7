/**
 * A coordinate system from a PROJ string, every word of which must be known.
 *
 * Source: PROJ contributors, PROJ coordinate transformation software library, user's manual: parameter list, units,
 * ellipsoids and prime meridians.
 */
import { isRefusal, refuse, type Refusal } from '../../quantities/refusal.ts';
import { ellipsoidOf, type Ellipsoid } from '../ellipsoid.ts';
import {
  METRE,
  type AxisDirection,
  type CoordinateSystem,
  type Datum,
  type LinearUnit,
  type ProjectedSystem,
} from '../system.ts';
import { datumNamed } from './registry.ts';

export function systemFromProjString(text: string): CoordinateSystem | Refusal {
  if (text.length > 4096) return refuse('The PROJ string is longer than any coordinate system needs.');
  const words = wordsOf(text);
  if (isRefusal(words)) return words;
  const name = words.get('title') ?? 'local grid';
  const method = words.get('proj');
  if (method === undefined)
    return refuse('The PROJ string has no +proj; files of definitions (+init) are not read.');
  const unknown = [...words.keys()].find((word) => !KNOWN.has(word));
  if (unknown !== undefined)
    return refuse(`“+${unknown}” is not a parameter known here; nothing is left out silently.`);
  const datum = datumFromWords(words);
  if (isRefusal(datum)) return datum;
  const base = { code: undefined, name, datum, area: undefined };
  if (['longlat', 'latlong', 'lonlat', 'latlon'].includes(method)) return { ...base, kind: 'geographic' };
  if (method === 'geocent' || method === 'cart') return { ...base, kind: 'geocentric' };
  if (!METHODS.has(method)) return refuse(`The projection “${method}” is not one that is computed here.`);
  const broken = brokenNumber(words);
  if (broken !== undefined) return refuse(`“+${broken}” is not a plain number that makes sense there.`);
  const unit = unitFromWords(words);
  const axes = axesFromWords(words);
  if (isRefusal(unit)) return unit;
  if (isRefusal(axes)) return axes;
  return { ...base, kind: 'projected', unit, axes, projection: projectionWords(words) };
}

/** A datum from the ellipsoid that a definition gives, when it names no datum of the register. */
export const datumOnEllipsoid = (name: string, ellipsoid: Ellipsoid, primeMeridian: number): Datum => ({
  name,
  geographic: undefined,
  ellipsoid,
  primeMeridian,
  realisation: 'unknown',
  caution:
    'The definition gives an ellipsoid but no datum of the register; how it lies on the earth is not said.',
});

type Words = ReadonlyMap<string, string>;

function wordsOf(text: string): Words | Refusal {
  const words = new Map<string, string>();
  for (const word of text.split(/\s+/)) {
    const [, name, value = ''] = /^\+?(\w+)(?:=(.*))?$/.exec(word) ?? [];
    if (name === undefined) return refuse(`“${word.slice(0, 40)}” is not a parameter of a PROJ string.`);
    const before = words.get(name);
    if (before !== undefined && before !== value) return refuse(`“+${name}” is given twice, differently.`);
    words.set(name, value);
  }
  return words;
}

const METHODS: ReadonlySet<string> = new Set(
  'tmerc etmerc utm lcc merc stere sterea omerc somerc cass krovak laea aea poly eqdc cea aeqd nzmg'.split(
    ' ',
  ),
);
const SHAPE = [
  'lat_0',
  'lon_0',
  'lat_1',
  'lat_2',
  'lat_ts',
  'k',
  'k_0',
  'x_0',
  'y_0',
  'alpha',
  'gamma',
  'lonc',
];
const FLAGS = ['south', 'no_uoff', 'no_off', 'hyperbolic', 'approx'];
const IGNORED = ['no_defs', 'type', 'title', 'towgs84', 'nadgrids', 'wktext', 'over', 'vunits', 'vto_meter'];
const KNOWN: ReadonlySet<string> = new Set([
  ...SHAPE,
  ...FLAGS,
  ...IGNORED,
  ...['proj', 'zone', 'ellps', 'datum', 'a', 'b', 'rf', 'f', 'R', 'pm', 'units', 'to_meter', 'axis'],
]);

function brokenNumber(words: Words): string | undefined {
  if (words.get('proj') === 'utm' && !/^(?:[1-9]|[1-5]\d|60)$/.test(words.get('zone') ?? '')) return 'zone';
  return SHAPE.find((name) => {
    const value = words.get(name);
    return value !== undefined && plainNumber(value) === undefined;
  });
}

/** The shape of the projection as a register line has it, without ellipsoid, unit and axes. */
const projectionWords = (words: Words) =>
  ['proj', 'zone', ...SHAPE, ...FLAGS]
    .filter((name) => words.has(name))
    .map((name) => (words.get(name) === '' ? name : `${name}=${words.get(name)}`))
    .join(' ');

function datumFromWords(words: Words): Datum | Refusal {
  const meridian = meridianFromWords(words);
  if (isRefusal(meridian)) return meridian;
  const named = words.get('datum');
  if (named !== undefined) {
    const datum = datumNamed(DATUM_NAMES[named] ?? '');
    if (datum === undefined) return refuse(`The datum “${named}” is not one that is known here.`);
    return meridian === 0 ? datum : { ...datum, primeMeridian: meridian };
  }
  const ellipsoid = ellipsoidFromWords(words);
  return isRefusal(ellipsoid) ? ellipsoid : datumOnEllipsoid('unknown', ellipsoid, meridian);
}

function ellipsoidFromWords(words: Words): Ellipsoid | Refusal {
  const named = words.get('ellps');
  if (named !== undefined)
    return ELLIPSOIDS[named] ?? refuse(`The ellipsoid “${named}” is not one that is known here.`);
  const number = (name: string) => plainNumber(words.get(name) ?? '');
  const [a, b, rf, f, R] = [number('a'), number('b'), number('rf'), number('f'), number('R')];
  const inverse =
    rf ?? (f === undefined ? undefined : 1 / f) ?? (a && b ? (a === b ? 0 : a / (a - b)) : undefined);
  const ellipsoid =
    R !== undefined
      ? ellipsoidOf(`sphere of ${R} m`, R, 0)
      : a !== undefined && inverse !== undefined
        ? ellipsoidOf(`a ${a} m, 1/f ${inverse}`, a, inverse)
        : undefined;
  if (ellipsoid === undefined)
    return refuse(
      'The definition names no datum and no ellipsoid, without which its coordinates mean nothing.',
    );
  return isEarthLike(ellipsoid)
    ? ellipsoid
    : refuse('The ellipsoid of the definition is not that of the earth.');
}

/** Within what any ellipsoid of the earth has been. */
export const isEarthLike = ({ semiMajor, flattening }: Ellipsoid) =>
  semiMajor > 6.3e6 && semiMajor < 6.45e6 && flattening >= 0 && flattening < 1 / 250;

function meridianFromWords(words: Words): number | Refusal {
  const given = words.get('pm') ?? '0';
  const degrees = MERIDIANS[given] ?? plainNumber(given);
  return degrees ?? refuse(`The prime meridian “${given}” is not one that is known here.`);
}

function unitFromWords(words: Words): LinearUnit | Refusal {
  const factor = words.get('to_meter');
  if (factor !== undefined) {
    const [, above = '', below = '1'] = /^([^/]+)(?:\/(.+))?$/.exec(factor) ?? [];
    const metres = (plainNumber(above) ?? NaN) / (plainNumber(below) ?? NaN);
    return metres > 0 && metres < 1e5
      ? { name: `unit of ${metres} m`, metres }
      : refuse('“+to_meter” is not a length.');
  }
  const named = words.get('units') ?? 'm';
  return UNITS[named] ?? refuse(`The unit “${named}” is not one that is known here.`);
}

function axesFromWords(words: Words): ProjectedSystem['axes'] | Refusal {
  const letters = words.get('axis') ?? 'enu';
  const first = AXES[letters.charAt(0)];
  const second = AXES[letters.charAt(1)];
  const alongNorth = (axis: AxisDirection) => axis === 'north' || axis === 'south';
  if (!first || !second || alongNorth(first) === alongNorth(second))
    return refuse(`“+axis=${letters}” does not name one axis east or west and one north or south.`);
  return { first, second };
}

const AXES: Readonly<Record<string, AxisDirection>> = { e: 'east', n: 'north', w: 'west', s: 'south' };

const plainNumber = (text: string): number | undefined => {
  const value = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d{1,3})?$/.test(text) ? Number(text) : NaN;
  return Number.isFinite(value) ? value : undefined;
};

const DATUM_NAMES: Readonly<Record<string, string>> = {
  WGS84: 'WGS 84',
  NAD83: 'NAD83',
  NAD27: 'NAD27',
  OSGB36: 'OSGB36',
  potsdam: 'DHDN',
  GGRS87: 'GGRS87',
  carthage: 'Carthage',
  hermannskogel: 'MGI',
  ire65: 'TM65',
  nzgd49: 'NZGD49',
};

const ELLIPSOIDS: Readonly<Record<string, Ellipsoid>> = {
  GRS80: ellipsoidOf('GRS 1980', 6378137, 298.257222101),
  WGS84: ellipsoidOf('WGS 84', 6378137, 298.257223563),
  WGS72: ellipsoidOf('WGS 72', 6378135, 298.26),
  airy: ellipsoidOf('Airy 1830', 6377563.396, 299.3249646),
  mod_airy: ellipsoidOf('Airy Modified 1849', 6377340.189, 299.3249646),
  bessel: ellipsoidOf('Bessel 1841', 6377397.155, 299.1528128),
  clrk66: ellipsoidOf('Clarke 1866', 6378206.4, 6378206.4 / (6378206.4 - 6356583.8)),
  clrk80ign: ellipsoidOf('Clarke 1880 (IGN)', 6378249.2, 6378249.2 / (6378249.2 - 6356515)),
  clrk80: ellipsoidOf('Clarke 1880 (RGS)', 6378249.145, 293.4663),
  intl: ellipsoidOf('International 1924', 6378388, 297),
  krass: ellipsoidOf('Krassowsky 1940', 6378245, 298.3),
  aust_SA: ellipsoidOf('Australian National Spheroid', 6378160, 298.25),
  GRS67: ellipsoidOf('GRS 1967', 6378160, 298.247167427),
  helmert: ellipsoidOf('Helmert 1906', 6378200, 298.3),
  evrst30: ellipsoidOf('Everest 1830', 6377276.345, 300.8017),
  evrst48: ellipsoidOf('Everest 1830 Modified', 6377304.063, 300.8017),
  evrst69: ellipsoidOf('Everest 1830 (RSO 1969)', 6377295.664, 300.8017),
  evrstSS: ellipsoidOf('Everest 1830 (1967 Definition)', 6377298.556, 300.8017),
  bess_nam: ellipsoidOf('Bessel Namibia (GLM)', 6377397.155 * 1.0000135965, 299.1528128),
  danish: ellipsoidOf('Danish 1876', 6377019.27, 300),
  GSK2011: ellipsoidOf('GSK-2011', 6378136.5, 298.2564151),
  PZ90: ellipsoidOf('PZ-90', 6378136, 298.257839303),
};

const UNITS: Readonly<Record<string, LinearUnit>> = {
  m: METRE,
  km: { name: 'kilometre', metres: 1000 },
  ft: { name: 'foot', metres: 0.3048 },
  'us-ft': { name: 'US survey foot', metres: 1200 / 3937 },
  link: { name: 'link', metres: 0.201168 },
  yd: { name: 'yard', metres: 0.9144 },
};

const MERIDIANS: Readonly<Record<string, number>> = {
  greenwich: 0,
  lisbon: -9.13190611111111,
  paris: 2.33722917,
  bogota: -74.0809166666667,
  madrid: -3.6873888888889,
  rome: 12.4523333333333,
  bern: 7.43958333333333,
  jakarta: 106.807719444444,
  ferro: -17.6666666666667,
  brussels: 4.367975,
  stockholm: 18.0582777777778,
  athens: 23.7163375,
  oslo: 10.7229166666667,
};
