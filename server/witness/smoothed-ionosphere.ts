/** The change of the ionosphere's delay from pair to pair, smoothed along each satellite's arc, added to the first frequency. */
import type { Differences } from './differences.ts';

/** Pairs before and after; noise of two phases is divided by the root of eleven. */
const REACH = 5;

/** First-frequency differences with the smoothed ionosphere; as they are where there is no second frequency. */
export function withSmoothedIonosphere(differences: Differences): Float64Array {
  const { first, ionosphere, satellites, starts } = differences;
  const corrected = first.slice();
  for (const arc of arcs(satellites, starts, ionosphere)) {
    const sums = new Float64Array(arc.length + 1);
    for (let index = 0; index < arc.length; index += 1)
      sums[index + 1] = (sums[index] ?? 0) + (ionosphere[arc[index] ?? 0] ?? 0);
    for (let index = 0; index < arc.length; index += 1) {
      const from = Math.max(0, index - REACH);
      const to = Math.min(arc.length, index + REACH + 1);
      const row = arc[index] ?? 0;
      corrected[row] = (first[row] ?? 0) + ((sums[to] ?? 0) - (sums[from] ?? 0)) / (to - from);
    }
  }
  return corrected;
}

/** Rows of one satellite in unbroken neighbouring pairs. */
function* arcs(
  satellites: Uint8Array,
  starts: Uint32Array,
  ionosphere: Float64Array,
): Generator<readonly number[]> {
  const open = new Map<number, { pair: number; rows: number[] }>();
  for (let pair = 0; pair + 1 < starts.length; pair += 1) {
    for (let row = starts[pair] ?? 0; row < (starts[pair + 1] ?? 0); row += 1) {
      const satellite = satellites[row] ?? 0;
      if (Number.isNaN(ionosphere[row] ?? Number.NaN)) continue;
      const arc = open.get(satellite);
      if (arc && arc.pair === pair - 1) {
        arc.rows.push(row);
        arc.pair = pair;
        continue;
      }
      if (arc) yield arc.rows;
      open.set(satellite, { pair, rows: [row] });
    }
  }
  for (const { rows } of open.values()) yield rows;
}
