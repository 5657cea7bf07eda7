/** More corrections than the radio carries, on average or in the fullest second, and the rates at which they would fit. */
import type { Place } from '../../../grammar/tree.ts';
import { fits, isNearlyFull, isObservation, type StreamValues } from '../../derive/link/stream.ts';
import { streamLoad, type ScheduledMessage, type StreamLoad } from '../../link/load.ts';
import { showNumber } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import type { StreamMessage } from '../../session/entries.ts';
import { kind, type Edit, type Told } from '../finding.ts';
import { joined } from '../saying.ts';
import { isPlan } from '../stream/plans.ts';

interface Overloaded {
  readonly place: Place;
  readonly values: StreamValues;
  readonly load: StreamLoad;
}

export const radioOverload = kind<Overloaded>({
  code: 'radio/overload',
  find: ({ derivation }) =>
    derivation.link.streams.flatMap((values) =>
      values.load && (!fits(values.load) || isNearlyFull(values.load))
        ? [{ place: values.stream.place, values, load: values.load }]
        : [],
    ),
  tell: ({ values, load }) => (fits(load) ? nearlyFull(values, load) : overloaded(values, load)),
  mend: ({ values, load }, subject) => {
    if (fits(load) && !staggeringHelps(values, load)) return [];
    const inTurn = staggeringFits(values) ? values.staggered : values.fitting;
    if (!inTurn || !isPlan(subject, values.name)) return [];
    const edits = values.messages.flatMap(({ message, number }) => scheduleEdit(message, number, inTurn));
    const title = staggeringFits(values)
      ? 'Plan the slower messages in turn'
      : 'Plan the highest rates that fit';
    return edits.length > 0 ? [{ title, edits }] : [];
  },
});

function overloaded(values: StreamValues, load: StreamLoad): Told {
  const { name, radio, carriage, unknown } = values;
  const rate = isHole(carriage) ? '' : `It carries ${showNumber(carriage.throughput.value / 1000, 1)} kbps.`;
  const least = unknown.length > 0 ? `Not counted: ${unknown.join(', ')} (size or rate not known).` : '';
  const average = percent(load.averageAirtime);
  const [headline, effect] =
    load.averageAirtime > 1
      ? [
          `Radio ${radio?.name ?? ''} overloaded: ${name} needs ${average} of its airtime.`,
          'Corrections are late or left out.',
        ]
      : [
          `Fullest second of ${name} takes ${inSeconds(load.fullest.airtime)} on radio ${radio?.name ?? ''}.`,
          `Its corrections come late, though the average is ${average}.`,
        ];
  return {
    severity: load.averageAirtime > 1 ? 'error' : 'warning',
    headline,
    effect: joined(effect, rate, least),
    action: advice(values),
    rests: radio ? [{ message: `Radio ${radio.name}.`, place: radio.place }] : [],
  };
}

function nearlyFull(values: StreamValues, load: StreamLoad): Told {
  const { name, radio } = values;
  const average = load.averageAirtime >= load.fullest.airtime;
  const share = percent(average ? load.averageAirtime : load.fullest.airtime);
  return {
    severity: 'information',
    headline: `Radio ${radio?.name ?? ''} is nearly full: ${name} takes ${share} of ${average ? 'its airtime' : 'a second'}.`,
    effect: 'A few satellites more, and corrections come late.',
    action: staggeringHelps(values, load)
      ? advice(values)
      : 'Leave a fifth free: send less, or use a faster air rate.',
    rests: radio ? [{ message: `Radio ${radio.name}.`, place: radio.place }] : [],
  };
}

const staggeringHelps = ({ staggeredLoad }: StreamValues, load: StreamLoad) =>
  staggeredLoad !== null && staggeredLoad.fullest.airtime < 0.9 * load.fullest.airtime;

/** What stands behind `every`, as it is planned; nothing where it stays. */
function scheduleEdit(
  { every, after }: StreamMessage,
  number: number,
  planned: readonly ScheduledMessage[],
): Edit[] {
  const plan = planned.find((one) => one.number === number);
  if (!plan || isHole(every) || every.origin !== 'given') return [];
  const before = after && !isHole(after) && after.origin === 'given' ? after : null;
  const offset = plan.offset ?? 0;
  if (plan.every === every.value && offset === (before?.value ?? 0)) return [];
  const interval = plan.every === every.value ? every.typed : `${plan.every} s`;
  const text = offset === 0 ? interval : `${interval} after ${offset} s`;
  return [{ place: { ...every.place, end: before?.place.end ?? every.place.end }, text }];
}

/** Spreading the slower messages over the seconds costs nothing, so it comes first. */
function advice(values: StreamValues): string {
  const { staggeredLoad, fitting } = values;
  if (staggeringFits(values) && staggeredLoad)
    return `Let the slower messages take turns (\`every 2 s after 1 s\`): the fullest second then takes ${inSeconds(staggeredLoad.fullest.airtime)}.`;
  if (!fitting)
    return 'Even one observation in ten seconds is too much: send fewer constellations or MSM4, or set a faster air rate at both ends.';
  const rates = slowed(values, fitting).map(
    ({ message, every }) => `${message.number.name} every ${every} s`,
  );
  const load = isHole(values.carriage) ? undefined : streamLoad(fitting, values.carriage.link);
  const then = load ? ` (${percent(load.averageAirtime)} airtime)` : '';
  return `Send ${rates.join(', ')}, staggered${then}. Or send MSM4, or use a faster air rate.`;
}

const staggeringFits = ({ staggeredLoad }: StreamValues) => staggeredLoad !== null && fits(staggeredLoad);

/** Observations that have to be sent less often than they are, with the interval in seconds. */
function slowed({ messages }: StreamValues, fitting: readonly ScheduledMessage[]) {
  return messages.flatMap(({ message, number }) => {
    const every = fitting.find((one) => one.number === number)?.every;
    if (every === undefined || !isObservation(number) || isHole(message.every)) return [];
    return every > message.every.value ? [{ message, every: String(every) }] : [];
  });
}

const percent = (share: number) => `${showNumber(100 * share, 0)} %`;
const inSeconds = (length: number) => `${showNumber(length, 2)} s`;
