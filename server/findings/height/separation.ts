/** The published separation of a mark against the job's geoid model: what every height from a controller with that model will be off. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { EGM96, type GeoidModel } from '../../derive/heights/geoid.ts';
import type { MarkValues } from '../../derive/marks/mark.ts';
import { kind, type Subject } from '../finding.ts';
import { byCoarseModel, wrongMarks } from './separation-sign.ts';
import type { Place } from '../../../grammar/tree.ts';

export const heightSeparation = kind({
  code: 'height/separation',
  find: (subject) => apart(subject),
  tell: ({ mark, difference, model, coarse }) => {
    const { name } = mark.mark;
    const size = showLength(Math.abs(difference));
    return {
      severity: 'warning',
      headline: `Separation of ${name} is ${size} ${difference > 0 ? 'more' : 'less'} than in the geoid model.`,
      ...(coarse
        ? {
            effect: `${model} is coarse, but not wrong by so much. A height keyed from it is as wrong.`,
            action: 'Look the separation up again.',
          }
        : {
            effect: `Heights from a controller with ${model} are ${size} too ${difference > 0 ? 'high' : 'low'} against ${name}.`,
            action: 'Use the published value and shift those heights, or use the model at the base too.',
          }),
      causes: [`mark/${name}/separation`],
    };
  },
});

interface Apart {
  readonly place: Place;
  readonly mark: MarkValues;
  /** Published minus model, metres. */
  readonly difference: number;
  readonly model: string;
  readonly coarse: boolean;
}

/** Of the marks that a base stands on; in a file without setups, of all. */
export function apart(subject: Subject): Apart[] {
  const { geoid, setups, marks } = subject.derivation;
  const found = isHole(geoid) ? farFromCoarse(valuesOf(marks)) : apartFrom(valuesOf(marks), geoid);
  if (found.length === 0) return [];
  const turned = new Set(wrongMarks(subject).map(({ mark }) => mark));
  const bases = new Set([...setups.values()].map(({ mark }) => mark));
  return found.filter(({ mark }) => !turned.has(mark) && (setups.size === 0 || bases.has(mark)));
}

const apartFrom = foundInEach((mark: MarkValues, geoid: GeoidModel): Apart[] => {
  const { name: model, coarse } = geoid;
  const { separation, separationPlace } = mark.mark;
  if (!separation || isHole(separation) || isHole(mark.modelSeparation)) return [];
  const difference = separation.value - mark.modelSeparation.value;
  if (Math.abs(difference) <= allowed(mark, geoid)) return [];
  const place = separation.origin === 'given' ? separation.place : (separationPlace ?? mark.mark.place);
  return [{ place, mark, difference, model, coarse }];
});

/** Where the job names no model the built-in one still finds what is far off. */
const farFromCoarse = foundInEach((mark: MarkValues): Apart[] => {
  const { separation, separationPlace } = mark.mark;
  const found = byCoarseModel(mark);
  if (!separation || isHole(separation) || found === null) return [];
  const difference = separation.value - found;
  if (Math.abs(difference) <= UNASKED) return [];
  const place = separation.origin === 'given' ? separation.place : (separationPlace ?? mark.mark.place);
  return [{ place, mark, difference, model: EGM96.name, coarse: true }];
});

/** In mountains its grid of 15′ is some metres off, and levelling datums are, too (common practice); metres. */
const UNASKED = 5;

/** A coarse model is not compared below this, metres. */
const COARSE = 3;
/** Two-sided, 99 %. */
const SURELY = 2.58;

/** The uncertainty of a mark's two heights is that of its separation, as far as anything is said of it. */
const allowed = (mark: MarkValues, { coarse, error }: GeoidModel) =>
  coarse ? COARSE : SURELY * Math.hypot(error.sigma ?? 0, mark.sigmaVertical ?? 0);
