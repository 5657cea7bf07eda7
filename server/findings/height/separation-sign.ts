/** A separation with the wrong sign: in a mark's published values, or in what was keyed from them. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import { EGM96 } from '../../derive/heights/geoid.ts';
import { numberOf } from '../../slips/situation.ts';
import { keyedDifferences, type KeyedDifference } from '../../slips/keyed-differences.ts';
import type { MarkValues } from '../../derive/marks/mark.ts';
import { kind, type Subject } from '../finding.ts';
import { tellDifference } from '../keyed/differences.ts';
import type { Place } from '../../../grammar/tree.ts';

const CODE = 'height/separation-sign';

export const heightSeparationSign = kind({
  code: CODE,
  find: (subject) => [...wrongMarks(subject), ...wrongKeyed(subject)],
  tell: (evidence, subject) =>
    'keyed' in evidence ? tellDifference(evidence.keyed, subject) : tellMark(evidence),
});

interface WrongMark {
  readonly place: Place;
  readonly mark: MarkValues;
  readonly published: number;
  readonly model: number;
  readonly geoid: string;
}

/** A separation that agrees with the model only when its sign is turned; near the model's zero nothing can be said. */
export function wrongMarks({ derivation }: Subject): readonly WrongMark[] {
  const { geoid } = derivation;
  return turnedSigns(valuesOf(derivation.marks), isHole(geoid) ? null : geoid.name);
}

const turnedSigns = foundInEach((mark: MarkValues, named: string | null): WrongMark[] => {
  const { separation, separationPlace } = mark.mark;
  if (!separation || isHole(separation)) return [];
  const published = separation.value;
  const model = named === null ? byCoarseModel(mark) : numberOf(mark.modelSeparation);
  if (model === null) return [];
  const geoid = named ?? EGM96.name;
  const turned = Math.abs(published + model);
  if (turned > NEAR || Math.abs(published - model) < APART * Math.max(turned, 1)) return [];
  const place = separation.origin === 'given' ? separation.place : (separationPlace ?? mark.mark.place);
  return [{ place, mark, published, model, geoid }];
});

/** N by the built-in model, which finds blunders where the job names none; it counts from the ellipsoid of satellites. */
export function byCoarseModel({ located }: MarkValues): number | null {
  if (isHole(located) || located.system.datum.realisation === 'terrestrial') return null;
  const found = EGM96.undulation(located.latitude.value, located.longitude.value);
  return isRefusal(found) ? null : found;
}

/** Even a coarse model is within this, metres; and the published value must be many times farther from it as it stands. */
const NEAR = 3;
const APART = 3;

const wrongKeyed = ({ session, derivation }: Subject): { place: Place; keyed: KeyedDifference }[] =>
  keyedDifferences(session, derivation)
    .filter(({ named }) => named?.slip.code === CODE)
    .map((keyed) => ({ place: keyed.place, keyed }));

function tellMark({ mark, published, model, geoid }: WrongMark) {
  const { name } = mark.mark;
  return {
    severity: 'error' as const,
    headline: `Wrong sign: separation of ${name} is ${showLength(published)}; ${geoid} has ${showLength(model)}.`,
    effect: `An ellipsoidal height from it is ${showLength(2 * Math.abs(published))} off.`,
    action: 'Look it up again: it is positive where the geoid is above the ellipsoid.',
    causes: [`mark/${name}/height`, `mark/${name}/separation`],
  };
}
