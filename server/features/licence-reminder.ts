/** What to check the licence conditions for: a reminder, and never a verdict on what is permitted. */
import type { LinkValues } from '../derive/link/link.ts';
import { showNumber } from '../quantities/show.ts';
import { isHole } from '../quantities/value.ts';
import type { Radio } from '../session/entries.ts';

/** One sentence for each radio of a base. */
export function licenceReminders({ ends, streams }: LinkValues): string[] {
  return ends.bases.map((radio) => {
    const load = streams.find((stream) => stream.radio === radio)?.load;
    const said = [
      ...settings(radio),
      ...(load ? [`on the air ${showNumber(100 * load.averageAirtime, 0)} % of the time`] : []),
    ];
    const what = said.length > 0 ? ` (${said.join(', ')})` : '';
    return `Check the licence conditions in force where you are for radio ${radio.name}${what}: carrier, channel, power, time on the air and aerial are theirs to allow.`;
  });
}

function settings({ carrier, channel, bandwidth, power }: Radio): string[] {
  return [carrier, channel, bandwidth, power].flatMap((value) =>
    value && !isHole(value) && value.origin === 'given' ? [value.typed] : [],
  );
}
