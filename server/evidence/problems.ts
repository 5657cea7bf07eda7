/** What is wrong in a piece of evidence, in a sentence and with its place. */

/** One thing that is wrong, at a line (from 1) of a text or at a byte (from 0) of a binary file. */
export interface EvidenceProblem {
  readonly sentence: string;
  readonly line?: number;
  readonly offset?: number;
  /** How many others this one stands for, where it counts those that are not listed. */
  readonly unlisted?: number;
}

/** A list that stops growing: a file that is wrong throughout must not fill the memory. */
export interface ProblemList {
  readonly add: (problem: EvidenceProblem) => void;
  /** The first ones, and a last sentence that counts the rest. */
  readonly listed: () => readonly EvidenceProblem[];
}

export function problemList(most = 100): ProblemList {
  const problems: EvidenceProblem[] = [];
  let unlisted = 0;
  return {
    add(problem) {
      if (problems.length < most) problems.push(problem);
      else unlisted += 1;
    },
    listed: () =>
      unlisted === 0
        ? [...problems]
        : [...problems, { sentence: `${unlisted} more problems are not listed.`, unlisted }],
  };
}

/** A piece of the file as it may be quoted in a sentence. */
export function clipped(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
