/** How far the radio reaches: path loss, margin, first Fresnel zone and horizon at the longest distance of the day. */
import { usualSensitivity } from '../../link/air-rate.ts';
import { loraSensitivity, slowerLora } from '../../link/lora.ts';
import {
  fresnelClearance,
  linkMargin,
  pathLoss,
  planeEarthLoss,
  freeSpaceLoss,
  radioHorizon,
  reach,
  type RadioPath,
} from '../../link/range.ts';
import { decibelMilliwatts, decibels, hertz, metres } from '../../quantities/brands.ts';
import { computePlain } from '../../quantities/computed.ts';
import { assumed, hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Radio } from '../../session/entries.ts';
import { carriageOf } from './ends.ts';

export interface ReachValues {
  readonly base: Radio;
  /** Null where the notes describe the base's end alone. */
  readonly rover: Radio | null;
  /** The longest distance from the base, and what was measured there. */
  readonly distance: Maybe<Value>;
  readonly farthest: string | null;
  /** It was fixed there, so that the link held, whatever is computed. */
  readonly fixed: boolean;
  readonly pathLoss: Maybe<Value>;
  readonly sensitivity: Maybe<Value>;
  /** What the signal is above the faintest one still read. */
  readonly margin: Maybe<Value>;
  /** Where the margin is down to what fading may take. */
  readonly reach: Maybe<Value>;
  /** The same with the air rate one step slower. */
  readonly slowerReach: Maybe<Value>;
  readonly horizon: Maybe<Value>;
  /** Share of the first Fresnel zone that level ground leaves free; 0.6 is enough. */
  readonly fresnel: Maybe<Value>;
}

export interface Farthest {
  readonly distance: Value;
  readonly where: string;
  readonly fixed: boolean;
}

/** What fading and leaves may take (common practice). */
export const RESERVE = assumed('reserve for fading', 10, 'dB', 0, '10 dB are kept in hand (common practice)');
const NO_GAINS = assumed(
  'gains of both aerials less cables',
  0,
  'dB',
  0,
  'the notes give none, so that cables are taken to lose what the aerials win',
);
const AERIAL = (end: string) =>
  assumed(`height of the aerial of ${end}`, 2, 'm', 0, 'the notes give none, so 2 m (common practice)');

export function reachValues(base: Radio, rover: Radio | null, farthest: Farthest | null): ReachValues {
  const end = rover ? `radio ${rover.name}` : 'the rover';
  const between = `from radio ${base.name} to ${end}`;
  const distance = farthest?.distance ?? hole('no check and no point tells how far the rover went');
  const h1 = heightOf(base) ?? AERIAL(`radio ${base.name}`);
  const h2 = (rover ? heightOf(rover) : null) ?? AERIAL(end);
  const carrier = base.carrier ?? hole(`the carrier of radio ${base.name} is not noted`, base.place);
  const sensitivity = sensitivityOf(base);
  const power = base.power ?? hole(`the power of radio ${base.name} is not noted`, base.place);
  const path = pathOf(carrier, h1, h2);
  const horizon = computePlain(
    `radio horizon ${between}`,
    'm',
    {
      symbol: 'd_h',
      expression: '4120 · (√(h1) + √(h2))',
      evaluable: true,
      source: 'radio horizon over an earth of 4/3 radius, from memory',
    },
    { h1, h2 },
    radioHorizon(metres(h1.value), metres(h2.value)),
  );
  const common = {
    base,
    rover,
    distance,
    farthest: farthest?.where ?? null,
    fixed: farthest?.fixed ?? false,
    sensitivity,
    horizon,
  };
  const gap = [path, distance].find(isHole);
  const budgetGap = [path, sensitivity, power].find(isHole);
  const reachTo = (wins: number, slower: boolean): Maybe<Value> =>
    budgetGap ??
    reachOf(path, h1, h2, sensitivity, power, wins, `${between}${slower ? ', one step slower' : ''}`);
  const wins = slowerWins(base);
  if (gap || isHole(path) || isHole(distance) || isHole(carrier)) {
    const none = gap ?? hole('the path is not known');
    return {
      ...common,
      ...{ pathLoss: none, margin: none, fresnel: none },
      reach: reachTo(0, false),
      slowerReach: isHole(wins) ? wins : reachTo(wins, true),
    };
  }
  const full: RadioPath = { ...path, distance: metres(distance.value) };
  const inputs = { f: carrier, d: distance, h1, h2 };
  const plane = planeEarthLoss(full) > freeSpaceLoss(full.carrier, full.distance);
  const loss = computePlain(
    `path loss ${between}`,
    'dB',
    {
      symbol: 'L',
      expression: plane
        ? 'plane earth, 40 log d − 20 log (h1 · h2), being more than free space'
        : 'free space, 32.4 + 20 log f + 20 log d (MHz, km), being more than plane earth',
      evaluable: false,
      source: plane ? 'plane earth, from memory' : 'ITU-R P.525',
    },
    inputs,
    pathLoss(full),
  );
  const fresnel = computePlain(
    `share of the first Fresnel zone that is free ${between}`,
    '',
    {
      symbol: 'c',
      expression: 'least clearance over level, curved ground, over the radius of the first Fresnel zone',
      evaluable: false,
      source: 'ITU-R P.526',
    },
    inputs,
    fresnelClearance(full),
  );
  return {
    ...common,
    pathLoss: loss,
    fresnel,
    margin: marginOf(loss, sensitivity, power, full, between),
    reach: reachTo(0, false),
    slowerReach: isHole(wins) ? wins : reachTo(wins, true),
  };
}

const heightOf = ({ aerial }: Radio) => (aerial && !isHole(aerial) && aerial.value > 0 ? aerial : null);

function pathOf(carrier: Maybe<Value>, h1: Value, h2: Value): Maybe<Omit<RadioPath, 'distance'>> {
  if (isHole(carrier)) return carrier;
  if (carrier.value <= 0) return hole('the carrier is not above zero');
  return {
    carrier: hertz(carrier.value),
    baseAerial: metres(h1.value),
    roverAerial: metres(h2.value),
  };
}

/** Base and rover have the same settings, or do not hear one another at all. */
function sensitivityOf(radio: Radio): Maybe<Value> {
  const carriage = carriageOf(radio);
  if (isHole(carriage)) return carriage;
  const { lora } = carriage;
  const name = `faintest signal that radio ${radio.name} reads`;
  const { bandwidth, channel } = radio;
  if (lora && bandwidth && !isHole(bandwidth)) {
    const level = loraSensitivity(lora);
    if (level === undefined)
      return hole('the data sheet gives no sensitivity for SF6', radio.spreading?.place ?? null);
    const expression = `data sheet's value for SF${lora.spreading} at 125 kHz + 10 log (BW / 125 kHz)`;
    const source = 'data sheet of a common LoRa transceiver (2020)';
    return computePlain(
      name,
      'dBm',
      { symbol: 'P_s', expression, evaluable: false, source },
      { BW: bandwidth },
      level,
    );
  }
  if (!channel) return hole(`the channel spacing of radio ${radio.name} is not noted`, radio.place);
  if (isHole(channel)) return channel;
  if (channel.value <= 0)
    return hole(`the channel spacing of radio ${radio.name} is not above zero`, radio.place);
  return computePlain(
    name,
    'dBm',
    {
      symbol: 'P_s',
      expression: '−174 dBm + 10 log B + N',
      evaluable: false,
      source: 'thermal noise in the channel (common practice)',
    },
    { B: channel, N: DETECTION },
    usualSensitivity(hertz(channel.value)),
  );
}

const DETECTION = assumed(
  "the receiver's own noise and detection",
  20,
  'dB',
  0,
  'a narrow-band modem usually needs 20 dB above thermal noise (common practice)',
);

function marginOf(
  loss: Value,
  sensitivity: Maybe<Value>,
  power: Maybe<Value>,
  path: RadioPath,
  between: string,
): Maybe<Value> {
  if (isHole(power)) return power;
  if (isHole(sensitivity)) return sensitivity;
  if (power.value <= 0) return hole('the power is not above zero');
  const budget = budgetOf(power, sensitivity, 0);
  return computePlain(
    `margin ${between}`,
    'dB',
    {
      symbol: 'M',
      expression: '10 log (P / 1 mW) + G − L − P_s',
      evaluable: false,
      source: 'link budget (common practice)',
    },
    { P: power, G: NO_GAINS, L: loss, P_s: sensitivity },
    linkMargin(path, budget),
  );
}

const budgetOf = (power: Value, sensitivity: Value, wins: number) => ({
  power: decibelMilliwatts(10 * Math.log10(power.value * 1000)),
  sensitivity: decibelMilliwatts(sensitivity.value - wins),
  gains: decibels(NO_GAINS.value),
});

function reachOf(
  path: Maybe<Omit<RadioPath, 'distance'>>,
  h1: Value,
  h2: Value,
  sensitivity: Maybe<Value>,
  power: Maybe<Value>,
  wins: number,
  between: string,
): Maybe<Value> {
  if (isHole(path)) return path;
  if (isHole(sensitivity)) return sensitivity;
  if (isHole(power)) return power;
  if (power.value <= 0) return hole('the power is not above zero');
  const won =
    wins > 0 ? { w: assumed('what one step slower hears fainter', wins, 'dB', 0, 'as the radio is') } : {};
  return computePlain(
    `distance that radio reaches ${between}`,
    'm',
    {
      symbol: 'd_r',
      expression: `distance at which the margin is down to the reserve${wins > 0 ? ', with the fainter signal that one step slower reads' : ''}`,
      evaluable: false,
      source: 'link budget (common practice); ITU-R P.525; plane earth, from memory',
    },
    { P: power, P_s: sensitivity, h1, h2, R: RESERVE, ...won },
    reach(path, budgetOf(power, sensitivity, wins), decibels(RESERVE.value)),
  );
}

/** Decibels that one step slower hears fainter: one step of spreading, or half the air rate in half the bandwidth. */
function slowerWins(radio: Radio): Maybe<number> {
  const carriage = carriageOf(radio);
  if (isHole(carriage)) return carriage;
  const { lora } = carriage;
  if (!lora) return HALF_THE_NOISE;
  const slower = slowerLora(lora);
  const [now, then] = [loraSensitivity(lora), slower && loraSensitivity(slower)];
  if (now === undefined || then === undefined) return hole('there is no slower step');
  return now - then;
}
const HALF_THE_NOISE = 10 * Math.log10(2);
