/** A refusal: what a function answers, in one clear sentence, where it will not guess a value. */

export interface Refusal {
  /** The reason, as a sentence that a surveyor can act on. */
  readonly refused: string;
}

export const refuse = (sentence: string): Refusal => ({ refused: sentence });

export const isRefusal = (answer: unknown): answer is Refusal =>
  typeof answer === 'object' && answer !== null && typeof (answer as Partial<Refusal>).refused === 'string';
