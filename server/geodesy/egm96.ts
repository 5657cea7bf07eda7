/**
 * The EGM96 geoid, built in: good to a decimetre or so as a grid and to about a metre on the ground, for catching
 * blunders and not for heights to be relied on.
 *
 * Source: Lemoine et al. (1998), The Development of the Joint NASA GSFC and NIMA Geopotential Model EGM96,
 * NASA/TP-1998-206861; NGA's grid of heights at every 15′, here rounded to whole centimetres. Between the nodes by
 * cubic convolution over 4 × 4 of them (cubic.ts), which agrees with NGA's own local spline to 0.05 m.
 *
 * Packing: rows from the south, columns from 180° west; each height is kept as its difference from a prediction by its
 * western and southern neighbours, folded to a count and Golomb–Rice coded with a running mean (R. F. Rice, 1979, JPL
 * Publication 79-22).
 */
import { metres, type Geographic, type Metres } from '../quantities/brands.ts';
import { bytesOfBase64 } from './base64.ts';
import { cubicBetween } from './cubic.ts';
import { EGM96_BASE64 } from './egm96-grid.ts';

/** N, the height of the EGM96 geoid above the WGS 84 ellipsoid. Decodes the grid at its first use. */
export function undulationEgm96({ latitude, longitude }: Geographic): Metres {
  grid ??= decoded(bytesOfBase64(EGM96_BASE64));
  const row = (latitude + 90) * 4;
  const column = (longitude + 180) * 4;
  const south = Math.min(Math.floor(row), ROWS - 2);
  const west = Math.floor(column);
  const across = (r: number) =>
    cubicBetween(
      node(grid, r, west - 1),
      node(grid, r, west),
      node(grid, r, west + 1),
      node(grid, r, west + 2),
      column - west,
    );
  const N = cubicBetween(across(south - 1), across(south), across(south + 1), across(south + 2), row - south);
  return metres(N / 100);
}

const ROWS = 721;
const COLUMNS = 1440;
let grid: Int16Array | undefined;

/** Beyond a pole the rows come back on the other side of the earth. */
function node(heights: Int16Array | undefined, row: number, column: number): number {
  if (row < 0) return node(heights, -row, column + COLUMNS / 2);
  if (row >= ROWS) return node(heights, 2 * (ROWS - 1) - row, column + COLUMNS / 2);
  return heights?.[row * COLUMNS + (((column % COLUMNS) + COLUMNS) % COLUMNS)] ?? NaN;
}

function decoded(bytes: Uint8Array): Int16Array {
  const heights = new Int16Array(ROWS * COLUMNS);
  let place = 0;
  const bit = () => {
    const value = ((bytes[place >> 3] ?? 0) >> (7 - (place & 7))) & 1;
    place++;
    return value;
  };
  let mean = 128;
  for (let row = 0; row < ROWS; row++)
    for (let column = 0; column < COLUMNS; column++) {
      let low = 0;
      while (128 << low <= mean * 3) low++;
      let folded = 0;
      while (bit() === 1) folded++;
      for (let count = low; count > 0; count--) folded = (folded << 1) | bit();
      mean += folded - (mean >> 4);
      const error = folded & 1 ? -((folded + 1) >> 1) : folded >> 1;
      heights[row * COLUMNS + column] = predicted(heights, row, column) + error;
    }
  return heights;
}

/** By least squares over the whole grid, in 64ths, so that it is exact in whole numbers. */
function predicted(heights: Int16Array, row: number, column: number): number {
  const here = row * COLUMNS + column;
  const at = (place: number) => heights[place] ?? 0;
  if (row < 2 || column < 3 || column > COLUMNS - 3)
    return column > 0 ? at(here - 1) : row > 0 ? at(here - COLUMNS) : 0;
  const south = here - COLUMNS;
  const farSouth = south - COLUMNS;
  const sum =
    127 * at(here - 1) -
    85 * at(here - 2) +
    19 * at(here - 3) -
    65 * at(south) -
    4 * at(south - 1) +
    14 * at(south - 2) +
    68 * at(south + 1) -
    7 * at(south + 2) +
    40 * at(farSouth) -
    13 * at(farSouth - 1) -
    30 * at(farSouth + 1);
  return (sum + 32) >> 6;
}
