/**
 * What is remembered about an object, kept with the object itself.
 *
 * It answers like a `WeakMap`. A map that lives as long as the program, though, keeps what it holds until the next full
 * collection, however short the life of its keys: of an archive of thousands of sessions each was copied from one
 * generation of the heap into the next. What an object carries itself goes with it at once.
 */
export interface Kept<Key extends object, Value> {
  readonly get: (key: Key) => Value | undefined;
  readonly set: (key: Key, value: Value) => void;
}

/** A constructor that returns what it is given: private fields of classes that extend it are added to that object. */
const Itself = function (object: object) {
  return object;
} as unknown as new (object: object) => object;

/** Nobody else sees what is kept, and no copy of the object takes it along. */
export function keptWith<Key extends object, Value>(): Kept<Key, Value> {
  class Keeper extends Itself {
    #value: Value;

    constructor(key: Key, value: Value) {
      super(key);
      this.#value = value;
    }

    static readonly get = (key: Key) => (#value in key ? key.#value : undefined);

    static readonly set = (key: Key, value: Value) => {
      if (#value in key) key.#value = value;
      else new Keeper(key, value);
    };
  }
  return Keeper;
}

const together = keptWith<object, Map<object, unknown>>();

/**
 * The same where many memories are kept with one object: they share what is added to it, since an object with dozens of
 * fields of its own would be read slowly ever after.
 */
export function keptTogether<Key extends object, Value>(): Kept<Key, Value> {
  const kept: Kept<Key, Value> = {
    get: (key) => together.get(key)?.get(kept) as Value | undefined,
    set: (key, value) => {
      const known = together.get(key);
      if (known) known.set(kept, value);
      else together.set(key, new Map([[kept, value]]));
    },
  };
  return kept;
}
