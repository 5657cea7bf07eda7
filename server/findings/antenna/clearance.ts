/** A whip aerial that has not the room under the receiver that its length needs. */
import type { Place } from '../../../grammar/tree.ts';
import { whipLength } from '../../derive/link/ends.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import type { Radio } from '../../session/entries.ts';
import { kind } from '../finding.ts';

interface Cramped {
  readonly place: Place;
  readonly radio: Radio;
  readonly room: number;
  readonly whip: number;
}

export const antennaClearance = kind<Cramped>({
  code: 'antenna/clearance',
  find: ({ session }) =>
    [...session.radios.values()].flatMap((radio): Cramped[] => {
      const { clearance } = radio;
      const whip = whipLength(radio);
      if (!clearance || isHole(clearance) || isHole(whip) || clearance.value >= whip.value) return [];
      const place = clearance.origin === 'given' ? clearance.place : radio.place;
      return [{ place, radio, room: clearance.value, whip: whip.value }];
    }),
  tell: ({ radio, room, whip }) => ({
    severity: 'warning',
    headline: `Whip of radio ${radio.name} needs ${showLength(whip)} of room and has ${showLength(room)}.`,
    effect: 'The radio reaches less far.',
    action: `Add an extension of at least ${showLength(Math.ceil((whip - room) * 100) / 100)}, and count it in the antenna height.`,
  }),
});
