/**
 * A coordinate system from well-known text, in either version, by the methods that are computed here.
 *
 * Source: OGC 18-010r7 (ISO 19162:2019); for version 1, OGC 01-009, clause 7. Parameters of version 1 are in the units
 * of the system; those of version 2 name their own.
 */
import { isRefusal, refuse, type Refusal } from '../../quantities/refusal.ts';
import { ellipsoidOf } from '../ellipsoid.ts';
import {
  METRE,
  type AxisDirection,
  type CoordinateSystem,
  type Datum,
  type LinearUnit,
  type ProjectedSystem,
} from '../system.ts';
import { datumOnEllipsoid, isEarthLike } from './proj-string.ts';
import { datumNamed } from './registry.ts';
import { childOf, childrenOf, readWkt, type WktNode } from './wkt.ts';

export function systemFromWkt(text: string): CoordinateSystem | Refusal {
  const root = readWkt(text);
  if (isRefusal(root)) return root;
  const system = root.word === 'BOUNDCRS' ? childOf(childOf(root, 'SOURCECRS') ?? root, ...SYSTEMS) : root;
  if (system?.word === 'COMPD_CS' || system?.word === 'COMPOUNDCRS')
    return systemOfNode(childOf(system, ...SYSTEMS) ?? system);
  return systemOfNode(system ?? root);
}

const PROJECTED = ['PROJCS', 'PROJCRS', 'PROJECTEDCRS'];
const GEOGRAPHIC = [
  'GEOGCS',
  'GEOGCRS',
  'GEOGRAPHICCRS',
  'BASEGEOGCRS',
  'BASEGEODCRS',
  'GEODCRS',
  'GEODETICCRS',
];
const SYSTEMS = [...PROJECTED, ...GEOGRAPHIC, 'GEOCCS', 'COMPD_CS', 'COMPOUNDCRS'];
const LENGTH_UNIT = ['LENGTHUNIT', 'UNIT'];
const ANGLE_UNIT = ['ANGLEUNIT', 'UNIT'];

function systemOfNode(node: WktNode): CoordinateSystem | Refusal {
  const name = node.texts[0] ?? 'local grid';
  const projected = PROJECTED.includes(node.word);
  const geographic = projected ? childOf(node, ...GEOGRAPHIC) : node;
  if (!projected && !GEOGRAPHIC.includes(node.word) && node.word !== 'GEOCCS')
    return refuse(`“${node.word}” is not a kind of coordinate system that positions can be given in here.`);
  if (geographic === undefined)
    return refuse('The definition has no geographic system, so that its ellipsoid is not said.');
  const datum = datumOfNode(geographic);
  if (isRefusal(datum)) return datum;
  const base = { code: undefined, name, datum, area: undefined };
  if (node.word === 'GEOCCS' || (childOf(node, 'CS')?.texts[0]?.toLowerCase() === 'cartesian' && !projected))
    return { ...base, kind: 'geocentric' };
  if (!projected) return { ...base, kind: 'geographic' };
  const unit = unitOfNode(node);
  const axes = axesOfNode(node);
  const projection = projectionOfNode(node, geographic, unit);
  if (isRefusal(projection)) return projection;
  if (isRefusal(axes)) return axes;
  return { ...base, kind: 'projected', unit, axes, projection };
}

function datumOfNode(node: WktNode): Datum | Refusal {
  const datum = childOf(node, 'DATUM', 'GEODETICDATUM', 'TRF', 'ENSEMBLE');
  const spheroid = datum && childOf(datum, 'SPHEROID', 'ELLIPSOID');
  const [semiMajor = NaN, inverse = NaN] = spheroid?.numbers ?? [];
  if (datum === undefined || spheroid === undefined)
    return refuse(
      'The definition names no datum with its ellipsoid, without which its coordinates mean nothing.',
    );
  const metres = childOf(spheroid, ...LENGTH_UNIT)?.numbers[0] ?? 1;
  const ellipsoid = ellipsoidOf(spheroid.texts[0] ?? 'unnamed', semiMajor * metres, inverse);
  if (!isEarthLike(ellipsoid)) return refuse('The ellipsoid of the definition is not that of the earth.');
  const meridian = meridianOfNode(node);
  if (isRefusal(meridian)) return meridian;
  const name = node.texts[0] ?? datum.texts[0] ?? 'unknown';
  const known = datumNamed(name);
  const same =
    known !== undefined &&
    Math.abs(known.ellipsoid.semiMajor - ellipsoid.semiMajor) < 1e-4 &&
    Math.abs(known.ellipsoid.flattening - ellipsoid.flattening) < 1e-11 &&
    Math.abs(known.primeMeridian - meridian) < 1e-9;
  return same ? known : datumOnEllipsoid(name, ellipsoid, meridian);
}

function meridianOfNode(node: WktNode): number | Refusal {
  const meridian = childOf(node, 'PRIMEM', 'PRIMEMERIDIAN');
  const value = meridian?.numbers[0] ?? 0;
  const own = meridian && childOf(meridian, ...ANGLE_UNIT)?.numbers[0];
  if (value === 0) return 0;
  if (own !== undefined) return (value * own * 180) / Math.PI;
  const unit = angleOfNode(node);
  return Math.abs(unit - DEGREE) < 1e-9
    ? value
    : refuse(
        'The prime meridian of the definition may be in degrees or in the system’s own unit; it does not say.',
      );
}

const DEGREE = Math.PI / 180;

/** The angular unit of a geographic system, in radians; a degree printed with few digits is still a degree. */
function angleOfNode(node: WktNode): number {
  const own = childOf(node, ...ANGLE_UNIT)?.numbers[0] ?? DEGREE;
  return Math.abs(own - DEGREE) < 1e-9 ? DEGREE : own;
}

function unitOfNode(node: WktNode): LinearUnit {
  const axis = childOf(node, 'AXIS');
  const unit = childOf(node, ...LENGTH_UNIT) ?? (axis && childOf(axis, ...LENGTH_UNIT));
  const [factor = 1] = unit?.numbers ?? [];
  const name = unit?.texts[0] ?? 'metre';
  if (factor === 1) return METRE;
  const isSurveyFoot = Math.abs(factor - 1200 / 3937) < 1e-12;
  return { name, metres: isSurveyFoot ? 1200 / 3937 : factor };
}

function axesOfNode(node: WktNode): ProjectedSystem['axes'] | Refusal {
  const axes = childrenOf(node, 'AXIS').map(({ texts }) => texts[1]?.toLowerCase());
  const usual = { first: 'east', second: 'north' } as const;
  if (axes.length === 0) return usual;
  const [first, second] = axes.map((axis) => DIRECTIONS.find((direction) => direction === axis));
  if (first && second) return { first, second };
  return refuse('The axes of the definition do not count towards east, north, west or south.');
}

const DIRECTIONS: readonly AxisDirection[] = ['east', 'north', 'west', 'south'];

interface Method {
  readonly proj: string;
  /** PROJ's names of each parameter, by the names that the two versions give it; none where it must be 0. */
  readonly parameters: Readonly<Record<string, string>>;
  /** A word of PROJ's that has no value. */
  readonly flag?: string;
}

function projectionOfNode(node: WktNode, geographic: WktNode, unit: LinearUnit): string | Refusal {
  const conversion = childOf(node, 'CONVERSION', 'PROJECTION');
  const holder = conversion?.word === 'CONVERSION' ? conversion : node;
  const named = childOf(holder, 'METHOD', 'PROJECTION')?.texts[0] ?? '';
  const method = METHODS[canonical(named)];
  if (method === undefined)
    return refuse(
      `The projection “${named.slice(0, 60)}” is not one that is read from well-known text here.`,
    );
  const words = [`proj=${method.proj}`];
  for (const parameter of childrenOf(holder, 'PARAMETER')) {
    const [value] = parameter.numbers;
    const name = canonical(parameter.texts[0] ?? '');
    const short = method.parameters[name];
    if (short === undefined || value === undefined || !Number.isFinite(value))
      return refuse(`The projection’s parameter “${name.slice(0, 60)}” is not one that is known here.`);
    if (short === '' && value !== 0)
      return refuse(`The projection’s parameter “${name}” is not 0, which this method does not provide for.`);
    for (const word of short.split(' ').filter(Boolean))
      words.push(`${word}=${inProjUnits(word, value, parameter, geographic, unit)}`);
  }
  if (method === SKEW_FROM_CENTRE && words.includes('alpha=90')) return alongParallel(words);
  return [...words, ...(method.flag === undefined ? [] : [method.flag])].join(' ');
}

/** An initial line along the parallel makes the oblique Mercator Swiss, which PROJ has by a name of its own. */
const alongParallel = (words: readonly string[]) =>
  words
    .filter((word) => !/^(alpha|gamma)=/.test(word))
    .map((word) => word.replace(/^proj=omerc$/, 'proj=somerc').replace(/^lonc=/, 'lon_0='))
    .join(' ');

/** PROJ has lengths in metres, angles in degrees and scales as they are. */
function inProjUnits(
  short: string,
  value: number,
  parameter: WktNode,
  geographic: WktNode,
  unit: LinearUnit,
) {
  if (short === 'k') return value * (childOf(parameter, 'SCALEUNIT', 'UNIT')?.numbers[0] ?? 1);
  if (short === 'x_0' || short === 'y_0')
    return value * (childOf(parameter, ...LENGTH_UNIT)?.numbers[0] ?? unit.metres);
  const radians = childOf(parameter, ...ANGLE_UNIT)?.numbers[0] ?? angleOfNode(geographic);
  return Math.abs(radians - DEGREE) < 1e-9 ? value : (value * radians) / DEGREE;
}

const canonical = (name: string) =>
  name
    .toLowerCase()
    .replace(/[\s_()-]+/g, '_')
    .replace(/_$/, '');

const ORIGIN = {
  latitude_of_origin: 'lat_0',
  latitude_of_natural_origin: 'lat_0',
  central_meridian: 'lon_0',
  longitude_of_natural_origin: 'lon_0',
  longitude_of_origin: 'lon_0',
  latitude_of_false_origin: 'lat_0',
  longitude_of_false_origin: 'lon_0',
  scale_factor: 'k',
  scale_factor_at_natural_origin: 'k',
  false_easting: 'x_0',
  false_northing: 'y_0',
  easting_at_false_origin: 'x_0',
  northing_at_false_origin: 'y_0',
};
const PARALLELS = {
  standard_parallel_1: 'lat_1',
  standard_parallel_2: 'lat_2',
  latitude_of_1st_standard_parallel: 'lat_1',
  latitude_of_2nd_standard_parallel: 'lat_2',
};
const CENTRE = { latitude_of_center: 'lat_0', longitude_of_center: 'lon_0' };
const TRANSVERSE: Method = { proj: 'tmerc', parameters: ORIGIN };
const CONIC_1: Method = {
  proj: 'lcc',
  parameters: { ...ORIGIN, latitude_of_origin: 'lat_1 lat_0', latitude_of_natural_origin: 'lat_1 lat_0' },
};
const CONIC_2: Method = { proj: 'lcc', parameters: { ...ORIGIN, ...PARALLELS } };
const SKEW = {
  latitude_of_center: 'lat_0',
  latitude_of_projection_centre: 'lat_0',
  longitude_of_center: 'lonc',
  longitude_of_projection_centre: 'lonc',
  azimuth: 'alpha',
  azimuth_of_initial_line: 'alpha',
  azimuth_at_projection_centre: 'alpha',
  rectified_grid_angle: 'gamma',
  xy_plane_rotation: 'gamma',
  angle_from_rectified_to_skew_grid: 'gamma',
  scale_factor: 'k',
  scale_factor_on_initial_line: 'k',
  scale_factor_at_projection_centre: 'k',
  false_easting: 'x_0',
  false_northing: 'y_0',
  easting_at_projection_centre: 'x_0',
  northing_at_projection_centre: 'y_0',
};
const SKEW_FROM_ORIGIN: Method = { proj: 'omerc', parameters: SKEW, flag: 'no_uoff' };
const SKEW_FROM_CENTRE: Method = { proj: 'omerc', parameters: SKEW };
const OBLIQUE: Method = { proj: 'sterea', parameters: ORIGIN };

const METHODS: Readonly<Record<string, Method>> = {
  transverse_mercator: TRANSVERSE,
  gauss_kruger: TRANSVERSE,
  lambert_conformal_conic_1sp: CONIC_1,
  lambert_conic_conformal_1sp: CONIC_1,
  lambert_conformal_conic_2sp: CONIC_2,
  lambert_conic_conformal_2sp: CONIC_2,
  lambert_conformal_conic: CONIC_2,
  oblique_stereographic: OBLIQUE,
  double_stereographic: OBLIQUE,
  cassini_soldner: { proj: 'cass', parameters: ORIGIN },
  cassini: { proj: 'cass', parameters: { ...ORIGIN, scale_factor: 'k' } },
  hotine_oblique_mercator: SKEW_FROM_ORIGIN,
  hotine_oblique_mercator_variant_a: SKEW_FROM_ORIGIN,
  rectified_skew_orthomorphic_natural_origin: SKEW_FROM_ORIGIN,
  rectified_skew_orthomorphic_center: SKEW_FROM_CENTRE,
  hotine_oblique_mercator_azimuth_center: SKEW_FROM_CENTRE,
  hotine_oblique_mercator_variant_b: SKEW_FROM_CENTRE,
  mercator: { proj: 'merc', parameters: { ...ORIGIN, standard_parallel_1: 'lat_ts' } },
  albers: { proj: 'aea', parameters: { ...ORIGIN, ...PARALLELS } },
  mercator_1sp: {
    proj: 'merc',
    parameters: { ...ORIGIN, latitude_of_origin: '', latitude_of_natural_origin: '' },
  },
  mercator_variant_a: { proj: 'merc', parameters: { ...ORIGIN, latitude_of_natural_origin: '' } },
  albers_conic_equal_area: { proj: 'aea', parameters: { ...ORIGIN, ...PARALLELS, ...CENTRE } },
  albers_equal_area: { proj: 'aea', parameters: { ...ORIGIN, ...PARALLELS } },
  lambert_azimuthal_equal_area: { proj: 'laea', parameters: { ...ORIGIN, ...CENTRE } },
};
