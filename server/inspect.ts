/** The whole program in a few lines: a session's text becomes a tree, a session, values, and findings. */
import { editDocument, startOf, type Document } from '../grammar/document.ts';
import { attempted, isFault, type Fault } from '../grammar/fault.ts';
import { deriveSession, type Derivation } from './derive/derivation.ts';
import type { Edit, Finding, Subject } from './findings/finding.ts';
import { findingsOf } from './findings/findings.ts';
import { NO_FILES, type Files } from './session/files.ts';
import { emptySession, sessionWithout } from './session/lesser-session.ts';
import { sessionOf, type Session } from './session/session.ts';

export interface Inspection {
  readonly session: Session;
  readonly derivation: Derivation;
  readonly findings: readonly Finding[];
}

/**
 * Never fails; what cannot be derived is a hole, and the findings say why. They are looked for when somebody asks. Where
 * the program itself fails over something, that is a finding as well, and all else is answered.
 */
export function inspect(document: Document, files: Files): Inspection {
  const read = attempted(() => sessionOf(document, files));
  const session = isFault(read) ? emptySession(document) : read;
  const faults = isFault(read) ? [read] : [];
  return new Inspected(session, derived(session, files, faults), faults, files);
}

/** What the program fails over is derived as if it were not noted; each such fault is put to the others. */
function derived(session: Session, files: Files, faults: Fault[]): Subject {
  for (let left = session; ;) {
    const derivation = attempted(() => deriveSession(left, files));
    if (!isFault(derivation))
      return { session: left, derivation: faults.length === 0 ? derivation : partOf(derivation) };
    faults.push(derivation);
    const lesser =
      derivation.place && faults.length < MOST_FAULTS ? sessionWithout(left, derivation.place) : null;
    if (!lesser)
      return { session: left, derivation: partOf(deriveSession(emptySession(session.document), NO_FILES)) };
    left = lesser;
  }
}
const MOST_FAULTS = 8;
const partOf = (derivation: Derivation): Derivation => ({ ...derivation, whole: false });

class Inspected implements Inspection {
  readonly derivation: Derivation;
  private found: readonly Finding[] | null = null;
  readonly #files: Files;

  constructor(
    readonly session: Session,
    private readonly subject: Subject,
    private readonly faults: readonly Fault[],
    files: Files,
  ) {
    this.derivation = subject.derivation;
    this.#files = files;
  }

  get findings(): readonly Finding[] {
    const mended = (edits: readonly Edit[]) => {
      const subject = attempted(() => mendedBy(edits, this.session, this.#files));
      return isFault(subject) ? null : subject;
    };
    return (this.found ??= findingsOf({ ...this.subject, mended }, this.faults));
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
