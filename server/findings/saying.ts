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
  const { headline, effect = '', action = '' } = said.headline === undefined ? parted(said.message) : said;
  return { headline: endedOnce(headline), effect: endedOnce(effect), action: endedOnce(action) };
}

function parted(message: string): Pick<Saying, 'headline' | 'effect'> & { readonly action?: undefined } {
  const [headline = '', ...others] = message.split(/(?<=[.?]) (?=\p{Lu})/u);
  return { headline, effect: others.join(' ') };
}

/** A reason that is a sentence, and a name that ends with a full stop, stand before another one of ours. */
const endedOnce = (text: string) => text.replace(/(?<!\.)\.\.(?=\s|$)/gu, '.');

/** All parts in one paragraph. */
export const inOneText = ({ headline, effect, action }: Saying) => joined(headline, effect, action);

/** What stands below a headline. */
export const belowHeadline = ({ effect, action }: Pick<Saying, 'effect' | 'action'>) =>
  joined(effect, action);

export const joined = (...parts: readonly string[]) => parts.filter((part) => part !== '').join(' ');
