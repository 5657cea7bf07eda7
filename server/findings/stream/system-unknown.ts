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
    headline: `Unknown constellation ${short(system)}.`,
    effect: 'The size of its messages is not known.',
    action: `Write ${oneOf(CONSTELLATION_NAMES)}.`,
  }),
  mend: ({ system, place }) => readingFixes(place, nearest(system, CONSTELLATION_NAMES)),
});
