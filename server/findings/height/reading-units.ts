/** A reading that agrees with another one of its time as soon as its digits are read in another unit. */
import type { Place } from '../../../grammar/tree.ts';
import { isHole } from '../../quantities/value.ts';
import type { Reading } from '../../derive/setups/antenna-height.ts';

export interface Reunited {
  readonly reading: Reading;
  readonly other: Reading;
  /** As it would be typed. */
  readonly meant: string;
  /** Millimetres for metres, or metres for millimetres. */
  readonly thousandfold: boolean;
}

/** Within this the other reading bears it out: more than a tape differs by, far less than units do. Metres. */
const AGREES = 0.008;
const FOOT = 0.3048;

/** A tape is read a few times; among hundreds of readings one would agree in some unit by chance. */
const ENOUGH = 50;

/** The reading in the unit in which it agrees with another one of its time; null where it agrees as it stands, or in none. */
export function reunited(readings: readonly Reading[], reading: Reading): Reunited | null {
  const own = lengthOf(reading);
  const typed = typedOf(reading);
  if (own === null || typed === null) return null;
  const meanings = readingsOf(typed);
  for (const other of readings.slice(0, ENOUGH)) {
    if (other === reading || isHole(other.arp) || agree(reading, other)) continue;
    const wanted = wantedOf(reading, own, other);
    const meant = meanings.find(({ length }) => wanted.some((one) => Math.abs(length - one) <= AGREES));
    if (meant) return { reading, other, meant: meant.text, thousandfold: isThousandfold(own / meant.length) };
  }
  return null;
}

const agree = ({ arp: one }: Reading, { arp: other }: Reading) =>
  !isHole(one) && !isHole(other) && Math.abs(other.value - one.value) <= AGREES;

/**
 * What the tape should have read to give the height of the other reading: to the same point the same, whatever the slope
 * makes of a wrong length, or of one too short for it; else what gives the other's height, the slope being left as it is.
 */
function wantedOf(reading: Reading, own: number, other: Reading): number[] {
  const length = lengthOf(other);
  const same = length !== null && wayOf(other) === wayOf(reading) ? [length] : [];
  if (isHole(reading.arp) || isHole(other.arp)) return same;
  return [...same, other.arp.value - (reading.arp.value - own)];
}

/** To which point, and how far off the plumb line. */
const wayOf = ({ measured: { to, offCentre } }: Reading) =>
  `${to?.name ?? ''} ${offCentre && !isHole(offCentre) ? String(offCentre.value) : ''}`;

/** Every other reading of the same digits: in another unit, or as feet and inches. */
function readingsOf({ digits, unit }: { digits: string; unit: string }): { text: string; length: number }[] {
  const number = Number(digits);
  const [feet = '', inches = ''] = digits.split('.');
  return [
    { text: `${digits} m`, length: number },
    { text: `${digits} mm`, length: number / 1000 },
    { text: `${digits} ft`, length: number * FOOT },
    ...(inches !== '' && Number(inches) < 12
      ? [{ text: `${feet} ft ${Number(inches)} in`, length: (Number(feet) + Number(inches) / 12) * FOOT }]
      : []),
  ].filter(({ text }) => text !== `${digits} ${unit}`);
}

const isThousandfold = (ratio: number) => Math.abs(Math.abs(Math.log10(ratio)) - 3) < 1e-6;

const lengthOf = ({ length }: Reading) => (isHole(length) ? null : length.value);

function typedOf({ length }: Reading): { digits: string; unit: string } | null {
  if (isHole(length) || length.origin !== 'given') return null;
  const found = /^([\d.]+)\s*(m|mm|ft)$/.exec(length.typed.trim());
  return found ? { digits: found[1] ?? '', unit: found[2] ?? '' } : null;
}

/** What else is wrong with the length of this reading follows from its unit. */
export const misreadAs = (setup: string, { start }: Place) => `reading-unit/${setup}/${start}`;
