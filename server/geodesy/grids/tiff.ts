/**
 * The part of TIFF that geodetic grids use: the tags of each image, and numbers out of strips or tiles, each inflated when
 * it is first asked for.
 *
 * Source: TIFF revision 6.0 (1992); BigTIFF; Adobe Photoshop TIFF Technical Notes (2005) for deflate and the
 * floating-point predictor. Our own reader since it must answer at once; libraries for it answer later, by promises.
 */
import { refuse, type Refusal } from '../../quantities/refusal.ts';
import { inflated } from './inflate.ts';

export interface TiffImage {
  readonly width: number;
  readonly height: number;
  readonly samples: number;
  readonly numbers: (tag: number) => readonly number[];
  readonly text: (tag: number) => string | undefined;
  /** NaN where the file is broken. */
  readonly value: (row: number, column: number, sample: number) => number;
}

export function readTiff(bytes: Uint8Array): readonly TiffImage[] | Refusal {
  const file = openFile(bytes);
  if (file === undefined) return refuse('The file does not begin as a TIFF file does.');
  const images: TiffImage[] = [];
  const seen = new Set<number>();
  let at = file.first;
  while (at !== 0) {
    if (seen.has(at) || images.length >= MOST_IMAGES)
      return refuse('The TIFF file’s list of images has no end.');
    seen.add(at);
    const directory = readDirectory(file, at);
    if (directory === undefined) return refuse('The TIFF file is cut short within the list of its images.');
    const image = imageOf(file, directory.entries);
    if ('refused' in image) return image;
    images.push(image);
    at = directory.next;
  }
  return images.length > 0 ? images : refuse('The TIFF file holds no image.');
}

const MOST_IMAGES = 200;
const MOST_ENTRIES = 1000;
/** In bytes, once inflated. */
const LARGEST_BLOCK = 1 << 26;

interface TiffFile {
  readonly bytes: Uint8Array;
  readonly view: DataView;
  readonly little: boolean;
  readonly big: boolean;
  readonly first: number;
}

function openFile(bytes: Uint8Array): TiffFile | undefined {
  if (bytes.length < 16) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const order = view.getUint16(0);
  if (order !== 0x4949 && order !== 0x4d4d) return undefined;
  const little = order === 0x4949;
  const version = view.getUint16(2, little);
  if (version === 42) return { bytes, view, little, big: false, first: view.getUint32(4, little) };
  if (version === 43) return { bytes, view, little, big: true, first: Number(view.getBigUint64(8, little)) };
  return undefined;
}

interface Entry {
  readonly type: number;
  readonly count: number;
  /** Where its values stand. */
  readonly at: number;
}

const SIZES: Readonly<Record<number, number>> = {
  1: 1,
  2: 1,
  3: 2,
  4: 4,
  5: 8,
  6: 1,
  7: 1,
  8: 2,
  9: 4,
  10: 8,
  11: 4,
  12: 8,
  13: 4,
  16: 8,
  17: 8,
  18: 8,
};

function readDirectory({ view, little, big }: TiffFile, at: number) {
  const inside = (from: number, length: number) => from >= 0 && from + length <= view.byteLength;
  if (!Number.isSafeInteger(at) || !inside(at, 8)) return undefined;
  const count = big ? Number(view.getBigUint64(at, little)) : view.getUint16(at, little);
  const [start, size, wide] = big ? [at + 8, 20, 8] : [at + 2, 12, 4];
  if (count > MOST_ENTRIES || !inside(start, count * size + wide)) return undefined;
  const entries = new Map<number, Entry>();
  const whole = (from: number) =>
    big ? Number(view.getBigUint64(from, little)) : view.getUint32(from, little);
  for (let place = 0; place < count; place++) {
    const from = start + place * size;
    const type = view.getUint16(from + 2, little);
    const values = whole(from + 4);
    const length = (SIZES[type] ?? 0) * values;
    const offset = from + 4 + wide;
    const where = length <= wide ? offset : whole(offset);
    if (length > 0 && inside(where, length))
      entries.set(view.getUint16(from, little), { type, count: values, at: where });
  }
  return { entries, next: whole(start + count * size) };
}

function numberAt({ view, little }: TiffFile, { type, at }: Entry, place: number): number {
  const from = at + place * (SIZES[type] ?? 0);
  switch (type) {
    case 1:
    case 7:
      return view.getUint8(from);
    case 3:
      return view.getUint16(from, little);
    case 4:
    case 13:
      return view.getUint32(from, little);
    case 8:
      return view.getInt16(from, little);
    case 9:
      return view.getInt32(from, little);
    case 11:
      return view.getFloat32(from, little);
    case 12:
      return view.getFloat64(from, little);
    case 16:
    case 18:
      return Number(view.getBigUint64(from, little));
    default:
      return NaN;
  }
}

function imageOf(file: TiffFile, entries: ReadonlyMap<number, Entry>): TiffImage | Refusal {
  const numbers = (tag: number): readonly number[] => {
    const entry = entries.get(tag);
    if (entry === undefined || entry.count > 4096) return [];
    return Array.from({ length: entry.count }, (_, place) => numberAt(file, entry, place));
  };
  const first = (tag: number, otherwise: number) => numbers(tag)[0] ?? otherwise;
  const width = first(256, 0);
  const height = first(257, 0);
  const samples = first(277, 1);
  const layout = layoutOf(entries, { width, height, samples, first });
  if ('refused' in layout) return layout;
  return {
    width,
    height,
    samples,
    numbers,
    text: (tag) => {
      const entry = entries.get(tag);
      if (entry?.type !== 2) return undefined;
      return latin(file.bytes.subarray(entry.at, entry.at + Math.min(entry.count, 1 << 20))).replace(
        /\0+$/,
        '',
      );
    },
    value: valueReader(file, layout),
  };
}

interface Layout {
  /** Rows of the whole image: the last strip may hold fewer than the others. */
  readonly height: number;
  readonly tiled: boolean;
  readonly blockWidth: number;
  readonly blockHeight: number;
  readonly blocksAcross: number;
  readonly blocksPerPlane: number;
  readonly samplesInBlock: number;
  readonly bytesPerSample: number;
  readonly sampleFormat: number;
  readonly predictor: number;
  readonly deflated: boolean;
  readonly offsets: Entry;
  readonly counts: Entry;
}

interface Shape {
  readonly width: number;
  readonly height: number;
  readonly samples: number;
  readonly first: (tag: number, otherwise: number) => number;
}

function layoutOf(
  entries: ReadonlyMap<number, Entry>,
  { width, height, samples, first }: Shape,
): Layout | Refusal {
  if (!(width >= 1 && height >= 1 && width <= 1e6 && height <= 1e6 && samples >= 1 && samples <= 16))
    return refuse(`The TIFF image’s size, ${width} × ${height} × ${samples}, is not that of a grid.`);
  const compression = first(259, 1);
  if (![1, 8, 32946].includes(compression))
    return refuse(
      `The TIFF image is compressed by method ${compression}; only none and deflate are read here.`,
    );
  const bits = first(258, 1);
  const sampleFormat = first(339, 1);
  const known = sampleFormat === 3 ? [32, 64].includes(bits) : [8, 16, 32].includes(bits) && sampleFormat < 3;
  if (!known) return refuse(`The TIFF image has numbers of ${bits} bits in a form that is not read here.`);
  const predictor = first(317, 1);
  const predictable =
    predictor === 1 || (predictor === 2 && bits < 64) || (predictor === 3 && sampleFormat === 3);
  if (!predictable) return refuse(`The TIFF image’s predictor ${predictor} is not read here.`);
  const tiled = entries.has(322);
  const blockWidth = tiled ? first(322, 0) : width;
  const blockHeight = tiled ? first(323, 0) : Math.min(first(278, height), height);
  const samplesInBlock = first(284, 1) === 2 ? 1 : samples;
  const blockBytes = (blockWidth * blockHeight * samplesInBlock * bits) / 8;
  if (!(blockWidth >= 1 && blockHeight >= 1 && blockBytes <= LARGEST_BLOCK))
    return refuse('The TIFF image’s strips or tiles are of a size that no grid has.');
  const offsets = entries.get(tiled ? 324 : 273);
  const counts = entries.get(tiled ? 325 : 279);
  const blocksAcross = Math.ceil(width / blockWidth);
  const blocksPerPlane = blocksAcross * Math.ceil(height / blockHeight);
  const blocks = blocksPerPlane * (samplesInBlock === samples ? 1 : samples);
  if (offsets === undefined || counts === undefined || offsets.count < blocks || counts.count < blocks)
    return refuse('The TIFF image does not say where all of its strips or tiles are; it is cut short.');
  return {
    height,
    tiled,
    blockWidth,
    blockHeight,
    blocksAcross,
    blocksPerPlane,
    samplesInBlock,
    sampleFormat,
    predictor,
    offsets,
    counts,
    bytesPerSample: bits / 8,
    deflated: compression !== 1,
  };
}

/** Blocks that are kept once inflated; neighbouring positions want the same ones. */
const MOST_KEPT = 64;

function valueReader(file: TiffFile, layout: Layout): TiffImage['value'] {
  const kept = new Map<number, DataView | undefined>();
  const blockOf = (place: number) => {
    if (kept.has(place)) return kept.get(place);
    if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value ?? -1);
    const block = readBlock(file, layout, place);
    kept.set(place, block);
    return block;
  };
  const { blockWidth, blockHeight, blocksAcross, blocksPerPlane, samplesInBlock, bytesPerSample } = layout;
  return (row, column, sample) => {
    const plane = samplesInBlock === 1 ? sample * blocksPerPlane : 0;
    const across = Math.floor(column / blockWidth);
    const block = blockOf(plane + Math.floor(row / blockHeight) * blocksAcross + across);
    const within = (row % blockHeight) * blockWidth + (column % blockWidth);
    const at = (within * samplesInBlock + (samplesInBlock === 1 ? 0 : sample)) * bytesPerSample;
    if (block === undefined || at + bytesPerSample > block.byteLength) return NaN;
    return sampleAt(block, at, layout, layout.predictor === 3 ? false : file.little);
  };
}

function sampleAt(
  block: DataView,
  at: number,
  { bytesPerSample, sampleFormat }: Layout,
  little: boolean,
): number {
  if (sampleFormat === 3)
    return bytesPerSample === 4 ? block.getFloat32(at, little) : block.getFloat64(at, little);
  if (bytesPerSample === 1) return sampleFormat === 2 ? block.getInt8(at) : block.getUint8(at);
  if (bytesPerSample === 2)
    return sampleFormat === 2 ? block.getInt16(at, little) : block.getUint16(at, little);
  return sampleFormat === 2 ? block.getInt32(at, little) : block.getUint32(at, little);
}

function readBlock(file: TiffFile, layout: Layout, place: number): DataView | undefined {
  const offset = numberAt(file, layout.offsets, place);
  const count = numberAt(file, layout.counts, place);
  if (!(offset >= 0 && count > 0 && offset + count <= file.bytes.length)) return undefined;
  const raw = file.bytes.subarray(offset, offset + count);
  const size = layout.blockWidth * layout.blockHeight * layout.samplesInBlock * layout.bytesPerSample;
  if (!layout.deflated && layout.predictor === 1) return viewOf(raw);
  // Deflate makes at most 1032 bytes of one, so that a short stream cannot ask for a large buffer.
  if (layout.deflated && size > 1032 * count + 1024) return undefined;
  const plain = layout.deflated ? inflatedBlock(raw, size, layout, place) : raw.slice();
  if (plain === undefined) return undefined;
  if (layout.predictor === 2) undoDifferences(viewOf(plain), layout, file.little);
  return viewOf(layout.predictor === 3 ? undoFloatingPoint(plain, layout) : plain);
}

/** The last strip holds only the rows that are left; some writers fill it up all the same. */
function inflatedBlock(raw: Uint8Array, size: number, layout: Layout, place: number): Uint8Array | undefined {
  const firstRow = Math.floor((place % layout.blocksPerPlane) / layout.blocksAcross) * layout.blockHeight;
  const rows = layout.tiled ? layout.blockHeight : Math.min(layout.blockHeight, layout.height - firstRow);
  return inflated(raw, (size / layout.blockHeight) * rows) ?? inflated(raw, size);
}

const viewOf = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

function undoDifferences(block: DataView, layout: Layout, little: boolean) {
  const { blockWidth, samplesInBlock, bytesPerSample } = layout;
  const rowBytes = blockWidth * samplesInBlock * bytesPerSample;
  const back = samplesInBlock * bytesPerSample;
  for (let row = 0; row + rowBytes <= block.byteLength; row += rowBytes)
    for (let at = row + back; at < row + rowBytes; at += bytesPerSample) {
      if (bytesPerSample === 1) block.setUint8(at, block.getUint8(at) + block.getUint8(at - back));
      else if (bytesPerSample === 2)
        block.setUint16(at, block.getUint16(at, little) + block.getUint16(at - back, little), little);
      else block.setUint32(at, block.getUint32(at, little) + block.getUint32(at - back, little), little);
    }
}

/** Each row's bytes stand by significance, highest first, as differences; the result is big-endian. */
function undoFloatingPoint(
  bytes: Uint8Array,
  { blockWidth, samplesInBlock, bytesPerSample }: Layout,
): Uint8Array {
  const perRow = blockWidth * samplesInBlock;
  const rowBytes = perRow * bytesPerSample;
  const out = new Uint8Array(bytes.length);
  for (let row = 0; row + rowBytes <= bytes.length; row += rowBytes) {
    for (let at = samplesInBlock; at < rowBytes; at++)
      bytes[row + at] = (bytes[row + at] ?? 0) + (bytes[row + at - samplesInBlock] ?? 0);
    for (let place = 0; place < perRow; place++)
      for (let byte = 0; byte < bytesPerSample; byte++)
        out[row + place * bytesPerSample + byte] = bytes[row + byte * perRow + place] ?? 0;
  }
  return out;
}

const latin = (bytes: Uint8Array) => {
  let text = '';
  for (let at = 0; at < bytes.length; at += 4096)
    text += String.fromCharCode(...bytes.subarray(at, at + 4096));
  return text;
};
