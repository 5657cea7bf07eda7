/** A tripod that was levelled anew and not taped since: at what height the antenna stands nobody knows. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { isHole } from '../../quantities/value.ts';
import { kind } from '../finding.ts';
import { clockTime } from '../words.ts';
import type { Place } from '../../../grammar/tree.ts';

export const heightNotRetaped = kind({
  code: 'height/not-retaped',
  find: (subject) => untaped(valuesOf(subject.derivation.setups)),
  tell: ({ setup, since }, subject) => {
    const { name } = setup.setup;
    const at = clockTime(since, subject) ?? '';
    return {
      severity: 'warning',
      message: `${name} was levelled anew at ${at} and not taped since. Heights of points measured since are unknown. Tape it, note the time, and key the new height.`,
      causes: [`retape/${name}`],
    };
  },
});

const untaped = foundInEach((setup: SetupValues) =>
  setup.standings.flatMap(({ anew, since, arp }): { setup: SetupValues; since: number; place: Place }[] =>
    anew && since !== null && isHole(arp)
      ? [{ setup, since, place: setup.setup.on?.place ?? setup.setup.place }]
      : [],
  ),
);
