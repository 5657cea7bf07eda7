/** Gear whose last adjustment lies so far back, or so wrongly, that it proves nothing for the day. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import { isHole } from '../../quantities/value.ts';
import type { Adjusted, Day, Setup } from '../../session/entries.ts';
import { kind } from '../finding.ts';

/** Days after which an adjustment proves little (common practice: yearly at least, and after every knock). */
const LASTS = 365;

interface Outdated {
  readonly place: Adjusted['place'];
  readonly gear: Adjusted['gear'];
  readonly adjusted: Day;
  readonly day: Day;
}

export const gearOutOfDate = kind<Outdated>({
  code: 'gear/out-of-date',
  find: ({ session }) => {
    const day = session.job?.date;
    if (!day || isHole(day)) return [];
    return outdated(valuesOf(session.setups), day);
  },
  tell: ({ gear, adjusted, day }) => {
    const age = day.day - adjusted.day;
    const when = age < 0 ? `after this day (${day.typed})` : `${age} days ago`;
    return {
      severity: 'information',
      headline: `The ${gear} was last adjusted ${when}, on ${adjusted.typed}.`,
      effect: harms[gear],
      action: 'Turn it half way round over the mark, and note the day.',
      rests: [{ message: 'The day of the session.', place: day.place }],
    };
  },
});

const outdated = foundInEach((setup: Setup, day: Day) =>
  setup.adjusted.flatMap(({ gear, date, place }): Outdated[] => {
    if (isHole(date)) return [];
    const age = day.day - date.day;
    return age > LASTS || age < 0 ? [{ place, gear, adjusted: date, day }] : [];
  }),
);

const harms: Readonly<Record<Adjusted['gear'], string>> = {
  plummet: 'If it is off, every point is shifted.',
  bubble: 'If it is off, the antenna leans and every point is shifted.',
};
