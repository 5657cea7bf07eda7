/** Keeps labels apart: along a line, in rows above one another, and on a plane around what they name. */
export interface Wish {
  /** Where the middle wants to be. */
  readonly at: number;
  readonly size: number;
}

/** Middles as near to their wishes as they can be without overlap, in the order of the wishes given. */
export function spread(wishes: readonly Wish[], from: number, to: number): number[] {
  const order = wishes.map((wish, index) => ({ ...wish, index })).sort((one, other) => one.at - other.at);
  const placed: number[] = wishes.map(({ at }) => at);
  let edge = from;
  for (const { at, size, index } of order) {
    const middle = Math.max(at, edge + size / 2);
    placed[index] = middle;
    edge = middle + size / 2;
  }
  edge = Math.max(to, from + order.reduce((sum, { size }) => sum + size, 0));
  for (const { size, index } of order.reverse()) {
    const middle = Math.min(placed[index] ?? 0, edge - size / 2);
    placed[index] = middle;
    edge = middle - size / 2;
  }
  return placed;
}

/**
 * The row of each label, counted away from what it names, in the order of the labels given.
 * An earlier label lies beyond every later one that it overlaps, so that no leader crosses a label.
 */
export function rowsOf(
  labels: readonly { readonly x: number; readonly from: number; readonly to: number }[],
): number[] {
  const order = labels
    .map((label, index) => ({ ...label, index }))
    .sort((one, other) => other.x - one.x || other.index - one.index);
  const rows: number[] = labels.map(() => 0);
  // For each pixel along the line, the rows that are taken there.
  const skyline = new Map<number, number>();
  for (const { from, to, index } of order) {
    const pixels = Array.from({ length: Math.ceil(to) - Math.floor(from) }, (_, at) => Math.floor(from) + at);
    const row = pixels.reduce((highest, pixel) => Math.max(highest, skyline.get(pixel) ?? 0), 0);
    for (const pixel of pixels) skyline.set(pixel, row + 1);
    rows[index] = row;
  }
  return rows;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Boxes that are taken, kept by where they lie: a label asks those near it and no others. */
export interface Taken {
  add(box: Box): void;
  touches(box: Box): boolean;
}

export function takenBoxes(from: readonly Box[] = []): Taken {
  const cells = new Map<string, Box[]>();
  const taken: Taken = {
    add: (box) => {
      for (const cell of cellsOf(box)) {
        const boxes = cells.get(cell);
        if (boxes) boxes.push(box);
        else cells.set(cell, [box]);
      }
    },
    touches: (box) =>
      cellsOf(box).some((cell) => cells.get(cell)?.some((other) => overlaps(box, other)) ?? false),
  };
  for (const box of from) taken.add(box);
  return taken;
}

/** Pixels; about the width of a label. */
const CELL = 64;

function cellsOf({ x, y, width, height }: Box): string[] {
  const cells: string[] = [];
  for (let right = Math.floor(x / CELL); right * CELL <= x + width; right++)
    for (let down = Math.floor(y / CELL); down * CELL <= y + height; down++) cells.push(`${right} ${down}`);
  return cells;
}

/**
 * A place for a label of this size near an anchor: the first around it that touches nothing, else null.
 * @param clear how far from the anchor the nearest place may be
 */
export function freePlace(
  anchor: { readonly x: number; readonly y: number },
  size: { readonly width: number; readonly height: number },
  clear: number,
  taken: Taken,
  within: Box,
): Box | null {
  for (const distance of [clear, clear + 12, clear + 28, clear + 48]) {
    for (const [right, down] of AROUND) {
      const box = {
        x: anchor.x + right * distance + ((right - 1) / 2) * size.width,
        y: anchor.y + down * distance + ((down - 1) / 2) * size.height,
        ...size,
      };
      if (inside(box, within) && !taken.touches(box)) return box;
    }
  }
  return null;
}

/** Right, left, above and below, then the corners. */
const AROUND: readonly (readonly [number, number])[] = [
  [1, 0],
  [-1, 0],
  [0, -1],
  [0, 1],
  [0.8, -0.8],
  [-0.8, -0.8],
  [0.8, 0.8],
  [-0.8, 0.8],
];

const inside = (box: Box, outer: Box) =>
  box.x >= outer.x &&
  box.y >= outer.y &&
  box.x + box.width <= outer.x + outer.width &&
  box.y + box.height <= outer.y + outer.height;

const overlaps = (one: Box, other: Box) =>
  one.x < other.x + other.width &&
  other.x < one.x + one.width &&
  one.y < other.y + other.height &&
  other.y < one.y + one.height;
