import { expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { deriveSession } from '../derive/derivation.ts';
import { NO_FILES } from '../session/files.ts';
import { sessionOf } from '../session/session.ts';
import { situationOf } from './situation.ts';
import { zone } from './zone.ts';

/** On the central meridian of UTM zone 29, which is 9° W; those of 28 and 30 are 15° W and 3° W. */
const TEXT = `job "Zones"
  date        2026-05-19
  grid        EPSG:32629
mark A
  position    500000.000 m E, 4555000.000 m N
  height      61.201 m ellipsoidal
setup BASE on A at 08:00
  measured    1.500 m to arp at 08:02
`;

it('the zone to the west is six degrees to the west, and the one to the east to the east', () => {
  const session = sessionOf(openDocument('day.trib', TEXT), NO_FILES);
  const derivation = deriveSession(session, NO_FILES);
  const setup = derivation.setups.get('BASE');
  if (!setup) throw new Error('the setup is missing');
  const told = zone
    .ways(situationOf(setup, null, session, derivation))
    .map(({ says, effect }) => [
      /to the (\w+)$/.exec(says)?.[1],
      effect.on === 'told' ? Math.round((effect.told.place?.longitude ?? NaN) * 1e6) / 1e6 : NaN,
    ]);
  expect(told).toEqual([
    ['west', -15],
    ['east', -3],
  ]);
});
