/** What is worked out when somebody first asks for it, and not again. */
export function once<Answer>(work: () => Answer): () => Answer {
  let todo: (() => Answer) | null = work;
  let answer: Answer;
  return () => {
    if (todo) {
      answer = todo();
      // What the work was made from need not be kept any longer.
      todo = null;
    }
    return answer;
  };
}
