/** A made-up geoid over a working area, and the same surface as the bytes of a GTX grid. */
import type { Random } from './random.ts';
import type { Graticule } from './world.ts';

/** The height of the geoid above the ellipsoid, metres. */
export type GeoidModel = (place: Graticule) => number;

/** A surface bilinear in latitude and longitude, so that bilinear interpolation in any grid of it adds nothing. */
export interface BilinearGeoid {
  readonly origin: Graticule;
  /** Metres at the origin. */
  readonly separation: number;
  /** Metres for each degree. */
  readonly northward: number;
  readonly eastward: number;
  /** Metres for each degree of both. */
  readonly twist: number;
}

/** A controller that is led beyond its grid takes nothing off: the surface is one of a region, not of the earth. */
export function geoidModel(surface: BilinearGeoid): GeoidModel {
  return ({ latitude, longitude }) => {
    const north = latitude - surface.origin.latitude;
    const east = longitude - surface.origin.longitude;
    if (Math.abs(north) > REACH || Math.abs(east) > REACH) return 0;
    return (
      surface.separation + surface.northward * north + surface.eastward * east + surface.twist * north * east
    );
  };
}

/** Degrees around the origin that the grid covers; nobody works farther than half of one and 20 km away. */
const REACH = 1.5;

/** Between −60 and 80 m, sloping by up to some 20 mm a kilometre. */
export function drawGeoid(random: Random, near: Graticule): BilinearGeoid {
  return {
    origin: { latitude: Math.round(near.latitude), longitude: Math.round(near.longitude) },
    separation: random.uniform(-60, 80),
    northward: random.uniform(-2, 2),
    eastward: random.uniform(-1, 1),
    twist: random.uniform(-0.2, 0.2),
  };
}

/** The region as a GTX grid: 40-byte big-endian header (south, west, steps as float64, rows, columns as int32), float32 rows from the south. */
export function geoidAsGtx(surface: BilinearGeoid): Uint8Array {
  const step = 0.25;
  const count = 1 + (2 * REACH) / step;
  const south = surface.origin.latitude - REACH;
  const west = surface.origin.longitude - REACH;
  const view = new DataView(new ArrayBuffer(40 + 4 * count * count));
  [south, west, step, step].forEach((value, index) => {
    view.setFloat64(8 * index, value);
  });
  view.setInt32(32, count);
  view.setInt32(36, count);
  const model = geoidModel(surface);
  for (let row = 0; row < count; row++) {
    for (let column = 0; column < count; column++) {
      const value = model({ latitude: south + row * step, longitude: west + column * step });
      view.setFloat32(40 + 4 * (row * count + column), value);
    }
  }
  return new Uint8Array(view.buffer);
}
