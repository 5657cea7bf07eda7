/** Geoid grids in every form, against a surface that is known, against other readers, and against hostile bytes. */
import { mkdtempSync, readFileSync, existsSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { fromArrayBuffer } from 'geotiff';
import { describe, expect, it } from 'vitest';
import { latitude, longitude } from '../../server/quantities/brands.ts';
import { isRefusal, type Refusal } from '../../server/quantities/refusal.ts';
import { undulationIn, type GeoidGrid } from '../../server/geodesy/grids/geoid-grid.ts';
import { readGtx } from '../../server/geodesy/grids/gtx.ts';
import { inflated } from '../../server/geodesy/grids/inflate.ts';
import { readGrid } from '../../server/geodesy/grids/read-grid.ts';
import { gtxOf, isgOf, tiffOf, type TestGrid, type TiffOptions } from './grid-files.ts';
import { ask, isInstalled, repeatable, say } from './proj-tools.ts';

const at = (φ: number, λ: number) => ({ latitude: latitude(φ), longitude: longitude(λ) });

/** A parabola in each direction: cubic convolution is exact for it, bilinear is out by a known amount. */
const parabola: TestGrid = {
  south: 41,
  west: -9,
  step: 0.25,
  rows: 9,
  columns: 13,
  height: (φ, λ) => 50 + 2 * (φ - 42) ** 2 - 3 * (λ + 8) ** 2 + 0.5 * (φ - 42) * (λ + 8),
};

const TIFFS: readonly TiffOptions[] = [
  {},
  { little: false },
  { big: true },
  { point: true },
  { deflated: true },
  { deflated: true, predictor: 2 },
  { deflated: true, predictor: 3 },
  { deflated: true, predictor: 3, little: false, tile: 16 },
  { tile: 16 },
  { scaled: { scale: 0.001, offset: 40 } },
  { scaled: { scale: 0.001, offset: 40 }, deflated: true, predictor: 2 },
];

const FORMS: readonly { readonly form: string; readonly bytes: Uint8Array }[] = [
  { form: 'GTX', bytes: gtxOf(parabola) },
  { form: 'ISG 1.0, limits at the edges of cells', bytes: isgOf(parabola, '1.0') },
  { form: 'ISG 2.0, limits at the nodes', bytes: isgOf(parabola, '2.0') },
  ...TIFFS.map((options) => ({
    form: `GeoTIFF ${JSON.stringify(options)}`,
    bytes: tiffOf(parabola, options),
  })),
];

describe('a known surface comes back', () => {
  it.each(FORMS)('from $form', ({ form, bytes }) => {
    const grid = answered(readGrid(bytes));
    // Four-byte numbers hold 50 m to 4 µm; whole millimetres are good to half of one.
    const within = form.includes('scaled') ? 0.0006 : 1e-5;
    const random = repeatable(7);
    for (let i = 0; i < 200; i++) {
      const [φ, λ] = [41.25 + 1.5 * random(), -8.75 + 2.5 * random()];
      const cubic = answered(undulationIn(grid, at(φ, λ)));
      expect(cubic.by).toBe('bicubic');
      expect(Math.abs(cubic.height - parabola.height(φ, λ))).toBeLessThan(within);
      // Between nodes a chord lies off a parabola a x² by a s (1 − s) Δ².
      const [up, right] = [((φ - 41) / 0.25) % 1, ((λ + 9) / 0.25) % 1];
      const sag = 0.0625 * (2 * up * (1 - up) - 3 * right * (1 - right));
      const linear = answered(undulationIn(grid, at(φ, λ), 'bilinear'));
      expect(Math.abs(linear.height - parabola.height(φ, λ) - sag)).toBeLessThan(within);
    }
    const corner = answered(undulationIn(grid, at(41, -9)));
    expect(Math.abs(corner.height - parabola.height(41, -9))).toBeLessThan(within);
    expect(corner.by).toBe('bilinear');
  });

  it.each(FORMS)('and nothing outside, in $form', ({ bytes }) => {
    const grid = answered(readGrid(bytes));
    for (const [φ, λ] of [
      [40.999, -8],
      [43.001, -8],
      [42, -9.001],
      [42, -5.999],
      [42, 170],
    ] as const) {
      const answer = undulationIn(grid, at(φ, λ));
      expect(isRefusal(answer) && answer.refused).toMatch(/outside the .* grid/);
    }
  });

  it('also where longitudes count to 360°, and across the seam of a grid around the earth', () => {
    const east = { ...parabola, west: 351, height: (φ: number, λ: number) => parabola.height(φ, λ - 360) };
    const there = answered(undulationIn(answered(readGtx(gtxOf(east))), at(42.1, -7.9)));
    expect(Math.abs(there.height - parabola.height(42.1, -7.9))).toBeLessThan(1e-5);
    const round: TestGrid = {
      south: -90,
      west: -180,
      step: 10,
      rows: 19,
      columns: 36,
      height: (_, λ) => 10 * Math.cos((λ * Math.PI) / 180),
    };
    const seam = answered(undulationIn(answered(readGtx(gtxOf(round))), at(0, 179.9), 'bilinear'));
    expect(Math.abs(seam.height - -10)).toBeLessThan(0.01);
  });
});

describe('no data is no number', () => {
  const withHole = (hole: number): TestGrid => ({
    ...parabola,
    height: (φ, λ) => (φ === 42 && λ === -8 ? hole : parabola.height(φ, λ)),
  });
  it.each([
    ['GTX', gtxOf(withHole(-88.8888))],
    ['GTX with NaN', gtxOf(withHole(NaN))],
    ['GTX with a height that no geoid has', gtxOf(withHole(1e30))],
    ['ISG', isgOf(withHole(-9999), '2.0')],
    ['GeoTIFF', tiffOf(withHole(-9999), { deflated: true, predictor: 3 })],
  ] as const)('%s', (_, bytes) => {
    const grid = answered(readGrid(bytes));
    expect(undulationIn(grid, at(42.01, -7.99))).toHaveProperty('refused');
    const beside = answered(undulationIn(grid, at(42.3, -7.99)));
    expect(beside.by).toBe('bilinear');
    const onTheCellsEdge = answered(undulationIn(grid, at(42.25, -7.99)));
    expect(Number.isFinite(onTheCellsEdge.height)).toBe(true);
  });
});

describe('other readers of the same bytes', () => {
  // Its floating-point predictor takes big-endian files for little-endian ones; cct, below, reads them rightly.
  const readByGeotiff = TIFFS.filter(({ little = true, predictor }) => little || predictor !== 3);
  it.each(readByGeotiff)('geotiff reads the same nodes from %j', async (options) => {
    const bytes = tiffOf(parabola, options);
    const image = await (await fromArrayBuffer(bytes.slice().buffer)).getImage();
    const raster = (await image.readRasters({ interleave: true })) as unknown as ArrayLike<number>;
    const grid = answered(readGrid(bytes));
    const { scale, offset } = options.scaled ?? { scale: 1, offset: 0 };
    for (let row = 0; row < grid.rows; row++)
      for (let column = 0; column < grid.columns; column++)
        expect(grid.node(row, column)).toBe(
          (raster[(grid.rows - 1 - row) * grid.columns + column] ?? NaN) * scale + offset,
        );
  });

  describe.skipIf(!isInstalled('cct'))('cct interpolates the same, bilinearly', () => {
    it.each([
      ['gtx', gtxOf(parabola)],
      ['tif', tiffOf(parabola, { deflated: true, predictor: 3, tile: 16 })],
      ['tif', tiffOf(parabola, { deflated: true, predictor: 3, tile: 16, little: false })],
      ['tif', tiffOf(parabola, { point: true })],
    ] as const)('from .%s', async (ending, bytes) => {
      const path = join(mkdtempSync(join(tmpdir(), 'grid-')), `grid.${ending}`);
      writeFileSync(path, bytes);
      const grid = answered(readGrid(bytes));
      const random = repeatable(11);
      const points = Array.from({ length: 100 }, () => at(41 + 2 * random(), -9 + 3 * random()));
      const lines = points.map((point) => `${point.longitude} ${point.latitude} 0`);
      const options = ['-d', '7', '+proj=vgridshift', `+grids=${path}`, '+multiplier=1'];
      const theirs = await ask('cct', options, lines);
      const worst = Math.max(
        ...points.map((point, i) => {
          const own = answered(undulationIn(grid, point, 'bilinear')).height;
          return Math.abs(own - Number(theirs[i]?.trim().split(/\s+/)[2]));
        }),
      );
      say(`A .${ending} grid at 100 points: worst ${(worst * 1e6).toFixed(2)} µm against cct.`);
      expect(theirs).toHaveLength(100);
      expect(worst).toBeLessThan(1e-5);
    });
  });

  const egm96 = '/usr/share/proj/egm96_15.gtx';
  const carried = existsSync(egm96);
  if (!carried) say('NOT COMPARED: egm96_15.gtx of proj-data is not installed on this machine.');
  it.skipIf(!carried)('NGA’s test points from the whole EGM96 grid in GTX, ±0.05 m', () => {
    const grid = answered(readGrid(readFileSync(egm96)));
    for (const [φ, λ, N] of [
      [38.628155, 269.779155, -31.628],
      [-14.621217, 305.021114, -2.969],
      [46.874319, 102.448729, -43.575],
    ] as const)
      expect(Math.abs(answered(undulationIn(grid, at(φ, λ))).height - N)).toBeLessThan(0.05);
  });
});

describe('inflate', () => {
  it('undoes zlib at every level, and gives neither more nor less than asked', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.uint8Array({ maxLength: 5000 }),
          fc.array(fc.constantFrom(0, 1, 7), { maxLength: 20000 }).map((bytes) => Uint8Array.from(bytes)),
        ),
        fc.constantFrom(0, 1, 6, 9),
        (bytes, level) => {
          const packed = new Uint8Array(deflateSync(bytes, { level }));
          expect(inflated(packed, bytes.length)).toEqual(bytes);
          expect(inflated(packed, bytes.length + 1)).toBeUndefined();
          if (bytes.length > 0) expect(inflated(packed, bytes.length - 1)).toBeUndefined();
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe('hostile bytes are refused, or read, and nothing else', () => {
  const use = (bytes: Uint8Array) => {
    const grid = readGrid(bytes);
    if (isRefusal(grid)) return expect(grid.refused.length).toBeGreaterThan(20);
    for (const [φ, λ] of [
      [42, -8],
      [42.2, -7.7],
      [0, 0],
    ] as const) {
      const answer = undulationIn(grid, at(φ, λ));
      if (!isRefusal(answer)) expect(Math.abs(answer.height)).toBeLessThan(400);
    }
    return undefined;
  };

  it.each(FORMS)('$form, cut anywhere', ({ bytes }) => {
    for (let length = 0; length < bytes.length; length += Math.max(1, Math.floor(bytes.length / 300)))
      use(bytes.slice(0, length));
  });

  it.each(FORMS)('$form, with some bytes changed', ({ bytes }) => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.integer({ min: 0, max: 255 })), {
          minLength: 1,
          maxLength: 8,
        }),
        (changes) => {
          const changed = bytes.slice();
          for (const [place, byte] of changes) changed[place] = byte;
          use(changed);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('any bytes at all', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 2000 }), (bytes) => void use(bytes)),
      { numRuns: 500 },
    );
  });

  it('a header that claims billions of nodes, other byte orders, numbers that are none', () => {
    const claim = gtxOf(parabola);
    new DataView(claim.buffer).setInt32(32, 0x7fffffff);
    expect(refusal(readGrid(claim))).toMatch(/beyond a pole|cut short/);
    expect(refusal(readGrid(gtxOf(parabola, true)))).toMatch(/byte order|rows and/);
    expect(refusal(readGrid(gtxOf({ ...parabola, south: NaN })))).toMatch(/does not lie on the earth/);
    const isg = new TextDecoder().decode(isgOf(parabola, '2.0'));
    const huge = isg.replace('nrows          = 9', 'nrows          = 900000000');
    expect(refusal(readGrid(new TextEncoder().encode(huge)))).toMatch(/do not fit one another/);
    expect(refusal(readGrid(new TextEncoder().encode(isg.replace(/42\.\d+ /, 'x '))))).toMatch(
      /not a number|values/,
    );
    expect(refusal(readGrid(tiffOf(parabola, { type: 'HORIZONTAL_OFFSET' })))).toMatch(/HORIZONTAL_OFFSET/);
  });
});

function answered<Answer>(answer: Answer | Refusal): Answer {
  if (isRefusal(answer)) throw new Error(answer.refused);
  return answer as Answer;
}

function refusal(answer: GeoidGrid | Refusal): string {
  return isRefusal(answer) ? answer.refused : '';
}
