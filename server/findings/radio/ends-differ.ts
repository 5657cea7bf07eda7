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
        message: `${sentence(said[setting])} is ${difference.base.typed} at radio ${base.name} and ${difference.rover.typed} at radio ${rover.name}. With different settings the ends do not hear one another; look which of the two was set, and put the note or the radio right.`,
        rests: [{ message: `At radio ${base.name}.`, place: difference.base.place }],
      };
    const [saying, silent] = difference.base ? [base, rover] : [rover, base];
    return {
      severity: 'information',
      follows: [unreadDetail(silent.name, setting)],
      message: `${sentence(said[setting])} is noted for radio ${saying.name} and not for radio ${silent.name}, so nothing shows that the two agree.`,
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
  carrier: 'the carrier',
  channel: 'the channel spacing',
  rate: 'the air rate',
  spreading: 'the spreading factor',
  bandwidth: 'the bandwidth',
  coding: 'the coding rate',
};
