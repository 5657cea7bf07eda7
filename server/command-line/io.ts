/** What a command may do to the world: print, complain, read standard input, and choose its exit status. */

export interface Io {
  /** To standard output; a command prints its answer whole or not at all. */
  readonly print: (text: string) => void;
  /** To standard error. */
  readonly complain: (text: string) => void;
  readonly readInput: () => Promise<Uint8Array>;
  readonly exitWith: (status: ExitStatus) => void;
  /** Standard output is a terminal that shows colours, and nobody has asked for none. */
  readonly colours: boolean;
  /** Columns that a line of text may take. */
  readonly width: number;
}

/** 0: nothing at or above the asked severity · 1: something, or less than was required · 2: could not run. */
export type ExitStatus = 0 | 1 | 2;

/** The reasons why a command cannot run, each a sentence for a person. */
export class CannotRun extends Error {
  constructor(readonly reasons: readonly string[]) {
    super(reasons.join('\n'));
  }
}
