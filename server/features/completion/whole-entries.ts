/** Whole entries with a stop for each value, in the way snippets are written; what is not filled in stays a hole. */
import SNIPPETS from '../../../grammar/snippets.json' with { type: 'json' };
import type { Offer } from './completion.ts';

export interface WholeEntry {
  readonly name: string;
  readonly says: string;
  readonly body: string;
}

/** Those that open with the word that is offered. @param withTime the editor itself puts in what time it is */
export const wholeEntriesFor = (
  { kind, label }: Pick<Offer, 'kind' | 'label'>,
  withTime = false,
): readonly WholeEntry[] =>
  kind === 'entry' ? (withTime ? ALL : TIMELESS).filter(({ prefix }) => prefix === label) : [];

/** Not every editor knows what time it is. */
const withoutClock = (body: string) => body.replace(/\$\{(\d+):\$CURRENT[^}]*\}/g, '${$1:?}');

const ALL = Object.entries(SNIPPETS).map(([name, { prefix, description, body }]) => ({
  name,
  prefix,
  says: description,
  body: body.join('\n'),
}));
const TIMELESS = ALL.map((entry) => ({ ...entry, body: withoutClock(entry.body) }));
