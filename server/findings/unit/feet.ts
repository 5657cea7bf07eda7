/** A number in feet where metres were meant, the other way round, or in the wrong kind of feet: keyed, or read off the tape. */
import { kind, readingFixes, type Subject } from '../finding.ts';
import { placeOfLength } from '../height/readings-disagree.ts';
import { tellDifference } from '../keyed/differences.ts';
import { reunited, type Reunited } from '../height/reading-units.ts';
import { keyedDifferences, type KeyedDifference } from '../../slips/keyed-differences.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import type { Place } from '../../../grammar/tree.ts';

const CODE = 'unit/feet';

type Evidence = { readonly place: Place } & (
  { readonly keyed: KeyedDifference } | { readonly read: Reunited; readonly setup: SetupValues }
);

export const unitFeet = kind<Evidence>({
  code: CODE,
  find: (subject) => [...readings(subject), ...keyed(subject)],
  tell: (evidence, subject) =>
    'keyed' in evidence
      ? tellDifference(evidence.keyed, subject)
      : {
          severity: 'error',
          headline: `Tape reading agrees with the other one only as ${evidence.read.meant}.`,
          effect: `It spoils the antenna height of ${evidence.setup.setup.name}.`,
          action: `If you read ${evidence.read.meant}, write it so.`,
          rests: [{ message: 'The other reading.', place: evidence.read.other.measured.place }],
          causes: [`reading-unit/${evidence.setup.setup.name}`],
        },
  mend: (evidence) => ('read' in evidence ? readingFixes(evidence.place, [evidence.read.meant]) : []),
});

/** Of two readings that disagree each could be the wrong one; the first that another unit puts right is told. */
const readings = ({ derivation }: Subject) => readingsAt(valuesOf(derivation.setups));

const readingsAt = foundInEach((setup: SetupValues): Evidence[] =>
  setup.height.groups.flatMap((group) => {
    const [read] = group.readings.flatMap((reading) => reunited(group.readings, reading) ?? []);
    return read ? [{ read, setup, place: placeOfLength(read.reading) }] : [];
  }),
);

const keyed = ({ session, derivation }: Subject): Evidence[] =>
  keyedDifferences(session, derivation)
    .filter(({ named }) => named?.slip.code === CODE)
    .map((difference) => ({ keyed: difference, place: difference.place }));
