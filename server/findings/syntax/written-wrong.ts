/** The kinds of finding that are about how a line is written, and need nothing but that to be found. */
import { anglePacked } from '../angle/packed.ts';
import { angleRange } from '../angle/range.ts';
import { angleSign } from '../angle/sign.ts';
import type { AnyFindingKind } from '../finding.ts';
import { heightNoSurface } from '../height/no-surface.ts';
import { numberDecimalComma } from '../number/decimal-comma.ts';
import { unitMissing } from '../unit/missing.ts';
import { unitSlip } from '../unit/slip.ts';
import { syntaxBarePoint } from './bare-point.ts';
import { syntaxBidirectionalControl } from './bidirectional-control.ts';
import { syntaxBrokenNumber } from './broken-number.ts';
import { syntaxDateFormat } from './date-format.ts';
import { syntaxExponent } from './exponent.ts';
import { syntaxGroupedDigits } from './grouped-digits.ts';
import { syntaxImpossibleTime } from './impossible-time.ts';
import { syntaxLeftover } from './leftover.ts';
import { syntaxMisplacedDetail } from './misplaced-detail.ts';
import { syntaxMissingLetter } from './missing-letter.ts';
import { syntaxMissingValue } from './missing-value.ts';
import { syntaxRepeated } from './repeated.ts';
import { syntaxUnknownWord } from './unknown-word.ts';
import { syntaxValueRange } from './value-range.ts';
import { syntaxWrongDimension } from './wrong-dimension.ts';

export const WRITTEN_WRONG: readonly AnyFindingKind[] = [
  unitMissing,
  unitSlip,
  numberDecimalComma,
  angleRange,
  anglePacked,
  angleSign,
  heightNoSurface,
  syntaxUnknownWord,
  syntaxMisplacedDetail,
  syntaxRepeated,
  syntaxMissingValue,
  syntaxMissingLetter,
  syntaxLeftover,
  syntaxValueRange,
  syntaxWrongDimension,
  syntaxGroupedDigits,
  syntaxExponent,
  syntaxBarePoint,
  syntaxBrokenNumber,
  syntaxDateFormat,
  syntaxImpossibleTime,
  syntaxBidirectionalControl,
];
