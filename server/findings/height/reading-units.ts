/** A reading that agrees with another one of its time as soon as its digits are read in another unit. */
import { isHole } from '../../quantities/value.ts';
import type { Reading } from '../../derive/setups/antenna-height.ts';

export interface Reunited {
  readonly reading: Reading;
  readonly other: Reading;
  /** As it would be typed. */
  readonly meant: string;
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
  if (own === null || typed === null || isHole(reading.arp)) return null;
  const rise = reading.arp.value - own;
  const meanings = readingsOf(typed);
  for (const other of readings.slice(0, ENOUGH)) {
    if (other === reading || isHole(other.arp)) continue;
    if (Math.abs(other.arp.value - reading.arp.value) <= AGREES) continue;
    const wanted = other.arp.value - rise;
    const meant = meanings.find(({ length }) => Math.abs(length - wanted) <= AGREES);
    if (meant) return { reading, other, meant: meant.text };
  }
  return null;
}

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

const lengthOf = ({ length }: Reading) => (isHole(length) ? null : length.value);

function typedOf({ length }: Reading): { digits: string; unit: string } | null {
  if (isHole(length) || length.origin !== 'given') return null;
  const found = /^([\d.]+)\s*(m|mm|ft)$/.exec(length.typed.trim());
  return found ? { digits: found[1] ?? '', unit: found[2] ?? '' } : null;
}
