/** Base and rover radios whose settings differ, so that they do not hear one another. */
import type { Place } from '../../../grammar/tree.ts';
import { partnerOf } from '../../derive/link/link.ts';
import { differences, type Difference, type Matching } from '../../derive/link/ends.ts';
import type { Radio } from '../../session/entries.ts';
import { kind } from '../finding.ts';
import { unreadDetail } from '../unread.ts';
import { nameIn } from '../uses.ts';
import { sentence } from '../words.ts';

interface Differing {
  readonly place: Place;
  readonly base: Radio;
  readonly rover: Radio;
  readonly difference: Difference;
}

export const radioEndsDiffer = kind<Differing>({
  code: 'radio/ends-differ',
  find: ({ derivation }) =>
    derivation.link.ends.rovers.flatMap((rover) => {
      const base = partnerOf(rover, derivation.link.ends);
      return base ? differencesBetween(base, rover) : [];
    }),
  tell: ({ base, rover, difference }) => {
    const { setting } = difference;
    if (difference.base && difference.rover)
      return {
        severity: 'warning',
        headline: `${sentence(said[setting])} differs: ${difference.base.typed} at radio ${base.name}, ${difference.rover.typed} at ${rover.name}.`,
        effect: 'They do not hear one another.',
        action: 'Look at both, and correct the radio or the note.',
        rests: [{ message: `At radio ${base.name}.`, place: difference.base.place }],
      };
    const [saying, silent] = difference.base ? [base, rover] : [rover, base];
    return {
      severity: 'information',
      follows: [unreadDetail(silent.name, setting)],
      headline: `${sentence(said[setting])} not noted for radio ${silent.name}.`,
      effect: `It is noted for radio ${saying.name}. Nothing shows that the two agree.`,
      action: 'Read it off the radio, and note it.',
    };
  },
});

function differencesBetween(base: Radio, rover: Radio): Differing[] {
  return differences(base, rover).map((difference) => ({
    place: difference.rover?.place ?? nameIn(rover),
    base,
    rover,
    difference,
  }));
}

const said: Readonly<Record<Matching, string>> = {
  carrier: 'carrier',
  channel: 'channel spacing',
  rate: 'air rate',
  spreading: 'spreading factor',
  bandwidth: 'bandwidth',
  coding: 'coding rate',
};
