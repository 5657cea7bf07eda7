/** Points as LandXML 1.2: `CgPoints` with north, east and elevation, and what else the format carries of trust and repair. */
import { hasHeight } from '../../derive/repair/fate.ts';
import type { PointSet } from '../../derive/points/points.ts';
import type { RepairedPoint } from '../../derive/repair/row.ts';
import { circularRadius, normalHalfWidth } from '../../quantities/statistics.ts';
import { isRefusal, refuse, type Refusal } from '../../quantities/refusal.ts';
import { isHole } from '../../quantities/value.ts';
import { forward } from '../../geodesy/projection.ts';
import type { ProjectedSystem } from '../../geodesy/system.ts';
import { latitude as asLatitude, longitude as asLongitude } from '../../quantities/brands.ts';
import { sameDatum, type Frame } from '../../derive/positions/frame.ts';
import { fixed, LENGTH_DECIMALS, utcTime } from './numbers.ts';
import type { PointsWriter } from './writer.ts';

/** @param at the moment of writing, `2026-05-19T07:25:30Z` */
export function landxmlWriter(set: PointSet, frame: Frame, at: string): PointsWriter | Refusal {
  const grid = set.form === 'grid' ? set.system : frame.grid;
  if (isHole(grid)) return refuse(`LandXML needs a grid: ${grid.hole}`);
  if (grid.kind !== 'projected') return refuse(`LandXML needs a grid, and ${grid.name} is none`);
  if (set.form === 'geocentric' || set.form === null)
    return refuse(`${set.name} has no grid or geographic coordinates, which LandXML needs`);
  if (isHole(set.system) || !sameDatum(set.system.datum, grid.datum))
    return refuse(`${set.name} is in another datum than the grid that LandXML needs`);
  return {
    head: head(set, grid, at),
    row: (point, into) => into.text(cgPoint(point, set, grid, frame.confidence.value)),
    tail: '  </CgPoints>\n</LandXML>\n',
  };
}

function head(set: PointSet, grid: ProjectedSystem, at: string): string {
  const surface = isHole(set.height) ? (hasHeight(set) ? 'not said' : 'none') : set.height.surface;
  const code = /^EPSG:(\d+)$/.exec(grid.code ?? '')?.[1];
  const system = [
    `desc="${escaped(`${grid.name}; heights: ${surface}`)}"`,
    ...(code === undefined ? [] : [`epsgCode="${code}"`]),
    `horizontalDatum="${escaped(grid.datum.name)}"`,
  ];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2" version="1.2" date="${at.slice(0, 10)}" time="${at.slice(11, 19)}" readOnly="false">`,
    '  <Units>',
    '    <Metric areaUnit="squareMeter" linearUnit="meter" volumeUnit="cubicMeter" temperatureUnit="celsius" pressureUnit="HPA"/>',
    '  </Units>',
    `  <CoordinateSystem ${system.join(' ')}/>`,
    '  <CgPoints>',
    '',
  ].join('\n');
}

function cgPoint(point: RepairedPoint, set: PointSet, grid: ProjectedSystem, confidence: number): string {
  const { row, third, horizontal, up } = point;
  const place = gridPlace(point, set, grid);
  if (!place)
    return `    <!-- ${escaped(row.name ?? `row ${row.line}`).replace(/-(?=-)/g, '- ')}: no position -->\n`;
  const elevation =
    Number.isNaN(third) || isHole(set.height) ? '' : ` ${fixed(third + set.height.offset, LENGTH_DECIMALS)}`;
  const axis = horizontal === null ? null : fixed(horizontal / circularRadius(confidence), LENGTH_DECIMALS);
  const attributes = [
    `name="${escaped(row.name ?? String(row.line))}"`,
    ...(row.code === undefined ? [] : [`code="${escaped(row.code)}"`]),
    `desc="${escaped(description(point))}"`,
    ...(row.time === undefined ? [] : [`timeStamp="${utcTime(row.time)}"`]),
    ...(axis === null ? [] : [`northingStdError="${axis}"`, `eastingStdError="${axis}"`]),
    ...(up === null || elevation === ''
      ? []
      : [`elevationStdError="${fixed(up / normalHalfWidth(confidence), LENGTH_DECIMALS)}"`]),
  ];
  return `    <CgPoint ${attributes.join(' ')}>${fixed(place.north, LENGTH_DECIMALS)} ${fixed(place.east, LENGTH_DECIMALS)}${elevation}</CgPoint>\n`;
}

/** The format has no place for class, shift and reason, so they are the description. */
function description({ label, shift, reason }: RepairedPoint): string {
  const moved = shift
    ? `; shifted ${fixed(shift.east, LENGTH_DECIMALS)} m east, ${fixed(shift.north, LENGTH_DECIMALS)} m north, ${fixed(shift.up, LENGTH_DECIMALS)} m up; state corrected`
    : '';
  return `${label}${moved}. ${reason}`;
}

function gridPlace(
  { first, second }: RepairedPoint,
  { form }: PointSet,
  grid: ProjectedSystem,
): { readonly east: number; readonly north: number } | null {
  if (Number.isNaN(first) || Number.isNaN(second)) return null;
  if (form === 'grid') return { east: first, north: second };
  const found = forward(grid, { latitude: asLatitude(first), longitude: asLongitude(second) });
  return isRefusal(found) ? null : found;
}

/** For an attribute; characters that XML 1.0 does not allow are left out. */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replace(/[\t\n\r]+/g, ' ');
}
