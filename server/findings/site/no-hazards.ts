/** A day at a site without a word on what could hurt somebody there; a reminder, said once. */
import { kind } from '../finding.ts';
import { unreadEntry } from '../unread.ts';

export const siteNoHazards = kind({
  code: 'site/no-hazards',
  find: ({ session }) => {
    const [setup] = session.setups.values();
    if (!session.job || !setup || session.hazards.length > 0) return [];
    const word = setup.entry.header.word;
    return [{ place: word ? { ...setup.place, start: word.start, end: word.end } : setup.place }];
  },
  tell: () => ({
    severity: 'hint',
    follows: unreadEntry('hazard'),
    headline: 'No hazard of the site is noted.',
    effect: 'A reminder only: local rules and the person in charge of the site decide.',
  }),
});
