/** The job names a geoid model that cannot be used, so nothing is compared with it. */
import { isHole } from '../../quantities/value.ts';
import { kind } from '../finding.ts';

export const heightGeoidUnreadable = kind({
  code: 'height/geoid-unreadable',
  find: ({ session, derivation }) => {
    const named = session.job?.geoid;
    const { geoid } = derivation;
    return named && isHole(geoid) ? [{ place: named.place, because: geoid.hole }] : [];
  },
  tell: ({ because }) => ({
    severity: 'information',
    headline: 'Geoid model of the job not readable.',
    effect: `${because[0]?.toUpperCase() ?? ''}${because.slice(1)}. Separations are not checked against it.`,
    action: 'Correct its path in the job.',
  }),
});
