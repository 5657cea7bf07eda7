/** The fixes of the findings that touch a stretch of the text, as changes of text that the user may choose. */
import type { Finding } from '../findings/finding.ts';
import type { Inspection } from '../inspect.ts';
import { offsetsOf } from '../session/where.ts';
import type { TextChange } from './trial.ts';

export interface Change {
  readonly title: string;
  readonly edits: readonly TextChange[];
  /** The finding that the change puts right. */
  readonly finding: Finding;
  /** The only one that this finding offers. */
  readonly only: boolean;
}

export function changesFor({ session, findings }: Inspection, start: number, end: number): Change[] {
  return findings
    .filter((finding) => {
      const at = offsetsOf(session, finding.place);
      return at?.path === session.document.path && at.start <= end && start <= at.end;
    })
    .flatMap((finding) =>
      finding.fixes.map(({ title, edits }) => ({
        title,
        finding,
        only: finding.fixes.length === 1,
        edits: edits.flatMap(({ place, text }) => {
          const at = offsetsOf(session, place);
          return at ? [{ at, text }] : [];
        }),
      })),
    );
}
