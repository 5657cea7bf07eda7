/** Coordinate systems by code, name or area of use, out of the register carried in the package. */
import { searchSystems } from '../../geodesy/registry/registry.ts';
import type { Inspection } from '../../inspect.ts';
import type { Before, Offer } from './completion.ts';

/** Everything typed behind the word is searched for, so that `grid portugal tm` finds a system, too. */
export function offeredSystems({ cursor, offset, start, items }: Before, { session }: Inspection): Offer[] {
  const from = items.filter((item) => item.kind !== 'word').at(0)?.start;
  const searched = session.document.text.slice(
    from === undefined ? start : Math.min(start, cursor.start + from),
    offset,
  );
  const wanted = searched.replace(/^epsg\s*:*/i, '').trim();
  const begin = offset - searched.length;
  if (wanted === '') return inUse(session, begin);
  return searchSystems(wanted, MOST)
    .filter(({ kind }) => kind !== 'vertical')
    .map(({ code, name, kind, areaName }) => ({
      kind: 'system',
      label: code,
      beside: name,
      says: `${kind}; area of use: ${areaName}`,
      text: code,
      start: begin,
      matches: searched,
    }));
}

const MOST = 40;

/** With nothing typed yet: the systems of the job and of the files it uses. */
function inUse(session: Inspection['session'], start: number): Offer[] {
  const codes = new Set(
    [...session.jobs.values()].flatMap((job) => [job?.grid?.name, job?.datum?.name]).filter((code) => code),
  );
  return [...codes].map((code) => ({
    kind: 'system',
    label: code ?? '',
    beside: 'named in this job',
    text: code ?? '',
    start,
  }));
}
