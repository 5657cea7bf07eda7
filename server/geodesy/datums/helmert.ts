/**
 * Helmert's similarity transformation with small rotations, of seven parameters or, with their rates, fourteen.
 *
 * Source: IOGP publication 373-07-2, methods 1033 (position vector), 1032 (coordinate frame), 1053 and 1056 (both,
 * time-dependent). Parameters are kept in the position vector convention; those of the coordinate frame convention are the
 * same with the rotations' signs turned. The way back is the exact inverse of the same matrix, not the published
 * parameters with their signs turned, so that there and back loses nothing; the two differ by the squares of the
 * rotations, tenths of a millimetre for the largest of them.
 */
import { metres, type Geocentric } from '../../quantities/brands.ts';
import { RADIANS_PER_DEGREE } from '../angles.ts';

export interface Triple {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export interface HelmertParameters {
  /** In metres. */
  readonly translation: Triple;
  /** In arc-seconds, position vector convention. */
  readonly rotation: Triple;
  /** In parts per million. */
  readonly scale: number;
}

export interface TimeDependentHelmert extends HelmertParameters {
  /** The year, with its fraction, at which the parameters hold. */
  readonly epoch: number;
  /** What is added to them in each year after it. */
  readonly rates: HelmertParameters;
}

export const NO_CHANGE: HelmertParameters = {
  translation: { x: 0, y: 0, z: 0 },
  rotation: { x: 0, y: 0, z: 0 },
  scale: 0,
};

/** From source to target. */
export function helmert(parameters: HelmertParameters, point: Geocentric): Geocentric {
  const { t, r, M } = working(parameters);
  const turned = cross(r, point);
  return {
    x: metres(t.x + M * (point.x + turned.x)),
    y: metres(t.y + M * (point.y + turned.y)),
    z: metres(t.z + M * (point.z + turned.z)),
  };
}

/** From target to source: (I + [r]×)⁻¹w = (w − r × w + r(r·w))/(1 + r²). */
export function inverseHelmert(parameters: HelmertParameters, point: Geocentric): Geocentric {
  const { t, r, M } = working(parameters);
  const w = { x: (point.x - t.x) / M, y: (point.y - t.y) / M, z: (point.z - t.z) / M };
  const turned = cross(r, w);
  const along = r.x * w.x + r.y * w.y + r.z * w.z;
  const norm = 1 + r.x * r.x + r.y * r.y + r.z * r.z;
  return {
    x: metres((w.x - turned.x + r.x * along) / norm),
    y: metres((w.y - turned.y + r.y * along) / norm),
    z: metres((w.z - turned.z + r.z * along) / norm),
  };
}

/** The parameters at another epoch, given as a year with its fraction. */
export function parametersAt({ rates, ...fixed }: TimeDependentHelmert, epoch: number): HelmertParameters {
  const years = epoch - fixed.epoch;
  return {
    translation: later(fixed.translation, rates.translation, years),
    rotation: later(fixed.rotation, rates.rotation, years),
    scale: fixed.scale + rates.scale * years,
  };
}

/** The same transformation when its rotations are published in the coordinate frame convention. */
export const fromCoordinateFrame = (parameters: HelmertParameters): HelmertParameters => ({
  ...parameters,
  rotation: { x: -parameters.rotation.x, y: -parameters.rotation.y, z: -parameters.rotation.z },
});

const RADIANS_PER_SECOND = RADIANS_PER_DEGREE / 3600;

const working = ({ translation: t, rotation, scale }: HelmertParameters) => ({
  t,
  r: {
    x: rotation.x * RADIANS_PER_SECOND,
    y: rotation.y * RADIANS_PER_SECOND,
    z: rotation.z * RADIANS_PER_SECOND,
  },
  M: 1 + scale * 1e-6,
});

const later = (value: Triple, rate: Triple, years: number): Triple => ({
  x: value.x + rate.x * years,
  y: value.y + rate.y * years,
  z: value.z + rate.z * years,
});

const cross = (r: Triple, v: Triple): Triple => ({
  x: r.y * v.z - r.z * v.y,
  y: r.z * v.x - r.x * v.z,
  z: r.x * v.y - r.y * v.x,
});
