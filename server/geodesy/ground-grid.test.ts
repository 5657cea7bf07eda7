import { expect, it } from 'vitest';
import { gridEast, gridNorth, metres } from '../quantities/brands.ts';
import { gridFromGround, groundDistanceError, groundFromGrid } from './ground-grid.ts';

const grid = (east: number, north: number) => ({ east: gridEast(east), north: gridNorth(north) });
const site = {
  about: grid(300_000, 5_800_000),
  combinedFactor: 0.9996,
  shift: { east: metres(-290_000), north: metres(-5_790_000) },
};

it('keeps the stated point but for the shift, and stretches from it', () => {
  expect(groundFromGrid(site, site.about)).toEqual(grid(10_000, 10_000));
  const end = groundFromGrid(site, grid(300_999.6, 5_800_000));
  // 999.6 m on the grid is 1 km on the ground.
  expect(end.east).toBeCloseTo(11_000, 8);
});

it('comes back where it began', () => {
  const back = gridFromGround(site, groundFromGrid(site, grid(312_345.678, 5_812_345.678)));
  expect(back.east).toBeCloseTo(312_345.678, 8);
  expect(back.north).toBeCloseTo(5_812_345.678, 8);
});

it('is out by 10 mm in a kilometre where the true factor is 10 ppm larger', () => {
  expect(groundDistanceError(site, 0.9996 * 1.00001, metres(1000))).toBeCloseTo(0.01, 9);
});
