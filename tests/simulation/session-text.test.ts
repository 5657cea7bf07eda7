/** The written session is one that the language knows, and its numbers are those that were keyed and shown. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { bind } from '../../server/session/binding/bind.ts';
import { drawScene, liveDay } from './day.ts';
import { geoidAsGtx, geoidModel } from './geoid.ts';
import { waysToSlip } from './planted.ts';
import { pointsCsv, sessionText } from './session-text.ts';

const texts = Array.from({ length: 30 }, (_, seed) => {
  const scene = drawScene({ seed: `text ${String(seed)}`, nail: seed % 3 === 0 });
  const ways = waysToSlip(scene.situation);
  const planted = ways[(seed * 7) % ways.length];
  return sessionText(liveDay(scene, planted, seed % 2 === 0 ? 'faithful' : 'unaware'), {
    geoid: 'grids/region.gtx',
    tolerance: '35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical',
  });
});

describe('the session text', () => {
  it('is read without a remark, entry by entry', () => {
    for (const text of texts) {
      const { entries } = openDocument('simulated.trib', text);
      expect(entries.length).toBeGreaterThan(8);
      for (const entry of entries) {
        const { remarks } = bind('simulated.trib', entry);
        const said = remarks.map((remark) => [
          remark.about,
          entry.text.slice(remark.place.start, remark.place.end),
        ]);
        expect([entry.text, said]).toEqual([entry.text, []]);
      }
    }
  });

  it('writes the very numbers that the receiver was told', () => {
    for (let seed = 0; seed < 20; seed++) {
      const scene = drawScene({ seed: `keyed ${String(seed)}`, keyedForm: seed % 2 ? 'grid' : 'geographic' });
      const { setting } = scene.situation.careful;
      const line = /keyed +position (.*)/.exec(sessionText(liveDay(scene)))?.[1] ?? '';
      expect(line).toContain(`height ${setting.height.toFixed(3)} m ellipsoidal`);
      if (setting.position.kind === 'grid') {
        const { east, north } = setting.position.position;
        expect(/^(-?[\d.]+) m E, (-?[\d.]+) m N/.exec(line)?.slice(1).map(Number)).toEqual([east, north]);
        continue;
      }
      const angle = /(\d+)°(\d\d)'(\d\d\.\d{5})"([NSEW])/g;
      const [latitude, longitude] = [...line.matchAll(angle)].map(([, whole, minutes, seconds, letter]) => {
        const size = Number(whole) + Number(minutes) / 60 + Number(seconds) / 3600;
        return letter === 'S' || letter === 'W' ? -size : size;
      });
      // A hundredth of the last digit typed.
      expect(Math.abs((latitude ?? NaN) - setting.position.place.latitude)).toBeLessThan(1e-7 / 3600);
      expect(Math.abs((longitude ?? NaN) - setting.position.place.longitude)).toBeLessThan(1e-7 / 3600);
    }
  });

  it('gives the points as a file as well', () => {
    const day = liveDay(drawScene({ seed: 'points', points: 7, form: 'grid' }));
    const lines = pointsCsv(day).trimEnd().split('\n');
    expect(lines[0]).toBe('name,east,north,height,time');
    expect(lines).toHaveLength(8);
  });
});

describe('the geoid as a grid', () => {
  it('holds the surface at its nodes, by the layout of the GTX format', () => {
    const { geoid } = drawScene({ seed: 'geoid' });
    const view = new DataView(geoidAsGtx(geoid).buffer);
    const [south, west, step] = [view.getFloat64(0), view.getFloat64(8), view.getFloat64(16)];
    const columns = view.getInt32(36);
    expect(view.byteLength).toBe(40 + 4 * columns * view.getInt32(32));
    const node = view.getFloat32(40 + 4 * (3 * columns + 5));
    const there = { latitude: south + 3 * step, longitude: west + 5 * step };
    expect(Math.abs(node - geoidModel(geoid)(there))).toBeLessThan(1e-5);
  });
});
