/** Published transformations between two datums, by code or name or by what they join, each with its stated accuracy. */
import { metres, type Geocentric, type Geographic, type Metres } from '../../quantities/brands.ts';
import { refuse, type Refusal } from '../../quantities/refusal.ts';
import { isWithin } from '../area.ts';
import type { AreaOfUse } from '../system.ts';
import {
  helmert,
  inverseHelmert,
  NO_CHANGE,
  parametersAt,
  type HelmertParameters,
  type TimeDependentHelmert,
  type Triple,
} from './helmert.ts';
import { AREAS, TRANSFORMATIONS } from './parameters.ts';
import { plateRotation } from './plates.ts';

export interface DatumTransformation {
  /** For example `EPSG:1314`; undefined for those that stand here by their own source. */
  readonly code: string | undefined;
  readonly name: string;
  /** Names of datums, as the register has them. */
  readonly from: string;
  readonly to: string;
  /** As published: about what a transformed position is good to; 0 where the target is defined by the transformation. */
  readonly accuracy: Metres;
  readonly area: AreaOfUse;
  /** A part of the area's box that the transformation is not for. */
  readonly leavesOut?: AreaOfUse;
  readonly parameters: HelmertParameters | TimeDependentHelmert;
  readonly source: string;
  /** Where it holds at one epoch only: that epoch, and how many years from it are allowed. */
  readonly onlyNear?: { readonly epoch: number; readonly years: number };
}

export const isTimeDependent = (
  parameters: HelmertParameters | TimeDependentHelmert,
): parameters is TimeDependentHelmert => 'rates' in parameters;

/** By code (`EPSG:1314`, `1314`) or by its whole name (`OSGB36 to WGS 84 (6)`). */
export function transformationOf(text: string): DatumTransformation | Refusal {
  const code = /^\s*(?:EPSG\s*:{1,2}\s*)?(\d{4,5})\s*$/i.exec(text)?.[1];
  const wanted = bare(text);
  const found = all().find((one) =>
    code === undefined ? bare(one.name) === wanted : one.code === `EPSG:${code}`,
  );
  return (
    found ?? refuse(`No transformation “${text.slice(0, 60)}” with a published accuracy is carried here.`)
  );
}

/** A transformation in one of its two directions. */
export interface DirectedTransformation {
  readonly transformation: DatumTransformation;
  readonly reversed: boolean;
}

/**
 * Those that join two datums in one step, in either direction, the most accurate first; with a position, only those in
 * whose area it lies.
 */
export function transformationsBetween(
  from: string,
  to: string,
  at?: Geographic,
): readonly DirectedTransformation[] {
  return transformationsOf(from, at).filter((one) => farEnd(one) === to);
}

/** All those that lead away from a datum, in either direction, the most accurate first. */
export function transformationsOf(from: string, at?: Geographic): readonly DirectedTransformation[] {
  return (byDatum().get(from) ?? []).filter(
    ({ transformation: { area, leavesOut } }) =>
      at === undefined || (isWithin(area, at) && !(leavesOut && isWithin(leavesOut, at))),
  );
}

/** The datum that a step leads to. */
export const farEnd = ({ transformation, reversed }: DirectedTransformation) =>
  reversed ? transformation.from : transformation.to;

/** A point carried through one step; the epoch, a year with its fraction, is that of the coordinates. */
export function stepped(
  { transformation, reversed }: DirectedTransformation,
  point: Geocentric,
  epoch: number | undefined,
): Geocentric | Refusal {
  const { parameters, onlyNear, name } = transformation;
  if (isTimeDependent(parameters) || onlyNear) {
    if (epoch === undefined)
      return refuse(`${name} depends on time; it needs the epoch of the coordinates, such as 2026.4.`);
    if (onlyNear && Math.abs(epoch - onlyNear.epoch) > onlyNear.years)
      return refuse(
        `${name} holds at epoch ${onlyNear.epoch.toFixed(1)} only; between it and ${epoch.toFixed(1)} the ground has moved in a way that needs a deformation model.`,
      );
  }
  const current =
    isTimeDependent(parameters) && epoch !== undefined ? parametersAt(parameters, epoch) : parameters;
  return reversed ? inverseHelmert(current, point) : helmert(current, point);
}

let made: readonly DatumTransformation[] | undefined;
const all = () => (made ??= [...TRANSFORMATIONS.slice(1, -1).split('\n').map(read), ...BY_THEIR_OWN_SOURCE]);

let joined: ReadonlyMap<string, readonly DirectedTransformation[]> | undefined;

function byDatum() {
  if (joined) return joined;
  const found = new Map<string, DirectedTransformation[]>();
  const add = (datum: string, one: DirectedTransformation) => {
    const known = found.get(datum);
    if (known) known.push(one);
    else found.set(datum, [one]);
  };
  for (const transformation of all()) {
    add(transformation.from, { transformation, reversed: false });
    add(transformation.to, { transformation, reversed: true });
  }
  for (const list of found.values())
    list.sort((one, other) => one.transformation.accuracy - other.transformation.accuracy);
  return (joined = found);
}

function read(line: string): DatumTransformation {
  const [code = '', name = '', from = '', to = '', accuracy = '', area = '', ...numbers] = line.split('|');
  const [t = '', r = '', s = '', epoch = '', dt = '', dr = '', ds = ''] = numbers;
  const fixed = { translation: triple(t), rotation: triple(r), scale: Number(s) };
  const rates = { translation: triple(dt), rotation: triple(dr), scale: Number(ds) };
  const areaOfUse = areaAt(Number(area));
  return {
    code: `EPSG:${code}`,
    name,
    from,
    to,
    accuracy: metres(Number(accuracy)),
    area: areaOfUse,
    ...(areaOfUse.name.includes('excluding northern prefectures') ? { leavesOut: NORTHERN_HONSHU } : {}),
    parameters: epoch === '' ? fixed : { ...fixed, epoch: Number(epoch), rates },
    source: `EPSG Geodetic Parameter Dataset, operation ${code}`,
  };
}

/** Those that moved by up to metres in 2011; the box is that of EPSG:6713, which is for them. */
const NORTHERN_HONSHU: AreaOfUse = {
  name: 'Japan - northern Honshu',
  south: 34.84,
  west: 135.42,
  north: 41.58,
  east: 142.14,
};

const triple = (text: string): Triple => {
  const [x = 0, y = 0, z = 0] = text.split(' ').map(Number);
  return { x, y, z };
};

let areaLines: readonly string[] | undefined;

function areaAt(place: number): AreaOfUse {
  areaLines ??= AREAS.slice(1, -1).split('\n');
  const [name = '', box = ''] = areaLines[place]?.split('|') ?? [];
  const [south = NaN, west = NaN, north = NaN, east = NaN] = box.split(' ').map(Number);
  return { name, south, west, north, east };
}

const bare = (name: string) => name.toLowerCase().replace(/[\s_]/g, '');

/** Datums that are a frame, or a frame at an epoch, by their own definition, where the EPSG dataset has no such operation. */
const BY_THEIR_OWN_SOURCE: readonly DatumTransformation[] = [
  memberOf('ETRF2000', 'ETRS89', 0.1, {
    name: 'Europe',
    south: 32.88,
    west: -16.1,
    north: 84.73,
    east: 40.18,
  }),
  memberOf('ETRF2014', 'ETRS89', 0.1, {
    name: 'Europe',
    south: 32.88,
    west: -16.1,
    north: 84.73,
    east: 40.18,
  }),
  memberOf('WGS 84 (G2139)', 'WGS 84', 2, { name: 'World', south: -90, west: -180, north: 90, east: 180 }),
  {
    code: undefined,
    name: 'ITRF96 to NZGD2000 at 2000.0',
    from: 'ITRF96',
    to: 'NZGD2000',
    accuracy: metres(0.02),
    area: { name: 'New Zealand', south: -55.95, west: 160.6, north: -25.88, east: -171.2 },
    parameters: NO_CHANGE,
    onlyNear: { epoch: 2000, years: 0.25 },
    source:
      'Land Information New Zealand, LINZS25000, Standard for New Zealand Geodetic Datum 2000 (from memory)',
  },
  {
    code: undefined,
    name: 'ITRF2000 to SIRGAS 2000, with the South American plate',
    from: 'ITRF2000',
    to: 'SIRGAS 2000',
    accuracy: metres(0.05),
    area: { name: 'South America, its stable part', south: -59.87, west: -82, north: 16.75, east: -25.28 },
    parameters: {
      ...NO_CHANGE,
      epoch: 2000.4,
      rates: { ...NO_CHANGE, rotation: plateRotation('South America', -1) },
    },
    source:
      'SIRGAS 2000 is ITRF2000 at epoch 2000.4 (from memory); plate motion of Altamimi et al. (2017), table 1',
  },
];

/** A realisation stands for the ensemble that it is a member of, no better than the ensemble's published accuracy. */
function memberOf(member: string, ensemble: string, accuracy: number, area: AreaOfUse): DatumTransformation {
  return {
    code: undefined,
    name: `${member} as a member of ${ensemble}`,
    from: member,
    to: ensemble,
    accuracy: metres(accuracy),
    area,
    parameters: NO_CHANGE,
    source: `EPSG Geodetic Parameter Dataset, datum ensemble ${ensemble} and its accuracy`,
  };
}
