/** What was keyed against where the receiver finds itself alone: the first free check of the day. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { locate } from '../../derive/positions/locate.ts';
import { placedHeight } from '../../derive/heights/heights.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import type { KeyedValues } from '../../derive/setups/keyed.ts';
import { metresBetween } from '../../slips/keyed-differences.ts';
import { otherMarks } from '../../slips/wrong-mark.ts';
import { SLIPS } from '../../slips/slips.ts';
import { situationOf, numberOf } from '../../slips/situation.ts';
import { kind, type Subject } from '../finding.ts';
import type { Place } from '../../../grammar/tree.ts';

/** A receiver alone is good to some metres (common practice); farther off than this it is not chance. Metres. */
const HORIZONTAL = 15;
const UP = 25;

interface Alone {
  readonly place: Place;
  readonly setup: SetupValues;
  /** Null where nothing has been keyed yet: it is compared with what should be. */
  readonly keyed: KeyedValues | null;
  readonly horizontal: number | null;
  readonly up: number | null;
  /** What would explain it, if anything does. */
  readonly explains: string | null;
  readonly past: { readonly from: number | null; readonly until: number | null } | null;
}

export const positionAutonomousDiffers = kind({
  code: 'position/autonomous-differs',
  find: (subject) => alone(valuesOf(subject.derivation.setups)).flatMap((setup) => differing(setup, subject)),
  tell: ({ setup, keyed, horizontal, up, explains, past }) => {
    const { name } = setup.setup;
    const other = keyed ? 'what was keyed' : (setup.mark?.mark.name ?? 'its mark');
    const where = [
      ...(horizontal === null ? [] : [`${showLength(horizontal)} from ${other}`]),
      ...(up === null
        ? []
        : [
            `${showLength(Math.abs(up))} ${up > 0 ? 'above' : 'below'} ${horizontal === null ? other : 'it'}`,
          ]),
    ].join(' and ');
    const state = keyed?.state.number ?? 1;
    return {
      severity: 'error',
      headline: `The receiver at ${name} finds itself ${where}.`,
      effect: `${explains === null ? `The tripod is over another mark, or ${keyed ? 'what was keyed' : 'the mark in the notes'} is wrong.` : `Likely: ${explains}.`}`,
      action: keyed
        ? 'Trust nothing from this base until this is clear.'
        : 'Key nothing until this is clear.',
      follows: [
        ...(horizontal === null ? [] : [`keyed/${name}/${state}/horizontal`]),
        ...(up === null ? [] : [`keyed/${name}/${state}/up`]),
        ...(setup.mark ? [`mark/${setup.mark.mark.name}/position`] : []),
        ...(setup.mark && horizontal === null ? [`mark/${setup.mark.mark.name}/height`] : []),
      ],
      ...(past ? { past } : {}),
    };
  },
});

const alone = foundInEach((setup: SetupValues) => (setup.setup.autonomous?.position ? [setup] : []));

function differing(setup: SetupValues, { derivation, session }: Subject): Alone[] {
  const { autonomous } = setup.setup;
  if (!autonomous?.position) return [];
  const at = locate(autonomous.position, derivation.frame, 'the autonomous position', null);
  if (isHole(at)) return [];
  const itself = { latitude: at.latitude.value, longitude: at.longitude.value };
  const placed = autonomous.height
    ? placedHeight(autonomous.height, session.surfaces, 'the autonomous position')
    : null;
  const height = placed && !isHole(placed) && placed.surface === 'ellipsoidal' ? placed.value.value : null;
  if (setup.keyed.every(({ state }) => state.position === null && state.height === null))
    return beforeKeying(setup, itself, height, { derivation, session });
  const told = setup.keyed.map((keyed) => ({ keyed, ...compared(keyed, itself, height) }));
  const wrong = told.find(({ horizontal, up }) => horizontal !== null || up !== null);
  if (!wrong) return [];
  const put = told.find(
    ({ keyed, horizontal, up }) =>
      keyed.state.number > wrong.keyed.state.number && horizontal === null && up === null,
  );
  const explains =
    wrong.horizontal === null ? null : explained(setup, wrong.keyed, itself, { derivation, session });
  const past = put ? { from: setup.from, until: put.keyed.state.from } : null;
  return [{ place: autonomous.position.place, setup, ...wrong, explains, past }];
}

/** The first moment at which a wrong mark can show is before anything is keyed. */
function beforeKeying(
  setup: SetupValues,
  itself: { latitude: number; longitude: number },
  height: number | null,
  { derivation, session }: Subject,
): Alone[] {
  const { tell, mark } = setup;
  const place = setup.setup.autonomous?.position?.place;
  const [latitude, longitude] = [numberOf(tell.latitude), numberOf(tell.longitude)];
  if (!place || !mark || latitude === null || longitude === null) return [];
  const should = { latitude, longitude };
  const found = farFrom(
    should,
    numberOf(tell.ellipsoidalHeight),
    numberOf(tell.antennaHeight),
    itself,
    height,
  );
  if (found.horizontal === null && found.up === null) return [];
  const other = otherMarks(situationOf(setup, null, session, derivation)).find(
    (one) => metresBetween(one.place, itself) <= HORIZONTAL,
  );
  const explains = other ? `the tripod is over ${other.name}` : null;
  return [{ place, setup, keyed: null, ...found, explains, past: null }];
}

/** What differs by more than chance, autonomous minus keyed; null where nothing does or nothing is known. */
function compared(keyed: KeyedValues, alone: { latitude: number; longitude: number }, height: number | null) {
  const { located } = keyed;
  if (isHole(located)) return { horizontal: null, up: null };
  const told = { latitude: located.latitude.value, longitude: located.longitude.value };
  return farFrom(told, numberOf(keyed.height), numberOf(keyed.antennaHeight), alone, height);
}

function farFrom(
  told: { latitude: number; longitude: number },
  h: number | null,
  antenna: number | null,
  alone: { latitude: number; longitude: number },
  height: number | null,
) {
  const distance = metresBetween(alone, told);
  const a = antenna ?? 0;
  const apart = h === null || height === null ? 0 : height - (h + a);
  return { horizontal: distance > HORIZONTAL ? distance : null, up: Math.abs(apart) > UP ? apart : null };
}

/** Another mark under the tripod, or a slip that turns what was keyed into where the receiver is. */
function explained(
  setup: SetupValues,
  keyed: KeyedValues,
  alone: { latitude: number; longitude: number },
  { derivation, session }: Subject,
): string | null {
  const situation = situationOf(setup, keyed, session, derivation);
  const mark = otherMarks(situation).find(({ place }) => metresBetween(place, alone) <= HORIZONTAL);
  if (mark) return `the tripod is over ${mark.name}`;
  const located = keyed.located;
  if (isHole(located)) return null;
  const told = { latitude: located.latitude.value, longitude: located.longitude.value };
  // If the notes have the slip in the mark's own coordinates, it turns the true place into the keyed one.
  for (const slip of SLIPS) {
    const there = { ...situation, right: { ...situation.right, place: alone, grid: null } };
    for (const { says, effect } of slip.ways(there)) {
      const place = effect.on === 'told' ? effect.told.place : undefined;
      if (place && !(effect.on === 'told' && effect.told.spread) && metresBetween(place, told) <= HORIZONTAL)
        return says;
    }
  }
  return null;
}
