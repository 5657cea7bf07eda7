/** The two ends of a radio link: which entry is which, what its settings make, and whether they go together. */
import type { Place } from '../../../grammar/tree.ts';
import { airRateLink, usualLargestRate } from '../../link/air-rate.ts';
import type { Link } from '../../link/link.ts';
import { loraLink, loraRate, loraThroughput, type LoraSettings, type Spreading } from '../../link/lora.ts';
import { bitsPerSecond, hertz } from '../../quantities/brands.ts';
import { computePlain } from '../../quantities/computed.ts';
import { assumed, hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Radio } from '../../session/entries.ts';

export interface RadioEnds {
  /** Radios of bases: the one called `base`, or those called after a setup; else the first. */
  readonly bases: readonly Radio[];
  readonly rovers: readonly Radio[];
}

/** @param setups the names of the setups */
export function radioEnds(radios: readonly Radio[], setups: Pick<ReadonlySet<string>, 'has'>): RadioEnds {
  const called = radios.filter(({ name }) => setups.has(name) || /^base$/i.test(name));
  const bases = called.length > 0 ? called : radios.slice(0, 1);
  return { bases, rovers: radios.filter((radio) => !bases.includes(radio)) };
}

/** The radio at a base: the one called after it, else the only one there is. */
export const radioOf = ({ bases }: RadioEnds, setup: string | null): Radio | null =>
  bases.find(({ name }) => name === setup) ??
  bases.find(({ name }) => /^base$/i.test(name)) ??
  bases[0] ??
  null;

/** Settings that must be the same at both ends, in the order in which a radio lists them. */
const MATCHING = ['carrier', 'channel', 'rate', 'spreading', 'bandwidth', 'coding'] as const;
export type Matching = (typeof MATCHING)[number];

export interface Difference {
  readonly setting: Matching;
  /** As typed, with its place; null where this end does not say. */
  readonly base: { readonly typed: string; readonly place: Place } | null;
  readonly rover: { readonly typed: string; readonly place: Place } | null;
}

/** What the two ends say differently, and what only one of them says. */
export function differences(base: Radio, rover: Radio): Difference[] {
  return MATCHING.flatMap((setting): Difference[] => {
    const [one, other] = [saidOf(base, setting), saidOf(rover, setting)];
    if (one === 'unread' || other === 'unread' || (!one && !other)) return [];
    if (one && other && one.value === other.value) return [];
    return [{ setting, base: one, rover: other }];
  });
}

interface Said {
  readonly value: number | string;
  readonly typed: string;
  readonly place: Place;
}

/** Numbers compare as numbers, whatever unit they were typed in; a hole has been told of already. */
function saidOf(radio: Radio, setting: Matching): Said | 'unread' | null {
  const said = radio[setting];
  if (said === null) return null;
  if (isHole(said)) return 'unread';
  if ('name' in said && 'place' in said && !('value' in said)) {
    const known =
      setting === 'spreading' ? spreadingOf(said.name) : setting === 'coding' ? codingOf(said.name) : null;
    return { value: known ?? said.name.toUpperCase(), typed: said.name, place: said.place };
  }
  const { value } = said;
  const typed = said.origin === 'given' ? said.typed : String(value);
  const place = said.origin === 'given' ? said.place : radio.place;
  return { value: Number(value.toPrecision(12)), typed, place };
}

/** `SF7`, or the bare number. */
function spreadingOf(typed: string): Spreading | null {
  const number = Number(/^(?:SF)?(\d{1,2})$/i.exec(typed)?.[1] ?? NaN);
  return SPREADINGS.find((known) => known === number) ?? null;
}
const SPREADINGS: readonly Spreading[] = [6, 7, 8, 9, 10, 11, 12];

/** `4/6`. */
function codingOf(typed: string): LoraSettings['coding'] | null {
  const number = Number(/^4\/(\d)$/.exec(typed)?.[1] ?? NaN);
  return CODINGS.find((known) => known === number) ?? null;
}
const CODINGS: readonly LoraSettings['coding'][] = [5, 6, 7, 8];

/** How the data go out: the link, and the bits of data that it carries in a second. */
export interface Carriage {
  readonly link: Link;
  readonly throughput: Value;
  /** Null for a radio that is known by its air rate alone. */
  readonly lora: LoraSettings | null;
}

const isLora = (radio: Radio) =>
  radio.spreading !== null || radio.bandwidth !== null || radio.coding !== null;

/** LoRa settings as noted; a hole names the one that is missing. */
function loraSettings(radio: Radio): Maybe<LoraSettings> {
  const { name, spreading, bandwidth, coding, place } = radio;
  if (!spreading) return hole(`the spreading factor of radio ${name} is not noted`, place);
  if (!bandwidth) return hole(`the bandwidth of radio ${name} is not noted`, place);
  if (!coding) return hole(`the coding rate of radio ${name} is not noted`, place);
  if (isHole(bandwidth)) return bandwidth;
  const SF = spreadingOf(spreading.name);
  const CR = codingOf(coding.name);
  if (SF === null) return hole(`there is no spreading factor ${spreading.name}`, spreading.place);
  if (CR === null) return hole(`there is no coding rate ${coding.name}`, coding.place);
  if (bandwidth.value <= 0) return hole(`the bandwidth of radio ${name} is not above zero`, place);
  return { spreading: SF, bandwidth: hertz(bandwidth.value), coding: CR };
}

export function carriageOf(radio: Radio): Maybe<Carriage> {
  if (isLora(radio)) {
    const settings = loraSettings(radio);
    return isHole(settings) ? settings : loraCarriage(radio, settings);
  }
  const { name, rate, place } = radio;
  if (!rate)
    return hole(`radio ${name} notes neither an air rate nor spreading, bandwidth and coding`, place);
  if (isHole(rate)) return rate;
  if (rate.value <= 0) return hole(`the air rate of radio ${name} is not above zero`, place);
  const throughput = computePlain(
    `data that radio ${name} carries in a second`,
    'bit/s',
    {
      symbol: 'r',
      expression: 'R · s',
      evaluable: true,
      source: 'the air rate less what error correction and framing take of it (common practice)',
    },
    { R: rate, s: WHOLE_RATE },
    rate.value * WHOLE_RATE.value,
  );
  return { link: airRateLink({ rate: bitsPerSecond(rate.value) }), throughput, lora: null };
}

const WHOLE_RATE = assumed(
  'share of the air rate that carries data',
  1,
  '',
  0,
  'the notes do not say what error correction and framing take of it',
);

function loraCarriage(radio: Radio, settings: LoraSettings): Carriage {
  const throughput = computePlain(
    `data that radio ${radio.name} carries in a second`,
    'bit/s',
    {
      symbol: 'r',
      expression: '8 · 255 / airtime of a packet of 255 bytes (SF, BW, CR, n_p)',
      evaluable: false,
      source: 'data sheet of a common LoRa transceiver (2020), 4.1',
    },
    loraInputs(radio, settings),
    loraThroughput(settings),
  );
  return { link: loraLink(settings), throughput, lora: settings };
}

/** The numbers that LoRa formulas are given; spreading and coding are names in the notes. */
function loraInputs(radio: Radio, settings: LoraSettings): Record<string, Value> {
  const named = (what: string, value: number, typed: string) =>
    assumed(what, value, '', 0, `noted as ${typed} for radio ${radio.name}`);
  return {
    SF: named('spreading factor', settings.spreading, radio.spreading?.name ?? ''),
    CR: named('coding rate, second number', settings.coding, radio.coding?.name ?? ''),
    ...(radio.bandwidth && !isHole(radio.bandwidth) ? { BW: radio.bandwidth } : {}),
    n_p: PREAMBLE,
  };
}

const PREAMBLE = assumed(
  'symbols of the preamble',
  8,
  '',
  0,
  'the usual length, with an explicit header and a checksum, since the notes give none',
);

/** A quarter of the carrier's wave, the shortest whip that works well. */
export function whipLength(radio: Radio): Maybe<Value> {
  const { carrier, name, place } = radio;
  if (!carrier) return hole(`the carrier of radio ${name} is not noted`, place);
  if (isHole(carrier)) return carrier;
  if (carrier.value <= 0) return hole(`the carrier of radio ${name} is not above zero`, place);
  return computePlain(
    `length of a quarter-wave whip for radio ${name}`,
    'm',
    {
      symbol: 'l',
      expression: '299792458 / (4 · f)',
      evaluable: true,
      source: 'a quarter of the wave length (common practice for whips)',
    },
    { f: carrier },
    299_792_458 / (4 * carrier.value),
  );
}

export interface OddSetting {
  readonly place: Place;
  /** No radio has it · it is not what the others make · a radio may have it, and few do. */
  readonly odd: 'none such' | 'contradicted' | 'unusual';
  readonly sentence: string;
}

/** Settings that cannot be, that do not go together or that are unusual, each at its place. */
export function oddSettings(radio: Radio): OddSetting[] {
  const { spreading, coding, rate, channel } = radio;
  const found: OddSetting[] = [];
  if (spreading && spreadingOf(spreading.name) === null)
    found.push({
      place: spreading.place,
      odd: 'none such',
      sentence: `No spreading factor is called ${spreading.name}: use SF6 to SF12.`,
    });
  if (coding && codingOf(coding.name) === null)
    found.push({
      place: coding.place,
      odd: 'none such',
      sentence: `There is no coding rate ${coding.name}: it is one of 4/5, 4/6, 4/7 and 4/8.`,
    });
  if (!rate || isHole(rate) || rate.origin !== 'given') return found;
  const settings = isLora(radio) ? loraSettings(radio) : null;
  if (settings && !isHole(settings)) {
    const made = loraRate(settings);
    if (Math.abs(rate.value / made - 1) > ROUNDED_RATE)
      found.push({
        place: rate.place,
        odd: 'contradicted',
        sentence: `Spreading, bandwidth and coding make an air rate of ${kilobits(made)}, and ${rate.typed} is noted.`,
      });
  }
  if (!settings && channel && !isHole(channel) && channel.value > 0) {
    const most = usualLargestRate(hertz(channel.value));
    if (rate.value > most * (1 + ROUNDED_RATE) && channel.origin === 'given')
      found.push({
        place: rate.place,
        odd: 'unusual',
        sentence: `${rate.typed} is more than a channel of ${channel.typed} usually carries. Usual is ${kilobits(most)} (common practice).`,
      });
  }
  return found;
}

/** Rates are noted in round numbers. */
const ROUNDED_RATE = 0.02;

const kilobits = (rate: number) => `${(rate / 1000).toFixed(2).replace(/\.?0+$/, '')} kbps`;
