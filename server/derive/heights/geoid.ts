/** The geoid above the ellipsoid at a place, from the job's model. */
import { undulationEgm96 } from '../../geodesy/egm96.ts';
import { latitude as asLatitude, longitude as asLongitude } from '../../quantities/brands.ts';
import { compute } from '../../quantities/computed.ts';
import { isRefusal, type Refusal } from '../../quantities/refusal.ts';
import { assumed, hole, type Maybe, type Value } from '../../quantities/value.ts';
import type { GeoidName } from '../../session/entries.ts';
import type { Located } from '../positions/locate.ts';

export interface GeoidModel {
  readonly name: string;
  /** A model of half a metre: it shows blunders, and no difference below three metres means anything. */
  readonly coarse: boolean;
  readonly undulation: (latitude: number, longitude: number) => number | Refusal;
  /** Of the model everywhere alike, so that it cancels between two places; the same object for the same model. */
  readonly error: Value;
  readonly source: string;
}

export const EGM96: GeoidModel = {
  name: 'EGM96',
  coarse: true,
  undulation: (latitude, longitude) =>
    undulationEgm96({ latitude: asLatitude(latitude), longitude: asLongitude(longitude) }),
  error: assumed(
    'error of EGM96',
    0,
    'm',
    1,
    'the coarse global model is good to about a metre (common practice)',
  ),
  source: 'EGM96 15′ grid (NASA/TP-1998-206861), bicubic interpolation',
};

/** Of a regional model against levelling, common practice. */
export const regionalError = (name: string): Value =>
  assumed(`error of ${name}`, 0, 'm', 0.03, 'a regional geoid model is good to 3 cm (common practice)');

/** N at a place, from a model. */
export function separationFrom(model: GeoidModel, located: Located, about: string): Maybe<Value> {
  const N = model.undulation(located.latitude.value, located.longitude.value);
  if (isRefusal(N)) return hole(N.refused);
  const formula = {
    symbol: 'N',
    expression: `${model.name}(φ, λ) + ε`,
    evaluable: false,
    source: model.source,
  };
  const inputs = { φ: located.latitude, λ: located.longitude, ε: model.error };
  return compute(`separation of ${about} by ${model.name}`, 'm', formula, inputs, (numbers) => {
    const found = model.undulation(numbers.φ, numbers.λ);
    return (isRefusal(found) ? N : found) + numbers.ε;
  });
}

/** The built-in model by name; grid files are opened by whoever reads files. */
export const isBuiltIn = (geoid: GeoidName) => !geoid.file && geoid.name.toUpperCase() === 'EGM96';
