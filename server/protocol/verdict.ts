/** The verdict of a session beside its findings, for clients that ask for it when they start with `{ verdict: true }`. */
import type { Connection, InitializeParams } from 'vscode-languageserver';
import type { Severity } from '../findings/finding.ts';
import type { Inspection } from '../inspect.ts';
import { verdictOf } from '../record/verdict.ts';
import type { OpenSession } from './open-sessions.ts';

/** The notification that carries a `ToldVerdict`; sent with the findings, and only where it says something new. */
const VERDICT = 'tribrach/verdict';

export interface ToldVerdict {
  readonly uri: string;
  /** The class of the day's trust, or `no-day` where no base is set up. */
  readonly state: string;
  /** One sentence; null where no base is set up. */
  readonly verdict: string | null;
  /** What to do next; null where nothing is left to do. */
  readonly next: string | null;
  /** How many findings there are of each severity. */
  readonly findings: Readonly<Record<Severity, number>>;
}

export function tellVerdicts(
  connection: Connection,
  { initializationOptions }: InitializeParams,
): (session: OpenSession, inspection: Inspection) => void {
  const asked = (initializationOptions ?? {}) as Readonly<Record<string, unknown>>;
  if (asked['verdict'] !== true) return () => undefined;
  const told = new WeakMap<OpenSession, string>();
  return (session, inspection) => {
    const verdict = toldVerdict(session.address, inspection);
    const now = JSON.stringify(verdict);
    if (told.get(session) === now) return;
    told.set(session, now);
    void connection.sendNotification(VERDICT, verdict);
  };
}

function toldVerdict(uri: string, inspection: Inspection): ToldVerdict {
  const { day, sentence, next } = verdictOf(inspection);
  const findings = { error: 0, warning: 0, information: 0, hint: 0 };
  for (const { severity } of inspection.findings) findings[severity] += 1;
  return { uri, state: day ?? 'no-day', verdict: sentence, next, findings };
}
