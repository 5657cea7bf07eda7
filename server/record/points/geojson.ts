/** Points as GeoJSON (RFC 7946), one feature a line; in another datum than WGS 84 the file says so. */
import type { PointSet } from '../../derive/points/points.ts';
import type { RepairedPoint } from '../../derive/repair/row.ts';
import type { GeoidModel } from '../../derive/heights/geoid.ts';
import { pointClassInWords } from '../../derive/repair/flaws.ts';
import { shiftOf } from './table.ts';
import { geodeticOf } from '../../geodesy/geocentric.ts';
import { inverse } from '../../geodesy/projection.ts';
import type { CoordinateSystem } from '../../geodesy/system.ts';
import { gridEast, gridNorth, metres } from '../../quantities/brands.ts';
import { isRefusal, refuse, type Refusal } from '../../quantities/refusal.ts';
import { isHole } from '../../quantities/value.ts';
import { utcTime } from './numbers.ts';
import type { PointsWriter } from './writer.ts';

/** @param geoid turns orthometric heights into the ellipsoidal ones that the format asks for */
export function geojsonWriter(
  set: PointSet,
  geoid: GeoidModel | null,
  confidence: number,
): PointsWriter | Refusal {
  const { system } = set;
  if (isHole(system)) return refuse(`the coordinate system of ${set.name} is not known: ${system.hole}`);
  if (!set.form) return refuse(`${set.name} has no positions`);
  let first = true;
  return {
    head: `{"type":"FeatureCollection",${said(system)}"confidence":${Number(confidence.toFixed(6))},"features":[\n`,
    row: (point, into) => {
      if (!first) into.text(',\n');
      first = false;
      into.text(featureOf(point, set, system, geoid));
    },
    tail: '\n]}\n',
  };
}

/** RFC 7946, §4: other systems only by arrangement, so the file must tell its reader. */
function said({ datum, name }: CoordinateSystem): string {
  if (datum.geographic === 'EPSG:4326') return '';
  const code = datum.geographic === undefined ? '' : ` (${datum.geographic})`;
  const sentence = `Longitude, latitude and ellipsoidal height are in ${datum.name}${code}, the datum of ${name}; they have not been brought to WGS 84, from which that may differ by a metre or two, and an old datum by a hundred and more.`;
  return `"coordinateReferenceSystem":${JSON.stringify(datum.geographic ?? datum.name)},"note":${JSON.stringify(sentence)},`;
}

function featureOf(
  point: RepairedPoint,
  set: PointSet,
  system: CoordinateSystem,
  geoid: GeoidModel | null,
): string {
  const { row, shift, horizontal, up, label, reason, fate, flaw } = point;
  const properties = {
    name: row.name ?? null,
    ...(row.code === undefined ? {} : { code: row.code }),
    ...(row.time === undefined ? {} : { time: utcTime(row.time) }),
    ...writtenHeight(point, set),
    class: label,
    ...(shift ? { classAsRepaired: pointClassInWords(flaw?.class ?? fate.asRepaired) } : {}),
    shiftEast: roundedOr(shiftOf(point, 'east')),
    shiftNorth: roundedOr(shiftOf(point, 'north')),
    shiftUp: roundedOr(shiftOf(point, 'up')),
    uncertaintyHorizontal: roundedOr(horizontal),
    uncertaintyUp: roundedOr(up),
    reason,
    state: shift ? 'corrected' : (row.state ?? set.entry.state?.name ?? null),
  };
  const place = coordinatesOf(point, set, system, geoid);
  const geometry = place ? `{"type":"Point","coordinates":[${place.join(',')}]}` : 'null';
  return `{"type":"Feature","geometry":${geometry},"properties":${JSON.stringify(properties)}}`;
}

const roundedOr = (length: number | null) => (length === null ? null : rounded(length));
const rounded = (length: number) => Number(length.toFixed(4));

function writtenHeight({ third }: RepairedPoint, { height, form }: PointSet): Record<string, unknown> {
  if (form === 'geocentric' || isHole(height) || Number.isNaN(third)) return {};
  return { height: rounded(third + height.offset), heightSurface: height.surface };
}

function coordinatesOf(
  { first, second, third }: RepairedPoint,
  { form, height }: PointSet,
  system: CoordinateSystem,
  geoid: GeoidModel | null,
): readonly string[] | null {
  if (Number.isNaN(first) || Number.isNaN(second)) return null;
  if (form === 'geocentric') {
    const found = geodeticOf(system.datum.ellipsoid, {
      x: metres(first),
      y: metres(second),
      z: metres(third),
    });
    return Number.isNaN(third)
      ? null
      : [degrees(found.longitude), degrees(found.latitude), found.height.toFixed(4)];
  }
  const place =
    form === 'geographic'
      ? { latitude: first, longitude: second }
      : system.kind === 'projected'
        ? inverse(system, { east: gridEast(first), north: gridNorth(second) })
        : refuse('no grid');
  if (isRefusal(place)) return null;
  const plane = [degrees(place.longitude), degrees(place.latitude)];
  if (isHole(height) || Number.isNaN(third)) return plane;
  if (height.surface === 'ellipsoidal') return [...plane, (third + height.offset).toFixed(4)];
  const N = geoid?.undulation(place.latitude, place.longitude);
  return N === undefined || isRefusal(N) || geoid?.coarse
    ? plane
    : [...plane, (third + height.offset + N).toFixed(4)];
}

/** To a hundredth of a millimetre. */
const degrees = (angle: number) => angle.toFixed(10);
