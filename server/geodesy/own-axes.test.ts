import { expect, it } from 'vitest';
import { gridEast, gridNorth } from '../quantities/brands.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { fromOwnAxes, inOwnAxes } from './own-axes.ts';
import { projectedSystemOf } from './registry/registry.ts';

it.each([
  // EPSG dataset: Lo grids count west, then south; Krovak south, then west; New York in US survey feet.
  ['EPSG:2048', 'west', 'south', -1000, -2000],
  ['EPSG:5513', 'south', 'west', -2000, -1000],
  ['EPSG:2193', 'north', 'east', 2000, 1000],
  ['EPSG:2263', 'east', 'north', (1000 * 3937) / 1200, (2000 * 3937) / 1200],
] as const)('%s counts %s, then %s', (code, firstAxis, secondAxis, first, second) => {
  const system = projectedSystemOf(code);
  if (isRefusal(system)) throw new Error(system.refused);
  expect(system.axes).toEqual({ first: firstAxis, second: secondAxis });
  const grid = { east: gridEast(1000), north: gridNorth(2000) };
  const own = inOwnAxes(system, grid);
  expect(own.first).toBeCloseTo(first, 8);
  expect(own.second).toBeCloseTo(second, 8);
  const back = fromOwnAxes(system, own);
  expect(back.east).toBeCloseTo(1000, 9);
  expect(back.north).toBeCloseTo(2000, 9);
});
