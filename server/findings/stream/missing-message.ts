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
  readonly message: string;
  /** The message to plan, with its interval. */
  readonly plan: string | null;
}

export const streamMissingMessage = kind<Missing>({
  code: 'stream/missing-message',
  find: ({ derivation }) =>
    derivation.link.streams.flatMap((values) => (values.messages.length > 0 ? missingFrom(values) : [])),
  tell: ({ severity, message, values }) => ({
    severity,
    message,
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
        message: `The stream from ${name} carries no observations (1077, 1087, … or 1004, 1012), so a rover has nothing to correct with.`,
      },
    ];
  const found: Missing[] = [];
  const glonass = observations.find(({ constellation }) => constellation === 'GLONASS');
  if (glonass && !messages.some(({ purpose }) => purpose === 'biases'))
    found.push({
      ...{ values, severity: 'warning', plan: '1230 every 10 s' },
      place: glonass.message.place,
      message: `The stream from ${name} carries GLONASS observations and no biases (1230): a rover of another make then cannot fix the GLONASS ambiguities, or fixes them wrongly.`,
    });
  if (!messages.some(({ purpose }) => purpose === 'equipment'))
    found.push({
      ...{ place, values, severity: 'information', plan: '1033 every 10 s' },
      message: `The stream from ${name} does not say which antenna the base has (1007, 1008 or 1033), so a rover cannot apply its calibration: heights are off by what the phase centre differs from what the rover assumes.`,
    });
  return found;
}
