/** A number in feet where metres were meant, the other way round, or in the wrong kind of feet: keyed, or read off the tape. */
import { kind, readingFixes, type Subject } from '../finding.ts';
import { tellDifference } from '../keyed/differences.ts';
import { keyedDifferences, type KeyedDifference } from '../../slips/keyed-differences.ts';
import { misread, tellMisread, type Misread } from './readings.ts';

const CODE = 'unit/feet';

export const unitFeet = kind<KeyedDifference | Misread>({
  code: CODE,
  find: (subject) => [...misread(subject).filter(({ read }) => !read.thousandfold), ...keyed(subject)],
  tell: (found, subject) => ('read' in found ? tellMisread(found) : tellDifference(found, subject)),
  mend: (found) => ('read' in found ? readingFixes(found.place, [found.read.meant]) : []),
});

const keyed = ({ session, derivation }: Subject) =>
  keyedDifferences(session, derivation).filter(({ named }) => named?.slip.code === CODE);
