/** A sudden movement of the antenna that the raw observations show and nobody noted. */
import { loggedSetups } from '../capture/recorded.ts';
import type { Place } from '../../../grammar/tree.ts';
import { GPS_AHEAD } from '../../derive/setups/raw-log.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { showNumber } from '../../quantities/show.ts';
import { instantOf } from '../../session/session.ts';
import type { Step } from '../../witness/testimony.ts';
import { kind } from '../finding.ts';
import { clockTime } from '../words.ts';

interface Moved {
  readonly setup: SetupValues;
  readonly place: Place;
  readonly step: Step;
  readonly time: string;
}
/** Notes are good to some minutes. */
const NEAR = 300;

export const rawLogStep = kind<Moved>({
  code: 'raw-log/step',
  find: (subject) =>
    loggedSetups(subject).flatMap((setup) => {
      const { testimony = null, file } = setup.rawLog ?? {};
      if (!testimony || !file) return [];
      return testimony.steps
        .map((step) => ({ step, at: step.from - GPS_AHEAD }))
        .filter(
          ({ at }) => (setup.from === null || at > setup.from) && (setup.until === null || at < setup.until),
        )
        .filter(
          ({ at }) =>
            !subject.session.events.some(({ at: moment }) => {
              const instant = instantOf(moment, subject.session.job);
              return instant !== null && Math.abs(instant - at) <= NEAR;
            }),
        )
        .map(({ step, at }): Moved => ({
          setup,
          place: file.place,
          step,
          time: clockTime(at, subject) ?? '',
        }));
    }),
  tell({ setup, step, time }) {
    const { name } = setup.setup;
    const level = Math.hypot(step.east, step.north);
    const millimetres = (length: number) => `${showNumber(length * 1000, 0)} mm`;
    const up = `${millimetres(Math.abs(step.up))} ${step.up < 0 ? 'down' : 'up'}`;
    return {
      severity: 'warning',
      headline: `${name} moved suddenly at ${time}: ${millimetres(level)} horizontally, ${up}.`,
      effect: `${step.satellites} satellites in the raw data show it (standard uncertainty ${millimetres(Math.hypot(step.sigmaEast, step.sigmaNorth))} and ${millimetres(step.sigmaUp)}). No event is noted then.`,
      action: 'Note what happened, and check after it on another mark.',
    };
  },
});
