/** What another setup was told is still in the receiver, or an antenna height of another day. */
import { isHole } from '../quantities/value.ts';
import { numberOf } from './situation.ts';
import type { Slip, Told, Way } from './slip.ts';

/** Antenna heights of two days differ by some decimetres (common practice), metres. */
const USUAL_CHANGE = 0.35;

export const yesterdaysCoordinates: Slip = {
  name: 'yesterdays-coordinates',
  code: 'position/keyed-differs',
  prior: 0.05,
  look: 'the antenna height on the receiver, and whether it was keyed anew that day',
  ways: ({ setup, derivation, right }) => {
    const others = [...derivation.setups.values()].filter((other) => other !== setup);
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
    if (right.antennaHeight === null) return told;
    return [
      ...told,
      tell('an antenna height of another day was still in the receiver', {
        antennaHeight: right.antennaHeight,
        spread: { horizontal: 0, up: USUAL_CHANGE },
      }),
    ];
  },
};

const tell = (says: string, told: Told): Way => ({ says, effect: { on: 'told', told } });
