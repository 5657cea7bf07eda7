/** Builds egm96-grid.ts from a GTX file of the EGM96 15′ geoid: node server/geodesy/build-egm96.mjs egm96_15.gtx */
import { readFileSync, writeFileSync } from 'node:fs';

const ROWS = 721;
const COLUMNS = 1440;
/** Of a block, as egm96.ts has them. */
const HIGH = 24;
const WIDE = 180;
const source = process.argv[2] ?? '/usr/share/proj/egm96_15.gtx';
const file = readFileSync(source);
if (file.readInt32BE(32) !== ROWS || file.readInt32BE(36) !== COLUMNS) throw new Error('not the 15′ grid');

const heights = Array.from({ length: ROWS * COLUMNS }, (_, at) =>
  Math.round(file.readFloatBE(40 + 4 * at) * 100),
);
const blocks = [];
for (let south = 0; south < ROWS; south += HIGH)
  for (let west = 0; west < COLUMNS; west += WIDE)
    blocks.push(
      encode(
        Array.from({ length: Math.min(HIGH, ROWS - south) }, (_, row) =>
          heights.slice((south + row) * COLUMNS + west, (south + row) * COLUMNS + west + WIDE),
        ).flat(),
      ),
    );
writeFileSync(
  new URL('egm96-grid.ts', import.meta.url),
  `/**
 * The EGM96 geoid at every 15′, in whole centimetres, in blocks packed as egm96.ts says; built by build-egm96.mjs.
 *
 * Source: NGA (formerly NIMA), WGS 84 EGM96 15-minute geoid height file, in the public domain (Lemoine et al., 1998,
 * NASA/TP-1998-206861).
 */
export const EGM96_BLOCKS = [
${blocks.map((bytes) => `  '${bytes.toString('base64')}',\n`).join('')}];
`,
);
console.log(`${blocks.reduce((sum, bytes) => sum + bytes.length, 0)} bytes in ${blocks.length} blocks`);

/** The prediction and the coding that egm96.ts undoes; each block stands alone. */
function encode(values) {
  const out = [];
  let held = 0;
  let count = 0;
  const bit = (value) => {
    held = (held << 1) | value;
    if (++count === 8) {
      out.push(held);
      held = 0;
      count = 0;
    }
  };
  let mean = 128;
  for (let row = 0; row < values.length / WIDE; row++)
    for (let column = 0; column < WIDE; column++) {
      const error = values[row * WIDE + column] - predicted(values, row, column);
      const folded = error >= 0 ? 2 * error : -2 * error - 1;
      const low = riceBits(mean);
      for (let ones = folded >> low; ones > 0; ones--) bit(1);
      bit(0);
      for (let place = low - 1; place >= 0; place--) bit((folded >> place) & 1);
      mean += folded - (mean >> 4);
    }
  while (count !== 0) bit(0);
  return Buffer.from(out);
}

function riceBits(mean) {
  let bits = 0;
  while (64 << bits <= mean * 3) bits++;
  return Math.max(0, bits - 1);
}

function predicted(values, row, column) {
  const here = row * WIDE + column;
  const south = here - WIDE;
  if (row === 0)
    return column > 1 ? 2 * values[here - 1] - values[here - 2] : column > 0 ? values[here - 1] : 0;
  if (column === 0) return row > 1 ? 2 * values[south] - values[south - WIDE] : values[south];
  if (row === 1 || column < 3 || column > WIDE - 3)
    return values[here - 1] + values[south] - values[south - 1];
  const farSouth = south - WIDE;
  const sum =
    127 * values[here - 1] -
    85 * values[here - 2] +
    19 * values[here - 3] -
    65 * values[south] -
    4 * values[south - 1] +
    14 * values[south - 2] +
    68 * values[south + 1] -
    7 * values[south + 2] +
    40 * values[farSouth] -
    13 * values[farSouth - 1] -
    30 * values[farSouth + 1];
  return (sum + 32) >> 6;
}
