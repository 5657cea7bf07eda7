/** Writes small geoid grids in each of the forms that are read, with the test's own numbers in them. */
import { deflateSync } from 'node:zlib';

export interface TestGrid {
  readonly south: number;
  readonly west: number;
  readonly step: number;
  readonly rows: number;
  readonly columns: number;
  readonly height: (latitude: number, longitude: number) => number;
}

/** Row by row from the south. */
const nodesOf = ({ south, west, step, rows, columns, height }: TestGrid): readonly number[] =>
  Array.from({ length: rows * columns }, (_, place) =>
    Math.fround(height(south + Math.floor(place / columns) * step, west + (place % columns) * step)),
  );

export function gtxOf(grid: TestGrid, little = false): Uint8Array {
  const file = new DataView(new ArrayBuffer(40 + 4 * grid.rows * grid.columns));
  [grid.south, grid.west, grid.step, grid.step].forEach((value, place) =>
    file.setFloat64(8 * place, value, little),
  );
  file.setInt32(32, grid.rows, little);
  file.setInt32(36, grid.columns, little);
  nodesOf(grid).forEach((value, place) => file.setFloat32(40 + 4 * place, value, little));
  return new Uint8Array(file.buffer);
}

export function isgOf(grid: TestGrid, version: '1.0' | '2.0'): Uint8Array {
  const { south, west, step, rows, columns } = grid;
  const edge = version === '1.0' ? step / 2 : 0;
  const nodes = nodesOf(grid);
  const lines = Array.from({ length: rows }, (_, up) =>
    nodes
      .slice((rows - 1 - up) * columns, (rows - up) * columns)
      .map((value) => value.toFixed(6))
      .join(' '),
  );
  return new TextEncoder().encode(
    [
      'begin_of_head ================================================',
      'model name     : test',
      'data type      : geoid',
      'data units     : meters',
      'data format    : grid',
      'data ordering  : N-to-S, W-to-E',
      'coord type     : geodetic',
      'coord units    : deg',
      `lat min        = ${south - edge}`,
      `lat max        = ${south + (rows - 1) * step + edge}`,
      `lon min        = ${west - edge}`,
      `lon max        = ${west + (columns - 1) * step + edge}`,
      `delta lat      = ${step}`,
      `delta lon      = ${step}`,
      `nrows          = ${rows}`,
      `ncols          = ${columns}`,
      'nodata         = -9999.0000',
      `ISG format     = ${version}`,
      'end_of_head ==================================================',
      ...lines,
      '',
    ].join('\n'),
  );
}

export interface TiffOptions {
  readonly big?: boolean;
  readonly little?: boolean;
  readonly deflated?: boolean;
  readonly predictor?: 1 | 2 | 3;
  readonly tile?: number;
  readonly point?: boolean;
  /** Whole numbers of two bytes with a scale and an offset instead of four-byte ones. */
  readonly scaled?: { readonly scale: number; readonly offset: number };
  readonly type?: string;
}

interface Tag {
  readonly tag: number;
  readonly type: number;
  readonly values: readonly number[];
}

export function tiffOf(grid: TestGrid, options: TiffOptions = {}): Uint8Array {
  const {
    big = false,
    little = true,
    deflated = false,
    predictor = 1,
    tile,
    point = false,
    scaled,
  } = options;
  const { rows, columns, step, south, west } = grid;
  const nodes = nodesOf(grid);
  const width = tile ?? columns;
  const high = tile ?? 3;
  const blocks: Uint8Array[] = [];
  for (let top = 0; top < rows; top += high)
    for (let left = 0; left < columns; left += width) {
      const blockRows = tile === undefined ? Math.min(high, rows - top) : high;
      const values = Array.from({ length: blockRows * width }, (_, place) => {
        const row = top + Math.floor(place / width);
        const column = left + (place % width);
        return row < rows && column < columns ? (nodes[(rows - 1 - row) * columns + column] ?? 0) : 0;
      });
      const raw = encoded(values, width, predictor, little, scaled);
      blocks.push(deflated ? new Uint8Array(deflateSync(raw)) : raw);
    }
  const half = point ? 0 : 0.5;
  const north = south + (rows - 1) * step;
  const items = [
    `<Item name="TYPE">${options.type ?? 'VERTICAL_OFFSET_GEOGRAPHIC_TO_VERTICAL'}</Item>`,
    '<Item name="DESCRIPTION" sample="0" role="description">geoid_undulation</Item>',
    ...(scaled
      ? [
          `<Item name="OFFSET" sample="0" role="offset">${scaled.offset}</Item>`,
          `<Item name="SCALE" sample="0" role="scale">${scaled.scale}</Item>`,
        ]
      : []),
  ];
  const ascii = (text: string) => [...`${text}\0`].map((letter) => letter.charCodeAt(0));
  const start = big ? 16 : 8;
  const places: number[] = [];
  let at = start;
  for (const block of blocks) {
    places.push(at);
    at += block.length + (block.length % 2);
  }
  const tags: Tag[] = [
    { tag: 256, type: 3, values: [columns] },
    { tag: 257, type: 3, values: [rows] },
    { tag: 258, type: 3, values: [scaled ? 16 : 32] },
    { tag: 259, type: 3, values: [deflated ? 8 : 1] },
    { tag: 262, type: 3, values: [1] },
    ...(tile === undefined ? [{ tag: 273, type: 4, values: places }] : []),
    { tag: 277, type: 3, values: [1] },
    ...(tile === undefined
      ? [
          { tag: 278, type: 3, values: [high] },
          { tag: 279, type: 4, values: blocks.map(({ length }) => length) },
        ]
      : []),
    { tag: 284, type: 3, values: [1] },
    { tag: 317, type: 3, values: [predictor] },
    ...(tile === undefined
      ? []
      : [
          { tag: 322, type: 3, values: [width] },
          { tag: 323, type: 3, values: [high] },
          { tag: 324, type: 4, values: places },
          { tag: 325, type: 4, values: blocks.map(({ length }) => length) },
        ]),
    { tag: 339, type: 3, values: [scaled ? 2 : 3] },
    { tag: 33550, type: 12, values: [step, step, 0] },
    { tag: 33922, type: 12, values: [0, 0, 0, west - half * step, north + half * step, 0] },
    {
      tag: 34735,
      type: 3,
      values: [1, 1, 0, 3, 1024, 0, 1, 2, 1025, 0, 1, point ? 2 : 1, 2048, 0, 1, 4326],
    },
    { tag: 42112, type: 2, values: ascii(`<GDALMetadata>${items.join('')}</GDALMetadata>`) },
    { tag: 42113, type: 2, values: ascii('-9999') },
  ];
  return assembled(blocks, places, at, tags, big, little);
}

function encoded(
  values: readonly number[],
  width: number,
  predictor: number,
  little: boolean,
  scaled: TiffOptions['scaled'],
): Uint8Array {
  const size = scaled ? 2 : 4;
  const view = new DataView(new ArrayBuffer(values.length * size));
  const whole = (value: number) => Math.round((value - (scaled?.offset ?? 0)) / (scaled?.scale ?? 1));
  values.forEach((value, place) => {
    if (scaled) view.setInt16(2 * place, whole(value), little);
    else view.setFloat32(4 * place, value, predictor === 3 ? false : little);
  });
  const bytes = new Uint8Array(view.buffer);
  if (predictor === 2)
    for (let row = 0; row < values.length; row += width)
      for (let place = row + width - 1; place > row; place--)
        if (scaled)
          view.setInt16(
            2 * place,
            view.getInt16(2 * place, little) - view.getInt16(2 * place - 2, little),
            little,
          );
        else
          view.setInt32(
            4 * place,
            view.getInt32(4 * place, little) - view.getInt32(4 * place - 4, little),
            little,
          );
  if (predictor !== 3) return bytes;
  const out = new Uint8Array(bytes.length);
  for (let row = 0; row < values.length; row += width) {
    for (let place = 0; place < width; place++)
      for (let byte = 0; byte < 4; byte++)
        out[4 * row + byte * width + place] = bytes[4 * (row + place) + byte] ?? 0;
    for (let at = 4 * (row + width) - 1; at > 4 * row; at--) out[at] = (out[at] ?? 0) - (out[at - 1] ?? 0);
  }
  return out;
}

function assembled(
  blocks: readonly Uint8Array[],
  places: readonly number[],
  directoryAt: number,
  tags: readonly Tag[],
  big: boolean,
  little: boolean,
): Uint8Array {
  const sizes: Readonly<Record<number, number>> = { 2: 1, 3: 2, 4: 4, 12: 8 };
  const [head, entry, wide] = big ? [8, 20, 8] : [2, 12, 4];
  const beyondAt = directoryAt + head + tags.length * entry + wide;
  const lengths = tags.map(({ type, values }) => (sizes[type] ?? 0) * values.length);
  const file = new DataView(new ArrayBuffer(beyondAt + lengths.reduce((sum, length) => sum + length + 8, 0)));
  const whole = (at: number, value: number) =>
    big ? file.setBigUint64(at, BigInt(value), little) : file.setUint32(at, value, little);
  file.setUint16(0, little ? 0x4949 : 0x4d4d);
  file.setUint16(2, big ? 43 : 42, little);
  if (big) file.setUint16(4, 8, little);
  whole(big ? 8 : 4, directoryAt);
  blocks.forEach((block, place) => new Uint8Array(file.buffer).set(block, places[place]));
  if (big) whole(directoryAt, tags.length);
  else file.setUint16(directoryAt, tags.length, little);
  let beyond = beyondAt;
  tags.forEach(({ tag, type, values }, place) => {
    const at = directoryAt + head + place * entry;
    file.setUint16(at, tag, little);
    file.setUint16(at + 2, type, little);
    whole(at + 4, values.length);
    const length = lengths[place] ?? 0;
    const where = length <= wide ? at + 4 + wide : beyond;
    if (length > wide) {
      whole(at + 4 + wide, beyond);
      beyond += length + (8 - (length % 8));
    }
    values.forEach((value, step) => {
      const to = where + step * (sizes[type] ?? 0);
      if (type === 2) file.setUint8(to, value);
      else if (type === 3) file.setUint16(to, value, little);
      else if (type === 4) file.setUint32(to, value, little);
      else file.setFloat64(to, value, little);
    });
  });
  return new Uint8Array(file.buffer);
}
