/** What a base sends: the size of each message, and what all of them together ask of the radio. */
import {
  legacyObservations,
  messagePurpose,
  messageSizes,
  sendingBytes,
  signalMessage,
  type Constellation,
  type MessagePurpose,
  type StreamContent,
} from '../../link/message-size.ts';
import {
  fittingRates,
  staggered,
  streamLoad,
  type ScheduledMessage,
  type StreamLoad,
} from '../../link/load.ts';
import { bytes, seconds } from '../../quantities/brands.ts';
import { computePlain } from '../../quantities/computed.ts';
import { largestOf } from '../../quantities/extremes.ts';
import {
  assumed,
  hole,
  isHole,
  type Formula,
  type Maybe,
  type Unit,
  type Value,
} from '../../quantities/value.ts';
import type { Radio, Stream, StreamMessage } from '../../session/entries.ts';
import { carriageOf, type Carriage } from './ends.ts';

export interface StreamValues {
  readonly stream: Stream;
  /** The setup that sends it, as named. */
  readonly name: string;
  readonly radio: Radio | null;
  readonly carriage: Maybe<Carriage>;
  readonly messages: readonly MessageValues[];
  /** Numbers whose size or rate is not known, so that the load is at least what is computed. */
  readonly unknown: readonly string[];
  readonly averageBytes: Maybe<Value>;
  /** Share of the time on the air. */
  readonly averageAirtime: Maybe<Value>;
  readonly fullestSecond: Maybe<Value>;
  /** The fullest second with the slower messages spread over the seconds. */
  readonly staggeredSecond: Maybe<Value>;
  /** The oldest that observations get at the rover, as scheduled. */
  readonly worstAge: Maybe<Value>;
  readonly load: StreamLoad | null;
  readonly staggeredLoad: StreamLoad | null;
  /** The same messages, in turn. */
  readonly staggered: readonly ScheduledMessage[];
  /** The highest rates that fit, in turn; null where the stream fits as it is, or nothing does. */
  readonly fitting: readonly ScheduledMessage[] | null;
}

export interface MessageValues {
  readonly message: StreamMessage;
  readonly number: number;
  readonly purpose: MessagePurpose | null;
  readonly constellation: Constellation | null;
  /** Bytes of one whole sending, frames included. */
  readonly size: Maybe<Value>;
  readonly age: Maybe<Value>;
  /** The shortest interval at which the stream fits; null where it fits as it is, or nothing does. */
  readonly fitting: Value | null;
}

export function streamValues(stream: Stream, name: string, radio: Radio | null): StreamValues {
  const carriage = radio ? carriageOf(radio) : hole(`no radio is noted for ${name}`, stream.place);
  const content = contentOf(stream);
  const sized = stream.messages.map((message) => ({ message, ...sizeOf(message, content, stream) }));
  const schedule = sized.flatMap(({ message, number, size }): ScheduledMessage[] =>
    isHole(size) || isHole(message.every)
      ? []
      : [{ number, size: bytes(size.value), every: seconds(message.every.value), ...offsetOf(message) }],
  );
  const unknown = sized
    .filter(({ message, size }) => isHole(size) || isHole(message.every))
    .map(({ message }) => message.number.name);
  const load = isHole(carriage) ? null : (streamLoad(schedule, carriage.link) ?? null);
  const inTurn = staggered(schedule);
  const spread = isHole(carriage) ? null : (streamLoad(inTurn, carriage.link) ?? null);
  const results = resultsOf(name, carriage, load, spread, unknown, sized);
  const fitting =
    load === null || fits(load) || isHole(carriage)
      ? null
      : (fittingRates(schedule, isObservation, carriage.link, FITTING) ?? null);
  return {
    stream,
    name,
    radio,
    carriage,
    messages: sized.map((one) => ({
      ...one,
      age: ageOf(one.number, name, carriage, load),
      fitting: fittingOf(one.number, name, carriage, fitting),
    })),
    unknown,
    ...results,
    load,
    staggeredLoad: spread,
    staggered: inTurn,
    fitting,
  };
}

const offsetOf = ({ after }: StreamMessage) =>
  after && !isHole(after) ? { offset: seconds(after.value) } : {};

/** The stream fits: on average, and in every second. */
export const fits = ({ averageAirtime, fullest }: StreamLoad) => averageAirtime <= 1 && fullest.airtime <= 1;

/** It fits, and leaves less room than a stream should: a satellite more can be too much. */
export const isNearlyFull = (load: StreamLoad) =>
  fits(load) && Math.max(load.averageAirtime, load.fullest.airtime) > SPARED.value;

const SPARED = assumed(
  'share of the time that a stream may take',
  0.8,
  '',
  0,
  'a fifth is left free (common practice)',
);
const FITTING = { average: SPARED.value, fullest: seconds(1) };

export const isObservation = (number: number) => messagePurpose(number) === 'observations';

/** Constellations by what people type for them. */
export function constellationOf(typed: string): Constellation | null {
  return CONSTELLATIONS[typed.toLowerCase()] ?? null;
}
const CONSTELLATIONS: Readonly<Record<string, Constellation>> = {
  ...{ gps: 'GPS', glonass: 'GLONASS', galileo: 'Galileo', beidou: 'BeiDou', bds: 'BeiDou' },
  ...{ qzss: 'QZSS', sbas: 'SBAS', navic: 'NavIC', irnss: 'NavIC' },
};
export const CONSTELLATION_NAMES: readonly Constellation[] = [...new Set(Object.values(CONSTELLATIONS))];

const SIGNALS = assumed('signals', 2, '', 0, 'two signals of each satellite, since the notes give no number');
const DESCRIPTION = assumed(
  'characters of the antenna and receiver descriptions',
  70,
  '',
  0,
  'the usual length of five descriptions together (common practice)',
);
/** Descriptor, serial number, receiver, firmware, receiver serial: 70 characters in all. */
const TEXTS = {
  antennaDescriptor: 20,
  antennaSerial: 8,
  receiverDescriptor: 20,
  receiverFirmware: 10,
  receiverSerial: 12,
};
const ANTENNA_TEXTS = assumed(
  'characters of the antenna description',
  TEXTS.antennaDescriptor,
  '',
  0,
  'the length of a descriptor with its radome',
);

interface Content {
  readonly content: StreamContent;
  readonly satellites: ReadonlyMap<Constellation, Value>;
  readonly signals: Value;
}

function contentOf({ tracked, signals }: Stream): Content {
  const satellites = new Map<Constellation, Value>();
  for (const { system, satellites: count } of tracked) {
    const constellation = constellationOf(system);
    if (constellation && !isHole(count)) satellites.set(constellation, count);
  }
  const each = signals && !isHole(signals) ? signals : SIGNALS;
  const all = [...satellites].map(([constellation, count]) => ({
    constellation,
    satellites: count.value,
    signals: each.value,
  }));
  return { content: { tracked: all, ...TEXTS }, satellites, signals: each };
}

function sizeOf(
  { number: { name, place } }: StreamMessage,
  { content, satellites, signals }: Content,
  stream: Stream,
): Omit<MessageValues, 'message' | 'age' | 'fitting'> {
  const number = /^\d{4}$/.test(name) ? Number(name) : NaN;
  const constellation =
    signalMessage(number)?.constellation ?? legacyObservations[number]?.constellation ?? null;
  const purpose = messagePurpose(number) ?? null;
  const of = (size: Maybe<Value>) => ({ number, purpose, constellation, size });
  const count = constellation ? satellites.get(constellation) : undefined;
  if (constellation && !count) {
    const said = stream.tracked.some(({ system }) => constellationOf(system) === constellation);
    const because = said || stream.tracked.length === 0 ? 'is not known' : 'is not said to be tracked';
    return of(
      hole(`how much ${name} carries ${because}: \`tracked\` names no ${constellation} satellites`, place),
    );
  }
  const sizes = messageSizes(number, content);
  if (!sizes) return of(hole(`the size of message ${name} is not known here`, place));
  const inputs: Record<string, Value> = count
    ? { S: count, ...(legacyObservations[number] ? {} : { G: signals }) }
    : number === 1033
      ? { c: DESCRIPTION }
      : number === 1007 || number === 1008
        ? { c: ANTENNA_TEXTS }
        : {};
  return of(
    computePlain(`size of ${name}`, 'B', sizeFormula(number, sizes.length), inputs, sendingBytes(sizes)),
  );
}

function sizeFormula(number: number, messages: number): Formula {
  const split = messages > 1 ? `, in ${messages} messages` : '';
  const kind = signalMessage(number)?.kind;
  const expression =
    kind === undefined
      ? legacyObservations[number]
        ? `header and S satellites of message ${number} in whole bytes, and 6 of the frame${split}`
        : `fields of message ${number} in whole bytes, and 6 of the frame`
      : `header of 169 bits, S · G cells of MSM${kind} in whole bytes, and 6 of the frame${split}`;
  return { symbol: 'n', expression, evaluable: false, source: 'RTCM 10403.3, message tables' };
}

type Results = Pick<
  StreamValues,
  'averageBytes' | 'averageAirtime' | 'fullestSecond' | 'staggeredSecond' | 'worstAge'
>;

function resultsOf(
  name: string,
  carriage: Maybe<Carriage>,
  load: StreamLoad | null,
  spread: StreamLoad | null,
  unknown: readonly string[],
  sized: readonly Pick<MessageValues, 'message' | 'number' | 'size'>[],
): Results {
  const none = isHole(carriage) ? carriage : hole(`nothing that ${name} sends has a known size and rate`);
  if (!load || !spread || isHole(carriage))
    return {
      averageBytes: none,
      averageAirtime: none,
      fullestSecond: none,
      staggeredSecond: none,
      worstAge: none,
    };
  const inputs: Record<string, Value> = { r: carriage.throughput };
  for (const { message, number, size } of sized)
    if (!isHole(size) && !isHole(message.every)) {
      inputs[`n_${number}`] = size;
      inputs[`t_${number}`] = message.every;
    }
  const without = unknown.length > 0 ? `, without ${unknown.join(', ')}` : '';
  const value = (what: string, unit: Unit, symbol: string, expression: string, result: number) =>
    computePlain(
      `${what} of the stream from ${name}${without}`,
      unit,
      { symbol, expression, evaluable: false, source: LOAD_SOURCE },
      inputs,
      result,
    );
  const ages = load.ages.filter(({ number }) => isObservation(number)).map(({ oldest }) => oldest);
  const grows = ages.some((age) => age === undefined);
  return {
    averageBytes: value(
      'bytes a second',
      'B/s',
      'b',
      'sum of sizes n over intervals t',
      load.averageBytesPerSecond,
    ),
    averageAirtime: value(
      'share of the time on the air',
      '',
      'U',
      'airtime of all bursts in one period, over the period',
      load.averageAirtime,
    ),
    fullestSecond: value(
      'airtime of the fullest second',
      's',
      'a',
      'airtime of what is due in the fullest second',
      load.fullest.airtime,
    ),
    staggeredSecond: value(
      'airtime of the fullest second, staggered,',
      's',
      'a',
      'the same with the slower messages spread over the seconds',
      spread.fullest.airtime,
    ),
    worstAge: grows
      ? hole(`more is due than the radio carries, so that the corrections of ${name} grow older without end`)
      : ages.length === 0
        ? hole(`the stream from ${name} carries no observations`)
        : value(
            'greatest age of the corrections',
            's',
            'A',
            'longest time from one observation to the arrival of the next',
            largestOf(ages.map((age) => age ?? 0)),
          ),
  };
}

function ageOf(
  number: number,
  name: string,
  carriage: Maybe<Carriage>,
  load: StreamLoad | null,
): Maybe<Value> {
  if (isHole(carriage)) return carriage;
  const oldest = load?.ages.find((age) => age.number === number)?.oldest;
  if (oldest === undefined) return hole(`how old ${number} of ${name} gets is not known, or has no end`);
  return computePlain(
    `greatest age of ${number} at the rover`,
    's',
    {
      symbol: 'A',
      expression: 'longest time from one sending to the arrival of the next, at r bits a second',
      evaluable: false,
      source: LOAD_SOURCE,
    },
    { r: carriage.throughput },
    oldest,
  );
}

function fittingOf(
  number: number,
  name: string,
  carriage: Maybe<Carriage>,
  fitting: readonly ScheduledMessage[] | null,
): Value | null {
  const found = fitting?.find((message) => message.number === number);
  if (!found || isHole(carriage)) return null;
  return computePlain(
    `interval of ${number} at which the stream from ${name} fits`,
    's',
    {
      symbol: 't',
      expression: 'shortest of 1, 2, 5 and 10 s at which U ≤ s and the fullest second, staggered, holds',
      evaluable: false,
      source: LOAD_SOURCE,
    },
    { r: carriage.throughput, s: SPARED },
    found.every,
  );
}

const LOAD_SOURCE = 'the schedule followed second by second, messages due at once in one burst';
