/**
 * Where the antenna stood: the median of single positions over the session.
 *
 * Errors of broadcast orbits, clocks and the ionosphere last for hours, so that the median of a day is hardly better
 * than that of ten minutes; its uncertainty is not divided by the root of the number of epochs.
 */
import { metres } from '../quantities/brands.ts';
import { fixOf, type Fix, type Sky } from './spp.ts';
import { placeAt } from './place.ts';
import type { Place } from './sight.ts';
import type { Stood, Systems } from './testimony.ts';

/** Epochs that are solved, spread evenly; more say nothing more. */
const SAMPLE = 960;

export interface Sample {
  readonly stood: Stood;
  readonly place: Place;
  readonly systems: Systems;
}

export function standing(sky: Sky): Sample | null {
  const { times } = sky.raw;
  const stride = Math.max(1, Math.ceil(times.length / SAMPLE));
  const fixes: Fix[] = [];
  let start: Place | null = null;
  for (let epoch = 0; epoch < times.length; epoch += stride) {
    const fix: Fix | null =
      fixOf(sky, epoch, start, true) ??
      fixOf(sky, epoch, start, false) ??
      (start ? fixOf(sky, epoch, null, false) : null);
    if (!fix) continue;
    start = fix.place;
    fixes.push(fix);
  }
  const dual = fixes.filter((fix) => fix.dual);
  const kept = dual.length * 2 >= fixes.length ? dual : fixes;
  if (kept.length === 0) return null;
  const middle = (pick: (fix: Fix) => number) => median(kept.map(pick));
  const place = placeAt(
    middle((fix) => fix.place.x),
    middle((fix) => fix.place.y),
    middle((fix) => fix.place.z),
  );
  const galileo = middle((fix) => fix.galileo) >= 1;
  const gps = middle((fix) => fix.gps) >= 1;
  const systems = galileo && gps ? 'GPS and Galileo' : galileo ? 'Galileo' : 'GPS';
  const day = times[Math.floor(times.length / 2)] ?? 0;
  return {
    place,
    systems,
    stood: {
      position: { x: metres(place.x), y: metres(place.y), z: metres(place.z) },
      epoch: 1970 + day / (365.2425 * 86_400),
      ...halfWidths(kept, place, systems),
      solvedEpochs: kept.length,
      satellites: middle((fix) => fix.satellites),
    },
  };
}

/** 95 % on the days of permanent stations that were studied (3 m with both systems, 5 m with GPS alone), or the scatter where it is larger. */
function halfWidths(fixes: readonly Fix[], { x, y, z, axes }: Place, systems: Systems) {
  const apart = fixes.map(({ place }) => {
    const d = [place.x - x, place.y - y, place.z - z];
    const [east = 0, north = 0, up = 0] = [0, 3, 6].map(
      (row) =>
        (axes[row] ?? 0) * (d[0] ?? 0) +
        (axes[row + 1] ?? 0) * (d[1] ?? 0) +
        (axes[row + 2] ?? 0) * (d[2] ?? 0),
    );
    return { level: Math.hypot(east, north), up: Math.abs(up), all: Math.hypot(...d) };
  });
  const scatter = (pick: (one: (typeof apart)[number]) => number) => quantile(apart.map(pick), 0.95);
  const alone = systems === 'GPS and Galileo' ? 1 : 5 / 3;
  return {
    horizontal: metres(
      Math.max(
        1.8 * alone,
        scatter(({ level }) => level),
      ),
    ),
    vertical: metres(
      Math.max(
        2.5 * alone,
        scatter(({ up }) => up),
      ),
    ),
    spatial: metres(
      Math.max(
        3 * alone,
        scatter(({ all }) => all),
      ),
    ),
  };
}

export const median = (values: readonly number[]) => quantile(values, 0.5);
export function quantile(values: readonly number[], share: number): number {
  const sorted = Float64Array.from(values).sort();
  if (sorted.length === 0) return 0;
  const at = share * (sorted.length - 1);
  const below = sorted[Math.floor(at)] ?? 0;
  return below + (at - Math.floor(at)) * ((sorted[Math.ceil(at)] ?? below) - below);
}
