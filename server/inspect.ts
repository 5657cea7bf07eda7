/** The whole program in a few lines: a session's text becomes a tree, a session, values, and findings. */
import { editDocument, startOf, type Document } from '../grammar/document.ts';
import { deriveSession, type Derivation } from './derive/derivation.ts';
import type { Edit, Finding, Subject } from './findings/finding.ts';
import { findingsOf } from './findings/findings.ts';
import type { Files } from './session/files.ts';
import { sessionOf, type Session } from './session/session.ts';

export interface Inspection {
  readonly session: Session;
  readonly derivation: Derivation;
  readonly findings: readonly Finding[];
}

/** Never fails; what cannot be derived is a hole, and the findings say why. They are looked for when somebody asks. */
export function inspect(document: Document, files: Files): Inspection {
  const session = sessionOf(document, files);
  return new Inspected(session, deriveSession(session, files), files);
}

class Inspected implements Inspection {
  private found: readonly Finding[] | null = null;
  readonly #files: Files;

  constructor(
    readonly session: Session,
    readonly derivation: Derivation,
    files: Files,
  ) {
    this.#files = files;
  }

  get findings(): readonly Finding[] {
    const { session, derivation } = this;
    const mended = (edits: readonly Edit[]) => mendedBy(edits, session, this.#files);
    return (this.found ??= findingsOf({ session, derivation, mended }));
  }
}

/** What the session would be after these edits of its own file; null where one of them is of another. */
function mendedBy(edits: readonly Edit[], { document }: Session, files: Files): Subject | null {
  const placed = edits.map(({ place, text }) => ({ place, text, start: startOf(document, place) }));
  let changed = document;
  for (const { place, text, start } of placed.sort((one, other) => at(other) - at(one))) {
    if (start === null || place.path !== document.path) return null;
    changed = editDocument(changed, start + place.start, start + place.end, text);
  }
  const session = sessionOf(changed, files);
  return { session, derivation: deriveSession(session, files) };
}

const at = ({ start, place }: { readonly start: number | null; readonly place: Edit['place'] }) =>
  (start ?? 0) + place.start;
