/** In which datum the receiver is to be told coordinates is not known, or no transformation leads there. */
import { isHole } from '../quantities/value.ts';
import { kind, type Subject } from './finding.ts';
import type { Place } from '../../grammar/tree.ts';

interface Unknown {
  readonly place: Place;
  readonly because: string;
  readonly marks: readonly string[];
}

export const positionDatumUnknown = kind({
  code: 'position/datum-unknown',
  find: (subject) => [...withoutDatum(subject), ...withoutWay(subject)],
  tell: ({ because, marks }) => ({
    severity: 'error',
    message: `${capital(because)}${/[.]$/.test(because) ? '' : '.'} Coordinates of an old network lie up to hundreds of metres from those that a receiver works in, so what to key is not known. Name the datum, and the transformation with its published accuracy (datum EPSG:4258 by EPSG:1314).`,
    causes: marks.map((mark) => `datum/${mark}`),
    follows: ['grid'],
  }),
});

/** The grid is one of an old network, and the job names no datum. */
function withoutDatum({ derivation, session }: Subject): Unknown[] {
  const { frame } = derivation;
  const { job } = session;
  if (!job || isHole(frame.geographic) || !isHole(frame.keyed) || job.datum) return [];
  const place = job.grid?.place ?? job.place;
  return [{ place, because: frame.keyed.hole, marks: [...derivation.marks.keys()] }];
}

/** A datum is named, and from the mark's own no known way leads there. */
function withoutWay({ derivation, session }: Subject): Unknown[] {
  const { frame } = derivation;
  const { job } = session;
  if (!job || isHole(frame.keyed)) return [];
  const because = new Map<string, string[]>();
  for (const { tell, mark } of derivation.setups.values()) {
    if (!mark || isHole(mark.located) || !isHole(tell.latitude)) continue;
    because.set(tell.latitude.hole, [...(because.get(tell.latitude.hole) ?? []), mark.mark.name]);
  }
  const place = job.datum?.place ?? job.grid?.place ?? job.place;
  return [...because].map(([hole, marks]) => ({ place, because: hole, marks }));
}

const capital = (sentence: string) => (sentence[0]?.toUpperCase() ?? '') + sentence.slice(1);
