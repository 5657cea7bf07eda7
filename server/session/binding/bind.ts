/** From an entry of the tree to what it says; an entry that has not changed is not read again. */
import { attempted } from '../../../grammar/fault.ts';
import { keptWith } from '../../../grammar/kept-with.ts';
import type { Entry, Place } from '../../../grammar/tree.ts';
import type { WordEntry } from '../../../grammar/vocabulary.ts';
import { bindCheck, bindEvent, bindPoint, bindPoints } from './field.ts';
import { bindAntenna, bindGround, bindRover, bindSurface } from './gear.ts';
import { bindJob, bindUse } from './job.ts';
import { bindRadio, bindStream } from './link.ts';
import { bindMark } from './mark.ts';
import { bindCorrection, bindHazard, bindNote, bindReview } from './record.ts';
import { bindSetup } from './setup.ts';
import { detailsOf, headerOf, placeOf, type Details } from './details.ts';
import type { Bound } from '../entries.ts';
import { LineReader } from './line-reader.ts';
import type { Remark } from '../remark.ts';

/** What every entry is read from: its header behind the first word, its details, and what is known of it already. */
export interface Source {
  readonly header: LineReader;
  readonly details: Details;
  readonly entry: Entry;
  readonly place: Place;
  readonly remarks: Remark[];
}

const readers: Readonly<Record<string, (source: Source) => Bound>> = {
  job: bindJob,
  use: bindUse,
  mark: bindMark,
  antenna: bindAntenna,
  rover: bindRover,
  surface: bindSurface,
  ground: bindGround,
  setup: bindSetup,
  radio: bindRadio,
  stream: bindStream,
  check: bindCheck,
  event: bindEvent,
  points: bindPoints,
  point: bindPoint,
  hazard: bindHazard,
  note: bindNote,
  correction: bindCorrection,
  review: bindReview,
};

const known = keptWith<Entry, { readonly path: string; readonly bound: Bound }>();

export function bind(path: string, entry: Entry): Bound {
  const before = known.get(entry);
  if (before?.path === path) return before.bound;
  const bound = guarded(path, entry);
  known.set(entry, { path, bound });
  return bound;
}

/** What the program fails over says nothing, and the rest of the file is read all the same. */
function guarded(path: string, entry: Entry): Bound {
  const bound = entry.fault === undefined ? attempted(() => read(path, entry)) : { fault: entry.fault };
  if (!('fault' in bound)) return bound;
  const place = { path, entry, start: 0, end: firstLineEnd(entry.text) };
  return { entry, place, remarks: [{ about: 'fault', because: bound.fault, place }], kind: 'unknown' };
}

const firstLineEnd = (text: string) => /[^\r\n]*/.exec(text)?.[0].length ?? 0;

function read(path: string, entry: Entry): Bound {
  const remarks: Remark[] = entry.slips.map((slip) => ({
    about: 'letters',
    slip,
    place: { path, entry, start: slip.start, end: slip.end },
  }));
  const spec: WordEntry | null = headerOf(path, entry, remarks);
  const header = new LineReader(path, entry, entry.header, remarks);
  const details = detailsOf(path, entry, spec, remarks);
  const place = placeOf(path, entry, entry.header);
  const reader = spec && readers[spec.word];
  return reader
    ? reader({ header, details, entry, place, remarks })
    : { entry, place, remarks, kind: 'unknown' };
}
