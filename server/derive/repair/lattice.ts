/**
 * Shifts of very many points: worked out in full at the corners of small boxes, and between them in proportion.
 *
 * Over a box of size d the shift of an error v bends away from proportion by about v/8 · (d/R)²: below a thousandth of a
 * millimetre for 100 m and boxes of half a kilometre. A box is built when a second point falls into it.
 */
import { isRefusal } from '../../quantities/refusal.ts';
import type { Shift, ShiftAt } from './shift.ts';
import type { PointsForm } from '../points/plan.ts';

/** Half a kilometre in metres, and near enough in degrees. */
const BOX: Readonly<Record<PointsForm, { readonly plane: number; readonly height: number }>> = {
  grid: { plane: 500, height: 500 },
  geographic: { plane: 0.005, height: 500 },
  geocentric: { plane: 500, height: 500 },
};
/** Enough for a day's work; beyond it the boxes are built anew, so that memory stays bounded. */
const MOST_BOXES = 4096;
/** Near the poles degrees of longitude are no measure of anything. */
const FARTHEST_LATITUDE = 80;

export function latticed(form: PointsForm, exact: ShiftAt): ShiftAt {
  const { plane, height } = BOX[form];
  const boxes = new Map<number, Box | 'seen' | 'unfit'>();
  // Neighbouring rows mostly lie in one box.
  let last: { readonly key: number; readonly box: Box } | undefined;
  return (first, second, third) => {
    if (form === 'geographic' && Math.abs(first) > FARTHEST_LATITUDE) return exact(first, second, third);
    const i = Math.floor(first / plane);
    const j = Math.floor(second / plane);
    const k = third === undefined ? NO_HEIGHT : Math.floor(third / height);
    if (Math.abs(i) > MOST || Math.abs(j) > MOST || Math.abs(k) > NO_HEIGHT)
      return exact(first, second, third);
    const key = ((i + MOST) * 2 * MOST + (j + MOST)) * 2 * (NO_HEIGHT + 1) + k + NO_HEIGHT;
    let box = last?.key === key ? last.box : boxes.get(key);
    if (box === 'seen') {
      box = builtBox(
        exact,
        i * plane,
        j * plane,
        third === undefined ? undefined : k * height,
        plane,
        height,
      );
      boxes.set(key, box);
    }
    if (box === undefined) {
      if (boxes.size >= MOST_BOXES) boxes.clear();
      boxes.set(key, 'seen');
    }
    if (typeof box !== 'object') return exact(first, second, third);
    if (last?.key !== key) last = { key, box };
    const w = third === undefined ? 0 : third / height - k;
    return between(box, first / plane - i, second / plane - j, w);
  };
}
const MOST = 100_000;
const NO_HEIGHT = 1000;

/** The shifts at the eight corners, three numbers each; second fastest, then first, then the height. */
type Box = Float64Array;

function builtBox(
  exact: ShiftAt,
  first: number,
  second: number,
  third: number | undefined,
  plane: number,
  height: number,
): Box | 'unfit' {
  const corners: number[] = [];
  for (const c of [0, 1])
    for (const a of [0, 1])
      for (const b of [0, 1]) {
        const shift = exact(
          first + a * plane,
          second + b * plane,
          third === undefined ? undefined : third + c * height,
        );
        if (isRefusal(shift)) return 'unfit';
        corners.push(shift.first, shift.second, shift.third);
      }
  return Float64Array.from(corners);
}

function between(box: Box, u: number, v: number, w: number): Shift {
  let first = 0;
  let second = 0;
  let third = 0;
  for (let corner = 0; corner < 8; corner++) {
    const weight = (corner & 2 ? u : 1 - u) * (corner & 1 ? v : 1 - v) * (corner & 4 ? w : 1 - w);
    first += weight * (box[3 * corner] ?? NaN);
    second += weight * (box[3 * corner + 1] ?? NaN);
    third += weight * (box[3 * corner + 2] ?? NaN);
  }
  return { first, second, third };
}
