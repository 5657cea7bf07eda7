/** The names of satellites and signals, as observation files write them. */
import type { Constellation } from '../../link/message-size.ts';

/** G05, R12, E11, S20 (number 120), J01, C30, I02; `index` counts from 1 as the messages' masks do. */
export function satelliteName(constellation: Constellation, index: number): string {
  const number = constellation === 'SBAS' ? index + 19 : index;
  return letters[constellation] + String(number).padStart(2, '0');
}

/** A satellite of the legacy GPS messages, whose numbers from 40 on are those of augmentation satellites. */
export function legacyGpsSatelliteName(number: number): string {
  return number >= 40 ? satelliteName('SBAS', number - 39) : satelliteName('GPS', number);
}

/** The signal's two characters, 1C say; `#7` where the standard's table has no name for the place in the mask. */
export function signalName(constellation: Constellation, index: number): string {
  return signals[constellation][index] ?? `#${index}`;
}

const letters: Readonly<Record<Constellation, string>> = {
  GPS: 'G',
  GLONASS: 'R',
  Galileo: 'E',
  SBAS: 'S',
  QZSS: 'J',
  BeiDou: 'C',
  NavIC: 'I',
};

/** RTCM 10403.3, tables 3.5-91 to 3.5-108: place in the signal mask, from 1. */
const signals: Readonly<Record<Constellation, Readonly<Record<number, string>>>> = {
  GPS: {
    ...{ 2: '1C', 3: '1P', 4: '1W', 8: '2C', 9: '2P', 10: '2W', 15: '2S', 16: '2L', 17: '2X' },
    ...{ 22: '5I', 23: '5Q', 24: '5X', 30: '1S', 31: '1L', 32: '1X' },
  },
  GLONASS: { 2: '1C', 3: '1P', 8: '2C', 9: '2P' },
  Galileo: {
    ...{ 2: '1C', 3: '1A', 4: '1B', 5: '1X', 6: '1Z', 8: '6C', 9: '6A', 10: '6B', 11: '6X', 12: '6Z' },
    ...{ 14: '7I', 15: '7Q', 16: '7X', 18: '8I', 19: '8Q', 20: '8X', 22: '5I', 23: '5Q', 24: '5X' },
  },
  SBAS: { 2: '1C', 22: '5I', 23: '5Q', 24: '5X' },
  QZSS: {
    ...{ 2: '1C', 9: '6S', 10: '6L', 11: '6X', 15: '2S', 16: '2L', 17: '2X' },
    ...{ 22: '5I', 23: '5Q', 24: '5X', 30: '1S', 31: '1L', 32: '1X' },
  },
  BeiDou: {
    ...{ 2: '2I', 3: '2Q', 4: '2X', 8: '6I', 9: '6Q', 10: '6X', 14: '7I', 15: '7Q', 16: '7X' },
    ...{ 22: '5D', 23: '5P', 24: '5X', 25: '7D', 30: '1D', 31: '1P', 32: '1X' },
  },
  NavIC: { 22: '5A' },
};
