/** How a receiver takes numbers, as the job says: in metres, and degrees with minutes and seconds, where it says nothing. */
import { showAngle, showNumber } from '../../quantities/show.ts';
import type { Job, PositionForm } from '../../session/entries.ts';

export interface InReceiver {
  readonly position: PositionForm;
  /** Metres as a length that is keyed, to a millimetre or finer: `1.533 m`, `5.029 usft`. */
  readonly length: (metres: number) => string;
  /** Degrees as the angle that is keyed; to a tenth of a millimetre on the ground. */
  readonly angle: (degrees: number, positive: 'N' | 'E') => string;
}

export function inReceiver(job: Job | null): InReceiver {
  const { unit, position } = job?.receiver ?? { unit: null, position: null };
  const { factor, unit: name } = unit ?? METRE;
  const metres = factor ?? 1;
  const decimals = Math.max(0, 3 + Math.ceil(Math.log10(metres)));
  return {
    position: position ?? 'dms',
    length: (length) => `${showNumber(length / metres, decimals)} ${name}`,
    angle: (degrees, positive) =>
      position === 'degrees' ? decimalDegrees(degrees, positive) : showAngle(degrees, positive),
  };
}

const METRE = { unit: 'm', factor: 1 };

function decimalDegrees(degrees: number, positive: 'N' | 'E'): string {
  const letter = degrees < 0 ? (positive === 'N' ? 'S' : 'W') : positive;
  return `${showNumber(Math.abs(degrees), 9)}°${letter}`;
}
