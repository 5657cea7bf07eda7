/** Findings as JSON: stable codes, lines and columns counted from 1 in UTF-16 units, and every edit of every fix. */
import type { Finding } from '../../findings/finding.ts';
import type { Inspection } from '../../inspect.ts';
import { whereIs, type Where } from '../../session/where.ts';
import type { Place } from '../../../grammar/tree.ts';

export interface FindingsJson {
  readonly files: readonly { readonly path: string; readonly findings: readonly FindingJson[] }[];
}

interface FindingJson extends Stretch {
  readonly code: string;
  readonly severity: string;
  readonly headline: string;
  readonly effect: string;
  readonly action: string;
  /** The three in one text. */
  readonly message: string;
  readonly related: readonly {
    readonly code: string;
    readonly headline: string;
    readonly message: string;
    readonly line: number;
    readonly column: number;
  }[];
  readonly fixes: readonly {
    readonly title: string;
    readonly edits: readonly (Stretch & { text: string })[];
  }[];
}

type Stretch = Omit<Where, 'path'>;

/** A finding is listed under the file that it stands in, which may be one that a session only uses. */
export function findingsJson(inspection: Inspection): FindingsJson {
  const files = new Map<string, FindingJson[]>([[inspection.session.document.path, []]]);
  for (const finding of inspection.findings) {
    const { path } = finding.place;
    files.set(path, [...(files.get(path) ?? []), findingJson(finding, inspection)]);
  }
  return { files: [...files].map(([path, findings]) => ({ path, findings })) };
}

/** Sessions one after the other, and then the files that they use; what several find in one of those is said once. */
export function mergedFindings(parts: readonly FindingsJson[]): FindingsJson {
  const files = new Map<string, Map<string, FindingJson>>();
  for (const part of parts) for (const { path } of part.files.slice(0, 1)) files.set(path, new Map());
  for (const part of parts) {
    for (const { path, findings } of part.files) {
      const listed = files.get(path) ?? new Map<string, FindingJson>();
      files.set(path, listed);
      for (const finding of findings) listed.set(JSON.stringify(finding), finding);
    }
  }
  return { files: [...files].map(([path, findings]) => ({ path, findings: [...findings.values()] })) };
}

function findingJson(finding: Finding, { session }: Inspection): FindingJson {
  const { code, severity, headline, effect, action, message, related, fixes } = finding;
  return {
    code,
    severity,
    headline,
    effect,
    action,
    message,
    ...stretch(finding.place),
    related: related.map((one) => {
      const { line, column, path } = whereIs(session, one.place);
      const inFile = (told: string) => (path === finding.place.path ? told : `${path}: ${told}`);
      return {
        code: one.code,
        headline: inFile(one.headline),
        message: inFile(one.message),
        line,
        column,
      };
    }),
    fixes: fixes.map(({ title, edits }) => ({
      title,
      edits: edits.map(({ place, text }) => ({ ...stretch(place), text })),
    })),
  };

  function stretch(place: Place): Stretch {
    const { line, column, endLine, endColumn } = whereIs(session, place);
    return { line, column, endLine, endColumn };
  }
}
