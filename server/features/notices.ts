/** The findings of a session as an editor shows them: stretches of the text with a severity, a sentence and what it rests on. */
import type { Finding, Severity } from '../findings/finding.ts';
import { belowHeadline } from '../findings/saying.ts';
import type { Inspection } from '../inspect.ts';
import type { Session } from '../session/session.ts';
import { offsetsOf } from '../session/where.ts';
import type { Stretch } from './cursor.ts';

export interface Notice {
  readonly at: Stretch;
  readonly code: string;
  readonly severity: Severity;
  readonly headline: string;
  /** What follows and what to do; empty where the headline says all. */
  readonly below: string;
  readonly related: readonly { readonly at: Stretch; readonly message: string }[];
}

/** At places of the session's own file; what is wrong in another one is shown where this one asks for it. */
export function noticesOf({ session, findings }: Inspection): Notice[] {
  return findings.flatMap((finding) => noticeOf(finding, session) ?? []);
}

function noticeOf(finding: Finding, session: Session): Notice | null {
  const { code, severity, headline, place } = finding;
  const own = place.path === session.document.path;
  const use = own ? place : session.used.find(({ path }) => path === place.path)?.place;
  const at = use ? offsetsOf(session, use) : null;
  if (!at) return null;
  const rests = [...(own ? [] : [{ place, headline }]), ...finding.related];
  const related = rests.flatMap(({ place: other, headline: told }) => {
    const stretch = offsetsOf(session, other);
    return stretch ? [{ at: stretch, message: told }] : [];
  });
  return { at, code, severity, headline, below: belowHeadline(finding), related };
}
