/** The sample sessions as they lie on the disk, each inspected with the files that it names. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { openDocument, type Document } from '../grammar/document.ts';
import { CATALOGUE } from '../server/findings/catalogue.ts';
import { inspect, type Inspection } from '../server/inspect.ts';
import type { Files } from '../server/session/files.ts';
import { findingMarkers, withMarkers, withoutMarkers } from './markers.ts';

export interface Sample {
  readonly file: string;
  readonly text: string;
}

/** Good days. */
export const cleanSamples = () => samplesIn('samples');
/** One mistake a file, the file named after the mistake. */
export const brokenSamples = () => samplesIn('samples/broken');

export const allSamples = () => [...cleanSamples(), ...brokenSamples()];

function samplesIn(folder: string): Sample[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((file) => file.endsWith('.trib'))
    .sort()
    .map((file) => ({ file: `${folder}/${file}`, text: readFileSync(`${folder}/${file}`, 'utf8') }));
}

/** The code that `height-separation-sign.trib`, or `height-extension-twice.trib`, is named after; null where there is none. */
export function promisedBy({ file }: Sample): string | null {
  const name = file.replace(/^.*\/|\.trib$/g, '');
  const fitting = CATALOGUE.map(({ code }) => code).filter((code) =>
    `${name}-`.startsWith(`${code.replace('/', '-')}-`),
  );
  return fitting.sort((one, other) => other.length - one.length)[0] ?? null;
}

export const inspectSample = ({ file, text }: Sample): Inspection =>
  inspect(openDocument(file, text), filesOnDisk());

/** The sample with the markers that it should have. */
export function markedSample({ file, text }: Sample): string {
  const plain = withoutMarkers(text);
  return withMarkers(plain, findingMarkers(inspectSample({ file, text: plain })));
}

/** Files below the project's own folder, each the same object while it is asked for again. */
export function filesOnDisk(): Files {
  const documents = new Map<string, Document>();
  const contents = new Map<string, Uint8Array>();
  const read = <Thing>(path: string, known: Map<string, Thing>, open: () => Thing) => {
    const before = known.get(path);
    if (before !== undefined) return before;
    if (path.startsWith('..') || path.startsWith('/')) return { refused: 'it lies outside the project' };
    if (!statSync(path, { throwIfNoEntry: false })?.isFile()) return { refused: 'there is no such file' };
    const opened = open();
    known.set(path, opened);
    return opened;
  };
  return {
    document: (path) => read(path, documents, () => openDocument(path, readFileSync(path, 'utf8'))),
    bytes: (path) => read(path, contents, () => new Uint8Array(readFileSync(path))),
  };
}
