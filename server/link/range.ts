/**
 * How far a radio link reaches: path loss, first Fresnel zone, radio horizon and what is left in hand.
 *
 * Sources: free space, ITU-R P.525; Fresnel radius and the 0.6 rule, ITU-R P.526; plane earth and the horizon over an
 * earth of 4/3 radius, from memory.
 */
import type { Decibels, DecibelMilliwatts, Hertz, Metres } from '../quantities/brands.ts';
import { decibels, metres } from '../quantities/brands.ts';

/** A path between two aerials over level ground. */
export interface RadioPath {
  readonly carrier: Hertz;
  readonly distance: Metres;
  /** Heights of the two aerials above the ground. */
  readonly baseAerial: Metres;
  readonly roverAerial: Metres;
}

/** The larger of free space and plane earth: open ground is never kinder than either. */
export function pathLoss(path: RadioPath): Decibels {
  return decibels(Math.max(freeSpaceLoss(path.carrier, path.distance), planeEarthLoss(path)));
}

/** Free space: 32.4 + 20 log f (MHz) + 20 log d (km). */
export function freeSpaceLoss(carrier: Hertz, distance: Metres): Decibels {
  return decibels(32.4 + 20 * Math.log10(carrier / 1e6) + 20 * Math.log10(distance / 1e3));
}

/** Plane earth: 40 log d − 20 log (h1·h2), all in metres; it holds beyond `planeEarthBegins`. */
export function planeEarthLoss({ distance, baseAerial, roverAerial }: RadioPath): Decibels {
  return decibels(40 * Math.log10(distance) - 20 * Math.log10(baseAerial * roverAerial));
}

/** The distance beyond which the reflection from the ground eats the signal: 4·h1·h2/λ. */
export function planeEarthBegins({ carrier, baseAerial, roverAerial }: Omit<RadioPath, 'distance'>): Metres {
  return metres((4 * baseAerial * roverAerial * carrier) / speedOfLight);
}

/** Radius of the first Fresnel zone at `fromBase` along the path: 550·√(d1·d2/((d1 + d2)·f)), km and MHz. */
export function fresnelRadius({ carrier, distance }: RadioPath, fromBase: Metres): Metres {
  const d1 = fromBase / 1e3;
  const d2 = (distance - fromBase) / 1e3;
  return metres(550 * Math.sqrt(Math.max(0, d1 * d2) / ((distance / 1e3) * (carrier / 1e6))));
}

/**
 * The smallest share of the first Fresnel zone's radius that level, curved ground leaves free between the aerials;
 * 0.6 is enough to neglect diffraction, below 0 the ground itself is in the line.
 */
export function fresnelClearance(path: RadioPath): number {
  const steps = 200;
  let smallest = Infinity;
  for (let step = 1; step < steps; step += 1) {
    const fromBase = (path.distance * step) / steps;
    const line = path.baseAerial + ((path.roverAerial - path.baseAerial) * step) / steps;
    const bulge = (fromBase * (path.distance - fromBase)) / (2 * effectiveEarthRadius);
    smallest = Math.min(smallest, (line - bulge) / fresnelRadius(path, metres(fromBase)));
  }
  return smallest;
}

/** The radio horizon: 4.12·(√h1 + √h2) km. */
export function radioHorizon(baseAerial: Metres, roverAerial: Metres): Metres {
  return metres(4120 * (Math.sqrt(baseAerial) + Math.sqrt(roverAerial)));
}

/** Power and what it meets on the way. */
export interface LinkBudget {
  readonly power: DecibelMilliwatts;
  readonly sensitivity: DecibelMilliwatts;
  /** Gains of both aerials less the losses of cables; 0 where not stated. */
  readonly gains?: Decibels;
}

/** What the received signal is above the faintest one still read; below 0 the link does not hold. */
export function linkMargin(path: RadioPath, { power, sensitivity, gains }: LinkBudget): Decibels {
  return decibels(power + (gains ?? 0) - pathLoss(path) - sensitivity);
}

/** The distance at which the margin is used up down to `reserve`, by halving; never beyond 1000 km. */
export function reach(path: Omit<RadioPath, 'distance'>, budget: LinkBudget, reserve: Decibels): Metres {
  let near = 0;
  let far = 1e6;
  for (let step = 0; step < 60; step += 1) {
    const distance = metres((near + far) / 2);
    if (linkMargin({ ...path, distance }, budget) >= reserve) near = distance;
    else far = distance;
  }
  return metres(near);
}

const speedOfLight = 299_792_458;
const effectiveEarthRadius = (4 / 3) * 6_371_000;
