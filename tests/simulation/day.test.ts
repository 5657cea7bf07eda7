/** Whole days: repeatable by seed, as precise as they claim, and quick enough for thousands. */
import { describe, expect, it } from 'vitest';
import type { Day } from './day.ts';
import { drawScene, liveDay } from './day.ts';
import { waysOf } from './planted.ts';
import { checkResiduals, residualCovariance, squaredLength } from './predict.ts';
import { sessionText } from './session-text.ts';

const careful = (seed: number): Day => liveDay(drawScene({ seed: `clean ${String(seed)}` }));

describe('a simulated day', () => {
  it('is the same for the same seed and another for another', () => {
    expect(sessionText(careful(1))).toBe(sessionText(careful(1)));
    expect(sessionText(careful(1))).not.toBe(sessionText(careful(2)));
  });

  it('stays at its place and under its sky whatever option is chosen', () => {
    const [grid, geographic] = (['grid', 'geographic'] as const).map((form) =>
      drawScene({ seed: 'options', form, points: form === 'grid' ? 0 : 9, rounds: ['OPEN'] }),
    );
    expect(grid?.base).toEqual(geographic?.base);
    expect(grid?.checkMarks.map(({ truth }) => truth)).toEqual(
      geographic?.checkMarks.map(({ truth }) => truth),
    );
    expect(grid?.autonomous).toEqual(geographic?.autonomous);
    expect(grid?.occupations.map(({ name }) => name)).toEqual(
      grid?.checkMarks.map((_, at) => ['OPEN', 'OPEN-2'][at]),
    );
  });

  it('keeps its noise whatever is planted', () => {
    const scene = drawScene({ seed: 'same noise', distance: 200 });
    const [planted] = waysOf('phase-centre-for-arp', scene.situation);
    const [clean, wrong] = [liveDay(scene), liveDay(scene, planted)].map((day) =>
      checkResiduals(scene, day.observations),
    );
    clean?.forEach(({ residual }, index) => {
      const risen = (wrong?.[index]?.residual.up ?? NaN) - residual.up;
      expect(Math.abs(risen - scene.baseAntenna.phaseCentre)).toBeLessThan(0.001);
    });
  });

  it('scatters over a thousand clean days as its budget says', () => {
    let [beyondLevel, beyondUp, squares, degrees, floating] = [0, 0, 0, 0, 0];
    for (let seed = 0; seed < 1000; seed++) {
      const { scene, observations } = careful(seed);
      const residuals = checkResiduals(scene, observations);
      floating += residuals.filter(({ status }) => status === 'float').length;
      const covariance = residualCovariance(scene, residuals);
      squares += squaredLength(
        covariance,
        residuals.flatMap(({ residual }) => [residual.east, residual.north, residual.up]),
      );
      degrees += 3 * residuals.length;
      const first = residuals[0];
      if (first === undefined) throw new Error('no check');
      const level = Math.sqrt(covariance[0]?.[0] ?? NaN);
      const up = Math.sqrt(covariance[2]?.[2] ?? NaN);
      // The radius of a circle that holds 95 %, and the half-width of an interval that does (standard tables).
      if (Math.hypot(first.residual.east, first.residual.north) > 2.447747 * level) beyondLevel += 1;
      if (Math.abs(first.residual.up) > 1.959964 * up) beyondUp += 1;
    }
    // 50 expected; 99 % of a binomial is 17.8 either way.
    expect(Math.abs(beyondLevel - 50)).toBeLessThan(18);
    expect(Math.abs(beyondUp - 50)).toBeLessThan(18);
    // Some skies are a little better than specified, so the joint sum may fall short by a few per cent.
    expect(squares / degrees).toBeGreaterThan(0.94);
    expect(squares / degrees).toBeLessThan(1 + 2.5758 * Math.sqrt(2 / degrees));
    expect(floating).toBe(0);
  });

  it('loses its fix where the base is far from where it was said to be', () => {
    const scene = drawScene({ seed: 'far', distance: 15_000, keyedForm: 'geographic' });
    const [planted] = waysOf('hemisphere', scene.situation);
    const statuses = liveDay(scene, planted).observations.map(({ status }) => status);
    expect(new Set(statuses)).toEqual(new Set(['float']));
  });

  it('takes a thousand days of some six occupations in seconds', () => {
    const start = performance.now();
    let occupations = 0;
    for (let seed = 0; seed < 1000; seed++) {
      occupations += liveDay(drawScene({ seed, points: 0 })).observations.length;
    }
    expect(occupations).toBeGreaterThan(5000);
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});
