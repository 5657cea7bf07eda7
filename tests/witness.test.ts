/** The base as its own witness, over simulated recordings whose truth is known, and over a real day where one is given. */
import { gzipSync } from 'fflate';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { navigationReader } from '../server/evidence/rinex/navigation-file.ts';
import { observationReader } from '../server/evidence/rinex/observation-file.ts';
import { testimonyOf } from '../server/witness/witness.ts';
import { seededRandom } from './simulation/random.ts';
import { record, type Plan } from './simulation/raw/observe.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const rawOf = (file: Uint8Array) => {
  const reader = observationReader();
  for (let at = 0; at < file.length; at += 50_000) reader.push(file.subarray(at, at + 50_000));
  return reader.finish();
};
const navOf = (file: Uint8Array) => {
  const reader = navigationReader();
  reader.push(file);
  return reader.finish();
};
const day = (seed: string, plan: Partial<Plan>) => {
  const whole = { interval: 1, epochs: 150, systems: 'GE', ...plan };
  const { observations, navigation, truth, start } = record(seededRandom(seed), whole);
  return { answer: testimonyOf(rawOf(bytes(observations)), navOf(bytes(navigation))), truth, start };
};
const watched = ({ spans }: ReturnType<typeof day>['answer']) => spans.filter((span) => span.watched);
const silences = ({ spans }: ReturnType<typeof day>['answer']) =>
  spans.flatMap((span) => (span.watched ? [] : [span.because]));

describe('where it stood', () => {
  it('is found within the stated half-widths from nothing but the recording', () => {
    for (const seed of ['a', 'b', 'c']) {
      const { answer, truth } = day(seed, { interval: 30, epochs: 120, clockJumps: true });
      const { x = NaN, y = NaN, z = NaN } = answer.stood?.position ?? {};
      expect(Math.hypot(x - truth[0], y - truth[1], z - truth[2])).toBeLessThan(answer.stood?.spatial ?? 0);
      expect(answer.systems).toBe('GPS and Galileo');
    }
  });

  it('is not told with the ephemerides of another day', () => {
    const { observations } = record(seededRandom('d'), { interval: 30, epochs: 20, systems: 'GE' });
    const { navigation } = record(seededRandom('d'), { interval: 30, epochs: 20, systems: 'GE' });
    // The same records a week earlier: every column keeps its place.
    const old = navigation
      .replace(/^([GE]\d\d) 2026 03 11/gm, '$1 2026 03 04')
      .replaceAll('2.409000000000e+03', '2.408000000000e+03');
    const answer = testimonyOf(rawOf(bytes(observations)), navOf(bytes(old)));
    expect(answer.stood).toBeNull();
    expect(answer.problems.map(({ sentence }) => sentence).join(' ')).toMatch(
      /ephemerides are of another day/,
    );
  });
});

describe('whether it was knocked', () => {
  it('is silent over antennas that stand, with clock jumps, half cycles, slips of one satellite and slow sinking', () => {
    for (const [seed, plan] of Object.entries({
      plain: {},
      clock: { clockJumps: true },
      half: { halfCycles: 25 },
      slip: { slips: 1, knock: { at: 60, by: [0, 0, 0] } },
      sinking: { sinks: 0.02 },
      slow: { interval: 30, epochs: 240 },
    } satisfies Record<string, Partial<Plan>>)) {
      const { answer } = day(seed, plan);
      expect(answer.steps, seed).toEqual([]);
      expect(watched(answer).length, seed).toBeGreaterThan(0);
    }
  });

  it.each([
    ['12 mm east', [0.012, 0, 0]],
    ['12 mm north', [0, 0.012, 0]],
    ['25 mm up', [0, 0, 0.025]],
  ] as const)('tells a knock of %s at one epoch a second, with its moment and size', (_, by) => {
    const { answer, start } = day('knock', { knock: { at: 70, by } });
    expect(answer.steps).toHaveLength(1);
    const [step] = answer.steps;
    expect(step?.from).toBe(start + 69);
    expect(step?.to).toBe(start + 70);
    expect(Math.abs((step?.east ?? 0) - by[0])).toBeLessThan(3.5 * (step?.sigmaEast ?? 0));
    expect(Math.abs((step?.north ?? 0) - by[1])).toBeLessThan(3.5 * (step?.sigmaNorth ?? 0));
    expect(Math.abs((step?.up ?? 0) - by[2])).toBeLessThan(3.5 * (step?.sigmaUp ?? 0));
  });

  it('tells 80 mm at an epoch every 30 s, and does not claim to see 10 mm there', () => {
    const { answer } = day('thirty', { interval: 30, epochs: 240, knock: { at: 120, by: [0.08, 0, 0] } });
    expect(answer.steps).toHaveLength(1);
    for (const span of watched(answer)) if (span.watched) expect(span.horizontal).toBeGreaterThan(0.01);
  });

  it('says nothing where all lock was lost at the knock', () => {
    const { answer } = day('lost', { knock: { at: 70, by: [0.05, 0, 0] }, lockLostAt: 70 });
    expect(answer.steps).toEqual([]);
    expect(silences(answer)).toContain('lock lost');
  });

  it('never calls slips of half the sky a movement', () => {
    for (const seed of ['s', 't', 'u', 'v']) {
      const { answer } = day(seed, { knock: { at: 70, by: [0, 0, 0] }, slips: 8 });
      expect(answer.steps).toEqual([]);
    }
  });

  it('names gaps, few satellites and GPS alone as spans that say nothing', () => {
    expect(silences(day('gap', { gap: [50, 80] }).answer)).toContain('gap');
    expect(watched(day('six', { most: 6 }).answer)).toEqual([]);
    expect(new Set(silences(day('six', { most: 6 }).answer))).toContain('few satellites');
    const alone = day('gps', { interval: 30, epochs: 120, systems: 'G' }).answer;
    expect(alone.systems).toBe('GPS');
    expect(watched(alone)).toEqual([]);
  });
});

describe('what cannot be read', () => {
  const { observations } = record(seededRandom('r'), { interval: 1, epochs: 30, systems: 'GE' });

  it('reads the same from a gzip file, and what came before its end from one cut short', () => {
    const packed = gzipSync(bytes(observations));
    expect(rawOf(packed)).toEqual(rawOf(bytes(observations)));
    const cut = rawOf(packed.subarray(0, packed.length / 2));
    expect(cut.problems.map(({ sentence }) => sentence)).toContain(
      'The gzip file is cut short; what came before is used.',
    );
  });

  it.each([
    ['nothing', '', /empty/],
    ['another kind of file', 'PK nothing\nof the kind\n', /packed|no version/],
    ['a header without end', observations.slice(0, 400), /header has no end/],
  ])('says what is wrong with %s', (_, text, sentence) => {
    const raw = rawOf(bytes(text));
    expect(raw.times).toHaveLength(0);
    expect(raw.problems.map((problem) => problem.sentence).join(' ')).toMatch(sentence);
    expect(testimonyOf(raw, { records: [], ionosphere: null })).toMatchObject({ stood: null, steps: [] });
  });

  it('drops epochs that go back in time, and lines that belong to none', () => {
    const twice = rawOf(bytes(observations + observations.slice(observations.indexOf('\n>') + 1)));
    expect(twice.times).toHaveLength(30);
    expect(twice.problems[0]?.sentence).toBe('This epoch is not later than the one before; it is not used.');
  });
});

const folder = process.env['REAL_DATA'];
const given = folder !== undefined && existsSync(folder);
if (!given)
  process.stdout.write('No folder with a real day is named by REAL_DATA: the tests on it are not there.\n');
const onRealData = given ? describe : () => undefined;
onRealData('a real day of a permanent station', () => {
  const file = (end: string) => {
    const name = readdirSync(folder ?? '.').find((one) => one.startsWith('ESBC') && one.endsWith(end)) ?? '';
    return new Uint8Array(readFileSync(`${folder}/${name}`));
  };

  it('stands where its published position and the frames of the day put it, and was not moved', () => {
    const raw = rawOf(file('MO.crx.gz'));
    expect(raw.times).toHaveLength(2880);
    const answer = testimonyOf(raw, navOf(file('MN.rnx.gz')));
    // ETRS89 of the header, shifted to ITRF2014 of 2020-06-25 by PROJ: 0.515 m east, 0.564 m north.
    const { x = NaN, y = NaN, z = NaN } = answer.stood?.position ?? {};
    expect(Math.hypot(x - 3582105.291, y - 532589.7313, z - 5232754.8054)).toBeLessThan(1.5);
    expect(answer.steps).toEqual([]);
    expect(answer.skipped['R']).toBeGreaterThan(20_000);
  }, 120_000);
});
