import { expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { deriveSession } from '../derive/derivation.ts';
import { NO_FILES } from '../session/files.ts';
import { sessionOf } from '../session/session.ts';
import { epoch } from './epoch.ts';
import { situationOf } from './situation.ts';

function platesUnder(datum: string): readonly string[] {
  const text = `job "Epochs"
  date        2026-05-19
  datum       ${datum}
mark A
  position    41.10° N, 8.60° W
  height      61.201 m ellipsoidal
setup BASE on A at 08:00
  measured    1.500 m to arp at 08:02
`;
  const session = sessionOf(openDocument('day.trib', text), NO_FILES);
  const derivation = deriveSession(session, NO_FILES);
  const setup = derivation.setups.get('BASE');
  if (!setup) throw new Error('the setup is missing');
  return epoch
    .ways(situationOf(setup, null, session, derivation))
    .flatMap(({ says }) => /with the plate (.+) moving/.exec(says)?.[1] ?? []);
}

/** ETRS89 is by its definition fixed to the stable part of Eurasia (EUREF, resolution of 1990); ITRF2014 to no plate. */
it('carries a mark on with the plate that its datum is fixed to, else with any', () => {
  expect(platesUnder('EPSG:4258')).toEqual(['Eurasia']);
  expect(platesUnder('EPSG:9000')).toContain('Eurasia');
  expect(platesUnder('EPSG:9000').length).toBeGreaterThan(1);
});
