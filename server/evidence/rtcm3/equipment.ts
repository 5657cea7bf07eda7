/** Messages 1007, 1008 and 1033: the antenna and receiver that the base says it has (RTCM 10403.3, tables 3.5-8, -9, -34). */
import { bitReader } from './bits.ts';
import type { Malformed } from './message.ts';

export interface Equipment {
  readonly kind: 'equipment';
  readonly number: 1007 | 1008 | 1033;
  readonly station: number;
  readonly antennaDescriptor: string;
  /** 0 means the standard calibration of this type. */
  readonly antennaSetup: number;
  readonly antennaSerial?: string;
  readonly receiverDescriptor?: string;
  readonly receiverFirmware?: string;
  readonly receiverSerial?: string;
}

export function equipment(number: 1007 | 1008 | 1033, payload: Uint8Array): Equipment | Malformed {
  const field = bitReader(payload);
  field.skip(12);
  const station = field.unsigned(12);
  let short = false;
  const text = () => {
    const length = field.unsigned(8);
    // The length is a claim: nothing is read, or allocated, beyond what is there.
    if (Number.isNaN(length) || length * 8 > field.left()) {
      short = true;
      return '';
    }
    return characters(Array.from({ length }, () => field.unsigned(8)));
  };
  const antennaDescriptor = text();
  const antennaSetup = field.unsigned(8);
  const read: Equipment = { kind: 'equipment', number, station, antennaDescriptor, antennaSetup };
  const full: Equipment =
    number === 1007
      ? read
      : number === 1008
        ? { ...read, antennaSerial: text() }
        : {
            ...read,
            antennaSerial: text(),
            receiverDescriptor: text(),
            receiverFirmware: text(),
            receiverSerial: text(),
          };
  return short || Number.isNaN(antennaSetup)
    ? { kind: 'malformed', number, sentence: `A ${number} ends before its texts do; it is not read.` }
    : full;
}

/** Texts are of one byte a character; what cannot be printed is shown as such, blanks at the end are filling. */
function characters(codes: readonly number[]) {
  return codes
    .map((code) =>
      code < 32 || (code >= 127 && code < 160) ? (code === 0 ? ' ' : '\ufffd') : String.fromCharCode(code),
    )
    .join('')
    .trimEnd();
}
