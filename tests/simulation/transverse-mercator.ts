/** The simulator's own transverse Mercator, so that it can write grid coordinates without the program's projections. */
import type { GridPosition, GridSystem } from './controller.ts';
import type { Ellipsoid, Graticule } from './world.ts';
import { DEGREE, WGS84 } from './world.ts';

export interface TransverseMercator {
  readonly ellipsoid: Ellipsoid;
  /** Degrees. */
  readonly originLatitude: number;
  readonly centralMeridian: number;
  readonly scale: number;
  /** Metres. */
  readonly falseEasting: number;
  readonly falseNorthing: number;
}

/**
 * Krüger's series in the third flattening to the sixth order.
 * C. F. F. Karney, "Transverse Mercator with an accuracy of a few nanometers", Journal of Geodesy 85 (2011),
 * equations 7–11, 35, 36 and the coefficients A, α, β.
 */
export function transverseMercator(name: string, definition: TransverseMercator): GridSystem {
  const { ellipsoid, scale, falseEasting, falseNorthing, centralMeridian } = definition;
  const n = ellipsoid.flattening / (2 - ellipsoid.flattening);
  const e = Math.sqrt(ellipsoid.flattening * (2 - ellipsoid.flattening));
  const A = (ellipsoid.semiMajor / (1 + n)) * (1 + n ** 2 / 4 + n ** 4 / 64 + n ** 6 / 256);
  const α = forwardCoefficients(n);
  const β = inverseCoefficients(n);
  const ξ0 = toPlane(definition.originLatitude, 0, e, α).ξ;
  return {
    name,
    ellipsoid,
    forward: ({ latitude, longitude }: Graticule): GridPosition => {
      const { ξ, η } = toPlane(latitude, wrapped(longitude - centralMeridian), e, α);
      return { east: falseEasting + scale * A * η, north: falseNorthing + scale * A * (ξ - ξ0) };
    },
    inverse: ({ east, north }: GridPosition): Graticule => {
      const ξ = (north - falseNorthing) / (scale * A) + ξ0;
      const η = (east - falseEasting) / (scale * A);
      let [ξp, ηp] = [ξ, η];
      β.forEach((coefficient, index) => {
        const k = 2 * (index + 1);
        ξp -= coefficient * Math.sin(k * ξ) * Math.cosh(k * η);
        ηp -= coefficient * Math.cos(k * ξ) * Math.sinh(k * η);
      });
      const τp = Math.sin(ξp) / Math.hypot(Math.sinh(ηp), Math.cos(ξp));
      return {
        latitude: Math.atan(geographicTangent(τp, e)) / DEGREE,
        longitude: wrapped(centralMeridian + Math.atan2(Math.sinh(ηp), Math.cos(ξp)) / DEGREE),
      };
    },
  };
}

/** WGS 84 / UTM: zones 1 to 60; EPSG 326zz in the north, 327zz in the south. */
export function utm(zone: number, south: boolean): GridSystem {
  return transverseMercator(`EPSG:${String((south ? 32700 : 32600) + zone)}`, {
    ellipsoid: WGS84,
    originLatitude: 0,
    centralMeridian: zone * 6 - 183,
    scale: 0.9996,
    falseEasting: 500_000,
    falseNorthing: south ? 10_000_000 : 0,
  });
}

export function utmZone(place: Graticule): number {
  return Math.min(60, Math.floor((place.longitude + 180) / 6) + 1);
}

function wrapped(degrees: number): number {
  return degrees > 180 ? degrees - 360 : degrees <= -180 ? degrees + 360 : degrees;
}

function toPlane(
  latitude: number,
  longitude: number,
  e: number,
  α: readonly number[],
): { readonly ξ: number; readonly η: number } {
  const τ = Math.tan(latitude * DEGREE);
  const λ = longitude * DEGREE;
  const τp = conformalTangent(τ, e);
  const ξp = Math.atan2(τp, Math.cos(λ));
  const ηp = Math.asinh(Math.sin(λ) / Math.hypot(τp, Math.cos(λ)));
  let [ξ, η] = [ξp, ηp];
  α.forEach((coefficient, index) => {
    const k = 2 * (index + 1);
    ξ += coefficient * Math.sin(k * ξp) * Math.cosh(k * ηp);
    η += coefficient * Math.cos(k * ξp) * Math.sinh(k * ηp);
  });
  return { ξ, η };
}

/** Tangent of the conformal latitude from that of the geographic one (equations 7–9). */
function conformalTangent(τ: number, e: number): number {
  const σ = Math.sinh(e * Math.atanh((e * τ) / Math.hypot(1, τ)));
  return τ * Math.hypot(1, σ) - σ * Math.hypot(1, τ);
}

/** The reverse, by Newton's method (equations 19–21). */
function geographicTangent(τp: number, e: number): number {
  let τ = τp;
  for (let pass = 0; pass < 5; pass++) {
    const found = conformalTangent(τ, e);
    τ +=
      (((τp - found) / Math.hypot(1, found)) * (1 + (1 - e * e) * τ * τ)) / ((1 - e * e) * Math.hypot(1, τ));
  }
  return τ;
}

function forwardCoefficients(n: number): readonly number[] {
  return [
    n / 2 -
      (2 / 3) * n ** 2 +
      (5 / 16) * n ** 3 +
      (41 / 180) * n ** 4 -
      (127 / 288) * n ** 5 +
      (7891 / 37800) * n ** 6,
    (13 / 48) * n ** 2 -
      (3 / 5) * n ** 3 +
      (557 / 1440) * n ** 4 +
      (281 / 630) * n ** 5 -
      (1983433 / 1935360) * n ** 6,
    (61 / 240) * n ** 3 - (103 / 140) * n ** 4 + (15061 / 26880) * n ** 5 + (167603 / 181440) * n ** 6,
    (49561 / 161280) * n ** 4 - (179 / 168) * n ** 5 + (6601661 / 7257600) * n ** 6,
    (34729 / 80640) * n ** 5 - (3418889 / 1995840) * n ** 6,
    (212378941 / 319334400) * n ** 6,
  ];
}

function inverseCoefficients(n: number): readonly number[] {
  return [
    n / 2 -
      (2 / 3) * n ** 2 +
      (37 / 96) * n ** 3 -
      n ** 4 / 360 -
      (81 / 512) * n ** 5 +
      (96199 / 604800) * n ** 6,
    n ** 2 / 48 + n ** 3 / 15 - (437 / 1440) * n ** 4 + (46 / 105) * n ** 5 - (1118711 / 3870720) * n ** 6,
    (17 / 480) * n ** 3 - (37 / 840) * n ** 4 - (209 / 4480) * n ** 5 + (5569 / 90720) * n ** 6,
    (4397 / 161280) * n ** 4 - (11 / 504) * n ** 5 - (830251 / 7257600) * n ** 6,
    (4583 / 161280) * n ** 5 - (108847 / 3991680) * n ** 6,
    (20648693 / 638668800) * n ** 6,
  ];
}
