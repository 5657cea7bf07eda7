/** The antenna type that the receiver was told is not that of the antenna that stood there, or none was told. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Session } from '../../session/session.ts';
import { showLength } from '../../quantities/show.ts';
import { numberOf } from '../../slips/situation.ts';
import type { KeyedValues } from '../../derive/setups/keyed.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { addedDetail } from '../edits.ts';
import { kind, type Subject } from '../finding.ts';
import { unreadKeyed } from '../unread.ts';
import type { Place } from '../../../grammar/tree.ts';

export const antennaType = kind({
  code: 'antenna/type',
  find: (subject) => wrongTypes(subject),
  tell: ({ setup, told, up, states, from, until }) => {
    const name = setup.setup.name;
    const stood = setup.antenna?.name ?? '';
    const causes = states.map((state) => `antenna/${name}/${state}`);
    const past = until === null ? {} : { past: { from, until } };
    const effect =
      up === null
        ? 'Heights are off by the difference of the phase centres.'
        : `Heights are ${showLength(Math.abs(up))} too ${up < 0 ? 'low' : 'high'}.`;
    if (told === null)
      return {
        severity: 'warning',
        headline: `No antenna type keyed at ${name} (${stood}).`,
        effect,
        action: `Key ${stood}, or note that it was keyed.`,
        causes,
        follows: unreadKeyed(name, 'antenna-type'),
        ...past,
      };
    return {
      severity: 'error',
      headline: `Wrong antenna type keyed at ${name}: ${told}, not ${stood}.`,
      effect,
      action: `Key ${stood} and note the time. Shift the earlier heights.`,
      causes,
      ...past,
    };
  },
  mend: ({ setup, told }) =>
    told === null
      ? [
          {
            title: 'Add a line for the antenna type',
            edits: [addedDetail(setup.setup.place.path, setup.setup.entry, 'keyed', 'antenna-type ?')],
          },
        ]
      : [],
});

/** By which key and how far up each wrong or missing type of a setup puts what is measured from it. */
export function antennaTypeEffects(setup: SetupValues, subject: Subject): { key: string; up: number }[] {
  return wrongTypes(subject).flatMap((wrong) =>
    wrong.setup !== setup || wrong.up === null
      ? []
      : wrong.states.map((state) => ({ key: `antenna/${setup.setup.name}/${state}`, up: wrong.up ?? 0 })),
  );
}

const wrongTypes = ({ session, derivation }: Subject): WrongType[] => {
  const setups = valuesOf(derivation.setups);
  return [...otherTypes(setups, session.antennas), ...noTypes(setups)];
};

interface WrongType {
  readonly setup: SetupValues;
  readonly place: Place;
  readonly told: string | null;
  /** What heights are off by, metres. */
  readonly up: number | null;
  readonly states: readonly number[];
  readonly from: number | null;
  readonly until: number | null;
}

const otherTypes = foundInEach((setup: SetupValues, antennas: Session['antennas']): WrongType[] => {
  const { antenna } = setup;
  if (!antenna) return [];
  const typed = new Set(setup.keyed.flatMap(({ state }) => state.antennaType ?? []));
  return [...typed].flatMap((type) => {
    if (type.name === antenna.name) return [];
    const known = antennas.get(type.name);
    if (!known) return [];
    const told = numberOf(known.phaseCentre);
    const stood = numberOf(antenna.phaseCentre);
    const having = setup.keyed.filter(({ state }) => state.antennaType === type);
    const up = told === null || stood === null ? null : told - stood;
    return [{ setup, place: type.place, told: type.name, up, ...span(having, setup) }];
  });
});

/** Once the antenna height is keyed and the setup is over, the type should be, too. */
const noTypes = foundInEach((setup: SetupValues): WrongType[] => {
  const without = setup.keyed.filter(({ state }) => state.antennaHeight && !state.antennaType);
  const [first] = without;
  if (!setup.antenna || !first || setup.setup.until === null || isOpen(setup)) return [];
  const offset = numberOf(setup.antenna.phaseCentre);
  const place = first.state.antennaHeight?.place ?? setup.setup.place;
  return [{ setup, place, told: null, up: offset === null ? null : -offset, ...span(without, setup) }];
});

/** The type is written down as not known yet; that is told of the `?` itself. */
const isOpen = ({ setup }: SetupValues) =>
  setup.keyed.some(({ place }) => /antenna-type\s+\?/.test(place.entry.text.slice(place.start, place.end)));

function span(having: readonly KeyedValues[], { keyed }: SetupValues) {
  const states = having.map(({ state }) => state.number);
  const last = having[having.length - 1]?.state;
  const until = last && last.number < keyed.length ? last.until : null;
  return { states, from: having[0]?.state.from ?? null, until };
}
