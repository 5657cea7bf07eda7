/**
 * A grid of heights between two surfaces, and a value between its nodes: never one outside it or beside a hole.
 *
 * Bilinear interpolation, or cubic convolution over 4 × 4 nodes (cubic.ts) where all sixteen are there; the answer says
 * which it was.
 */
import { metres, type Geographic, type Metres } from '../../quantities/brands.ts';
import { refuse, type Refusal } from '../../quantities/refusal.ts';
import { cubicBetween } from '../cubic.ts';

export interface GeoidGrid {
  /** For example `GTX`. */
  readonly format: string;
  /** The southernmost and westernmost node, in degrees. */
  readonly south: number;
  readonly west: number;
  /** Between nodes, in degrees, both positive. */
  readonly latitudeStep: number;
  readonly longitudeStep: number;
  readonly rows: number;
  readonly columns: number;
  /** In metres; rows count from the south, columns from the west; undefined where there is no data. */
  readonly node: (row: number, column: number) => number | undefined;
}

export type Interpolation = 'bilinear' | 'bicubic';

export interface Undulation {
  /** The height of the upper surface above the lower, for a geoid N above the ellipsoid. */
  readonly height: Metres;
  /** Bilinear where bicubic was asked but a node of the outer ring is missing. */
  readonly by: Interpolation;
}

export function undulationIn(
  grid: GeoidGrid,
  position: Geographic,
  by: Interpolation = 'bicubic',
): Undulation | Refusal {
  const place = placeIn(grid, position);
  if (place === undefined) return refuse(outside(grid, position));
  const { row, column, up, right } = place;
  if (by === 'bicubic') {
    const height = cubic(grid, row, column, up, right);
    if (height !== undefined) return { height: metres(height), by };
  }
  const height = linear(grid, row, column, up, right);
  if (height === undefined) return refuse(`The ${grid.format} grid has no data at ${written(position)}.`);
  return { height: metres(height), by: 'bilinear' };
}

/** The grid if its numbers can be those of a part of the earth, else why not. */
export function plausible(grid: GeoidGrid): GeoidGrid | Refusal {
  const { format, south, west, latitudeStep, longitudeStep, rows, columns } = grid;
  const whole = Number.isSafeInteger(rows) && Number.isSafeInteger(columns) && rows >= 2 && columns >= 2;
  if (!whole) return refuse(`The ${format} grid does not have at least two rows and two columns.`);
  if (!(latitudeStep > 1e-6 && latitudeStep <= 90 && longitudeStep > 1e-6 && longitudeStep <= 180))
    return refuse(
      `The ${format} grid’s spacing is not that of a grid on the earth; its byte order may be wrong.`,
    );
  const north = south + (rows - 1) * latitudeStep;
  const width = (columns - 1) * longitudeStep;
  if (!(south >= -90.001 && north <= 90.001 && west >= -360.001 && west <= 360.001 && width <= 360.001))
    return refuse(
      `The ${format} grid does not lie on the earth: its corners are beyond a pole or a full turn.`,
    );
  return grid;
}

interface Place {
  readonly row: number;
  readonly column: number;
  /** From 0 to 1 within the cell. */
  readonly up: number;
  readonly right: number;
}

/** A position on the grid's very edge, to rounding, is in it. */
const EDGE = 1e-9;

function placeIn(grid: GeoidGrid, { latitude, longitude }: Geographic): Place | undefined {
  const y = (latitude - grid.south) / grid.latitudeStep;
  const full = 360 / grid.longitudeStep;
  const turned = ((longitude - grid.west) % 360) + ((longitude - grid.west) % 360 < -EDGE ? 360 : 0);
  const x = turned / grid.longitudeStep;
  const lastColumn = goesRound(grid) ? full : grid.columns - 1;
  const inside = y >= -EDGE && y <= grid.rows - 1 + EDGE && x >= -EDGE && x <= lastColumn + EDGE;
  if (!inside) return undefined;
  const row = Math.max(0, Math.min(Math.floor(y), grid.rows - 2));
  const column = Math.max(0, Math.min(Math.floor(x), Math.ceil(lastColumn) - 1));
  return { row, column, up: clamp(y - row), right: clamp(x - column) };
}

const clamp = (share: number) => Math.min(1, Math.max(0, share));

/** Whether the grid closes on itself around the earth, with or without repeating its first column. */
const goesRound = ({ columns, longitudeStep }: GeoidGrid) => columns * longitudeStep >= 360 - 1e-6;

function nodeAt(grid: GeoidGrid, row: number, column: number): number | undefined {
  if (row < 0 || row >= grid.rows) return undefined;
  if (!goesRound(grid)) return column < 0 || column >= grid.columns ? undefined : grid.node(row, column);
  const round = Math.round(360 / grid.longitudeStep);
  return grid.node(row, ((column % round) + round) % round);
}

function linear(grid: GeoidGrid, row: number, column: number, up: number, right: number): number | undefined {
  let sum = 0;
  for (const { row: r, column: c, weight } of [
    { row, column, weight: (1 - up) * (1 - right) },
    { row, column: column + 1, weight: (1 - up) * right },
    { row: row + 1, column, weight: up * (1 - right) },
    { row: row + 1, column: column + 1, weight: up * right },
  ]) {
    // A node without weight may be missing: the position is on the edge of its cell.
    if (weight === 0) continue;
    const value = nodeAt(grid, r, c);
    if (value === undefined) return undefined;
    sum += weight * value;
  }
  return sum;
}

function cubic(grid: GeoidGrid, row: number, column: number, up: number, right: number): number | undefined {
  const across = [-1, 0, 1, 2].map((step) => {
    const [a, b, c, d] = [-1, 0, 1, 2].map((aside) => nodeAt(grid, row + step, column + aside));
    if (a === undefined || b === undefined || c === undefined || d === undefined) return undefined;
    return cubicBetween(a, b, c, d, right);
  });
  const [a, b, c, d] = across;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return undefined;
  return cubicBetween(a, b, c, d, up);
}

function outside(grid: GeoidGrid, position: Geographic): string {
  const north = grid.south + (grid.rows - 1) * grid.latitudeStep;
  const east = grid.west + (grid.columns - 1) * grid.longitudeStep;
  return `${written(position)} is outside the ${grid.format} grid, which covers latitude ${grid.south.toFixed(2)}° to ${north.toFixed(2)}° and longitude ${grid.west.toFixed(2)}° to ${east.toFixed(2)}°.`;
}

const written = ({ latitude, longitude }: Geographic) =>
  `${Math.abs(latitude).toFixed(5)}° ${latitude < 0 ? 'S' : 'N'}, ${Math.abs(longitude).toFixed(5)}° ${longitude < 0 ? 'W' : 'E'}`;
