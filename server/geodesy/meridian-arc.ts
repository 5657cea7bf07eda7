/**
 * The length of the meridian from the equator to a latitude.
 *
 * Source: F. R. Helmert (1880), Die mathematischen und physikalischen Theorieen der höheren Geodäsie, part 1, in powers
 * of the third flattening n, to n⁵: below 0.001 mm on any ellipsoid of the earth.
 */
import { toRadians } from './angles.ts';
import type { Ellipsoid } from './ellipsoid.ts';
import { metres, type Latitude, type Metres } from '../quantities/brands.ts';

export function meridianArc({ semiMajor: a, flattening: f }: Ellipsoid, latitude: Latitude): Metres {
  const φ = toRadians(latitude);
  const n = f / (2 - f);
  const n2 = n * n;
  const series =
    (1 + n2 / 4 + (n2 * n2) / 64) * φ -
    (3 / 2) * n * (1 - n2 / 8 - (n2 * n2) / 64) * Math.sin(2 * φ) +
    (15 / 16) * n2 * (1 - n2 / 4) * Math.sin(4 * φ) -
    (35 / 48) * n2 * n * (1 - (5 / 16) * n2) * Math.sin(6 * φ) +
    (315 / 512) * n2 * n2 * Math.sin(8 * φ) -
    (693 / 1280) * n2 * n2 * n * Math.sin(10 * φ);
  return metres((a / (1 + n)) * series);
}
