/** The largest and the smallest of a list of any length: as arguments of a function very many numbers do not fit. */

/** @param least the answer where nothing is larger, as of an empty list */
export function largestOf(numbers: Iterable<number>, least = -Infinity): number {
  let largest = least;
  for (const number of numbers) largest = Math.max(largest, number);
  return largest;
}

/** @param most the answer where nothing is smaller, as of an empty list */
export function smallestOf(numbers: Iterable<number>, most = Infinity): number {
  let smallest = most;
  for (const number of numbers) smallest = Math.min(smallest, number);
  return smallest;
}
