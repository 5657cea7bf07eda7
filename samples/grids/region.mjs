/** Writes region.gtx, an invented geoid for the invented harbour: a smooth surface that says 54.917 m at PM-14. */
import { writeFileSync } from 'node:fs';

const origin = { latitude: 41.152273, longitude: -8.623964 };
const south = 41;
const west = -8.8;
const step = 0.05;
const rows = 9;
const columns = 9;

/** Metres above the ellipsoid; it falls by two millimetres from PM-14 to PM-09. */
function separation(latitude, longitude) {
  const north = latitude - origin.latitude;
  const east = longitude - origin.longitude;
  return 54.917 + 0.6 * north - 0.4326 * east + 0.35 * north * north - 0.2 * east * north;
}

/** GTX: south, west and the two steps as float64, the counts as int32, then float32 rows from the south, big-endian. */
const grid = new DataView(new ArrayBuffer(40 + 4 * rows * columns));
[south, west, step, step].forEach((value, index) => grid.setFloat64(8 * index, value));
grid.setInt32(32, rows);
grid.setInt32(36, columns);
for (let row = 0; row < rows; row++)
  for (let column = 0; column < columns; column++)
    grid.setFloat32(40 + 4 * (row * columns + column), separation(south + row * step, west + column * step));
writeFileSync(new URL('region.gtx', import.meta.url), new Uint8Array(grid.buffer));
