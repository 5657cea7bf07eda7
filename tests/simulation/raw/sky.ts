/** Satellites of a simulated sky: elements, true places and clocks. Shares no code with the program. */
import type { Random } from '../random.ts';
import type { Vector } from './vectors.ts';
import { add, cross, scaled } from './vectors.ts';

export const C = 299_792_458;
/** Sidereal rotation as navigation messages have it, rad/s. */
export const EARTH_RATE = 7.2921151467e-5;

export interface Elements {
  readonly name: string;
  readonly rootA: number;
  readonly e: number;
  readonly inclination: number;
  /** Node at the start of the week, argument of perigee and mean anomaly at `toe`, all rad. */
  readonly node: number;
  readonly perigee: number;
  readonly anomaly: number;
  readonly clockOffset: number;
  readonly clockDrift: number;
  readonly groupDelay: number;
  /** Standard deviation of the clock's wander over one second, in metres. */
  readonly wander: number;
}

/** Thirty satellites of GPS and twenty-four of Galileo in their planes; a third of the GPS clocks wander several times as much. */
export function constellation(random: Random): readonly Elements[] {
  const between = random.uniform;
  return ['G', 'E'].flatMap((system) =>
    Array.from({ length: system === 'G' ? 30 : 24 }, (_, index): Elements => {
      const planes = system === 'G' ? 6 : 3;
      const plane = index % planes;
      const slot = Math.floor(index / planes);
      const perPlane = (system === 'G' ? 30 : 24) / planes;
      const poor = system === 'G' && index % 3 === 0;
      return {
        name: `${system}${String(index + 1).padStart(2, '0')}`,
        rootA: system === 'G' ? 5153.7 : 5440.6,
        e: between(0.0005, 0.012),
        inclination: system === 'G' ? 0.96 : 0.977,
        node: (plane / planes) * 2 * Math.PI + between(-0.05, 0.05),
        perigee: between(-3, 3),
        anomaly: (slot / perPlane) * 2 * Math.PI + (plane / 24) * 2 * Math.PI + between(-0.1, 0.1),
        clockOffset: between(-4e-4, 4e-4),
        clockDrift: between(-2e-11, 2e-11),
        groupDelay: between(-1e-8, 5e-9),
        wander: (poor ? 0.0022 : 0.0006) * between(0.8, 1.2),
      };
    }),
  );
}

/** Inertial vectors of perigee and of the direction after it, turned with the earth at the time of the signal. */
export function placeOf(el: Elements, mu: number, toe: number, secondOfWeek: number): Vector {
  const a = el.rootA ** 2;
  const mean = el.anomaly + Math.sqrt(mu / a ** 3) * (secondOfWeek - toe);
  let E = mean;
  for (let round = 0; round < 30; round += 1) E = mean + el.e * Math.sin(E);
  const node: Vector = [Math.cos(el.node), Math.sin(el.node), 0];
  const normal: Vector = [
    Math.sin(el.node) * Math.sin(el.inclination),
    -Math.cos(el.node) * Math.sin(el.inclination),
    Math.cos(el.inclination),
  ];
  const across = cross(normal, node);
  const P = add(scaled(node, Math.cos(el.perigee)), scaled(across, Math.sin(el.perigee)));
  const Q = cross(normal, P);
  const inertial = add(
    scaled(P, a * (Math.cos(E) - el.e)),
    scaled(Q, a * Math.sqrt(1 - el.e ** 2) * Math.sin(E)),
  );
  return turned(inertial, EARTH_RATE * secondOfWeek);
}

/** What a clock on an eccentric orbit gains: −2 r·v/c², here by r·v = √(μ a) e sin E. */
export function relativity(el: Elements, mu: number, toe: number, secondOfWeek: number): number {
  const a = el.rootA ** 2;
  const mean = el.anomaly + Math.sqrt(mu / a ** 3) * (secondOfWeek - toe);
  let E = mean;
  for (let round = 0; round < 30; round += 1) E = mean + el.e * Math.sin(E);
  return (-2 * Math.sqrt(mu * a) * el.e * Math.sin(E)) / C ** 2;
}

/** A vector as an earth sees it that has turned by this angle since. */
export const turned = ([x, y, z]: Vector, angle: number): Vector => [
  x * Math.cos(angle) + y * Math.sin(angle),
  y * Math.cos(angle) - x * Math.sin(angle),
  z,
];
