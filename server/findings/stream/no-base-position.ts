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
    message: `The stream from ${values.name} has no station position: without message 1005 or 1006 a rover does not know where the base is, and cannot use its observations. 1006 carries the antenna height as well; one in ten seconds is usual (common practice).`,
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
