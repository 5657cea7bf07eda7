/** A geoid grid file as a model; the same bytes are read once. */
import { readGrid } from '../../geodesy/grids/read-grid.ts';
import { undulationIn } from '../../geodesy/grids/geoid-grid.ts';
import { latitude as asLatitude, longitude as asLongitude } from '../../quantities/brands.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import { hole, type Maybe } from '../../quantities/value.ts';
import { regionalError, type GeoidModel } from './geoid.ts';

/** The model of a grid file; its name is how the session names it. */
export function geoidFromFile(bytes: Uint8Array, name: string): Maybe<GeoidModel> {
  const models = known.get(bytes) ?? new Map<string, Maybe<GeoidModel>>();
  known.set(bytes, models);
  const before = models.get(name);
  if (before) return before;
  const model = read(bytes, name);
  models.set(name, model);
  return model;
}

/** The answer for the same bytes is the same object, so that what rests on it need not be computed again. */
const known = new WeakMap<Uint8Array, Map<string, Maybe<GeoidModel>>>();

function read(bytes: Uint8Array, name: string): Maybe<GeoidModel> {
  const grid = readGrid(bytes);
  if (isRefusal(grid)) return hole(`the geoid grid ${name} cannot be used: ${grid.refused}`);
  return {
    name,
    coarse: false,
    error: regionalError(name),
    undulation: (latitude, longitude) => {
      const found = undulationIn(grid, { latitude: asLatitude(latitude), longitude: asLongitude(longitude) });
      return isRefusal(found) ? found : found.height;
    },
    source: `${grid.format} grid ${name}, bicubic interpolation`,
  };
}
