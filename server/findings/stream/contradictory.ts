/** Messages of one stream that carry the same constellation twice, in two forms, or that are listed twice. */
import type { Place } from '../../../grammar/tree.ts';
import type { MessageValues, StreamValues } from '../../derive/link/stream.ts';
import { kind } from '../finding.ts';

interface Twice {
  readonly place: Place;
  readonly values: StreamValues;
  readonly first: MessageValues;
  readonly second: MessageValues;
}

export const streamContradictory = kind<Twice>({
  code: 'stream/contradictory',
  find: ({ derivation }) => derivation.link.streams.flatMap(twiceIn),
  tell: ({ values, first, second }) => {
    const [one, other] = [first.message.number.name, second.message.number.name];
    const what =
      one === other
        ? `${one} is listed twice`
        : `${second.constellation ?? 'One constellation'} is sent twice, as ${one} and ${other}`;
    return {
      severity: 'warning',
      headline: `${what} (stream from ${values.name}).`,
      effect: 'Rovers differ in which one they use.',
      action: 'Leave one out.',
      rests: [{ message: `${one} is listed here.`, place: first.message.place }],
    };
  },
});

function twiceIn(values: StreamValues): Twice[] {
  const seen = new Map<string, MessageValues>();
  return values.messages.flatMap((message) => {
    const key =
      message.purpose === 'observations' && message.constellation
        ? message.constellation
        : message.message.number.name;
    const first = seen.get(key);
    if (key === '') return [];
    if (!first) {
      seen.set(key, message);
      return [];
    }
    return [{ place: message.message.place, values, first, second: message }];
  });
}
