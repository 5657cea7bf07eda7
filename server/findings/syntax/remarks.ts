/** Remarks of one sort, for the kinds of finding that tell them. */
import type { Place, Slip } from '../../../grammar/tree.ts';
import type { NamedKind, RemarkAbout, RemarkOf } from '../../session/remark.ts';
import { asName } from '../edits.ts';
import type { Fix, Subject } from '../finding.ts';
import { short } from '../words.ts';

export function remarksAbout<About extends RemarkAbout>(
  { session }: Subject,
  about: About,
): RemarkOf<About>[] {
  return session.remarks.filter((remark): remark is RemarkOf<About> => remark.about === about);
}

/** A name that nothing answers to, told once wherever it stands. */
export interface UnknownName {
  readonly remark: RemarkOf<'unknown-name'>;
  readonly place: Place;
  /** Every place that the name stands in, this one first. */
  readonly places: readonly Place[];
}

export function unknownNames(subject: Subject, wanted: (kind: NamedKind) => boolean): UnknownName[] {
  const byName = new Map<string, { remark: RemarkOf<'unknown-name'>; places: Place[] }>();
  for (const remark of remarksAbout(subject, 'unknown-name')) {
    if (!wanted(remark.kind)) continue;
    const key = `${remark.kind}/${remark.name}`;
    const before = byName.get(key);
    if (before) before.places.push(remark.place);
    else byName.set(key, { remark, places: [remark.place] });
  }
  return [...byName.values()].map(({ remark, places }) => ({ remark, places, place: remark.place }));
}

/** One fix for each near name, in every place that the unknown one stands in. */
export const nearNameFixes = ({ remark, places }: UnknownName): Fix[] =>
  remark.near.map((name) => ({
    title: `Write ${short(name)}`,
    edits: places.map((place) => ({ place, text: asName(name) })),
  }));

/** The other places of an unknown name. */
export const elsewhere = ({ places, remark }: UnknownName) =>
  places.slice(1).map((place) => ({ message: `${short(remark.name)} is used here too.`, place }));

/** Slips of the letters alone. */
export const letterSlips = (subject: Subject, slip: Slip['slip']) =>
  remarksAbout(subject, 'letters').filter((remark) => remark.slip.slip === slip);
