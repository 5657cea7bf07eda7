/** Observations of a simulated antenna: every delay, clock and mishap added one by one, then written as RINEX 3. Shares no code with the program. */
import type { Random } from '../random.ts';
import { C, constellation, EARTH_RATE, placeOf, relativity, turned, type Elements } from './sky.ts';
import { add, cross, dot, minus, norm, scaled, type Vector } from './vectors.ts';

const GPS_MU = 3.986005e14;
const GALILEO_MU = 3.986004418e14;
const F1 = 1575.42e6;
const F2 = { G: 1227.6e6, E: 1176.45e6 };
/** Noon of a Wednesday: 2026-03-11 12:00, week 2409. */
const NOON = Date.UTC(2026, 2, 11, 12) / 1000;
const WEEK_START = Date.UTC(2026, 2, 8) / 1000;
const WEEK = 2409;

export interface Plan {
  readonly interval: number;
  readonly epochs: number;
  /** Which systems are written. */
  readonly systems: string;
  /** Metres east, north and up by which the antenna jumps before the epoch `at`. */
  readonly knock?: { readonly at: number; readonly by: Vector };
  /** Satellites that slip without a flag at the moment of the knock. */
  readonly slips?: number;
  /** All satellites lose lock, flagged, before this epoch. */
  readonly lockLostAt?: number;
  /** Epochs from, up to, that are not recorded. */
  readonly gap?: readonly [number, number];
  /** The receiver's clock is set back by a millisecond as often as it has gained one. */
  readonly clockJumps?: boolean;
  /** The second half of the sky is behind a house: at most this many satellites. */
  readonly most?: number;
  /** Half a cycle is settled, flagged, on one satellite every so many epochs. */
  readonly halfCycles?: number;
  /** Metres by which the antenna sinks over the whole session. */
  readonly sinks?: number;
}

export interface Recording {
  readonly observations: string;
  readonly navigation: string;
  readonly truth: Vector;
  readonly start: number;
}

interface Channel {
  readonly el: Elements;
  clock: number;
  multipath: number;
  readonly cycles: [number, number];
  seen: boolean;
  lli: number;
}

/** The antenna's place: 54° N 10° E, 40 m; its axes east, north and up on the ellipsoid WGS 84. */
const LATITUDE = (54 * Math.PI) / 180;
const LONGITUDE = (10 * Math.PI) / 180;
const UP: Vector = [
  Math.cos(LATITUDE) * Math.cos(LONGITUDE),
  Math.cos(LATITUDE) * Math.sin(LONGITUDE),
  Math.sin(LATITUDE),
];
const EAST: Vector = [-Math.sin(LONGITUDE), Math.cos(LONGITUDE), 0];
const NORTH: Vector = cross(UP, EAST);
const A = 6378137;
const E2 = 0.00669437999014;
const PRIME = A / Math.sqrt(1 - E2 * Math.sin(LATITUDE) ** 2);
export const TRUTH: Vector = [(PRIME + 40) * UP[0], (PRIME + 40) * UP[1], (PRIME * (1 - E2) + 40) * UP[2]];

export function record(random: Random, plan: Plan): Recording {
  const channels = constellation(random.fork('sky')).map((el): Channel => ({
    el,
    clock: 0,
    multipath: 0,
    cycles: [Math.round(random.uniform(-1e5, 1e5)), Math.round(random.uniform(-1e5, 1e5))],
    seen: false,
    lli: 0,
  }));
  const start = NOON + 60 * random.below(300);
  const lines = [...header(plan, start)];
  let receiver = 2e-4;
  const drift = random.uniform(-3e-8, 3e-8);
  const electrons = random.uniform(1.5, 6);
  const wave = {
    size: random.uniform(0, 0.02),
    speed: random.uniform(0.004, 0.008),
    turn: random.uniform(0, 6),
  };
  for (let epoch = 0; epoch < plan.epochs; epoch += 1) {
    const since = epoch * plan.interval;
    receiver += (drift + random.normal(2e-10)) * plan.interval;
    if (plan.clockJumps && Math.abs(receiver) > 5e-4) receiver -= Math.sign(receiver) * 1e-3;
    if (plan.knock?.at === epoch) slip(channels, plan.slips ?? 0, random);
    if (plan.lockLostAt === epoch) lose(channels, random);
    const antenna = antennaAt(plan, epoch);
    const rows = channels.flatMap((channel, index) => {
      const { el } = channel;
      channel.clock += random.normal(el.wander * Math.sqrt(plan.interval));
      channel.multipath = 0.98 * channel.multipath + random.normal(0.0006);
      if (plan.halfCycles && epoch % plan.halfCycles === plan.halfCycles - 1 && index === 5) {
        channel.cycles[0] += 0.5;
        channel.lli = 1;
      }
      const iono = (sine: number) =>
        (0.4 * electrons * (1 + 0.1 * Math.sin(since / 9000)) +
          wave.size * Math.sin(wave.speed * since + wave.turn + el.node)) /
        Math.sqrt(1 - (0.93 * Math.sqrt(1 - sine * sine)) ** 2);
      const row = rowOf(channel, antenna, start + since, receiver, iono, random);
      return row && plan.systems.includes(el.name.charAt(0)) ? [row] : [];
    });
    const shown = rows.sort((one, other) => other.sine - one.sine).slice(0, plan.most ?? rows.length);
    if (plan.gap && epoch >= plan.gap[0] && epoch < plan.gap[1]) continue;
    lines.push(epochLine(start + since, shown.length), ...shown.map(({ line }) => line));
  }
  return {
    observations: `${lines.join('\n')}\n`,
    navigation: navigation(channels, plan, start),
    truth: TRUTH,
    start,
  };
}

function antennaAt({ knock, sinks, epochs }: Plan, epoch: number): Vector {
  const sunk = add(TRUTH, scaled(UP, (-(sinks ?? 0) * epoch) / epochs));
  if (!knock || epoch < knock.at) return sunk;
  const [e, n, u] = knock.by;
  return add(sunk, add(scaled(EAST, e), add(scaled(NORTH, n), scaled(UP, u))));
}

function slip(channels: readonly Channel[], count: number, random: Random) {
  const up = channels.filter(({ seen }) => seen);
  for (let index = 0; index < count; index += 1) {
    const channel = up[random.below(up.length)];
    if (channel) channel.cycles[0] += (random.chance(0.5) ? 1 : -1) * (1 + random.below(10));
  }
}
function lose(channels: readonly Channel[], random: Random) {
  for (const channel of channels) {
    channel.cycles[0] = Math.round(random.uniform(-1e5, 1e5));
    channel.cycles[1] = Math.round(random.uniform(-1e5, 1e5));
    channel.lli = 1;
  }
}

/** `receiver` is what its clock is ahead; it tags `t + receiver` as t. */
function rowOf(
  channel: Channel,
  antenna: Vector,
  tag: number,
  receiver: number,
  iono: (sine: number) => number,
  random: Random,
) {
  const { el } = channel;
  const system = el.name.startsWith('G') ? 'G' : 'E';
  const mu = system === 'G' ? GPS_MU : GALILEO_MU;
  const true_ = tag - receiver;
  const toe = NOON - WEEK_START;
  let travel = 0.075;
  let line: Vector = [0, 0, 0];
  for (let round = 0; round < 5; round += 1) {
    const left = placeOf(el, mu, toe, true_ - travel - WEEK_START);
    line = minus(turned(left, EARTH_RATE * travel), antenna);
    travel = norm(line) / C;
  }
  const sine = dot(line, UP) / norm(line);
  if (sine < 0.1) {
    channel.seen = false;
    return null;
  }
  const left = true_ - travel;
  const satellite =
    el.clockOffset + el.clockDrift * (left - NOON) + relativity(el, mu, toe, left - WEEK_START);
  const distance = norm(line) + C * (receiver - satellite) - channel.clock;
  const wet = 2.4 / Math.sqrt(sine * sine + 0.0021);
  const delay = iono(sine);
  const γ = (F1 / F2[system]) ** 2;
  const noise = () => random.normal(0.0009 * Math.sqrt(0.5 * (1 + 1 / sine ** 2)));
  const rough = () => random.normal(0.35 / sine);
  const group = C * el.groupDelay;
  const phase1 = (distance + wet - delay + channel.multipath + noise()) / (C / F1) + channel.cycles[0];
  const phase2 =
    (distance + wet - γ * delay + channel.multipath + noise()) / (C / F2[system]) + channel.cycles[1];
  const code1 = distance + wet + delay + group + rough();
  const code2 = distance + wet + γ * delay + γ * group + rough();
  const lli = channel.lli || (channel.seen ? 0 : 1);
  channel.seen = true;
  channel.lli = 0;
  const cell = (value: number, flag: number) => `${value.toFixed(3).padStart(14)}${flag || ' '} `;
  return {
    sine,
    line: `${el.name}${cell(code1, 0)}${cell(phase1, lli)}${cell(code2, 0)}${cell(phase2, lli)}`.trimEnd(),
  };
}

const labelled = (text: string, label: string) => `${text.padEnd(60)}${label}`;
const parts = (t: number) => {
  const d = new Date(Math.round(t * 1000));
  return [
    d.getUTCFullYear(),
    d.getUTCMonth() + 1,
    d.getUTCDate(),
    d.getUTCHours(),
    d.getUTCMinutes(),
    (d.getTime() % 60_000) / 1000,
  ] as const;
};
const two = (n: number) => String(n).padStart(2, '0');

function header({ systems, interval }: Plan, start: number): readonly string[] {
  const [y, mo, d, h, mi, s] = parts(start);
  const six = (n: number) => String(n).padStart(6);
  return [
    labelled('     3.04           OBSERVATION DATA    M', 'RINEX VERSION / TYPE'),
    labelled('HARBOUR-BASE', 'MARKER NAME'),
    labelled(TRUTH.map((v) => v.toFixed(4).padStart(14)).join(''), 'APPROX POSITION XYZ'),
    ...(systems.includes('G') ? [labelled('G    4 C1C L1C C2W L2W', 'SYS / # / OBS TYPES')] : []),
    ...(systems.includes('E') ? [labelled('E    4 C1C L1C C5Q L5Q', 'SYS / # / OBS TYPES')] : []),
    labelled(interval.toFixed(3).padStart(10), 'INTERVAL'),
    labelled(
      `${[y, mo, d, h, mi].map(six).join('')}${s.toFixed(7).padStart(13)}     GPS`,
      'TIME OF FIRST OBS',
    ),
    labelled('', 'END OF HEADER'),
  ];
}

function epochLine(t: number, satellites: number) {
  const [y, mo, d, h, mi, s] = parts(t);
  return `> ${y} ${two(mo)} ${two(d)} ${two(h)} ${two(mi)}${s.toFixed(7).padStart(11)}  0${String(satellites).padStart(3)}`;
}

/** One record a satellite and hour, all of the same elements, moved on to its own time. */
function navigation(channels: readonly Channel[], { interval, epochs }: Plan, start: number): string {
  const lines = [
    labelled('     3.04           N: GNSS NAV DATA    M', 'RINEX VERSION / TYPE'),
    labelled('', 'END OF HEADER'),
  ];
  for (const { el } of channels) {
    for (let time = start - 3600; time <= start + interval * epochs + 3600; time += 3600)
      lines.push(...navRecord(el, time));
  }
  return `${lines.join('\n')}\n`;
}

function navRecord(el: Elements, time: number): readonly string[] {
  const galileo = el.name.startsWith('E');
  const mu = galileo ? GALILEO_MU : GPS_MU;
  const [y, mo, d, h, mi, s] = parts(time);
  const toe = time - WEEK_START;
  const M = el.anomaly + Math.sqrt(mu / el.rootA ** 6) * (time - NOON);
  const number = (v: number) =>
    v
      .toExponential(12)
      .replace(/e([+-])(\d)$/, 'e$10$2')
      .padStart(19);
  const row = (...n: readonly number[]) => `    ${n.map(number).join('')}`;
  return [
    `${el.name} ${y} ${two(mo)} ${two(d)} ${two(h)} ${two(mi)} ${two(s)}${[el.clockOffset + el.clockDrift * (time - NOON), el.clockDrift, 0].map(number).join('')}`,
    row(1, 0, 0, M),
    row(0, el.e, 0, el.rootA),
    row(toe, 0, el.node, 0),
    row(el.inclination, 0, el.perigee, 0),
    row(0, galileo ? 258 : 0, WEEK, 0),
    row(2, 0, el.groupDelay, galileo ? el.groupDelay : 0),
    row(toe, 0),
  ];
}
