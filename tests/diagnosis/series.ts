/**
 * Two series of simulated days that share no draw. Whoever works on the diagnosis looks at days of development, as often as
 * they like, and so do the tests; rates are counted over the others, which nobody looks at before the program is as it is.
 * Once they have shown what to mend they are spent, and the word that they are drawn from is changed.
 */
export type Series = 'development' | 'counted';

export const seedOf = (series: Series, what: string, number: number): string =>
  `${series === 'counted' ? 'counted fourth ' : ''}${what} ${String(number)}`;
