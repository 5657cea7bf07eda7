/** A `?` where a value will stand: nothing to nag about while the setup is open, a gap in the record afterwards. */
import type { Place } from '../../../grammar/tree.ts';
import { isHole } from '../../quantities/value.ts';
import type { Setup } from '../../session/entries.ts';
import type { Session } from '../../session/session.ts';
import { kind } from '../finding.ts';
import { remarksAbout } from './remarks.ts';
import { sentence } from '../words.ts';

export const syntaxOpenValue = kind({
  code: 'syntax/open-value',
  find: (subject) => remarksAbout(subject, 'open-value'),
  tell: ({ place, word }, { session }) => {
    const headline = `${word === '' ? 'Value' : sentence(word)} is still open.`;
    return isOpenDay(place, session)
      ? { severity: 'hint', headline }
      : {
          severity: 'warning',
          headline,
          effect: 'The setup has ended, and the session cannot be sealed.',
          action: 'Fill it in from the notes of the day.',
        };
  },
});

/** A setup's own lines ask for its own end; all others for that of every setup. */
function isOpenDay(place: Place, session: Session): boolean {
  const setups = [...session.setups.values()];
  const own = setups.filter((setup) => setup.entry === place.entry);
  const asked = own.length > 0 ? own : setups;
  return asked.length === 0 || asked.some(isOpen);
}

const isOpen = ({ until }: Setup) => until === null || isHole(until);
