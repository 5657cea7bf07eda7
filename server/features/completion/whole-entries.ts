/** Whole entries with a stop for each value, in the way snippets are written; what is not filled in stays a hole. */
import SNIPPETS from '../../../grammar/snippets.json' with { type: 'json' };
import type { Offer } from './completion.ts';

export interface WholeEntry {
  readonly name: string;
  readonly says: string;
  readonly body: string;
}

/** Those that open with the word that is offered. */
export const wholeEntriesFor = ({ kind, label }: Pick<Offer, 'kind' | 'label'>): readonly WholeEntry[] =>
  kind === 'entry' ? ALL.filter(({ prefix }) => prefix === label) : [];

/** Not every editor knows what time it is. */
const withoutClock = (line: string) => line.replace(/\$\{(\d+):\$CURRENT[^}]*\}/g, '${$1:?}');

const ALL = Object.entries(SNIPPETS).map(([name, { prefix, description, body }]) => ({
  name,
  prefix,
  says: description,
  body: body.map(withoutClock).join('\n'),
}));
