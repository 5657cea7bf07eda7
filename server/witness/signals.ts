/** Frequencies and wavelengths. Source: IS-GPS-200, 3.3.1.1; IS-GPS-705; Galileo OS SIS ICD, table of carrier frequencies. */
import { isGalileo, type RawObservations, type Satellite } from '../evidence/rinex/raw-observations.ts';
import { SPEED_OF_LIGHT } from './orbit.ts';

const MEGAHERTZ = { L1: 1575.42, L2: 1227.6, L5: 1176.45, E5a: 1176.45, E5b: 1207.14 } as const;

export const WAVELENGTH_1 = SPEED_OF_LIGHT / (MEGAHERTZ.L1 * 1e6);

export function secondWavelength({ second }: Pick<RawObservations, 'second'>, satellite: Satellite): number {
  return SPEED_OF_LIGHT / (MEGAHERTZ[isGalileo(satellite) ? second.E : second.G] * 1e6);
}

/** γ = (f1/f2)². */
export function secondRatio({ second }: Pick<RawObservations, 'second'>, satellite: Satellite): number {
  return (MEGAHERTZ.L1 / MEGAHERTZ[isGalileo(satellite) ? second.E : second.G]) ** 2;
}
