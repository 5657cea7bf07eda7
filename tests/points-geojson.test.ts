/** GeoJSON of points by the rules of RFC 7946, which are written here once more from the text of the standard. */
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { folderWith, tribrach } from './command-line-run.ts';
import { REPAIRED_DAY } from './repaired-day.ts';

type Json = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What of a text is no feature collection of points, each with the section that says so. */
function faultsOf(text: string): string[] {
  const faults: string[] = [];
  const fault = (holds: boolean, sentence: string) => void (holds || faults.push(sentence));
  fault(!text.startsWith('\ufeff'), 'a byte order mark (RFC 8259, 8.1)');
  const collection: unknown = JSON.parse(text);
  if (!isObject(collection)) return ['no object (3)'];
  fault(collection['type'] === 'FeatureCollection', 'the type is another (1.4)');
  fault(!('crs' in collection), 'crs is used no more (4)');
  for (const word of ['coordinates', 'geometries', 'geometry', 'properties'])
    fault(!(word in collection), `${word} has no place in a collection (7.1)`);
  const { features } = collection;
  if (!Array.isArray(features)) return [...faults, 'features is no list (3.3)'];
  for (const feature of features as readonly unknown[]) {
    if (!isObject(feature)) return [...faults, 'a feature is no object (3.2)'];
    fault(feature['type'] === 'Feature', 'the type of a feature is another (3.2)');
    fault(!('crs' in feature), 'crs is used no more (4)');
    for (const word of ['coordinates', 'geometries', 'features'])
      fault(!(word in feature), `${word} has no place in a feature (7.1)`);
    fault('properties' in feature, 'a feature has no properties (3.2)');
    fault(
      isObject(feature['properties']) || feature['properties'] === null,
      'properties are no object (3.2)',
    );
    fault('geometry' in feature, 'a feature has no geometry (3.2)');
    if (feature['geometry'] !== null) faults.push(...faultsOfPoint(feature['geometry']));
  }
  return faults;
}

function faultsOfPoint(geometry: unknown): string[] {
  if (!isObject(geometry) || geometry['type'] !== 'Point') return ['a geometry is no point (3.1.2)'];
  const { coordinates } = geometry;
  if (!Array.isArray(coordinates) || coordinates.length < 2 || coordinates.length > 3)
    return ['a position has two or three numbers (3.1.1)'];
  const [longitude, latitude] = coordinates as readonly unknown[];
  const within = (value: unknown, most: number) => typeof value === 'number' && Math.abs(value) <= most;
  return [
    ...(coordinates.every((value) => typeof value === 'number') ? [] : ['a coordinate is no number (3.1.1)']),
    ...(within(longitude, 180) && within(latitude, 90) ? [] : ['longitude comes first, then latitude (4)']),
  ];
}

const removals: (() => void)[] = [];
afterEach(() => removals.splice(0).forEach((remove) => remove()));

async function written(columns: string, table: string): Promise<string> {
  const points = `points "points.csv"\n  from        BASE\n  by          R1\n  state       as-broadcast\n  columns     ${columns}\n`;
  const at = folderWith({ 'day.trib': REPAIRED_DAY + points, 'points.csv': table });
  removals.push(at.remove);
  const out = at.path('out');
  const { status } = await tribrach(['points', at.path('day.trib'), '--out', out, '--format', 'geojson']);
  expect(status).toBe(0);
  return readFileSync(at.path('out/points.geojson'), 'utf8');
}

describe('GeoJSON of points', () => {
  it('keeps to the standard, for points with and without height, place, name and time', async () => {
    const table =
      '"a ""b""\u2028",531000.5,4555000.25,5.5,09:00\nB,531001,4555001,,\n,531002,4555002,5,10:00\nD,,,5,10:00\n';
    const text = await written('name, east m, north m, height m ellipsoidal, time local', table);
    expect(faultsOf(text)).toEqual([]);
    const { features } = JSON.parse(text) as { features: { geometry: { coordinates: number[] } | null }[] };
    expect(features.map(({ geometry }) => geometry?.coordinates.length)).toEqual([3, 2, 3, undefined]);
  });

  it('keeps to it for geographic points and for none', async () => {
    const columns = 'name, latitude °, longitude °, height m ellipsoidal, time local';
    const text = await written(columns, 'A,41.15,-8.62,60.5,09:12\n');
    expect(faultsOf(text)).toEqual([]);
    expect(faultsOf(await written(columns, ''))).toEqual([]);
  });

  it('would be told from what does not', () => {
    const feature = (more: object) => ({ type: 'Feature', properties: {}, geometry: null, ...more });
    const point = (...coordinates: unknown[]) => feature({ geometry: { type: 'Point', coordinates } });
    const collection = (...features: unknown[]) => ({ type: 'FeatureCollection', features });
    for (const [wrong, section] of [
      [{ ...collection(), crs: {} }, '(4)'],
      [{ ...collection(), properties: {} }, '(7.1)'],
      [collection(point(41, -188)), '(4)'],
      [collection(point(41, 8, 1, 2)), '(3.1.1)'],
      [collection(point('8', 41)), '(3.1.1)'],
      [collection({ type: 'Feature', geometry: null }), '(3.2)'],
      [collection(feature({ features: [] })), '(7.1)'],
      [{ type: 'Feature' }, '(1.4)'],
    ] as const)
      expect(faultsOf(JSON.stringify(wrong)).join(), JSON.stringify(wrong)).toContain(section);
  });
});
