/** What a session would be after some changes of text, tried while nobody's text is changed. */
import { editDocument, type Document } from '../../grammar/document.ts';
import { listValues } from '../derive/listing.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { isHole, type Maybe, type Value } from '../quantities/value.ts';
import type { Files } from '../session/files.ts';
import type { Stretch } from './cursor.ts';

export interface TextChange {
  readonly at: Stretch;
  readonly text: string;
}

/** The changes may touch every file that takes part in the session, and must not overlap. */
export function inspectedAfter(
  { session }: Inspection,
  files: Files,
  changes: readonly TextChange[],
): Inspection {
  const changed = new Map<string, Document>();
  for (const { at, text } of [...changes].sort((one, other) => other.at.start - one.at.start)) {
    const document = changed.get(at.path) ?? session.documents.get(at.path);
    if (document) changed.set(at.path, editDocument(document, at.start, at.end, text));
  }
  return inspect(changed.get(session.document.path) ?? session.document, {
    ...files,
    document: (path) => changed.get(path) ?? files.document(path),
  });
}

/** `uncertain`: how uncertain they are may differ, and with it what is expected of checks and how likely they are. */
export type Kept = 'values' | 'uncertain';

/** Whether every derived value is what it was. */
export function sameValues(before: Inspection, after: Inspection, kept: Kept = 'values'): boolean {
  const listed = ({ derivation }: Inspection) =>
    listValues(derivation).filter(({ id }) => kept === 'values' || !/\/(?:expected|chance)\//.test(id));
  const now = new Map(listed(after).map(({ id, value }) => [id, value]));
  const then = listed(before);
  return (
    then.length === now.size && then.every(({ id, value }) => isSame(value, now.get(id), kept === 'values'))
  );
}

function isSame(one: Maybe<Value>, other: Maybe<Value> | undefined, withSpread: boolean): boolean {
  if (!other || isHole(one) || isHole(other)) return isHole(one) && other !== undefined && isHole(other);
  return isNear(one.value, other.value) && (!withSpread || isNear(one.sigma ?? 0, other.sigma ?? 0));
}

/** A sum added up in another order differs in its last binary digits. */
const isNear = (one: number, other: number) =>
  Object.is(one, other) || Math.abs(one - other) <= 1e-11 * Math.max(1, Math.abs(one));
