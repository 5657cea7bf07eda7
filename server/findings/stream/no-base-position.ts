/** Corrections without the position of the base, which a rover cannot use. */
import { kind } from '../finding.ts';
import { addedDetail } from '../edits.ts';
import { isPlan } from './plans.ts';
import { unreadIn } from '../unread.ts';

export const streamNoBasePosition = kind({
  code: 'stream/no-base-position',
  find: ({ derivation }) =>
    derivation.link.streams
      .filter(
        ({ messages }) => messages.length > 0 && !messages.some(({ purpose }) => purpose === 'position'),
      )
      .map((values) => ({ values, place: values.stream.place })),
  tell: ({ values }) => ({
    severity: 'warning',
    follows: unreadIn(values.stream, 'message'),
    headline: `No base position in the stream from ${values.name} (1005 or 1006).`,
    effect: 'Rovers cannot work without it.',
    action: 'Send 1006 every 10 s (common practice).',
  }),
  mend: ({ values: { stream, name } }, subject) =>
    isPlan(subject, name)
      ? [
          {
            title: 'Plan 1006 every 10 s',
            edits: [addedDetail(stream.place.path, stream.entry, 'message', '1006 every 10 s')],
          },
        ]
      : [],
});
