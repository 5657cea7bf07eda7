/** A geoid grid file as a model; the same bytes are read once. */
import { hole, type Maybe } from '../quantities/value.ts';
import type { GeoidModel } from './geoid.ts';

export function geoidFromFile(_bytes: Uint8Array, file: { readonly name: string }): Maybe<GeoidModel> {
  return hole(`${file.name} is not read yet`);
}
