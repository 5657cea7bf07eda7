/** Every slip that is known here, in the order in which a day goes: tape, antenna, heights, units, position, rover. */
import {
  antennaHeightLeftOut,
  antennaHeightTwice,
  metresDropped,
  tapeMisread,
} from './antenna-height-slips.ts';
import { arpForPhaseCentre } from './arp-for-phase-centre.ts';
import { baseAntennaTypeMissing } from './base-antenna-type-missing.ts';
import { baseMoved } from './base-moved.ts';
import { chartForEllipsoidal } from './chart-for-ellipsoidal.ts';
import { datum } from './datum.ts';
import { digitsSwapped } from './digits-swapped.ts';
import { eastNorthSwapped } from './east-north-swapped.ts';
import { epoch } from './epoch.ts';
import { extensionInsideSlant } from './extension-inside-slant.ts';
import { extensionLeftOut } from './extension-left-out.ts';
import { extensionTwice } from './extension-twice.ts';
import { feet } from './feet.ts';
import { feetAndInchesAsDecimals } from './feet-and-inches-as-decimals.ts';
import { hemisphere } from './hemisphere.ts';
import { millimetresForMetres } from './millimetres-for-metres.ts';
import { orthometricForEllipsoidal } from './orthometric-for-ellipsoidal.ts';
import { phaseCentreForArp } from './phase-centre-for-arp.ts';
import { poleLeftOut, poleTwice } from './pole-left-out.ts';
import { riseForgotten } from './rise-forgotten.ts';
import { roverAntennaTypeMissing } from './rover-antenna-type-missing.ts';
import { roverGeoid } from './rover-geoid.ts';
import { roverPole } from './rover-pole.ts';
import { roverScale } from './rover-scale.ts';
import { roverSiteCalibration } from './rover-site-calibration.ts';
import { separationSign } from './separation-sign.ts';
import { separationTwice } from './separation-twice.ts';
import type { Slip } from './slip.ts';
import { slopeNotReduced } from './slope-not-reduced.ts';
import { surveyFeet } from './survey-feet.ts';
import { verticalToldAsSlant } from './vertical-told-as-slant.ts';
import { wrongMark } from './wrong-mark.ts';
import { yesterdaysCoordinates } from './yesterdays-coordinates.ts';
import { zone } from './zone.ts';

export const SLIPS: readonly Slip[] = [
  extensionLeftOut,
  extensionTwice,
  extensionInsideSlant,
  slopeNotReduced,
  verticalToldAsSlant,
  riseForgotten,
  tapeMisread,
  metresDropped,
  antennaHeightTwice,
  antennaHeightLeftOut,
  phaseCentreForArp,
  arpForPhaseCentre,
  baseAntennaTypeMissing,
  orthometricForEllipsoidal,
  chartForEllipsoidal,
  separationSign,
  separationTwice,
  millimetresForMetres,
  feet,
  feetAndInchesAsDecimals,
  surveyFeet,
  digitsSwapped,
  eastNorthSwapped,
  zone,
  hemisphere,
  wrongMark,
  datum,
  epoch,
  yesterdaysCoordinates,
  baseMoved,
  roverPole,
  poleLeftOut,
  poleTwice,
  roverAntennaTypeMissing,
  roverGeoid,
  roverScale,
  roverSiteCalibration,
];
