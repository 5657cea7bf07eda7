/** Takes from each value the median of its neighbours: a slow drift goes, a jump of one pair stays. */

/** In place, over `components` interleaved; NaN stays and counts for nothing. */
export function withoutDrift(values: Float64Array, components: number, reach = 20): void {
  const rows = values.length / components;
  const window: number[] = [];
  const column = new Float64Array(rows);
  for (let component = 0; component < components; component += 1) {
    for (let row = 0; row < rows; row += 1) column[row] = values[components * row + component] ?? NaN;
    window.length = 0;
    for (let row = 0; row < Math.min(reach, rows); row += 1) insert(window, column[row] ?? NaN);
    for (let row = 0; row < rows; row += 1) {
      if (row + reach < rows) insert(window, column[row + reach] ?? NaN);
      if (row - reach - 1 >= 0) remove(window, column[row - reach - 1] ?? NaN);
      const middle = window[window.length >> 1] ?? 0;
      values[components * row + component] = (column[row] ?? NaN) - middle;
    }
  }
}

function place(sorted: readonly number[], value: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? 0) < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
function insert(sorted: number[], value: number) {
  if (!Number.isNaN(value)) sorted.splice(place(sorted, value), 0, value);
}
function remove(sorted: number[], value: number) {
  if (!Number.isNaN(value)) sorted.splice(place(sorted, value), 1);
}
