/**
 * Geoid grids in GTX form: a header of 40 bytes and one number of four bytes a node, both big-endian.
 *
 * Source: the format of NOAA's VDatum software, as PROJ's manual describes it: south, west and the two steps in degrees,
 * rows, columns; rows from the south; no data is −88.8888.
 */
import { refuse, type Refusal } from '../../quantities/refusal.ts';
import { plausible, type GeoidGrid } from './geoid-grid.ts';

/** The nodes are read where they lie, as they are asked for. */
export function readGtx(bytes: Uint8Array): GeoidGrid | Refusal {
  if (bytes.length < HEADER) return refuse('The GTX file is shorter than its own header of 40 bytes.');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const [south = NaN, west = NaN, latitudeStep = NaN, longitudeStep = NaN] = [0, 8, 16, 24].map((at) =>
    view.getFloat64(at),
  );
  const rows = view.getInt32(32);
  const columns = view.getInt32(36);
  const node = (row: number, column: number) => {
    const value = view.getFloat32(HEADER + 4 * (row * columns + column));
    return isData(value) ? value : undefined;
  };
  const grid = plausible({ format: 'GTX', south, west, latitudeStep, longitudeStep, rows, columns, node });
  const claimed = HEADER + 4 * rows * columns;
  if (!('refused' in grid) && claimed !== bytes.length)
    return refuse(
      `The GTX file has ${bytes.length} bytes where its header of ${rows} rows and ${columns} columns asks for ${claimed}; it is cut short or not a GTX file.`,
    );
  return grid;
}

const HEADER = 40;

/** No data is −88.8888 in four bytes; no geoid is more than 200 m from the ellipsoid. */
const isData = (value: number) => Math.abs(value + 88.8888) > 1e-4 && Math.abs(value) < 200;
