/** The base was moved during the day: by somebody who passed, by the wind, by legs that sank. */
import { instantOf } from '../session/session.ts';
import type { CheckValues } from '../derive/checks/check.ts';
import type { Situation } from './situation.ts';
import type { Slip, Way } from './slip.ts';

export const baseMoved: Slip = {
  name: 'base-moved',
  code: null,
  prior: 0.1,
  look: 'the tripod and its plummet, and a nail by the base that was observed before',
  ways: (situation) => [...afterEvents(situation), ...betweenChecks(situation)],
};

/** Knocks move a tripod by some millimetres to some decimetres, mostly sideways (common practice); metres. */
const SIZES = [0.03, 0.1, 0.3];
const UPWARDS = 0.4;
/** A movement that nobody noted is as likely as this beside one that was seen. */
const UNSEEN = 0.1;

function afterEvents({ setup, session }: Situation): Way[] {
  return session.events
    .filter(({ on }) => on === null || on.name === setup.setup.name)
    .flatMap((event) => {
      const at = instantOf(event.at, session.job);
      return at === null ? [] : moved(`the base was moved by the ${event.what} that was noted`, at, 1);
    });
}

/** Between any two checks of the setup, without anybody having noted it. */
function betweenChecks({ setup, derivation }: Situation): Way[] {
  const own = derivation.checks.filter((check) => check.setup === setup && check.instant !== null);
  const times = [...new Set(own.map(({ instant }) => instant ?? 0))]
    .sort((one, other) => one - other)
    .slice(0, MOST);
  return times
    .slice(1)
    .flatMap((at) =>
      moved(
        'the base was moved between two of the checks, and nobody noted it',
        at,
        UNSEEN / Math.max(1, times.length - 1),
      ),
    );
}

/** Of more checks than this the first ones decide. */
const MOST = 40;

/** Rovers take the base to stand where it stood, so that all that they measure moves the other way. */
function moved(says: string, from: number, weight: number): Way[] {
  return SIZES.map((size) => ({
    says,
    weight: weight / SIZES.length,
    effect: {
      on: 'base',
      shift: { east: 0, north: 0, up: 0 },
      free: [
        () => ({ east: size, north: 0, up: 0 }),
        () => ({ east: 0, north: size, up: 0 }),
        () => ({ east: 0, north: 0, up: size * UPWARDS }),
      ],
      applies: ({ instant }: CheckValues) => instant !== null && instant >= from,
    },
  }));
}
