/** Every kind of finding, in the order in which a reader would look for them. */
import type { AnyFindingKind } from './finding.ts';
import { anglePacked } from './angle/packed.ts';
import { angleRange } from './angle/range.ts';
import { angleSign } from './angle/sign.ts';
import { antennaCalibration } from './antenna/calibration.ts';
import { antennaClearance } from './antenna/clearance.ts';
import { antennaType } from './antenna/type.ts';
import { captureAntennaDiffers } from './capture/antenna-differs.ts';
import { captureDiffers } from './capture/differs.ts';
import { captureSeveralBases } from './capture/several-bases.ts';
import { captureStreamDiffers } from './capture/stream-differs.ts';
import { captureUnusable } from './capture/unusable.ts';
import { checkAfterEvent } from './check/after-event.ts';
import { checkBaseMark } from './check/base-mark.ts';
import { checkDrift } from './check/drift.ts';
import { checkFails } from './check/fails.ts';
import { checkMarginal } from './check/marginal.ts';
import { checkMissingClosing } from './check/missing-closing.ts';
import { checkMissingOpening } from './check/missing-opening.ts';
import { checkNoTime } from './check/no-time.ts';
import { checkSurprising } from './check/surprising.ts';
import { checkToleranceTooTight } from './check/tolerance-too-tight.ts';
import { checkTwoBases } from './check/two-bases.ts';
import { checkWeak } from './check/weak.ts';
import { eventNoTime } from './event/no-time.ts';
import { gearOutOfDate } from './gear/out-of-date.ts';
import { heightAntennaNotKeyed } from './height/antenna-not-keyed.ts';
import { heightCoarseModel } from './height/coarse-model.ts';
import { heightExtension } from './height/extension.ts';
import { heightGeoidUnreadable } from './height/geoid-unreadable.ts';
import { heightImpossible } from './height/impossible.ts';
import { heightModelUnnamed } from './height/model-unnamed.ts';
import { heightNoSeparation } from './height/no-separation.ts';
import { heightNoSurface } from './height/no-surface.ts';
import { heightNotKeyed } from './height/not-keyed.ts';
import { heightNotRetaped } from './height/not-retaped.ts';
import { heightPhaseCentre } from './height/phase-centre.ts';
import { heightReadingsDisagree } from './height/readings-disagree.ts';
import { heightSeparation } from './height/separation.ts';
import { heightSeparationSign } from './height/separation-sign.ts';
import { heightSettled } from './height/settled.ts';
import { heightSlope } from './height/slope.ts';
import { heightTapeTooShort } from './height/tape-too-short.ts';
import { heightWrongSurface } from './height/wrong-surface.ts';
import { markNoSource } from './mark/no-source.ts';
import { markNoUncertainty } from './mark/no-uncertainty.ts';
import { markNotIntact } from './mark/not-intact.ts';
import { markUnknown } from './mark/unknown.ts';
import { numberDecimalComma } from './number/decimal-comma.ts';
import { numberDigitsSwapped } from './number/digits-swapped.ts';
import { pointsInDoubt } from './points/in-doubt.ts';
import { pointsStateUnknown } from './points/state-unknown.ts';
import { pointsUnfit } from './points/unfit.ts';
import { pointsUnreadable } from './points/unreadable.ts';
import { positionAutonomousDiffers } from './position/autonomous-differs.ts';
import { positionDatumUnknown } from './position/datum-unknown.ts';
import { positionGridUnknown } from './position/grid-unknown.ts';
import { positionKeyedDiffers } from './position/keyed-differs.ts';
import { positionNotKeyed } from './position/not-keyed.ts';
import { positionGroundScale } from './position/ground-scale.ts';
import { positionOutOfArea } from './position/out-of-area.ts';
import { positionSwapped } from './position/swapped.ts';
import { positionTransformationAccuracy } from './position/transformation-accuracy.ts';
import { programFaults } from './program/fault.ts';
import { radioEndsDiffer } from './radio/ends-differ.ts';
import { radioOverload } from './radio/overload.ts';
import { radioRange } from './radio/range.ts';
import { radioSettings } from './radio/settings.ts';
import { rawLogDiffers } from './raw-log/differs.ts';
import { rawLogPosition } from './raw-log/position.ts';
import { rawLogStep } from './raw-log/step.ts';
import { recordingDoubtful } from './recording/doubtful.ts';
import { recordingUnusable } from './recording/unusable.ts';
import { reviewStale } from './review/stale.ts';
import { siteNoHazards } from './site/no-hazards.ts';
import { streamContradictory } from './stream/contradictory.ts';
import { streamMissingMessage } from './stream/missing-message.ts';
import { streamNoBasePosition } from './stream/no-base-position.ts';
import { streamSystemUnknown } from './stream/system-unknown.ts';
import { syntaxBarePoint } from './syntax/bare-point.ts';
import { syntaxBidirectionalControl } from './syntax/bidirectional-control.ts';
import { syntaxBrokenNumber } from './syntax/broken-number.ts';
import { syntaxDateFormat } from './syntax/date-format.ts';
import { syntaxDuplicateName } from './syntax/duplicate-name.ts';
import { syntaxExponent } from './syntax/exponent.ts';
import { syntaxGroupedDigits } from './syntax/grouped-digits.ts';
import { syntaxImpossibleTime } from './syntax/impossible-time.ts';
import { syntaxIndent } from './syntax/indent.ts';
import { syntaxInvisibleCharacter } from './syntax/invisible-character.ts';
import { syntaxLeftover } from './syntax/leftover.ts';
import { syntaxLetterCase } from './syntax/letter-case.ts';
import { syntaxLookAlike } from './syntax/look-alike.ts';
import { syntaxMisplacedDetail } from './syntax/misplaced-detail.ts';
import { syntaxMissingLetter } from './syntax/missing-letter.ts';
import { syntaxMissingValue } from './syntax/missing-value.ts';
import { syntaxOpenValue } from './syntax/open-value.ts';
import { syntaxRepeated } from './syntax/repeated.ts';
import { syntaxUnclosedText } from './syntax/unclosed-text.ts';
import { syntaxUnknownName } from './syntax/unknown-name.ts';
import { syntaxUnknownWord } from './syntax/unknown-word.ts';
import { syntaxUnreadableFile } from './syntax/unreadable-file.ts';
import { syntaxUsedFile } from './syntax/used-file.ts';
import { syntaxValueRange } from './syntax/value-range.ts';
import { syntaxWrongDimension } from './syntax/wrong-dimension.ts';
import { timeOrder } from './time/order.ts';
import { timeOutsideSetup } from './time/outside-setup.ts';
import { unitFeet } from './unit/feet.ts';
import { unitMissing } from './unit/missing.ts';
import { unitSlip } from './unit/slip.ts';
import { unitThousandfold } from './unit/thousandfold.ts';

export const CATALOGUE: readonly AnyFindingKind[] = [
  unitMissing,
  unitSlip,
  numberDecimalComma,
  angleRange,
  anglePacked,
  angleSign,
  heightNoSurface,
  antennaCalibration,
  unitFeet,
  unitThousandfold,
  numberDigitsSwapped,
  heightWrongSurface,
  heightSeparation,
  heightSeparationSign,
  heightExtension,
  heightPhaseCentre,
  heightSlope,
  heightImpossible,
  heightTapeTooShort,
  heightReadingsDisagree,
  heightSettled,
  heightNotRetaped,
  heightNoSeparation,
  heightCoarseModel,
  heightGeoidUnreadable,
  heightModelUnnamed,
  heightNotKeyed,
  heightAntennaNotKeyed,
  antennaType,
  positionOutOfArea,
  positionGroundScale,
  positionSwapped,
  positionDatumUnknown,
  positionTransformationAccuracy,
  positionGridUnknown,
  positionKeyedDiffers,
  positionAutonomousDiffers,
  positionNotKeyed,
  checkFails,
  checkMarginal,
  checkSurprising,
  checkToleranceTooTight,
  checkMissingOpening,
  checkMissingClosing,
  checkNoTime,
  checkTwoBases,
  eventNoTime,
  checkAfterEvent,
  checkDrift,
  checkBaseMark,
  checkWeak,
  markUnknown,
  markNotIntact,
  markNoSource,
  markNoUncertainty,
  captureDiffers,
  captureAntennaDiffers,
  captureStreamDiffers,
  captureSeveralBases,
  captureUnusable,
  recordingUnusable,
  recordingDoubtful,
  rawLogPosition,
  rawLogStep,
  rawLogDiffers,
  radioEndsDiffer,
  radioSettings,
  radioOverload,
  radioRange,
  streamNoBasePosition,
  streamMissingMessage,
  streamContradictory,
  streamSystemUnknown,
  antennaClearance,
  timeOrder,
  timeOutsideSetup,
  pointsInDoubt,
  pointsStateUnknown,
  pointsUnfit,
  pointsUnreadable,
  gearOutOfDate,
  siteNoHazards,
  reviewStale,
  syntaxUnknownWord,
  syntaxMisplacedDetail,
  syntaxIndent,
  syntaxLetterCase,
  syntaxRepeated,
  syntaxMissingValue,
  syntaxMissingLetter,
  syntaxLeftover,
  syntaxOpenValue,
  syntaxValueRange,
  syntaxWrongDimension,
  syntaxGroupedDigits,
  syntaxExponent,
  syntaxBarePoint,
  syntaxBrokenNumber,
  syntaxDateFormat,
  syntaxImpossibleTime,
  syntaxUnclosedText,
  syntaxLookAlike,
  syntaxInvisibleCharacter,
  syntaxBidirectionalControl,
  syntaxUnknownName,
  syntaxDuplicateName,
  syntaxUnreadableFile,
  syntaxUsedFile,
  programFaults,
];
