/** The line that a reviewer puts at the end of a session. */
import { sealOf, writtenSeal } from '../../session/seal.ts';
import type { Files } from '../../session/files.ts';
import type { Session } from '../../session/session.ts';

/** @param by who reviewed; @param date when, `YYYY-MM-DD`; reasons where the session cannot be sealed as it stands */
export function reviewLine(
  session: Session,
  files: Files,
  by: string,
  date: string,
): string | { readonly unsealed: readonly string[] } {
  const seal = sealOf(session, files);
  if ('unsealed' in seal) return seal;
  const name = by.replaceAll('"', '""').replace(/[\r\n]+/g, ' ');
  return `review "${name}" ${date} seal ${writtenSeal(seal)}\n`;
}
