/** A recording whose messages, or their rates, are not those that the notes say were sent. */
import type { Place } from '../../../grammar/tree.ts';
import type { StreamValues } from '../../derive/link/stream.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { messageTitle } from '../../link/message-size.ts';
import type { MessageCount } from '../../evidence/rtcm3/message-count.ts';
import { isHole } from '../../quantities/value.ts';
import { kind } from '../finding.ts';

interface OtherMessage {
  readonly place: Place;
  readonly file: string;
  readonly headline: string;
}

/** A recording must be this many times as long as a message's interval before its absence means anything. */
const LONG_ENOUGH = 2.5;
/** Intervals that differ by less are the same, seen through a short recording. */
const SAME_INTERVAL = 0.2;

export const captureStreamDiffers = kind<OtherMessage>({
  code: 'capture/stream-differs',
  find: ({ derivation }) =>
    derivation.link.streams.flatMap((stream) => {
      const setup = derivation.setups.get(stream.name);
      return setup ? differences(stream, setup) : [];
    }),
  tell: ({ headline, file }) => ({
    severity: 'information',
    headline,
    effect: `${file} is right.`,
    action: 'Note what it shows, or correct the receiver.',
  }),
});

function differences({ messages }: StreamValues, { captured }: SetupValues): OtherMessage[] {
  const { capture, station, file } = captured ?? {};
  if (!capture || !station || !file || messages.length === 0) return [];
  const seen = new Map([...station.messages, ...capture.stationless].map((count) => [count.number, count]));
  const length = (capture.end ?? 0) - (capture.begin ?? 0);
  const found = messages.flatMap(({ message, number }): OtherMessage[] => {
    if (isHole(message.every)) return [];
    const every = message.every.value;
    const said = difference(seen.get(number), every, length);
    return said === null
      ? []
      : [
          {
            place: message.place,
            file: file.text,
            headline: `Message ${number} is noted every ${every} s; ${said}.`,
          },
        ];
  });
  const noted = new Set(messages.map(({ number }) => number));
  const others = [...seen.keys()].filter((number) => !noted.has(number)).sort((one, other) => one - other);
  if (others.length === 0) return found;
  const named = others.map((number) => `${number}${titled(number)}`).join(', ');
  return [
    ...found,
    {
      place: file.place,
      file: file.text,
      headline: `Broadcast but not noted: ${named}.`,
    },
  ];
}

function difference(count: MessageCount | undefined, every: number, length: number): string | null {
  if (!count) return length > LONG_ENOUGH * every ? 'none was recorded' : null;
  if (count.interval === undefined || count.count < 3) return null;
  if (Math.abs(count.interval / every - 1) <= SAME_INTERVAL) return null;
  return `recorded every ${Number(count.interval.toFixed(1))} s`;
}

function titled(number: number): string {
  const title = messageTitle(number);
  return title ? ` (${title})` : '';
}
