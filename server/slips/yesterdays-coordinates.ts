/** What another setup was told is still in the receiver, or an antenna height of another day. */
import { keptWith } from '../../grammar/kept-with.ts';
import { isHole } from '../quantities/value.ts';
import type { Derivation } from '../derive/derivation.ts';
import type { SetupValues } from '../derive/setups/setup.ts';
import { numberOf, type Situation } from './situation.ts';
import { otherMarks, type OtherMark } from './wrong-mark.ts';
import type { Slip, Told, Way } from './slip.ts';

/** Antenna heights of two days differ by some decimetres (common practice), metres. */
const USUAL_CHANGE = 0.35;

export const yesterdaysCoordinates: Slip = {
  name: 'yesterdays-coordinates',
  code: 'position/keyed-differs',
  prior: 0.05,
  look: 'the antenna height on the receiver, and whether it was keyed anew that day',
  ways: (situation) => {
    const { setup, derivation, right } = situation;
    const others = neighbours(setup, setupsInOrder(derivation));
    const told = others.flatMap((other) =>
      other.keyed.flatMap((state): Way[] => {
        const place = isHole(state.located)
          ? null
          : { latitude: state.located.latitude.value, longitude: state.located.longitude.value };
        const height = numberOf(state.height);
        const arp = numberOf(state.antennaHeight);
        const antennaHeight = arp === null ? null : arp - right.toArp;
        const whole = `setup ${other.setup.name}`;
        return [
          ...(place && height !== null
            ? [tell(`the position and height of ${whole} were still in the receiver`, { place, height })]
            : []),
          ...(place && height !== null && antennaHeight !== null
            ? [
                tell(`all that ${whole} had been told was still in the receiver`, {
                  place,
                  height,
                  antennaHeight,
                }),
              ]
            : []),
          ...(antennaHeight === null
            ? []
            : [tell(`the antenna height of ${whole} was still in the receiver`, { antennaHeight })]),
        ];
      }),
    );
    const left = unusedMarks(situation).flatMap(({ name, place, height }): Way[] =>
      height === null
        ? []
        : [
            tell(`the coordinates of ${name} were still in the receiver from another day`, { place, height }),
            ...(right.antennaHeight === null
              ? []
              : [
                  tell(
                    `the coordinates of ${name} and an antenna height of another day were still in the receiver`,
                    {
                      place,
                      height,
                      antennaHeight: right.antennaHeight,
                      spread: { horizontal: 0, up: USUAL_CHANGE },
                    },
                  ),
                ]),
          ],
    );
    if (right.antennaHeight === null) return [...told, ...left];
    return [
      ...told,
      ...left,
      tell('an antenna height of another day was still in the receiver', {
        antennaHeight: right.antennaHeight,
        spread: { horizontal: 0, up: USUAL_CHANGE },
      }),
    ];
  },
};

/** Marks that nothing of this day was done on: the base of another day is among them, most likely. */
const unusedMarks = (situation: Situation): OtherMark[] => otherMarks(situation).filter(({ used }) => !used);

const tell = (says: string, told: Told): Way => ({ says, effect: { on: 'told', told } });

/** More setups on each side than any day has; what a receiver kept is what it was told last. */
const NEIGHBOURS = 24;

/** The setups noted before and after one, nearest in the text: of thousands, most cannot be what the receiver kept. */
function neighbours(setup: SetupValues, { all, places }: InOrder): readonly SetupValues[] {
  const at = places.get(setup) ?? 0;
  return all.slice(Math.max(0, at - NEIGHBOURS), at + NEIGHBOURS + 1).filter((other) => other !== setup);
}

interface InOrder {
  readonly all: readonly SetupValues[];
  readonly places: ReadonlyMap<SetupValues, number>;
}
function setupsInOrder(derivation: Derivation): InOrder {
  let known = inOrder.get(derivation);
  if (!known) {
    const all = [...derivation.setups.values()];
    known = { all, places: new Map(all.map((setup, index) => [setup, index])) };
    inOrder.set(derivation, known);
  }
  return known;
}
const inOrder = keptWith<Derivation, InOrder>();
