/** A height was keyed over a mark whose ellipsoidal height is not known: no separation in the register, no geoid model in the job. */
import type { SetupValues } from '../../derive/setups/setup.ts';
import { isHole } from '../../quantities/value.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Job } from '../../session/entries.ts';
import { kind } from '../finding.ts';
import { unreadDetail, unreadEntry } from '../unread.ts';

export const heightNoSeparation = kind({
  code: 'height/no-separation',
  find: ({ session, derivation }) => withoutSeparation(valuesOf(derivation.setups), session.job),
  tell: ({ mark }, { session: { job } }) => ({
    severity: 'warning',
    follows: [
      unreadDetail(mark.name, 'separation'),
      ...unreadEntry('job'),
      ...(job ? [unreadDetail(job.title, 'geoid')] : []),
    ],
    message: `${mark.name} has a height above sea level, no separation, and the job no geoid model. So the ellipsoidal height to key is not known, and what was keyed is compared with nothing: the height above sea level keyed in its stead would not be seen here. Add the separation that is published for the mark, or name the geoid model of the region.`,
  }),
});

const withoutSeparation = foundInEach(({ setup, mark: values }: SetupValues, job: Job | null) => {
  // Before anything is keyed the key card says that the height is wanting.
  if (!values || values.mark.separation || job?.geoid || !setup.keyed.some(({ height }) => height)) return [];
  const { mark, located, ellipsoidalHeight, orthometricHeight } = values;
  if (isHole(located) || isHole(orthometricHeight) || !isHole(ellipsoidalHeight)) return [];
  return [{ mark, place: setup.on?.place ?? setup.place }];
});
