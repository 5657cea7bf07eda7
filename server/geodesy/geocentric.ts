/**
 * Geodetic to geocentric coordinates and back, at any height, at the poles and at the earth's centre.
 *
 * Forward: IOGP publication 373-07-2, §4.1.1. Reverse: the closed solution of H. Vermeille (2002), Journal of
 * Geodesy 76, in the well conditioned form of C. F. F. Karney (2011), Geodesics on an ellipsoid of revolution,
 * arXiv:1102.1215, appendix B.
 */
import {
  ellipsoidalHeight,
  latitude,
  longitude,
  metres,
  type Geocentric,
  type Geodetic,
} from '../quantities/brands.ts';
import { toDegrees, toRadians } from './angles.ts';
import { eccentricitySquared, type Ellipsoid } from './ellipsoid.ts';

export function geocentricOf(ellipsoid: Ellipsoid, position: Geodetic): Geocentric {
  const φ = toRadians(position.latitude);
  const λ = toRadians(position.longitude);
  const h = position.height;
  const e2 = eccentricitySquared(ellipsoid);
  const ν = ellipsoid.semiMajor / Math.sqrt(1 - e2 * Math.sin(φ) ** 2);
  return {
    x: metres((ν + h) * Math.cos(φ) * Math.cos(λ)),
    y: metres((ν + h) * Math.cos(φ) * Math.sin(λ)),
    z: metres((ν * (1 - e2) + h) * Math.sin(φ)),
  };
}

/** On the earth's axis, where any longitude is right, the longitude is 0°; at its very centre the latitude is 90° north. */
export function geodeticOf(ellipsoid: Ellipsoid, { x: X, y: Y, z: Z }: Geocentric): Geodetic {
  const R = Math.hypot(X, Y);
  const λ = Math.atan2(Y, X);
  const { sine, cosine, height } = meridianSolution(ellipsoid, R, Z);
  return {
    latitude: latitude(toDegrees(Math.atan2(sine, cosine))),
    longitude: longitude(R === 0 ? 0 : toDegrees(λ)),
    height: ellipsoidalHeight(height),
  };
}

/** Below this, far less than a nanometre from the equator's plane, the general formula would divide nothing by nothing. */
const VANISHING = 1e-100;

interface MeridianPoint {
  readonly sine: number;
  readonly cosine: number;
  readonly height: number;
}

function meridianSolution(ellipsoid: Ellipsoid, R: number, Z: number): MeridianPoint {
  const a = ellipsoid.semiMajor;
  const e2 = eccentricitySquared(ellipsoid);
  const e4 = e2 * e2;
  if (e2 === 0) return onSphere(a, R, Z);
  const p = (R / a) ** 2;
  const q = (1 - e2) * (Z / a) ** 2;
  const r = (p + q - e4) / 6;
  // Within the equatorial disc of radius a e² the normals meet; take the one on the side of Z.
  if (e4 * q < VANISHING && r <= 0) return onInnerDisc(a, e2, p, Z);
  const u = cubicRoot(r, (e4 * p * q) / 4);
  const v = Math.sqrt(u * u + e4 * q);
  const uv = u < 0 ? (e4 * q) / (v - u) : u + v;
  const w = Math.max(0, (e2 * (uv - q)) / (2 * v));
  const k = uv / (Math.sqrt(uv + w * w) + w);
  const D = (k * R) / (k + e2);
  const H = Math.hypot(Z / k, R / (k + e2));
  return {
    sine: Z / k / H,
    cosine: R / (k + e2) / H,
    height: (1 - (1 - e2) / k) * Math.hypot(D, Z),
  };
}

/** The largest real root u of Karney's (B4), r and S as in his (B2): u³ − 3ru² = 2S, without loss of digits. */
function cubicRoot(r: number, S: number): number {
  const r3 = r * r * r;
  const discriminant = S * (2 * r3 + S);
  if (discriminant < 0) {
    const angle = Math.atan2(Math.sqrt(-discriminant), -(S + r3));
    return r + 2 * r * Math.cos(angle / 3);
  }
  const T3 = S + r3;
  const T = Math.cbrt(T3 + (T3 < 0 ? -Math.sqrt(discriminant) : Math.sqrt(discriminant)));
  return r + T + (T === 0 ? 0 : (r * r) / T);
}

function onInnerDisc(a: number, e2: number, p: number, Z: number): MeridianPoint {
  const zz = Math.sqrt((e2 * e2 - p) / (1 - e2));
  const xx = Math.sqrt(p);
  const H = Math.hypot(zz, xx);
  return { sine: (Z < 0 ? -zz : zz) / H, cosine: xx / H, height: (-a * (1 - e2) * H) / e2 };
}

function onSphere(a: number, R: number, Z: number): MeridianPoint {
  const H = Math.hypot(R, Z);
  return H === 0 ? { sine: 1, cosine: 0, height: -a } : { sine: Z / H, cosine: R / H, height: H - a };
}
