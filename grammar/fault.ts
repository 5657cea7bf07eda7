/** Something that went wrong in the program itself: the part that it happened in is told, and everything else stands. */
import type { Place } from './tree.ts';

export interface Fault {
  /** What the program says of it, for whoever mends it; a few words. */
  readonly fault: string;
  /** Null where nobody could tell what it happened over. */
  readonly place: Place | null;
}

export const isFault = (answer: unknown): answer is Fault =>
  typeof answer === 'object' && answer !== null && typeof (answer as Partial<Fault>).fault === 'string';

/** The answer, or what went wrong: the one guard around work that should never fail. */
export function attempted<Answer>(work: () => Answer, place: Place | null = null): Answer | Fault {
  try {
    return work();
  } catch (error) {
    return { fault: saidBy(error), place: error instanceof PlacedError ? error.place : place };
  }
}

/** The error with the place of what it happened over, unless somebody further in knew better. */
export const placed = (error: unknown, place: Place | null): unknown =>
  place === null || error instanceof PlacedError ? error : new PlacedError(error, place);

class PlacedError extends Error {
  constructor(
    cause: unknown,
    readonly place: Place,
  ) {
    super(saidBy(cause), { cause });
  }
}

const ENOUGH = 120;

/** An error may repeat what was typed, however long that is. */
export function saidBy(error: unknown): string {
  const said = error instanceof Error ? error.message || error.name : String(error);
  return said.length > ENOUGH ? `${said.slice(0, ENOUGH)} …` : said;
}
