/** What a station observes of one constellation: satellites, signals, and how many satellites at once. */
import type { Constellation } from '../../link/message-size.ts';
import type { Observations } from './observations.ts';

export interface ObservedConstellation {
  readonly constellation: Constellation;
  readonly numbers: readonly number[];
  readonly satellites: readonly string[];
  readonly signals: readonly string[];
  readonly epochs: number;
  readonly fewestSatellites: number;
  readonly mostSatellites: number;
}

export interface ObservedNotes {
  readonly numbers: Set<number>;
  readonly satellites: Set<string>;
  readonly signals: Set<string>;
  epochs: number;
  fewest: number;
  most: number;
  /** The epoch that is being gathered, message by message. */
  epoch?: number;
  readonly present: Set<string>;
}

/** Adds a message; several of one epoch count together. */
export function observe(observed: Map<Constellation, ObservedNotes>, message: Observations) {
  const notes = observed.get(message.constellation) ?? {
    ...{ numbers: new Set<number>(), satellites: new Set<string>(), signals: new Set<string>() },
    ...{ epochs: 0, fewest: Infinity, most: 0, present: new Set<string>() },
  };
  observed.set(message.constellation, notes);
  notes.numbers.add(message.number);
  if (notes.epoch !== message.epoch.milliseconds) {
    closeEpoch(notes);
    notes.epoch = message.epoch.milliseconds;
  }
  for (const satellite of message.satellites) {
    notes.satellites.add(satellite);
    notes.present.add(satellite);
  }
  for (const signal of message.signals) notes.signals.add(signal);
}

export function observedConstellation(
  constellation: Constellation,
  seen: ObservedNotes,
): ObservedConstellation {
  closeEpoch(seen);
  return {
    constellation,
    numbers: [...seen.numbers].sort((one, other) => one - other),
    satellites: [...seen.satellites].sort(),
    signals: [...seen.signals].sort(),
    epochs: seen.epochs,
    fewestSatellites: seen.fewest,
    mostSatellites: seen.most,
  };
}

function closeEpoch(notes: ObservedNotes) {
  if (notes.epoch === undefined) return;
  notes.epochs += 1;
  notes.fewest = Math.min(notes.fewest, notes.present.size);
  notes.most = Math.max(notes.most, notes.present.size);
  notes.present.clear();
}
