/** Different values of one thing in a stream, each with where and when it was first and last seen. */

/** A place in the capture. */
export interface Moment {
  readonly offset: number;
  /** GPS seconds of the capture's clock; absent before the first epoch. */
  readonly time?: number;
}

export interface Sighting<Value> {
  readonly value: Value;
  readonly count: number;
  readonly first: Moment;
  readonly last: Moment;
}

export interface Sightings<Value> {
  readonly see: (value: Value, moment: Moment) => void;
  readonly all: () => readonly Sighting<Value>[];
}

/** Keeps at most `most` different values, told apart by what `keyOf` says of them. */
export function sightings<Value>(keyOf: (value: Value) => string, most = 50): Sightings<Value> {
  const seen = new Map<string, Sighting<Value>>();
  return {
    see(value, moment) {
      const key = keyOf(value);
      const before = seen.get(key);
      if (before) seen.set(key, { ...before, count: before.count + 1, last: moment });
      else if (seen.size < most) seen.set(key, { value, count: 1, first: moment, last: moment });
    },
    all: () => [...seen.values()],
  };
}
