/** In which datum the receiver is to be told coordinates is not known, or no transformation leads there, or from a mark to the job. */
import type { MarkValues } from '../../derive/marks/mark.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import { usedAmong } from '../uses.ts';
import { isHole } from '../../quantities/value.ts';
import { kind, type Subject } from '../finding.ts';
import type { Place } from '../../../grammar/tree.ts';

interface Unknown {
  readonly place: Place;
  readonly because: string;
  readonly marks: readonly string[];
  /** One of the datums is that of an old network. */
  readonly old: boolean;
  readonly then: 'what to key is not known' | 'it cannot be compared with the job';
}

export const positionDatumUnknown = kind({
  code: 'position/datum-unknown',
  find: (subject) => [...withoutDatum(subject), ...withoutWay(subject), ...marksElsewhere(subject)],
  tell: ({ because, marks, old, then }) => ({
    severity: 'error',
    headline: `Datum not clear: ${then}.`,
    effect: whole(old ? because.replace(NAMED_BY_ACTION, '') : because),
    action: old ? 'Name the datum and its transformation (datum EPSG:4258 by EPSG:1314).' : '',
    causes: marks.map((mark) => `datum/${mark}`),
    follows: ['grid'],
  }),
});

/** The grid is one of an old network, and the job names no datum. A file of marks alone tells no receiver anything. */
function withoutDatum({ derivation, session }: Subject): Unknown[] {
  const { frame } = derivation;
  const { job } = session;
  if (!job || derivation.setups.size === 0 || isHole(frame.geographic) || !isHole(frame.keyed) || job.datum)
    return [];
  const place = job.grid?.place ?? job.place;
  const { realisation } = frame.geographic.datum;
  return [
    {
      place,
      because: frame.keyed.hole,
      marks: [...derivation.marks.keys()],
      old: realisation === 'terrestrial',
      then: 'what to key is not known',
    },
  ];
}

/** A datum is named, and from the mark's own no known way leads there; old networks' ways are named once, in the job. */
function withoutWay({ derivation, session }: Subject): Unknown[] {
  const { frame } = derivation;
  const { job } = session;
  if (!job || isHole(frame.keyed)) return [];
  const unknown = new Map<string, Unknown>();
  for (const { tell, mark } of withoutLatitude(valuesOf(derivation.setups))) {
    if (!mark || isHole(mark.located) || !isHole(tell.latitude)) continue;
    const because = tell.latitude.hole;
    const old = [mark.located.system.datum, frame.keyed.datum].some(
      ({ realisation }) => realisation !== 'gnss',
    );
    const place = job.datum?.place ?? job.grid?.place ?? job.place;
    const marks = [...(unknown.get(because)?.marks ?? []), mark.mark.name];
    unknown.set(because, { place, because, marks, old, then: 'what to key is not known' });
  }
  return [...unknown.values()];
}

const withoutLatitude = foundInEach((setup: SetupValues) =>
  setup.mark && !setup.mark.otherDatum && !isHole(setup.mark.located) && isHole(setup.tell.latitude)
    ? [setup]
    : [],
);

/** A mark that is used stands in a datum from which no known way leads to that of the job. */
function marksElsewhere(subject: Subject): Unknown[] {
  const marks = usedAmong(elsewhere(valuesOf(subject.derivation.marks)), subject);
  return marks.flatMap(({ values: { mark, otherDatum, located } }): Unknown[] => {
    if (!otherDatum || isHole(located)) return [];
    const { realisation } = located.system.datum;
    return [
      {
        place: mark.position?.place ?? mark.place,
        because: otherDatum.hole,
        marks: [mark.name],
        old: realisation !== 'gnss',
        then: 'it cannot be compared with the job',
      },
    ];
  });
}

const elsewhere = foundInEach((values: MarkValues) => (values.otherDatum ? [values] : []));

/** What the action says as an order. */
const NAMED_BY_ACTION = /; the job must name .*$/;

const whole = (clause: string) =>
  `${clause[0]?.toUpperCase() ?? ''}${clause.slice(1)}${clause.endsWith('.') ? '' : '.'}`;
