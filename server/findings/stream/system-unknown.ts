/** A constellation under `tracked` that is none, so that the sizes of its messages are not known. */
import { CONSTELLATION_NAMES, constellationOf } from '../../derive/link/stream.ts';
import { nearest } from '../../quantities/near.ts';
import { kind, readingFixes } from '../finding.ts';
import { oneOf, short } from '../words.ts';

export const streamSystemUnknown = kind({
  code: 'stream/system-unknown',
  find: ({ session }) =>
    session.streams.flatMap(({ tracked }) =>
      tracked
        .filter(({ system }) => constellationOf(system) === null)
        .map(({ system, place }) => ({ system, place: { ...place, end: place.start + system.length } })),
    ),
  tell: ({ system }) => ({
    severity: 'warning',
    message: `There is no constellation ${short(system)}, so how much its messages carry is not known. It is one of ${oneOf(CONSTELLATION_NAMES)}.`,
  }),
  mend: ({ system, place }) => readingFixes(place, nearest(system, CONSTELLATION_NAMES)),
});
