/** The correction link of whole sessions: what is sent, whether it fits, how far it reaches, and what is said of it. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { listValues } from '../server/derive/listing.ts';
import { licenceReminders } from '../server/features/licence-reminder.ts';
import { inspect, type Inspection } from '../server/inspect.ts';
import { isHole } from '../server/quantities/value.ts';
import { linkLoad } from '../server/record/drawings/link-load.ts';
import { NO_FILES } from '../server/session/files.ts';
import { cleanSamples, inspectSample } from './samples.ts';
import { textAfter } from './pages.ts';

const PLAN = `job "Breakwater, north arm"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
  uncertainty 8 mm horizontal, 12 mm vertical
  source      "harbour control register" 2026-04-02
setup BASE on PM-14
`;
const LORA = `radio base
  carrier     868.3 MHz
  spreading   SF7
  bandwidth   250 kHz
  coding      4/6
  power       100 mW
  aerial      3.0 m
`;
/** 43 satellites of four constellations on two signals (common practice). */
const streamAt = (rest: string, extra = '') => `stream from BASE
${extra}  message     1077 every 1 s
  message     1087 every ${rest}
  message     1097 every ${rest}
  message     1127 every ${rest}
  tracked     GPS 11, GLONASS 8, Galileo 10, BeiDou 14, 2 signals
`;

const inspected = (text: string): Inspection => inspect(openDocument('day.trib', text), NO_FILES);

function value({ derivation }: Inspection, id: string): number {
  const found = listValues(derivation).find((listed) => listed.id === id)?.value;
  if (!found || isHole(found)) throw new Error(`${id}: ${found?.hole ?? 'not listed'}`);
  return found.value;
}
const told = ({ findings }: Inspection, topic: string) =>
  findings.filter(({ code }) => code.startsWith(topic));

describe('sizes', () => {
  it('are those of the message tables', () => {
    const text = `${PLAN}stream from BASE
  message     1005 every 10 s
  message     1006 every 10 s
  message     1074 every 1 s
  message     1097 every 1 s
  tracked     GPS 8, Galileo 8, 2 signals
`;
    const day = inspected(text);
    // RTCM 10403.3: payloads of 152 and 168 bits; 8 satellites on 2 signals: MSM4 144 bytes, MSM7 226 bytes with frames.
    expect(value(day, 'stream/BASE/1005/size')).toBe(152 / 8 + 6);
    expect(value(day, 'stream/BASE/1006/size')).toBe(168 / 8 + 6);
    expect(value(day, 'stream/BASE/1074/size')).toBe(144);
    expect(value(day, 'stream/BASE/1097/size')).toBe(226);
  });

  it('of what is not known leave the rest of the load standing', () => {
    const day = inspected(`${PLAN}${LORA}${streamAt('2 s', '  message     4094 every 1 s\n')}`);
    expect(listValues(day.derivation).find(({ id }) => id === 'stream/BASE/4094/size')?.value).toHaveProperty(
      'hole',
    );
    expect(value(day, 'stream/BASE/airtime/average')).toBeGreaterThan(0.5);
  });
});

describe('43 satellites on a 9.1 kbps air rate (common practice)', () => {
  it('fit on average with GPS every second and the rest every other, and not in the fullest second', () => {
    const day = inspected(PLAN + LORA + streamAt('2 s'));
    // (common practice): about 70 % of the airtime; the fullest second 1.1 s unless staggered.
    expect(Math.abs(value(day, 'stream/BASE/airtime/average') - 0.7)).toBeLessThan(0.05);
    expect(Math.abs(value(day, 'stream/BASE/airtime/fullest-second') - 1.1)).toBeLessThan(0.1);
    expect(value(day, 'stream/BASE/airtime/staggered-second')).toBeLessThan(0.8);
    expect(told(day, 'radio/overload').map(({ severity }) => severity)).toEqual(['warning']);
  });

  it('do not fit all every second', () => {
    const day = inspected(PLAN + LORA + streamAt('1 s'));
    // (common practice): about 110 % of the airtime.
    expect(Math.abs(value(day, 'stream/BASE/airtime/average') - 1.1)).toBeLessThan(0.05);
    expect(told(day, 'radio/overload').map(({ severity }) => severity)).toEqual(['error']);
    expect(value(day, 'stream/BASE/1077/fitting-interval')).toBe(1);
    expect(value(day, 'stream/BASE/1087/fitting-interval')).toBe(2);
  });

  it('fit when planned as the fix says', () => {
    const day = inspected(PLAN + LORA + streamAt('1 s'));
    const [fix] = told(day, 'radio/overload')[0]?.fixes ?? [];
    if (!fix) throw new Error('a plan that does not fit has a fix');
    const after = inspected(textAfter(day, fix) ?? '');
    expect(told(after, 'radio/overload')).toEqual([]);
    expect(value(after, 'stream/BASE/airtime/fullest-second')).toBeLessThan(1);
  });

  it('are a fact once the day has begun, and facts are left alone', () => {
    const begun = PLAN.replace(
      'setup BASE on PM-14\n',
      'setup BASE on PM-14 at 07:50\n  measured    1.283 m to foot, at 07:52\n',
    );
    const [finding] = told(inspected(begun + LORA + streamAt('1 s')), 'radio/overload');
    expect(finding?.fixes).toEqual([]);
    expect(finding?.message).toContain('1087 every 2 s');
  });
});

describe('range', () => {
  /** 5 km east-north-east of the base. */
  const FAR = `mark FAR
  position    -36203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
check RIDGE on FAR at 09:00
`;

  it('takes level ground for what it is', () => {
    const day = inspected(
      `${PLAN}${FAR}radio base
  carrier     915 MHz
  channel     25 kHz
  rate        9.6 kbps
  aerial      3.0 m
radio rover
  aerial      2.0 m
`,
    );
    // ITU-R P.525; plane earth costs 27 dB more at 5 km with aerials at 3 m and 2 m (from memory).
    const freeSpace = 32.4 + 20 * Math.log10(915) + 20 * Math.log10(5);
    expect(Math.abs(value(day, 'link/base/rover/path-loss') - freeSpace - 27)).toBeLessThan(0.5);
    // 4.12 · (√3 + √2) km (from memory).
    expect(Math.abs(value(day, 'link/base/rover/horizon') - 12_963)).toBeLessThan(1);
  });

  it('grows with a slower air rate, and a longer baseline wants one (common practice)', () => {
    const day = inspected(PLAN + FAR + LORA);
    // Data sheet: −123 dBm at SF7 and 125 kHz; twice the bandwidth hears 3 dB less.
    expect(Math.abs(value(day, 'link/base/sensitivity') + 120)).toBeLessThan(0.02);
    expect(value(day, 'link/base/rover/reach-slower')).toBeGreaterThan(value(day, 'link/base/rover/reach'));
    expect(value(day, 'link/base/rover/reach')).toBeLessThan(5000);
    const slow = inspected(PLAN + FAR + LORA.replace('SF7', 'SF12'));
    expect(told(day, 'radio/range')).toHaveLength(1);
    expect(value(slow, 'link/base/rover/reach')).toBeGreaterThan(5000);
    expect(told(slow, 'radio/range')).toEqual([]);
  });

  it('counts to the farthest point, too', () => {
    const rows = `points
  from        BASE
  columns     name, east m, north m
  row         NEAR, -41100.000, 164904.902
  row         OUT, -41203.118, 168904.902
  row         WEST, -42203.118, 164904.902
`;
    const day = inspected(PLAN + rows + LORA.replace('100 mW', '1 mW'));
    // 4000 m on the grid, whose scale at 41°N, 8.6°W is a few parts in a hundred thousand off.
    const [finding] = told(day, 'radio/range');
    expect(finding?.message).toMatch(/^OUT, (3999|4000)\.\d m from the base/);
  });

  it('counts to it across the meridian of 180°, too', () => {
    const day = inspected(`job "By the date line"
  date        2026-05-19
  grid        EPSG:32760
mark T-1
  position    17°00'00"S, 179°59'00"E
setup BASE on T-1
${LORA.replace('100 mW', '1 mW')}points
  from        BASE
  columns     name, latitude °, longitude °
  row         NEAR, -17.0, 179.98
  row         BEHIND, -17.0, -179.99
  row         OUT, -17.0, -179.80
`);
    const [finding] = told(day, 'radio/range');
    // GeodSolve -i, 17°S 179°59′E to 17°S 179.8°W: 23 071.9 m.
    expect(finding?.message).toMatch(/^OUT, 23[.]\d km from the base/);
  });

  it('shows what it assumes', () => {
    const day = inspected(PLAN + FAR + LORA.replace('  aerial      3.0 m\n', ''));
    const reach = listValues(day.derivation).find(({ id }) => id === 'link/base/rover/path-loss')?.value;
    if (!reach || isHole(reach) || reach.origin !== 'computed') throw new Error('there is a path');
    expect(reach.inputs['h1']?.origin).toBe('assumed');
  });
});

describe('both ends', () => {
  const ends = (rover: string) =>
    `radio base\n  carrier     461.0375 MHz\n  rate        9.6 kbps\nradio rover\n${rover}`;

  it('agree as spreading factors, however they are written', () => {
    const lora = (rover: string) =>
      told(
        inspected(`radio base\n  spreading   SF7\n  coding      4/6\nradio rover\n  spreading   ${rover}\n`),
        'radio/ends-differ',
      );
    expect(lora('7\n  coding      4/6')).toEqual([]);
    expect(lora('SF8\n  coding      4/6')).toHaveLength(1);
    expect(lora('SF7\n  coding      4/5')).toHaveLength(1);
  });
  it('agree as numbers, whatever unit they are typed in', () => {
    expect(told(inspected(ends('  carrier     461037.5 kHz\n  rate        9600 bps\n')), 'radio')).toEqual(
      [],
    );
  });

  it('are compared detail by detail', () => {
    const found = told(
      inspected(ends('  carrier     461.0325 MHz\n  rate        19.2 kbps\n')),
      'radio/ends-differ',
    );
    expect(found.map(({ severity }) => severity)).toEqual(['warning', 'warning']);
  });
});

describe('the drawing of the load', () => {
  it('has a bar for each message of each second, and escapes what was typed', () => {
    const day = inspected(PLAN + LORA + streamAt('2 s', '  message     "<b>" every 1 s\n'));
    const [stream] = day.derivation.link.streams;
    if (!stream) throw new Error('there is a stream');
    const { markup } = linkLoad(day, stream, { width: 680, link: null });
    expect(markup).not.toContain('<b>');
    expect(markup).toContain('70 % of the time on the air on average');
    // One period is two seconds: four messages in the first, one in the second; five swatches stand in the legend.
    expect(markup.match(/<rect/g)).toHaveLength(4 + 1 + 5);
  });
});

describe('what is left alone', () => {
  it.each(cleanSamples().map((sample) => [sample.file, sample] as const))(
    '%s has no word on its link',
    (_, sample) => {
      const day = inspectSample(sample);
      expect([...told(day, 'radio'), ...told(day, 'stream'), ...told(day, 'antenna/clearance')]).toEqual([]);
    },
  );

  it('is the law: the licence is reminded of, and nothing is called permitted', () => {
    const [reminder, ...more] = licenceReminders(inspected(PLAN + LORA + streamAt('2 s')).derivation.link);
    expect(more).toEqual([]);
    expect(reminder).toContain('Check the licence conditions in force where you are');
    expect(reminder).not.toMatch(/\b(legal|permitted|allowed)\b/);
  });
});
