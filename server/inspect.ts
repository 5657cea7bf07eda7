/** The whole program in a few lines: a session's text becomes a tree, a session, values, and findings. */
import type { Document } from '../grammar/document.ts';
import { deriveSession, type Derivation } from './derive/derivation.ts';
import type { Finding } from './findings/finding.ts';
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
  return new Inspected(session, deriveSession(session, files));
}

class Inspected implements Inspection {
  private found: readonly Finding[] | null = null;

  constructor(
    readonly session: Session,
    readonly derivation: Derivation,
  ) {}

  get findings(): readonly Finding[] {
    return (this.found ??= findingsOf(this));
  }
}
