/** A length that is a thousand times too large or too small: keyed, or read off the tape. */
import { kind, readingFixes, type Subject } from '../finding.ts';
import { lineForLater, tellDifference } from '../keyed/differences.ts';
import { keyedDifferences, type KeyedDifference } from '../../slips/keyed-differences.ts';
import { misread, tellMisread, type Misread } from './readings.ts';

const CODE = 'unit/thousandfold';

export const unitThousandfold = kind<KeyedDifference | Misread>({
  code: CODE,
  find: (subject) => [...misread(subject).filter(({ read }) => read.thousandfold), ...keyed(subject)],
  tell: (found, subject) => ('read' in found ? tellMisread(found) : tellDifference(found, subject)),
  mend: (found, subject) =>
    'read' in found ? readingFixes(found.place, [found.read.meant]) : lineForLater(found, subject),
});

const keyed = ({ session, derivation }: Subject) =>
  keyedDifferences(session, derivation).filter(({ named }) => named?.slip.code === CODE);
