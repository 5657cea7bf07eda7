/** The sign over a report: proved, in doubt, or not proved; and what the session is called. */
import { PROOF_CLASSES, trustOf } from '../../derive/trust/trust.ts';
import type { Inspection } from '../../inspect.ts';
import type { Verdict as Sign } from '../drawings/canvas.ts';

/** The sign in words; errors on a day whose checks agree are told apart from a day whose checks do not. */
export function signInWords(inspection: Inspection): string {
  const sign = signOf(inspection);
  if (sign === 'passes') return 'Proved';
  if (sign === 'undecided') return 'Not proved';
  return trustOf(inspection.session, inspection.derivation).day === 'in-doubt'
    ? 'In doubt'
    : 'Something is wrong';
}

/** Errors and failing stretches put a day in doubt; proved is what is bracketed or held. */
export function signOf({ session, derivation, findings }: Inspection): Sign {
  const { day } = trustOf(session, derivation);
  if (day === 'in-doubt' || findings.some(({ severity }) => severity === 'error')) return 'fails';
  return (PROOF_CLASSES.held as readonly string[]).includes(day) ? 'passes' : 'undecided';
}

export const titleOf = ({ session }: Inspection): string =>
  session.job?.title ? session.job.title : session.document.path;
