/** A message that a rover needs beside the observations, or the observations themselves, left out of a stream. */
import type { Place } from '../../../grammar/tree.ts';
import type { StreamValues } from '../../derive/link/stream.ts';
import { kind, type Severity } from '../finding.ts';
import { addedDetail } from '../edits.ts';
import { isPlan } from './plans.ts';
import { unreadIn } from '../unread.ts';

interface Missing {
  readonly place: Place;
  readonly values: StreamValues;
  readonly severity: Severity;
  readonly headline: string;
  readonly effect: string;
  readonly action: string;
  /** The message to plan, with its interval. */
  readonly plan: string | null;
}

export const streamMissingMessage = kind<Missing>({
  code: 'stream/missing-message',
  find: ({ derivation }) =>
    derivation.link.streams.flatMap((values) => (values.messages.length > 0 ? missingFrom(values) : [])),
  tell: ({ severity, headline, effect, action, values }) => ({
    severity,
    headline,
    effect,
    action,
    follows: unreadIn(values.stream, 'message'),
  }),
  mend: ({ plan, values: { stream, name } }, subject) =>
    plan !== null && isPlan(subject, name)
      ? [
          {
            title: `Plan ${plan}`,
            edits: [addedDetail(stream.place.path, stream.entry, 'message', plan)],
          },
        ]
      : [],
});

function missingFrom(values: StreamValues): Missing[] {
  const { stream, name, messages } = values;
  const { place } = stream;
  const observations = messages.filter(({ purpose }) => purpose === 'observations');
  if (observations.length === 0)
    return [
      {
        ...{ place, values, plan: null, severity: 'warning' },
        headline: `No observations in the stream from ${name}.`,
        effect: 'A rover has nothing to correct with.',
        action: 'Send 1077, 1087, … or 1004, 1012.',
      },
    ];
  const found: Missing[] = [];
  const glonass = observations.find(({ constellation }) => constellation === 'GLONASS');
  if (glonass && !messages.some(({ purpose }) => purpose === 'biases'))
    found.push({
      ...{ values, severity: 'warning', plan: '1230 every 10 s' },
      place: glonass.message.place,
      headline: `GLONASS without biases (1230) in the stream from ${name}.`,
      effect: 'A rover of another make cannot fix GLONASS.',
      action: 'Send 1230 every 10 s.',
    });
  if (!messages.some(({ purpose }) => purpose === 'equipment'))
    found.push({
      ...{ place, values, severity: 'information', plan: '1033 every 10 s' },
      headline: `No antenna message in the stream from ${name} (1007, 1008 or 1033).`,
      effect: 'Rovers cannot apply its calibration; heights may be off.',
      action: 'Send 1033 every 10 s.',
    });
  return found;
}
