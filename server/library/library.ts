/**
 * The program as a library: the text of a session and its other files go in, and plain data comes out, in the shapes of the
 * JSON outputs. What is exported here is the interface; `INTERFACE_VERSION` counts up when a field changes its meaning or goes.
 */
import { openDocument } from '../../grammar/document.ts';
import { pointCounts } from '../derive/repair/points-counts.ts';
import { trustOf } from '../derive/trust/trust.ts';
import { inspect as inspectDocument } from '../inspect.ts';
import { findingsJson } from '../record/machine/findings-json.ts';
import { valuesJson } from '../record/machine/values-json.ts';
import { verdictOf } from '../record/verdict.ts';
import { givenFiles } from './given-files.ts';

export const INTERFACE_VERSION = 1;

export interface InspectOptions {
  /** What the session's file is called, `/` between folders; paths in the session are seen from there. */
  readonly path?: string;
  /** Other files that the session names, by their path from the same folder that `path` starts in. No other file is read. */
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
}

export interface Inspected {
  readonly interface: 1;
  readonly verdict: Verdict;
  /** The session first, then files that it uses and that something was found in. */
  readonly files: readonly { readonly path: string; readonly findings: readonly Finding[] }[];
  readonly values: readonly Value[];
  readonly points: readonly PointSet[];
}

export interface Verdict {
  /** What the day is worth; null where no base is set up. */
  readonly day:
    | 'bracketed'
    | 'held'
    | 'not-closed'
    | 'not-opened'
    | 'position-only'
    | 'height-only'
    | 'unchecked'
    | 'in-doubt'
    | null;
  readonly sentence: string | null;
  /** What nobody wrote down and the checks that pass rest on. */
  readonly assumed: string | null;
  /** What to do first; null where nothing is left to do. */
  readonly next: string | null;
}

/** Lines and columns count from 1, columns in UTF-16 units; the end is behind the last character. */
export interface Stretch {
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

export interface Finding extends Stretch {
  /** Stays for good, for example `height/extension`. */
  readonly code: string;
  readonly severity: string;
  readonly headline: string;
  readonly effect: string;
  readonly action: string;
  /** The three in one text. */
  readonly message: string;
  /** What follows from it. */
  readonly related: readonly {
    readonly code: string;
    readonly headline: string;
    readonly message: string;
    readonly line: number;
    readonly column: number;
  }[];
  /** Edits that would mend it; several fixes exclude one another. */
  readonly fixes: readonly {
    readonly title: string;
    readonly edits: readonly (Stretch & { readonly text: string })[];
  }[];
}

/** SI units and degrees, full precision. */
export interface Value {
  /** Stays for good, for example `setup/BASE/tell/height`. */
  readonly id: string;
  /** Null where it cannot be derived; the story then says why. */
  readonly value: number | null;
  readonly unit: string | null;
  /** Standard uncertainty. */
  readonly sigma: number | null;
  readonly line: number;
  readonly story: string;
}

export interface PointSet {
  readonly name: string;
  readonly total: number;
  /** How many points stand in each class. */
  readonly classes: Readonly<Record<string, number>>;
  /** Why the points cannot be read; null where they can. */
  readonly refused: string | null;
}

/** Never throws over what a session says: what is wrong in it is a finding. */
export function inspect(text: string, options: InspectOptions = {}): Inspected {
  const { path = 'session.trib', files = {} } = options;
  const inspection = inspectDocument(openDocument(path, text), givenFiles(files));
  const { session, derivation } = inspection;
  const { day, sentence, assumed, next } = verdictOf(inspection);
  const trust = derivation.points.length > 0 ? trustOf(session, derivation) : null;
  return {
    interface: INTERFACE_VERSION,
    verdict: { day, sentence, assumed, next },
    files: findingsJson(inspection).files,
    values: valuesJson([inspection]).files.flatMap(({ values }) => values),
    points: derivation.points.flatMap((set) => {
      if (!trust) return [];
      const { total, classes, refused } = pointCounts(set, session, derivation, trust);
      return [{ name: set.name, total, classes, refused }];
    }),
  };
}
