/** Events without a time: they may have come between any two checks, so that no part of the day is bracketed. */
import { foundInEach } from '../../session/each.ts';
import type { Event } from '../../session/entries.ts';
import type { Place } from '../../../grammar/tree.ts';
import { kind } from '../finding.ts';
import { unreadEntry } from '../unread.ts';

export const eventNoTime = kind({
  code: 'event/no-time',
  find: ({ session }) => undated(session.events),
  tell: ({ what, on }) => ({
    severity: 'warning',
    headline: `No time is noted for the ${what}.`,
    effect: `It may have come between any two checks, so nothing${on ? ` from ${on}` : ''} is bracketed.`,
    action: 'Find out when, and write it: at 11:10.',
    follows: unreadEntry('event'),
  }),
});

/** One that is still open, or that no clock shows, is told as that. */
const undated = foundInEach(({ at, what, on, entry, place }: Event) =>
  at === null ? [{ what, on: on?.name ?? null, place: wordPlace(entry, place) }] : [],
);

function wordPlace(entry: Event['entry'], place: Place): Place {
  const word = entry.header.items[0];
  return word ? { ...place, start: word.start, end: word.end } : place;
}
