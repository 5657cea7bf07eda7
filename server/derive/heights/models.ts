/** The geoid models that a session names, read once for the same files. */
import { isRefusal } from '../../quantities/refusal.ts';
import { hole, type Hole, type Maybe } from '../../quantities/value.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { GeoidName, Setup } from '../../session/entries.ts';
import { resolvePath, type Files } from '../../session/files.ts';
import type { Session } from '../../session/session.ts';
import { EGM96, isBuiltIn, type GeoidModel } from './geoid.ts';
import { geoidFromFile } from './geoid-file.ts';
import { interned, remembered, tokenOf, type Token } from '../remembered.ts';

export type Geoids = (name: string, file: boolean) => Maybe<GeoidModel>;

/** Models by name; a grid file is looked for beside the session. */
export function geoidsOf(session: Session, files: Files): Geoids {
  return (name, file) => {
    const asked: Pick<GeoidName, 'name' | 'file'> = { name, file };
    if (isBuiltIn(asked as GeoidName)) return EGM96;
    if (!file)
      return hole(
        `the geoid model ${name} is not known; name a grid file in double quotes, or EGM96`,
        session.job?.geoid?.place ?? null,
      );
    const bytes = files.bytes(resolvePath(session.document.path, name));
    if (isRefusal(bytes))
      return hole(
        `the geoid grid ${name} cannot be read: ${bytes.refused}`,
        session.job?.geoid?.place ?? null,
      );
    return geoidFromFile(bytes, name);
  };
}

/** Models that keyed heights name, resolved once so that the answer can be remembered. */
export function modelsByName(session: Session, geoids: Geoids): readonly NamedModel[] {
  const names = new Set(modelsNamed(valuesOf(session.setups)));
  return interned([...names].map((name) => namedModel(geoids(name, name.includes('.')), tokenOf(name))));
}
const modelsNamed = foundInEach(({ keyed }: Setup) =>
  keyed.flatMap(({ height }) => (height?.geoid ? [height.geoid.name] : [])),
);
export interface NamedModel {
  readonly name: string;
  readonly model: Maybe<GeoidModel>;
}
const namedModel = remembered((model: GeoidModel | Hole, { worth: name }: Token<string>): NamedModel => ({
  name,
  model,
}));
