/** What a finding says, in the order in which somebody reads it: the fault with its number, what follows, what to do. */

export interface Saying {
  /** One clause of at most some twelve words that is right on its own: the thing, the fault, the number. */
  readonly headline: string;
  /** What follows from it, and the numbers that it rests on; empty where the headline says all. */
  readonly effect: string;
  /** What to do, as an order with the number in it; empty where nothing is to be done. */
  readonly action: string;
}

/** What a kind of finding gives: the parts, or all of it as one text whose first sentence is the headline. */
export type Sayable =
  (Pick<Saying, 'headline'> & Partial<Saying>) | { readonly message: string; readonly headline?: undefined };

export function sayingOf(said: Sayable): Saying {
  if (said.headline !== undefined)
    return { headline: said.headline, effect: said.effect ?? '', action: said.action ?? '' };
  const [headline = '', ...others] = said.message.split(/(?<=[.?]) (?=\p{Lu})/u);
  return { headline, effect: others.join(' '), action: '' };
}

/** All parts in one paragraph. */
export const inOneText = ({ headline, effect, action }: Saying) => joined(headline, effect, action);

/** What stands below a headline. */
export const belowHeadline = ({ effect, action }: Pick<Saying, 'effect' | 'action'>) =>
  joined(effect, action);

export const joined = (...parts: readonly string[]) => parts.filter((part) => part !== '').join(' ');
