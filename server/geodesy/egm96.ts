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
 * Publication 79-22). Every block of 24 rows and 180 columns begins anew, so that a place costs
 * four of them at most.
 */
import { metres, type Geographic, type Metres } from '../quantities/brands.ts';
import { bytesOfBase64 } from './base64.ts';
import { cubicBetween } from './cubic.ts';
import { EGM96_BLOCKS } from './egm96-grid.ts';

/** N, the height of the EGM96 geoid above the WGS 84 ellipsoid. Decodes what lies around the place at its first use. */
export function undulationEgm96({ latitude, longitude }: Geographic): Metres {
  const row = (latitude + 90) * 4;
  const column = (longitude + 180) * 4;
  const south = Math.min(Math.floor(row), ROWS - 2);
  const west = Math.floor(column);
  const across = (r: number) =>
    cubicBetween(node(r, west - 1), node(r, west), node(r, west + 1), node(r, west + 2), column - west);
  const N = cubicBetween(across(south - 1), across(south), across(south + 1), across(south + 2), row - south);
  return metres(N / 100);
}

const ROWS = 721;
const COLUMNS = 1440;
/** Of a block, whose columns divide those of the grid. */
const HIGH = 24;
const WIDE = 180;
const blocks: Int16Array[] = [];

/** Beyond a pole the rows come back on the other side of the earth. */
function node(row: number, column: number): number {
  if (row < 0) return node(-row, column + COLUMNS / 2);
  if (row >= ROWS) return node(2 * (ROWS - 1) - row, column + COLUMNS / 2);
  const east = ((column % COLUMNS) + COLUMNS) % COLUMNS;
  const block = Math.floor(row / HIGH) * (COLUMNS / WIDE) + Math.floor(east / WIDE);
  const heights = (blocks[block] ??= decoded(block));
  return heights[(row % HIGH) * WIDE + (east % WIDE)] ?? NaN;
}

function decoded(block: number): Int16Array {
  const bytes = bytesOfBase64(EGM96_BLOCKS[block] ?? '');
  const rows = Math.min(HIGH, ROWS - Math.floor(block / (COLUMNS / WIDE)) * HIGH);
  const heights = new Int16Array(rows * WIDE);
  let place = 0;
  const bit = () => {
    const value = ((bytes[place >> 3] ?? 0) >> (7 - (place & 7))) & 1;
    place++;
    return value;
  };
  let mean = 128;
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < WIDE; column++) {
      let low = 0;
      while (128 << low <= mean * 3) low++;
      let folded = 0;
      while (bit() === 1) folded++;
      for (let count = low; count > 0; count--) folded = (folded << 1) | bit();
      mean += folded - (mean >> 4);
      const error = folded & 1 ? -((folded + 1) >> 1) : folded >> 1;
      heights[row * WIDE + column] = predicted(heights, row, column) + error;
    }
  return heights;
}

/** By least squares over the whole grid, in 64ths, so that it is exact in whole numbers; more simply at a block's borders. */
function predicted(heights: Int16Array, row: number, column: number): number {
  const here = row * WIDE + column;
  const at = (place: number) => heights[place] ?? 0;
  const south = here - WIDE;
  if (row === 0) return column > 1 ? 2 * at(here - 1) - at(here - 2) : column > 0 ? at(here - 1) : 0;
  if (column === 0) return row > 1 ? 2 * at(south) - at(south - WIDE) : at(south);
  if (row === 1 || column < 3 || column > WIDE - 3) return at(here - 1) + at(south) - at(south - 1);
  const farSouth = south - WIDE;
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
