/** Findings of one kind mended together, and those mended that are understood all the same; only where there is but one way to. */
import type { Finding } from '../findings/finding.ts';
import type { Inspection } from '../inspect.ts';
import type { Files } from '../session/files.ts';
import { offsetsOf } from '../session/where.ts';
import { inspectedAfter, sameValues, type TextChange } from './trial.ts';

export interface MendAll {
  readonly code: string;
  readonly title: string;
  readonly edits: readonly TextChange[];
  readonly findings: readonly Finding[];
}

/** Null where fewer than two of this kind can be mended in one way each. */
export function mendAllOf(code: string, { session, findings }: Inspection): MendAll | null {
  const { mended, edits } = together(
    findings.filter((finding) => finding.code === code),
    session,
  );
  if (mended.length < 2) return null;
  return { code, title: `Mend all ${mended.length} of ${code} in this file`, edits, findings: mended };
}

/**
 * What may be mended without asking about each: how a thing is written that is understood already, which is what a hint
 * with a single fix is about; and only where no derived value becomes another one.
 */
export function safeMends(inspection: Inspection, files: Files): readonly TextChange[] {
  const hints = inspection.findings.filter(({ severity }) => severity === 'hint');
  const { edits } = together(hints, inspection.session);
  return edits.length > 0 && sameValues(inspection, inspectedAfter(inspection, files, edits)) ? edits : [];
}

/** The edits of single fixes in the session's own file, without those that would touch the ones before them. */
function together(findings: readonly Finding[], session: Inspection['session']) {
  const mended: Finding[] = [];
  const edits: TextChange[] = [];
  for (const finding of findings) {
    const [fix, ...others] = finding.fixes;
    if (!fix || others.length > 0) continue;
    const own = fix.edits.flatMap(({ place, text }) => {
      const at = offsetsOf(session, place);
      return at?.path === session.document.path ? [{ at, text }] : [];
    });
    const isFree = own.every((edit) => edits.every((known) => !touches(edit, known)));
    if (own.length < fix.edits.length || !isFree) continue;
    mended.push(finding);
    edits.push(...own);
  }
  return { mended, edits };
}

const touches = ({ at }: TextChange, { at: known }: TextChange) =>
  at.start <= known.end && known.start <= at.end;
