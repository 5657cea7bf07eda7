/** Systems by their own definition: PROJ's text of a register's system, in each form, must give the register's numbers. */
import { describe, expect, it } from 'vitest';
import { latitude, longitude } from '../../server/quantities/brands.ts';
import { isRefusal, type Refusal } from '../../server/quantities/refusal.ts';
import { forward, inverse } from '../../server/geodesy/projection.ts';
import { systemFrom } from '../../server/geodesy/registry/definition.ts';
import { projectedSystemOf } from '../../server/geodesy/registry/registry.ts';
import { ask, isInstalled, say } from './proj-tools.ts';

/** One or more of each method that well-known text is read for, in metres, both feet, grads and old ellipsoids. */
const CODES = [
  'EPSG:3763', // transverse Mercator
  'EPSG:28355', // UTM, south
  'EPSG:27700', // transverse Mercator, Airy 1830
  'EPSG:2154', // Lambert conic, two parallels
  'EPSG:2263', // the same in US survey feet
  'EPSG:2921', // the same in international feet
  'EPSG:3034', // the same, north before east
  'EPSG:31370', // Lambert conic, two parallels, International 1924
  'EPSG:3375', // Hotine, variant A
  'EPSG:29873', // Hotine, variant B
  'EPSG:24200', // Lambert conic, one parallel
  'EPSG:28992', // oblique stereographic
  'EPSG:2056', // the same along a parallel, as the Swiss grid
  'EPSG:30200', // Cassini–Soldner, in Clarke’s links
  'EPSG:3005', // Albers
  'EPSG:3035', // Lambert azimuthal equal-area
  'EPSG:3395', // Mercator, variant A
];

describe.skipIf(!isInstalled('projinfo'))('definitions as PROJ writes them', () => {
  it.each(CODES)('%s', async (code) => {
    const known = answered(projectedSystemOf(code));
    const { south = 0, north = 0, west = 0, east = 0 } = known.area ?? {};
    const position = {
      latitude: latitude(south + 0.6 * (north - south)),
      longitude: longitude(west + 0.3 * (east - west)),
    };
    const expected = answered(forward(known, position));
    for (const form of ['WKT1_GDAL', 'WKT1_ESRI', 'WKT2:2015', 'WKT2:2019', 'PROJ']) {
      const text = (await ask('projinfo', ['-q', '-o', form, code], [])).join('\n');
      // PROJ has no word for the axes’ order where it is north, east; and ESRI’s text has no axes.
      const system = answered(systemFrom(text));
      if (system.kind !== 'projected') throw new Error(`${form} of ${code} is no grid`);
      const grid = answered(forward(system, position));
      const miss = Math.hypot(grid.east - expected.east, grid.north - expected.north);
      expect(miss, `${form}: ${text}`).toBeLessThan(1e-4);
      expect(Math.abs(system.unit.metres - known.unit.metres)).toBeLessThan(1e-9);
      if (form.startsWith('WKT2')) expect(system.axes).toEqual(known.axes);
      if (form !== 'PROJ' && form !== 'WKT1_ESRI')
        expect(system.datum.realisation).toBe(known.datum.realisation);
      answered(inverse(system, grid));
    }
  });

  it('what is not read is refused with a reason', async () => {
    const refused: string[] = [];
    for (const code of ['EPSG:5514', 'EPSG:31300', 'EPSG:32661', 'EPSG:3031', 'EPSG:5703', 'EPSG:4326']) {
      const text = (await ask('projinfo', ['-q', '-o', 'WKT2:2019', code], [])).join('\n');
      const answer = systemFrom(text);
      if (isRefusal(answer)) refused.push(`${code}: ${answer.refused}`);
      else expect(answer.kind).not.toBe('projected');
    }
    say(`Well-known text that is refused: ${refused.length} of 6 tried.`);
    expect(refused.every((sentence) => sentence.endsWith('.'))).toBe(true);
  });
});

function answered<Answer>(answer: Answer | Refusal): Answer {
  if (isRefusal(answer)) throw new Error(answer.refused);
  return answer as Answer;
}
