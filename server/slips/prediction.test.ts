import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { deriveSession } from '../derive/derivation.ts';
import { NO_FILES } from '../session/files.ts';
import { sessionOf } from '../session/session.ts';
import { fitOf } from './likelihood.ts';
import { evidenceOf } from './observed-checks.ts';
import { predictionOf } from './prediction.ts';
import { situationOf } from './situation.ts';

/** Both checks are off by half a metre, in opposite directions, so that no error of the base fits. */
const TEXT = `job "Two wrong checks"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
  geoid       EGM96
antenna A1
  phase-centre 92 mm above arp
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
  uncertainty 8 mm horizontal, 12 mm vertical
mark PM-09
  position    -40311.882 m E, 165377.404 m N
  height      5.196 m orthometric
  separation  54.915 m
  uncertainty 8 mm horizontal, 12 mm vertical
setup BASE on PM-14 with A1 at 08:00 until 15:40
  measured    1.284 m to foot, 48 mm off centre, at 08:02
  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height 61.201 m ellipsoidal
  keyed       antenna-height 1.283 m to arp
check OPEN on PM-09 at 08:25
  observed    -40311.382 m E, 165377.404 m N, height 5.696 m orthometric
check CLOSE on PM-09 at 15:25
  observed    -40312.382 m E, 165377.404 m N, height 4.696 m orthometric
`;

function situated() {
  const session = sessionOf(openDocument('day.trib', TEXT), NO_FILES);
  const derivation = deriveSession(session, NO_FILES);
  const setup = derivation.setups.get('BASE');
  const evidence = evidenceOf(derivation.checks);
  if (!setup || !evidence) throw new Error('the session says nothing');
  const situation = situationOf(setup, setup.keyed[0] ?? null, session, derivation);
  const { place, height } = situation.right;
  if (!place || height === null) throw new Error('what is right is not known');
  return { situation, evidence, place, height };
}

/** In metres, some of them too small to be out of the question and some not. */
const SIZES = [0.02, 0.05, 0.2, 0.5, 2, 3, 5, 8, 20, 100, 900, 9e3, 9e4];

describe('what is told far from what the checks show', () => {
  const { situation, evidence, place, height } = situated();
  const { residuals, rows } = evidence;
  const plain = fitOf(
    residuals,
    residuals.map(() => 0),
    [],
    evidence.noise,
  ).log;
  const told = SIZES.flatMap((size) => {
    const degrees = size / 111_000;
    return [
      { size, axis: 'up', told: { height: height + size } },
      { size, axis: 'up', told: { height: height - size } },
      { size, axis: 'north', told: { place: { ...place, latitude: place.latitude + degrees } } },
    ] as const;
  });
  const judged = told.map((one) => {
    const prediction = predictionOf({ on: 'told', told: one.told }, situation, evidence);
    const sign = 'height' in one.told && one.told.height < height ? 1 : -1;
    const wrong = rows.map(({ axis }) => (axis === one.axis ? -sign * one.size : 0));
    const odds = fitOf(residuals, wrong, [], evidence.noiseAfter(one.size)).log - plain;
    return { ...one, isLeftOut: prediction === null, odds };
  });

  it('is left out where its odds against no error at all are nothing in doubles', () => {
    const left = judged.filter(({ isLeftOut }) => isLeftOut);
    expect(left.length).toBeGreaterThan(8);
    for (const { odds } of left) expect(Math.exp(odds)).toBe(0);
  });

  it('is worked out where the checks might show it', () => {
    const near = judged.filter(({ odds }) => odds > -100);
    expect(near.length).toBeGreaterThan(0);
    expect(near.filter(({ isLeftOut }) => isLeftOut)).toEqual([]);
  });
});
