/** Remarks of one sort, for the kinds of finding that tell them. */
import type { RemarkAbout, RemarkOf } from '../session/remark.ts';
import type { Slip } from '../../grammar/tree.ts';
import type { Subject } from './finding.ts';

export function remarksAbout<About extends RemarkAbout>(
  { session }: Subject,
  about: About,
): RemarkOf<About>[] {
  return session.remarks.filter((remark): remark is RemarkOf<About> => remark.about === about);
}

/** Slips of the letters alone. */
export const letterSlips = (subject: Subject, slip: Slip['slip']) =>
  remarksAbout(subject, 'letters').filter((remark) => remark.slip.slip === slip);
