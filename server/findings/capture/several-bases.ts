/** A recording of several bases: other stations beside this one, or two that share a number. */
import { allOf } from '../../quantities/show.ts';
import { capturedSetups } from './recorded.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { kind } from '../finding.ts';

interface Several {
  readonly place: Place;
  readonly setup: SetupValues;
  readonly sharing: boolean;
}

export const captureSeveralBases = kind<Several>({
  code: 'capture/several-bases',
  find: (subject) =>
    capturedSetups(subject).flatMap((setup): Several[] => {
      const { captured } = setup;
      if (!captured) return [];
      const { place } = captured.file;
      const sharing = captured.positions.some(({ inTurn }) => inTurn);
      const others = othersIn(setup).length > 0;
      return sharing || others ? [{ place, setup, sharing }] : [];
    }),
  tell: ({ setup, sharing }) => {
    const { captured } = setup;
    const file = captured?.file.text ?? '';
    const own = captured?.station?.station ?? '';
    if (sharing)
      return {
        severity: 'warning',
        message: `In ${file} station ${own} broadcasts ${captured?.positions.length ?? 0} positions in turn: two bases share this number and this channel, and a rover takes corrections now from one, now from the other. Nothing is taken from this recording; find out whose the other base is, and give this one another number or channel.`,
      };
    return {
      severity: 'information',
      message: `${file} holds station ${own}, which is ${setup.setup.name} by its position, and ${allOf(othersIn(setup).map((station) => `station ${station}`))} beside it. A rover that takes any station may have used another base; look which one it was set to.`,
    };
  },
});

const othersIn = ({ captured }: SetupValues): number[] =>
  (captured?.capture?.stations ?? [])
    .filter((station) => station !== captured?.station && station.positions.length > 0)
    .map(({ station }) => station);
