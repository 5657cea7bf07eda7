/** Grids and definitions of systems: read, or refused in a sentence, and nothing that only looks like a height. */
import fc from 'fast-check';
import { readFileSync, readdirSync } from 'node:fs';
import { undulationIn } from '../../server/geodesy/grids/geoid-grid.ts';
import { readGrid } from '../../server/geodesy/grids/read-grid.ts';
import { systemFrom } from '../../server/geodesy/registry/definition.ts';
import { searchSystems, systemOf } from '../../server/geodesy/registry/registry.ts';
import { inverse } from '../../server/geodesy/projection.ts';
import { gridEast, gridNorth, latitude, longitude } from '../../server/quantities/brands.ts';
import { isRefusal } from '../../server/quantities/refusal.ts';
import { gtxOf, isgOf, tiffOf } from '../reference/grid-files.ts';
import { harmed } from './bytes.ts';
import { hostileName } from './sessions.ts';
import { law, target } from './target.ts';

const surface = {
  south: 41,
  west: -9,
  step: 0.25,
  rows: 9,
  columns: 7,
  height: (φ: number, λ: number) => 50 + (φ - 42) ** 2 + λ / 3,
};
const wholes = [
  gtxOf(surface),
  isgOf(surface, '1.0'),
  isgOf(surface, '2.0'),
  tiffOf(surface),
  tiffOf(surface, { big: true, little: false }),
  tiffOf(surface, { deflated: true, predictor: 2 }),
  tiffOf(surface, { deflated: true, predictor: 3, tile: 16 }),
  tiffOf(surface, { point: true, scaled: { scale: 0.01, offset: 50 } }),
  ...readdirSync('samples/grids').map((name) => new Uint8Array(readFileSync(`samples/grids/${name}`))),
].filter(({ length }) => length < 200_000);

const grids = target('grids', 200, harmed(wholes), (bytes) => {
  const grid = readGrid(bytes);
  if (isRefusal(grid)) return law(grid.refused.length > 20, `the refusal says ${grid.refused}`);
  law(grid.rows * grid.columns <= 8 * bytes.length * 1040, 'a grid claims more than its file can hold');
  for (const [φ, λ] of [
    [42, -8],
    [41.3, -8.9],
    [grid.south, grid.west],
    [90, 180],
  ] as const)
    for (const by of ['bilinear', 'bicubic'] as const) {
      const answer = undulationIn(grid, { latitude: latitude(φ), longitude: longitude(λ) }, by);
      if (!isRefusal(answer)) law(Math.abs(answer.height) < 400, `a height of ${answer.height} m`);
    }
});

const WKT =
  'PROJCS["site",GEOGCS["ETRS89",DATUM["European_Terrestrial_Reference_System_1989",SPHEROID["GRS 1980",6378137,298.257222101]],PRIMEM["Greenwich",0],UNIT["degree",0.0174532925199433]],PROJECTION["Transverse_Mercator"],PARAMETER["latitude_of_origin",39.66],PARAMETER["central_meridian",-8.13],PARAMETER["scale_factor",1],PARAMETER["false_easting",0],PARAMETER["false_northing",0],UNIT["metre",1]]';
const PROJ = '+proj=tmerc +lat_0=39.66 +lon_0=-8.13 +k=1 +x_0=0 +y_0=0 +ellps=GRS80 +units=m +type=crs';
const definitionPiece = fc.oneof(
  hostileName,
  fc.constantFrom(
    '[',
    ']',
    '(',
    ')',
    '"',
    '""',
    ',',
    '+',
    '=',
    '[[[['.repeat(3000),
    'UNIT["metre",1],',
    '1e400',
  ),
  fc.constantFrom('+proj=', '+towgs84=1,2,3', '+nadgrids=@x', '+lat_0=91', '+k=0', '+pm=paris', '+units=ft'),
  fc.double().map((value) => String(value)),
  fc.string({ maxLength: 5 }),
);
const definition: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom(WKT, PROJ, ''),
    fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.nat(12), definitionPiece), {
      maxLength: 5,
    }),
  )
  .map(([text, changes]) =>
    changes.reduce<string>((before, [at, cut, put]) => {
      const from = Math.floor(at * before.length);
      return before.slice(0, from) + put + before.slice(from + cut);
    }, text),
  );

const systems = target('systems', 200, definition, (text) => {
  const system = systemFrom(text);
  if (isRefusal(system)) return law(system.refused.length > 10, `the refusal says ${system.refused}`);
  if (system.kind !== 'projected') return;
  const place = inverse(system, { east: gridEast(1000), north: gridNorth(2000) });
  if (isRefusal(place)) return;
  law(Math.abs(place.latitude) <= 90 && Math.abs(place.longitude) <= 180, 'a place off the Earth');
});

const codes = target(
  'codes of systems',
  200,
  fc.oneof(
    hostileName,
    hostileName.map((name) => `EPSG:${name}`),
    fc.integer({ min: -5, max: 33_000 }).map((code) => `EPSG:${code}`),
    fc.string({ unit: 'binary', maxLength: 20 }),
  ),
  (code) => {
    const system = systemOf(code);
    if (isRefusal(system)) law(system.refused.length > 10, `the refusal says ${system.refused}`);
    law(searchSystems(code).length <= 20, 'more systems are found than are asked for');
  },
);

export const GEODESY = [grids, systems, codes];
