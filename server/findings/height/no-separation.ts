/** A height was keyed over a mark whose ellipsoidal height is not known: no separation in the register, no geoid model in the job. */
import type { SetupValues } from '../../derive/setups/setup.ts';
import { EGM96 } from '../../derive/heights/geoid.ts';
import type { Located } from '../../derive/positions/locate.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import { isHole } from '../../quantities/value.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Job } from '../../session/entries.ts';
import { ROUNDED } from '../../slips/situation.ts';
import { kind } from '../finding.ts';
import { unreadDetail, unreadEntry } from '../unread.ts';

export const heightNoSeparation = kind({
  code: 'height/no-separation',
  find: ({ session, derivation }) => withoutSeparation(valuesOf(derivation.setups), session.job),
  tell: ({ mark, seaLevel }, { session: { job } }) => ({
    severity: seaLevel === null ? 'warning' : 'error',
    follows: [
      unreadDetail(mark.name, 'separation'),
      ...unreadEntry('job'),
      ...(job ? [unreadDetail(job.title, 'geoid')] : []),
    ],
    ...(seaLevel === null
      ? {
          headline: `No separation for ${mark.name}, and no geoid model in the job.`,
          effect: 'An orthometric height keyed by mistake would not show.',
          action: 'Add the published separation, or name the geoid model.',
        }
      : {
          headline: `Height above sea level of ${mark.name} keyed as ellipsoidal.`,
          effect: `By the built-in coarse model the two lie about ${seaLevel.toFixed(0)} m apart here.`,
          action: 'Add the published separation, key the right height, and note the time.',
        }),
  }),
});

const withoutSeparation = foundInEach(({ setup, keyed, mark: values }: SetupValues, job: Job | null) => {
  // Before anything is keyed the key card says that the height is wanting.
  if (!values || values.mark.separation || job?.geoid || !setup.keyed.some(({ height }) => height)) return [];
  const { mark, located, ellipsoidalHeight, orthometricHeight } = values;
  if (isHole(located) || isHole(orthometricHeight) || !isHole(ellipsoidalHeight)) return [];
  const seaLevel = keyedAtSeaLevel(keyed, orthometricHeight.value, located);
  return [{ mark, seaLevel, place: setup.on?.place ?? setup.place }];
});

/** How far the surfaces lie apart by the built-in model, where the keyed number is the one above sea level; else null. */
function keyedAtSeaLevel(keyed: SetupValues['keyed'], orthometric: number, at: Located): number | null {
  const same = keyed.some(({ height }) => !isHole(height) && Math.abs(height.value - orthometric) <= ROUNDED);
  const apart = EGM96.undulation(at.latitude.value, at.longitude.value);
  // Nearer than this the coarse model cannot tell the one from the other.
  return same && !isRefusal(apart) && Math.abs(apart) > 3 ? Math.abs(apart) : null;
}
