/** Antennas with the phase centres of their calibration files. */
import type { Refusal } from '../../quantities/refusal.ts';
import { isHole } from '../../quantities/value.ts';
import type { Antenna } from '../../session/entries.ts';
import type { Files } from '../../session/files.ts';
import type { Session } from '../../session/session.ts';
import { calibrated, type CalibratedValues } from '../setups/calibration.ts';
import { bytesOf } from './files.ts';
import { NOTHING, remembered, tokenOf, type Nothing, type Token } from '../remembered.ts';

export interface CalibratedAntennaOf {
  readonly antenna: Antenna;
  /** Null where the notes name no calibration file. */
  readonly calibration: CalibratedValues | null;
}

/** Antennas whose notes give no phase centre take it from their calibration file. */
export function antennasOf(session: Session, files: Files): CalibratedAntennaOf[] {
  const date = session.job?.date;
  const day = tokenOf(date && !isHole(date) ? date.day * 86_400 : null);
  return [...session.antennas.values()].map((antenna) =>
    antennaOf(antenna, antenna.calibration ? bytesOf(antenna.calibration.file, files) : NOTHING, day),
  );
}

const antennaOf = remembered(
  (
    antenna: Antenna,
    file: Uint8Array | Refusal | Nothing,
    day: Token<number | null>,
  ): CalibratedAntennaOf => {
    if (!antenna.calibration || file === NOTHING) return { antenna, calibration: null };
    const calibration = calibrated(antenna, antenna.calibration, file as Uint8Array | Refusal, day.worth);
    return {
      antenna: antenna.phaseCentre ? antenna : { ...antenna, phaseCentre: calibration.phaseCentre },
      calibration,
    };
  },
);
