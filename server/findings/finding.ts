/** What a finding is, and what a kind of finding must be able to do: find evidence, tell it, and where possible mend it. */
import { attempted, isFault } from '../../grammar/fault.ts';
import type { Place } from '../../grammar/tree.ts';
import { unitNamed } from '../../grammar/units.ts';
import type { Derivation } from '../derive/derivation.ts';
import type { Session } from '../session/session.ts';
import { programFault } from './program/fault.ts';
import { sayingOf, type Sayable, type Saying } from './saying.ts';
import { short } from './words.ts';

/** error: a result is wrong or cannot be derived · warning: probably wrong · information: a proof is missing · hint. */
export type Severity = 'error' | 'warning' | 'information' | 'hint';

export const SEVERITIES: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

/** What findings are found in. */
export interface Subject {
  readonly session: Session;
  readonly derivation: Derivation;
  /** The same after these edits; null where they touch another file than the session's own. */
  readonly mended?: (edits: readonly Edit[]) => Subject | null;
}

/** A place that a finding rests on, or a finding that follows from it. */
export interface Related {
  readonly code: string;
  readonly headline: string;
  readonly message: string;
  readonly place: Place;
}

export interface Edit {
  readonly place: Place;
  readonly text: string;
}
/** A change that the user may choose; it never writes a fact. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
}

export interface Finding extends Saying {
  readonly code: string;
  readonly severity: Severity;
  /** Headline, effect and action in one text. */
  readonly message: string;
  readonly place: Place;
  readonly related: readonly Related[];
  readonly fixes: readonly Fix[];
}

/** A finding as its kind tells it, before findings that follow from others are hung under them. */
export type Told = Sayable & Standing;

interface Standing {
  readonly severity: Severity;
  /** A sentence more to the action, or an empty one, of what asks for an explanation: said for as long as nothing is found that explains it. */
  readonly untilExplained?: string | undefined;
  /** Places that the finding rests on, with a word on each. */
  readonly rests?: readonly { readonly message: string; readonly place: Place }[] | undefined;
  /** What this finding is the cause of, as keys such as `keyed/BASE/1/up`. */
  readonly causes?: readonly string[] | undefined;
  /** What this finding follows from; it hangs under a finding that causes any of these. */
  readonly follows?: readonly string[] | undefined;
  /** The time span that the finding is about, when what was wrong has been put right since. */
  readonly past?: { readonly from: number | null; readonly until: number | null } | undefined;
}

/**
 * One kind of finding: `find` gathers structured evidence, `tell` says it, `mend` offers fixes.
 * `code` is stable and names the page beside the kind that explains it.
 */
export interface FindingKind<Evidence extends { readonly place: Place }> {
  readonly code: string;
  readonly find: (subject: Subject) => readonly Evidence[];
  readonly tell: (evidence: Evidence, subject: Subject) => Told;
  readonly mend?: (evidence: Evidence, subject: Subject) => readonly Fix[];
}

/** A finding with all that places it among others. */
export interface Reported extends Saying, Standing {
  readonly code: string;
  readonly place: Place;
  readonly fixes: readonly Fix[];
}

/** A kind whose evidence nobody but itself looks into. */
export interface AnyFindingKind {
  readonly code: string;
  readonly report: (subject: Subject) => readonly Reported[];
}

/** Closes a kind over its evidence, so that kinds can stand in one list. */
export function kind<Evidence extends { readonly place: Place }>(of: FindingKind<Evidence>): AnyFindingKind {
  return {
    code: of.code,
    report: (subject) => {
      const found = of.find(subject);
      return found.map((evidence) => {
        const reported = attempted(() => reportedBy(of, evidence, subject), evidence.place);
        return isFault(reported) ? programFault(reported, subject) : reported;
      });
    },
  };
}

function reportedBy<Evidence extends { readonly place: Place }>(
  of: FindingKind<Evidence>,
  evidence: Evidence,
  subject: Subject,
): Reported {
  const told = of.tell(evidence, subject);
  const { headline, effect, action } = sayingOf(told);
  return {
    code: of.code,
    severity: told.severity,
    headline,
    effect,
    action,
    place: evidence.place,
    untilExplained: told.untilExplained,
    rests: told.rests,
    causes: told.causes,
    follows: told.follows,
    past: told.past,
    fixes: of.mend?.(evidence, subject) ?? [],
  };
}

/** Nothing is run into what stands here but a unit, so that a reading put in its place stays what it is. */
export function standsAlone({ entry: { text }, start, end }: Place): boolean {
  const behind = /^[\p{L}\p{Nd}]*/u.exec(text.slice(end))?.[0] ?? '';
  return !/[\p{L}\p{Nd}.]$/u.test(text.slice(0, start)) && (behind === '' || unitNamed(behind) !== undefined);
}

/** One fix for each reading of what was typed: it changes how a fact is written, and the user picks which. */
export function readingFixes(place: Place, readings: readonly string[]): Fix[] {
  return readings.map((text) => ({
    title: text === '' ? 'Take it out' : `Write ${short(text)}`,
    edits: [{ place, text }],
  }));
}
