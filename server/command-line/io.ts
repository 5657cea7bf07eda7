/** What a command may do to the world: print, complain, read standard input, and choose its exit status. */

export interface Io {
  /** To standard output; a command prints its answer whole or not at all. */
  readonly print: (text: string, as?: Printed) => void;
  /** To standard error. */
  readonly complain: (text: string) => void;
  readonly readInput: () => Promise<Uint8Array>;
  readonly exitWith: (status: ExitStatus) => void;
  /** Standard output is a terminal that shows colours, and nobody has asked for none. */
  readonly colours: boolean;
  /** Standard output is a terminal, which could be steered by what it shows. */
  readonly terminal: boolean;
  /** Columns that a line of text may take. */
  readonly width: number;
  /** Somebody watches standard error on a terminal. */
  readonly watched: boolean;
  /** The bundled program, to start threads of it; null where there is none. */
  readonly program: string | null;
  /** Where answers may be kept from one run to the next; null for nowhere. */
  readonly cache: string | null;
}

/** For people; for programs that read JSON; or a file's own text, which a program takes as it is and a terminal is kept from. */
export type Printed = 'text' | 'json' | 'file';

/** 0: nothing at or above the asked severity · 1: something, or less than was required · 2: could not run. */
export type ExitStatus = 0 | 1 | 2;

/** The reasons why a command cannot run, each a sentence for a person. */
export class CannotRun extends Error {
  constructor(readonly reasons: readonly string[]) {
    super(reasons.join('\n'));
  }
}
