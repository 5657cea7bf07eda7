/** The program itself failed over a part of the session: told like any other finding, so that the rest can be believed. */
import type { Fault } from '../../../grammar/fault.ts';
import type { Entry, Line, Place } from '../../../grammar/tree.ts';
import { trustOf } from '../../derive/trust/trust.ts';
import type { AnyFindingKind, Reported, Subject } from '../finding.ts';
import { inOneText, type Saying } from '../saying.ts';
import { remarksAbout } from '../syntax/remarks.ts';

export const PROGRAM_FAULT = 'program/fault';

/** No session brings it about, as far as anybody knows; what cannot be told keeps the day from looking right. */
export function programFault({ fault, place }: Fault, { session }: Subject): Reported {
  return {
    code: PROGRAM_FAULT,
    severity: 'error',
    ...faultSaying(fault),
    place: place ?? opening(session.document),
    fixes: [],
  };
}

export const faultSaying = (fault: string): Saying => ({
  headline: 'Tribrach failed over this part: a fault in tribrach itself.',
  effect: 'What rests on it is not computed; all else is.',
  action: `Report it with these lines (${fault}).`,
});

export const faultMessage = (fault: string) => inOneText(faultSaying(fault));

/** Faults of reading, which are remarked where they stand, and of judging the day. */
export const programFaults: AnyFindingKind = {
  code: PROGRAM_FAULT,
  report: (subject) => {
    const { fault } = trustOf(subject.session, subject.derivation);
    return [
      ...remarksAbout(subject, 'fault').map(({ because, place }) => ({ fault: because, place })),
      ...(fault === null ? [] : [{ fault, place: null }]),
    ].map((one) => programFault(one, subject));
  },
};

/** Of what nobody can place, the first line. */
function opening({ path, entries }: Subject['session']['document']): Place {
  const entry = entries[0] ?? NO_ENTRY;
  return { path, entry, start: entry.header.start, end: entry.header.end };
}

const NO_LINE: Line = { start: 0, end: 0, word: null, items: [], comment: null, indented: false };
const NO_ENTRY: Entry = { text: '', header: NO_LINE, details: [], slips: [] };
