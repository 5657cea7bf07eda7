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
        headline: `Two bases share station number ${own}: ${captured?.positions.length ?? 0} positions in turn.`,
        effect: `Rovers may take corrections from either. ${file} is not used.`,
        action: 'Give this base another number or channel.',
      };
    return {
      severity: 'information',
      headline: `Another base on the channel: ${allOf(othersIn(setup).map((station) => `station ${station}`))} beside ${own}.`,
      effect: `In ${file} ${setup.setup.name} is station ${own} by its position.`,
      action: 'Look up which station the rover used.',
    };
  },
});

const othersIn = ({ captured }: SetupValues): number[] =>
  (captured?.capture?.stations ?? [])
    .filter((station) => station !== captured?.station && station.positions.length > 0)
    .map(({ station }) => station);
